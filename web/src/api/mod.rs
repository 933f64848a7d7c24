//! What scripts may call: the engine as JavaScript functions with typed values.
//!
//! ```js
//! import init, { Engine } from "./gramwright-web.js";
//! await init();
//! const bytes = await (await fetch("data/sr28.foods.bin")).arrayBuffer();
//! const engine = new Engine(new Uint8Array(bytes));
//! engine.readLine("3 cups onions, chopped").grams; // "480"
//! ```
//!
//! Decimals cross as strings, so that no digit is lost to binary floating
//! point; what is not known crosses as `null`, never as zero. What cannot be
//! done is thrown as an object with `kind`, `where`, `message` and `remedy`.
//! The types are in `types.d.ts`, which goes into the generated declarations.

mod engine;
mod error;
mod forms;
mod line_form;
mod mend;
mod recipe_form;
mod swaps;
mod trade;
mod week_form;

pub use self::engine::Engine;
pub use error::{ApiError, ErrorKind};
pub use mend::Mending;

use wasm_bindgen::prelude::*;

#[wasm_bindgen(typescript_custom_section)]
const TYPES: &str = include_str!("types.d.ts");
