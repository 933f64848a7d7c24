//! What of a book's own foods and limits can be used. The rest is kept in the
//! book, and told with where and how to mend it.

use crate::state::OwnTable;
use engine::book::Book;
use engine::label::LabelTables;
use engine::own_foods::{ImportError, OwnFood, entry};
use engine::rules::{MealPatterns, OwnRules, Specifications, WeekRules};
use engine::tables::TableError;

/// What cannot be used yet.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct OwnProblems {
    /// Foods by their number.
    pub foods: Vec<(u32, ImportError)>,
    /// Tables of limits.
    pub tables: Vec<(OwnTable, TableError)>,
}

impl OwnProblems {
    /// Whether all can be used.
    pub fn is_empty(&self) -> bool {
        self.foods.is_empty() && self.tables.is_empty()
    }

    /// What is wrong with a food.
    pub fn of_food(&self, number: u32) -> Option<&ImportError> {
        let mut foods = self.foods.iter();
        foods.find(|(of, _)| *of == number).map(|(_, error)| error)
    }

    /// What is wrong with a table.
    pub fn of_table(&self, table: OwnTable) -> Option<&TableError> {
        let mut tables = self.tables.iter();
        tables.find(|(of, _)| *of == table).map(|(_, error)| error)
    }
}

impl OwnTable {
    /// The table that came with the engine, which has the same header.
    pub fn model(self) -> &'static str {
        match self {
            Self::DietarySpecifications => nutrient_data::rules::DIETARY_SPECIFICATIONS,
            Self::MealPatterns => nutrient_data::rules::MEAL_PATTERNS,
            Self::WeekRules => nutrient_data::rules::WEEK_RULES,
        }
    }

    /// Its first line.
    pub fn header(self) -> &'static str {
        self.model().lines().next().unwrap_or_default()
    }

    /// Reads an office's text as this table, beside the meal patterns that the
    /// office has.
    ///
    /// # Errors
    /// When it has not all columns, or a row cannot be used.
    pub fn check(self, text: &str, patterns: &MealPatterns) -> Result<(), TableError> {
        self.check_header(text)?;
        match self {
            Self::DietarySpecifications => Specifications::own(text, patterns).map(drop),
            Self::MealPatterns => MealPatterns::from_csv(text).map(drop),
            Self::WeekRules => WeekRules::own(text, patterns).map(drop),
        }
    }

    /// A row in the first line would be taken for the header and be lost.
    fn check_header(self, text: &str) -> Result<(), TableError> {
        let first = text.lines().next().unwrap_or_default();
        let has = |column: &&str| first.split(',').any(|cell| cell.trim() == *column);
        match self.header().split(',').find(|column| !has(column)) {
            None => Ok(()),
            Some(column) => Err(TableError {
                table: "own limits".to_owned(),
                line: 1,
                problem: format!(
                    "the first line has no column \"{column}\": begin with the header as it is given"
                ),
            }),
        }
    }
}

/// The usable part of what a book adds to the tables, without recipes, weeks
/// and the office's name; and what cannot be used. The tables are those that
/// came with the engine.
pub fn usable(book: &Book, label: &LabelTables, patterns: &MealPatterns) -> (Book, OwnProblems) {
    let mut problems = OwnProblems::default();
    let mut part = Book {
        own_foods: Vec::new(),
        own_rules: OwnRules::default(),
        switches: book.switches.clone(),
        ..Book::empty("")
    };
    for food in &book.own_foods {
        match check_food(food, label) {
            Ok(()) => part.own_foods.push(food.clone()),
            Err(error) => problems.foods.push((food.number, error)),
        }
    }
    let own_patterns = book.own_rules.meal_patterns.as_deref();
    let with_own = own_patterns.and_then(|text| patterns.clone().and_own(text).ok());
    let patterns = with_own.as_ref().unwrap_or(patterns);
    for table in OwnTable::ALL {
        let Some(text) = table.text(&book.own_rules) else {
            continue;
        };
        match table.check(text, patterns) {
            Ok(()) => *table.place(&mut part.own_rules) = Some(text.to_owned()),
            Err(error) => problems.tables.push((table, error)),
        }
    }
    (part, problems)
}

fn check_food(food: &OwnFood, label: &LabelTables) -> Result<(), ImportError> {
    if food.description.trim().is_empty() {
        return Err(ImportError {
            place: "description".to_owned(),
            problem: "the food has no name yet".to_owned(),
            remedy: "describe it as recipes will name it".to_owned(),
        });
    }
    entry(food, label).map(drop)
}

#[cfg(test)]
mod tests {
    use super::*;
    use engine::foods::NutrientId;
    use engine::label::LabelTexts;
    use engine::own_foods::{Declared, OwnSource};
    use engine::units::Grams;
    use rust_decimal::Decimal;

    fn patterns() -> MealPatterns {
        MealPatterns::from_csv(OwnTable::MealPatterns.model()).unwrap()
    }

    fn label_food(number: u32, description: &str, grams: u32, sodium: &str) -> OwnFood {
        OwnFood {
            number,
            description: description.into(),
            ingredients: String::new(),
            measures: Vec::new(),
            source: OwnSource::Label {
                serving: Grams::new(Decimal::from(grams)),
                declared: vec![Declared {
                    nutrient: NutrientId::SODIUM,
                    printed: sodium.into(),
                }],
                reference: String::new(),
            },
        }
    }

    #[test]
    fn what_cannot_be_used_leaves_the_rest_in_use() {
        let mut book = Book::empty("Office");
        book.own_foods = vec![
            label_food(1, "Bread", 28, "140"),
            label_food(2, "Roll", 0, "140"),
            label_food(3, "Bun", 28, "143"),
            label_food(4, " ", 28, "140"),
        ];
        let header = OwnTable::MealPatterns.header();
        book.own_rules.meal_patterns = Some(format!("{header}\nlunch,K-5\n"));
        book.own_rules.week_rules = Some(OwnTable::WeekRules.header().to_owned());
        book.switches.set("whole milk act", false);
        let label = LabelTables::new(&LabelTexts::committed()).unwrap();
        let (part, problems) = usable(&book, &label, &patterns());
        assert_eq!(part.own_foods, book.own_foods[..1]);
        assert_eq!(part.own_rules.week_rules, book.own_rules.week_rules);
        assert_eq!(part.own_rules.meal_patterns, None);
        assert_eq!(part.switches, book.switches);
        for number in [2, 3, 4] {
            assert!(problems.of_food(number).is_some(), "{number}");
        }
        assert_eq!(problems.of_table(OwnTable::MealPatterns).unwrap().line, 2);
    }

    #[test]
    fn a_table_begins_with_its_header() {
        for table in OwnTable::ALL {
            let check = |text: &str| table.check(text, &patterns());
            assert_eq!(check(table.model()), Ok(()), "{table:?}");
            let rows: Vec<&str> = table.model().lines().skip(1).collect();
            let error = check(&rows.join("\n")).unwrap_err();
            assert_eq!(error.line, 1, "{table:?}");
            assert!(error.problem.contains("header"), "{error}");
        }
    }
}
