//! Putting a home on its map: pictures, lines, proposals, panel tables, what is still missing.
