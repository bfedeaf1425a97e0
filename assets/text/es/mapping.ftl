### Texts of the crate mapping
