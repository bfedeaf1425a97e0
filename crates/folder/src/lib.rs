//! A home on disk: opening, saving that survives a kill, one writer, one zip.
