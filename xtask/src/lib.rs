//! What the developer commands share with the browser journeys.

pub mod offline;
pub mod server;
