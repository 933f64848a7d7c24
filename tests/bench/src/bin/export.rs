//! Writes the tables of a book as Parquet files.
//!
//! `cargo run --manifest-path tests/bench/Cargo.toml --bin export -- BOOK.json FOLDER`

use anyhow::{Context, Result, bail};
use engine::book::Book;
use engine::recipe::RecipeId;
use engine::reference::Reference;
use gramwright_bench::export::Tables;
use std::{env, fs, path::Path};

fn main() -> Result<()> {
    let arguments: Vec<String> = env::args().skip(1).collect();
    let [file, folder] = &arguments[..] else {
        bail!("name the book's file and a folder: export BOOK.json FOLDER");
    };
    let text = fs::read_to_string(file).with_context(|| format!("cannot read {file}"))?;
    let book: Book = serde_json::from_str(&text).with_context(|| format!("{file} is no book"))?;
    book.check()?;
    let reference = Reference::committed(&nutrient_data::asset::committed().0)?.for_book(&book)?;
    let names: Vec<RecipeId> = book
        .recipes
        .iter()
        .map(|recipe| recipe.id.clone())
        .collect();
    let studies = reference.study_recipes(&book, &names);
    let mut tables = Tables::new(&reference);
    tables.add(&reference, &book.office, &studies, &book.weeks);
    tables.write(Path::new(folder))
}
