### Texts of the crate upkeep
