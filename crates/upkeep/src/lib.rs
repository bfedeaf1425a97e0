//! What is due, and when; the move-in list.
