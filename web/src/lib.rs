//! The Gramwright page.
