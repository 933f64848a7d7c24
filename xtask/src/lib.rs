//! What the developer commands share with the browser journeys: one static file server.

pub mod server;
