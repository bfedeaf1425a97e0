//! An answer or a home on paper, phone and calendar.
