//! The same figures once more, reckoned by SQLite from the release's own text
//! files in integers only.
//!
//! Shares no code and no table with the engine: values, measures and printed
//! decimals are read from the release, amounts come in as fractions, and all
//! arithmetic is in the `.sql` files beside this one. Large numbers are kept as
//! parts of six decimal digits, so that sums, thirds and divisions are exact.

mod load;

use rusqlite::{Connection, params};
use rust_decimal::Decimal;
use std::collections::BTreeMap;
use std::path::Path;

/// Kilocalories per gram of fat: the general factor, Agriculture Handbook No. 74.
const KCAL_PER_GRAM_OF_FAT: i64 = 9;
/// Numbers that divide this one can be numbers of servings.
pub const SERVINGS_MUST_DIVIDE: u32 = 25_200;

/// An exact amount.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Fraction {
    /// Above the line.
    pub numerator: i64,
    /// Below the line.
    pub denominator: i64,
}

/// In what an amount is counted.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum CountedIn {
    /// The food's measure with this number in the release (`Seq`).
    Measure(u32),
    /// A unit of mass: g, kg, oz or lb.
    Mass(&'static str),
}

/// A line as a person reads it, with the release open beside it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PeerLine {
    /// Number of the food in the release.
    pub food: Option<u32>,
    /// How much of it.
    pub amount: Option<(Fraction, CountedIn)>,
}

/// Name of a recipe or a week in the reckoning.
pub type Owner = u32;

/// One nutrient of one recipe's serving, or of one week's average meal.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PeerFigure {
    /// Sum of what is known, at the dataset's decimals.
    pub amount: Decimal,
    /// Mass of which the value is known, grams to six decimals.
    pub known_mass: Decimal,
    /// Lines without a mass.
    pub unweighed: u32,
    /// Lines with a mass and without a value.
    pub missing: u32,
}

/// A measure of the release.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PeerMeasure {
    /// Number of the food.
    pub food: u32,
    /// Number of the measure.
    pub seq: u32,
    /// Amount in thousandths of the unit.
    pub amount_thousandths: i64,
    /// The unit in words.
    pub words: String,
}

/// The database.
pub struct Peer {
    connection: Connection,
}

impl Peer {
    /// Reads the release in `folder`, the values of `nutrients` only.
    ///
    /// # Panics
    /// When a file cannot be read or is not what the release has.
    pub fn open(folder: &Path, nutrients: &[u16]) -> Self {
        let mut connection = Connection::open_in_memory().expect("a database in memory");
        connection
            .execute_batch(include_str!("schema.sql"))
            .expect("the schema");
        load::release(&mut connection, folder, nutrients);
        Self { connection }
    }

    /// Numbers and printed decimals of the nutrients that the release has.
    pub fn nutrients(&self) -> Vec<(u16, u32)> {
        self.rows(
            "SELECT number, scale FROM nutrient ORDER BY number",
            |row| {
                let scale: u32 = row.get(1)?;
                Ok((row.get(0)?, scale.ilog10()))
            },
        )
    }

    /// Numbers of all foods.
    pub fn foods(&self) -> Vec<u32> {
        self.rows("SELECT DISTINCT food FROM value ORDER BY food", |row| {
            row.get(0)
        })
    }

    /// All measures.
    pub fn measures(&self) -> Vec<PeerMeasure> {
        self.rows(
            "SELECT food, seq, amount_thousandths, words FROM measure ORDER BY food, seq",
            |row| {
                Ok(PeerMeasure {
                    food: row.get(0)?,
                    seq: row.get(1)?,
                    amount_thousandths: row.get(2)?,
                    words: row.get(3)?,
                })
            },
        )
    }

    /// Enters a recipe.
    pub fn enter_recipe(&mut self, recipe: Owner, servings: u32, lines: &[PeerLine]) {
        self.execute(
            "INSERT INTO recipe VALUES (?, ?)",
            params![recipe, servings],
        );
        for line in lines {
            let (count, counted_in) = match &line.amount {
                Some((count, counted_in)) => (Some(*count), Some(counted_in)),
                None => (None, None),
            };
            let (seq, unit) = match counted_in {
                Some(CountedIn::Measure(seq)) => (Some(*seq), None),
                Some(CountedIn::Mass(unit)) => (None, Some(*unit)),
                None => (None, None),
            };
            self.execute(
                "INSERT INTO line VALUES (?, ?, ?, ?, ?, ?)",
                params![
                    recipe,
                    line.food,
                    count.map(|count| count.numerator),
                    count.map(|count| count.denominator),
                    seq,
                    unit
                ],
            );
        }
    }

