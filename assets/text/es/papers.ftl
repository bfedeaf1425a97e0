### Texts of the crate papers
