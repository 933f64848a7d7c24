//! Figures reckoned beside the engine: whole numbers from SR28's own digits, and one division.
//!
//! A line is what a person reads in it: a food of SR28, and how much of it by one of SR28's
//! household measures or by a unit of mass. Source of values and measures: USDA National Nutrient
//! Database for Standard Reference, Release 28, as committed in `nutrient-data/tables/sr28`
//! (`tests/tests/dataset.rs` compares these tables with the release). Source of pound and ounce:
//! NIST Handbook 44, Appendix C.

use csv::StringRecord;
use gramwright_tests::sql::{CountedIn, Fraction, PeerLine, SERVINGS_MUST_DIVIDE};
use std::collections::BTreeMap;
use std::path::Path;
use std::sync::LazyLock;

/// Energy in kcal: a nutrient file of SR28.
pub const CALORIES: &str = "values/208-ENERC_KCAL.csv";
/// Saturated fat in g.
pub const SATURATED_FAT: &str = "values/606-FASAT.csv";
/// Sodium in mg.
pub const SODIUM: &str = "values/307-NA.csv";

/// Household measures: food, number, amount, measure, grams.
const MEASURES: &str = "measures.csv";

/// Amounts are counted in 48ths: a whole number of them makes a half, a third, a sixteenth.
const PARTS: i128 = 48;
/// Decimals of weights; an ounce has nine.
const GRAM_PLACES: u32 = 9;
/// Decimals of values; SR28 states at most three.
const VALUE_PLACES: u32 = 3;

/// An amount of a nutrient as a fraction of whole numbers.
#[derive(Debug, Clone, Copy)]
pub struct Amount {
    sum: i128,
    divisor: i128,
}

/// What one of `servings` of these lines contains:
///
/// Σ count × grams of one × value per 100 g ÷ 100 ÷ servings
pub fn per_serving(lines: &[PeerLine], nutrient: &str, servings: i128) -> Amount {
    Amount {
        sum: sum(lines, nutrient),
        divisor: UNITS * servings,
    }
}

/// A recipe as it is planned: its lines, how many servings they make, and how many are planned.
pub type Planned<'a> = (&'a [PeerLine], i128, i128);

/// What the average of so many meals contains:
///
/// Σ planned × (what a serving contains) ÷ meals
pub fn per_meal(plan: &[Planned<'_>], nutrient: &str, meals: i128) -> Amount {
    let common = i128::from(SERVINGS_MUST_DIVIDE);
    let planned = |(lines, servings, planned): &Planned<'_>| {
        assert_eq!(common % servings, 0, "{servings} servings");
        sum(lines, nutrient) * (common / servings) * planned
    };
    Amount {
        sum: plan.iter().map(planned).sum(),
        divisor: UNITS * common * meals,
    }
}

/// In the numerator one is so much: parts of a count, of a gram, of a value, per 100 g.
const UNITS: i128 = PARTS * 10_i128.pow(GRAM_PLACES + VALUE_PLACES) * 100;

fn sum(lines: &[PeerLine], nutrient: &str) -> i128 {
    let of = |line: &PeerLine| {
        let food = format!("{:05}", line.food.expect("a food"));
        let (count, of) = line.amount.as_ref().expect("an amount");
        let value = row(nutrient, &food);
        parts(*count) * weight(&food, of) * whole(&value[1], VALUE_PLACES)
    };
    lines.iter().map(of).sum()
}

impl Amount {
    /// As the page prints it, with up to one decimal, halves up, and thousands set apart.
    pub fn printed(self, decimals: u32) -> String {
        let scale = 10_i128.pow(decimals);
        let rounded = self.times(scale).to_nearest(1);
        let (whole, rest) = (rounded / scale, rounded % scale);
        let whole = match (whole / 1000, whole % 1000) {
            (0, below) => below.to_string(),
            (thousands, below) => format!("{thousands},{below:03}"),
        };
        match decimals {
            0 => whole,
            1 => format!("{whole}.{rest}"),
            _ => panic!("the page prints one decimal at most"),
        }
    }

    /// The nearest whole multiple of `step`, halves up.
    pub fn to_nearest(self, step: i128) -> i128 {
        let divisor = self.divisor * step;
        (2 * self.sum + divisor) / (2 * divisor) * step
    }

    fn times(self, factor: i128) -> Self {
        Self {
            sum: self.sum * factor,
            ..self
        }
    }
}

/// Weight of one in units of 10^-9 g.
fn weight(food: &str, of: &CountedIn) -> i128 {
    let number = match of {
        CountedIn::Mass("lb") => return whole("453.59237", GRAM_PLACES),
        CountedIn::Mass("oz") => return whole("28.349523125", GRAM_PLACES),
        CountedIn::Mass("g") => return whole("1", GRAM_PLACES),
        CountedIn::Mass(other) => panic!("{other} is no unit of these journeys"),
        CountedIn::Measure(number) => number.to_string(),
    };
    // So much of the measure weighs so many grams.
    let row = row(MEASURES, &format!("{food},{number}"));
    let amount = whole(&row[2], GRAM_PLACES);
    let weight = whole(&row[4], GRAM_PLACES) * 10_i128.pow(GRAM_PLACES);
    assert_eq!(weight % amount, 0, "{food}: a measure that divides evenly");
    weight / amount
}

fn parts(count: Fraction) -> i128 {
    let parts = i128::from(count.numerator) * PARTS;
    let denominator = i128::from(count.denominator);
    assert_eq!(parts % denominator, 0, "{count:?} in 48ths");
    parts / denominator
}

/// A decimal number as a whole number of units of `10^-places`.
fn whole(text: &str, places: u32) -> i128 {
    let (whole, decimals) = text.split_once('.').unwrap_or((text, ""));
    let number: i128 = format!("{whole}{decimals}").parse().expect("digits");
    let has = u32::try_from(decimals.len()).expect("a few decimals");
    number * 10_i128.pow(places - has)
}

/// The row of a table of SR28 that begins with these fields.
fn row(table: &str, begins: &str) -> &'static StringRecord {
    static ROWS: LazyLock<BTreeMap<String, StringRecord>> = LazyLock::new(read_tables);
    let row = ROWS.get(&format!("{table} {begins}"));
    row.unwrap_or_else(|| panic!("{table}: there is no {begins}"))
}

/// The rows of all tables that are used here, by table and first fields.
fn read_tables() -> BTreeMap<String, StringRecord> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../nutrient-data/tables/sr28");
    let mut rows = BTreeMap::new();
    for table in [MEASURES, CALORIES, SATURATED_FAT, SODIUM] {
        let mut reader = csv::Reader::from_path(folder.join(table)).expect("a table of SR28");
        for row in reader.records().map(|row| row.expect("a row of SR28")) {
            let name = match table {
                MEASURES => format!("{table} {},{}", &row[0], &row[1]),
                _ => format!("{table} {}", &row[0]),
            };
            assert_eq!(rows.insert(name, row), None, "{table} has a row twice");
        }
    }
    rows
}

/// A line as a person reads it.
pub const fn line(food: u32, (numerator, denominator): (i64, i64), of: CountedIn) -> PeerLine {
    PeerLine {
        food: Some(food),
        amount: Some((
            Fraction {
                numerator,
                denominator,
            },
            of,
        )),
    }
}
