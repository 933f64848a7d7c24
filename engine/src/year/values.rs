//! The values of all foods side by side, as bulk sums read them.

use super::near::{POWERS, float};
use crate::exact::Digits;
use crate::foods::{FoodId, FoodTable, NutrientId};
use crate::recipe::{Keep, WeighedLine};
use rust_decimal::Decimal;
use std::collections::BTreeMap;

/// Nutrients that are added up together.
pub const LANE: usize = 16;

/// A line as sums take it: the row of its values, and its grams.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RowWeight {
    /// Row of values.
    pub row: u32,
    /// Grams.
    pub grams: f64,
}

/// Values per 100 g: a row for each food, in lanes of [`LANE`] nutrients. Each
/// is a whole number, the digits that the dataset has, so that none is rounded
/// on the way; a missing one stands as zero and is marked.
#[derive(Debug, Clone)]
pub struct ValueRows {
    lanes: usize,
    nutrients: Vec<NutrientId>,
    /// Decimal places of each nutrient's whole numbers.
    places: Vec<u32>,
    /// Decimal places with which each is printed.
    digits: Vec<Digits>,
    values: Vec<[f64; LANE]>,
    /// By row and lane: a bit for each value that is missing.
    missing: Vec<u16>,
    rows: BTreeMap<FoodId, u32>,
    /// A value below zero breaks the bounds of errors: no such row is used.
    negative: Vec<bool>,
}

/// The row of a food that is not known: everything is missing.
const NOTHING_KNOWN: u32 = 0;

impl ValueRows {
    /// All foods of a table.
    pub fn new(foods: &FoodTable) -> Self {
        let nutrients: Vec<NutrientId> = foods.nutrients().iter().map(|n| n.id).collect();
        let places = nutrients.iter().map(|id| foods.places(*id)).collect();
        let mut table = Self {
            lanes: nutrients.len().div_ceil(LANE),
            nutrients,
            places,
            digits: foods.nutrients().iter().map(|n| n.decimals).collect(),
            values: Vec::new(),
            missing: Vec::new(),
            rows: BTreeMap::new(),
            negative: Vec::new(),
        };
        table.push(|_| None);
        for food in foods.foods().iter().chain(foods.own_foods()) {
            let row = table.push(|nutrient| foods.per_100_g(food.id, nutrient));
            table.rows.insert(food.id, row);
        }
        table
    }

    fn push(&mut self, value: impl Fn(NutrientId) -> Option<Decimal>) -> u32 {
        let row = self.negative.len();
        let mut values = vec![[0.0; LANE]; self.lanes];
        let mut missing = vec![0_u16; self.lanes];
        let mut negative = false;
        for (column, nutrient) in self.nutrients.iter().enumerate() {
            let (lane, place) = (column / LANE, column % LANE);
            match value(*nutrient) {
                None => missing[lane] |= 1 << place,
                Some(value) => {
                    negative |= value < Decimal::ZERO;
                    values[lane][place] = whole(value, self.places[column]);
                }
            }
        }
        self.values.extend(values);
        self.missing.extend(missing);
        self.negative.push(negative);
        u32::try_from(row).unwrap_or(NOTHING_KNOWN)
    }

    /// How many nutrients there are.
    pub fn columns(&self) -> usize {
        self.nutrients.len()
    }

    /// How many lanes hold them.
    pub fn lanes(&self) -> usize {
        self.lanes
    }

    /// Column of a nutrient.
    pub fn column(&self, nutrient: NutrientId) -> Option<usize> {
        self.nutrients.iter().position(|id| *id == nutrient)
    }

    /// A column's nutrient and the decimal places of its whole numbers.
    pub fn nutrient(&self, column: usize) -> (NutrientId, u32) {
        (self.nutrients[column], self.places[column])
    }

    /// Decimal places with which a column is printed.
    pub fn digits(&self, column: usize) -> Digits {
        self.digits[column]
    }

    /// A food's value in a column as a whole number, and whether it is missing.
    pub fn of_food(&self, food: FoodId, column: usize) -> (f64, bool) {
        let row = self.rows.get(&food).copied().unwrap_or(NOTHING_KNOWN);
        let at = row as usize * self.lanes + column / LANE;
        let missing = self.missing[at] >> (column % LANE) & 1 == 1;
        (self.values[at][column % LANE], missing)
    }

    /// The row of a weighed line's food; one of its own where the line does
    /// not keep all of its nutrients.
    pub fn row_of(&mut self, foods: &FoodTable, line: &WeighedLine) -> u32 {
        let known = line.food.and_then(|food| self.rows.get(&food).copied());
        let Some((row, food)) = known.zip(line.food) else {
            return NOTHING_KNOWN;
        };
        if line.keeps.is_empty() {
            return row;
        }
        let kept =
            |nutrient| Some(foods.per_100_g(food, nutrient)? * Keep::of(&line.keeps, nutrient));
        self.push(kept)
    }

    /// True when a row cannot be summed within the bounds.
    pub fn is_negative(&self, row: u32) -> bool {
        self.negative[row as usize]
    }

    /// What lines contain of every nutrient, in hundredths of its whole
    /// numbers, and what is missing from that.
    pub fn add_up(&self, lines: &[RowWeight], sums: &mut [[f64; LANE]], missing: &mut [u16]) {
        for lane in 0..self.lanes {
            let mut sum = [0.0; LANE];
            let mut lost = 0;
            for line in lines {
                let at = line.row as usize * self.lanes + lane;
                lost |= self.missing[at];
                for (sum, value) in sum.iter_mut().zip(&self.values[at]) {
                    *sum += value * line.grams;
                }
            }
            sums[lane] = sum;
            missing[lane] = lost;
        }
    }
}

/// A value as so many units of its last decimal place.
#[expect(
    clippy::cast_precision_loss,
    reason = "the digits of a dataset's value are few"
)]
fn whole(value: Decimal, places: u32) -> f64 {
    match value.scale() == places {
        true => value.mantissa() as f64,
        false => float(value) * POWERS[places as usize],
    }
}
