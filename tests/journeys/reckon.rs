//! Figures reckoned beside the engine: whole numbers from SR28's own digits, and one division.
//!
//! A line is what the journey's author reads in it: a food of SR28, and how much of it by one of
//! SR28's household measures or by the pound. Source of values and measures: USDA National Nutrient
//! Database for Standard Reference, Release 28, as committed in `nutrient-data/tables/sr28`
//! (`tests/tests/dataset.rs` compares these tables with the release). Source of pound and ounce:
//! NIST Handbook 44, Appendix C.

use csv::StringRecord;
use std::path::Path;

/// Energy in kcal, saturated fat in g, sodium in mg: SR28's nutrient files.
pub const CALORIES: &str = "values/208-ENERC_KCAL.csv";
/// See [`CALORIES`].
pub const SATURATED_FAT: &str = "values/606-FASAT.csv";
/// See [`CALORIES`].
pub const SODIUM: &str = "values/307-NA.csv";

/// What one of something weighs.
#[derive(Debug, Clone, Copy)]
pub enum Of {
    /// SR28's measure of this food with this sequence number.
    Measure(&'static str),
    /// 16 ounces.
    Pound,
    /// The sixteenth of a pound.
    Ounce,
    /// As stated in grams.
    Gram,
}

/// A line as it is meant.
#[derive(Debug, Clone, Copy)]
pub struct Meant {
    /// SR28's number of the food.
    pub food: &'static str,
    /// How many twelfths: a whole number for halves, thirds and quarters.
    pub twelfths: i128,
    /// Of what.
    pub of: Of,
}

/// A decimal number as its digits without the point, and how many of them stand behind it.
fn digits(text: &str) -> (i128, u32) {
    let (whole, decimals) = text.split_once('.').unwrap_or((text, ""));
    let number = format!("{whole}{decimals}").parse();
    let places = u32::try_from(decimals.len()).expect("a few decimals");
    (number.expect("digits of the table"), places)
}

/// The digits as a whole number of units of `10^-places`.
fn whole(text: &str, places: u32) -> i128 {
    let (number, has) = digits(text);
    number * 10_i128.pow(places - has)
}

/// The one row of a table of SR28 that begins with these fields.
fn row(table: &str, begins: &[&str]) -> StringRecord {
    let path = Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("../nutrient-data/tables/sr28")
        .join(table);
    let mut reader = csv::Reader::from_path(path).expect("a table of SR28");
    let mut rows = reader
        .records()
        .map(|row| row.expect("a row of SR28"))
        .filter(|row| row.iter().zip(begins).all(|(has, wanted)| has == *wanted));
    let row = rows.next();
    assert_eq!(rows.next(), None, "{table}: {begins:?} stands there twice");
    row.unwrap_or_else(|| panic!("{table}: there is no {begins:?}"))
}

/// Decimals of weights in the sum; an ounce has nine.
const GRAM_PLACES: u32 = 9;
/// Decimals of values in the sum; SR28 states at most three.
const VALUE_PLACES: u32 = 3;

/// Weight of one in units of 10^-9 g.
fn weight(food: &str, of: Of) -> i128 {
    match of {
        Of::Pound => whole("453.59237", GRAM_PLACES),
        Of::Ounce => whole("28.349523125", GRAM_PLACES),
        Of::Gram => whole("1", GRAM_PLACES),
        Of::Measure(number) => {
            // food, seq, amount, measure, grams: the measure weighs grams / amount.
            let fields = row("measures.csv", &[food, number]);
            let amount = whole(&fields[2], GRAM_PLACES);
            let grams = whole(&fields[4], GRAM_PLACES);
            let weight = grams * 10_i128.pow(GRAM_PLACES);
            assert_eq!(weight % amount, 0, "{food}: a measure that divides evenly");
            weight / amount
        }
    }
}

/// What one of `servings` contains, as printed with `decimals`, halves up:
///
/// Σ twelfths/12 × grams × value/100 g ÷ servings
pub fn per_serving(lines: &[Meant], nutrient: &str, servings: i128, decimals: u32) -> String {
    let sum: i128 = lines
        .iter()
        .map(|line| {
            let value = row(nutrient, &[line.food]);
            line.twelfths * weight(line.food, line.of) * whole(&value[1], VALUE_PLACES)
        })
        .sum();
    let divisor = 12 * 10_i128.pow(GRAM_PLACES + VALUE_PLACES) * 100 * servings;
    let scale = 10_i128.pow(decimals);
    let rounded = (2 * sum * scale + divisor) / (2 * divisor);
    let (whole, rest) = (rounded / scale, rounded % scale);
    assert!(whole < 1000, "thousands are not set apart here");
    match decimals {
        0 => format!("{whole}"),
        1 => format!("{whole}.{rest}"),
        _ => unimplemented!("the page prints no more decimals in large"),
    }
}
