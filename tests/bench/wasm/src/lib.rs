//! The bare nutrient product in WebAssembly: the engine's own sums, on lines
//! that come in as numbers.

use engine::foods::FoodTable;
use engine::year::{LANE, RowWeight, ValueRows};
use wasm_bindgen::prelude::*;

/// The values of all foods and the lines of all recipes.
#[wasm_bindgen]
pub struct Product {
    values: ValueRows,
    recipes: Vec<Vec<RowWeight>>,
    sums: Vec<[f64; LANE]>,
    missing: Vec<u16>,
}

#[wasm_bindgen]
impl Product {
    /// From the dataset's file; `rows` and `grams` of `lines` lines for each
    /// recipe, one recipe after the other.
    #[wasm_bindgen(constructor)]
    pub fn new(foods: &[u8], rows: &[u32], grams: &[f64], lines: usize) -> Result<Product, String> {
        let foods = FoodTable::from_asset(foods).map_err(|error| error.to_string())?;
        let values = ValueRows::new(&foods);
        let all: Vec<RowWeight> = rows
            .iter()
            .zip(grams)
            .map(|(row, grams)| RowWeight {
                row: *row,
                grams: *grams,
            })
            .collect();
        let recipes: Vec<Vec<RowWeight>> = all.chunks(lines).map(<[_]>::to_vec).collect();
        Ok(Self {
            sums: vec![[0.0; LANE]; recipes.len() * values.lanes()],
            missing: vec![0; recipes.len() * values.lanes()],
            values,
            recipes,
        })
    }

    /// Adds up all recipes so many times.
    pub fn run(&mut self, times: u32) -> f64 {
        let lanes = self.values.lanes();
        for _ in 0..times {
            for (at, lines) in self.recipes.iter().enumerate() {
                let place = at * lanes..(at + 1) * lanes;
                let missing = &mut self.missing[place.clone()];
                self.values.add_up(lines, &mut self.sums[place], missing);
            }
        }
        self.sums[0][0]
    }
}