    /// Enters a week of one meal for one group: planned meals, and the planned
    /// servings of each choice.
    pub fn enter_week(&mut self, week: Owner, meals: u32, choices: &[(Owner, u32)]) {
        self.execute("INSERT INTO week VALUES (?, ?)", params![week, meals]);
        for (recipe, planned) in choices {
            self.execute(
                "INSERT INTO choice VALUES (?, ?, ?)",
                params![week, recipe, planned],
            );
        }
    }

    /// Reckons everything entered.
    ///
    /// # Panics
    /// When a number does not stay a whole one.
    pub fn reckon(&mut self) {
        for (step, statements) in [
            ("recipes", include_str!("recipes.sql")),
            ("carry", include_str!("carry.sql")),
            ("weeks", include_str!("weeks.sql")),
            ("carry", include_str!("carry.sql")),
            ("print", include_str!("print.sql")),
        ] {
            self.connection
                .execute_batch(statements)
                .unwrap_or_else(|error| panic!("{step}.sql: {error}"));
        }
    }

    /// The figures of a recipe's serving or a week's average meal.
    pub fn figures(&self, owner: Owner) -> BTreeMap<u16, PeerFigure> {
        let rows = self.rows(
            &format!(
                "SELECT amount.nutrient, amount.rounded, amount.scale, mass.rounded, mass.scale,
                    unweighed, missing
                FROM printed AS amount
                JOIN printed AS mass USING (owner, nutrient)
                JOIN tally USING (owner, nutrient)
                WHERE owner = {owner} AND amount.kind = 'amount' AND mass.kind = 'mass'
                    AND nutrient > 0"
            ),
            |row| {
                Ok((
                    row.get(0)?,
                    PeerFigure {
                        amount: decimal(row.get(1)?, row.get(2)?),
                        known_mass: decimal(row.get(3)?, row.get(4)?),
                        unweighed: row.get(5)?,
                        missing: row.get(6)?,
                    },
                ))
            },
        );
        rows.into_iter().collect()
    }

    /// Mass of a recipe's serving or a week's average meal, grams to six
    /// decimals.
    pub fn mass(&self, owner: Owner) -> Decimal {
        let rows = self.rows(
            &format!(
                "SELECT rounded, scale FROM printed
                WHERE owner = {owner} AND nutrient = 0 AND kind = 'amount'"
            ),
            |row| Ok(decimal(row.get(0)?, row.get(1)?)),
        );
        rows[0]
    }

    /// The share in percent, to two decimals, of `energy_of` that the saturated
    /// fat of `fat_of` brings. The two are the same week, or the same week
    /// without some of its choices.
    pub fn saturated_fat_share(&self, fat_of: Owner, energy_of: Owner) -> Decimal {
        const SATURATED_FAT: u16 = 606;
        let hundredths: i64 = self
            .connection
            .query_row(
                include_str!("share.sql"),
                params![fat_of, SATURATED_FAT, KCAL_PER_GRAM_OF_FAT, energy_of],
                |row| row.get(0),
            )
            .expect("the share of energy");
        decimal(hundredths, 100)
    }

    fn execute(&self, statement: &str, values: impl rusqlite::Params) {
        self.connection
            .prepare_cached(statement)
            .and_then(|mut prepared| prepared.execute(values))
            .unwrap_or_else(|error| panic!("{statement}: {error}"));
    }

    fn rows<T>(
        &self,
        query: &str,
        read: impl FnMut(&rusqlite::Row<'_>) -> rusqlite::Result<T>,
    ) -> Vec<T> {
        let mut statement = self.connection.prepare(query).expect(query);
        let rows = statement.query_map([], read).expect(query);
        rows.collect::<rusqlite::Result<_>>().expect(query)
    }
}

/// `scale` is a power of ten.
fn decimal(rounded: i64, scale: u32) -> Decimal {
    Decimal::new(rounded, scale.ilog10())
}
