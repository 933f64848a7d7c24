//! Imports SR28 and builds the asset.
fn main() {}
