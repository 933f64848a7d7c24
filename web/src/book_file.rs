//! What the browser stores, as a text. The book's own file is the engine's
//! [`engine::exchange::book_file`].

use crate::state::Saved;
use engine::exchange::Problem;
use engine::exchange::book_file::{check, read_json};

/// Reads what the browser stores.
///
/// # Errors
/// When the text is not that, or recipes or weeks cannot be told apart.
pub fn read_saved(text: &str) -> Result<Saved, Problem> {
    let saved: Saved = read_json(text)?;
    check(&saved.book)?;
    Ok(saved)
}
