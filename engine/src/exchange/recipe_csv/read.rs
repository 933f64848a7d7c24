//! Table → recipes.

use super::Column;
use crate::components::StatedCredit;
use crate::exchange::cells::restored;
use crate::exchange::{About, Incoming, Problem, Remark, Trouble};
use crate::recipe::{CookedAs, Correction, Recipe, RecipeId, RecipeLine, ServingSize};
use crate::units::{Grams, Millilitres, Servings};
use crate::yields::TreatmentId;
use rust_decimal::Decimal;
use serde::de::DeserializeOwned;
use std::collections::BTreeMap;
use std::str::FromStr;

/// Reads a table. Columns may stand in any order; those that it does not know
/// are passed over.
///
/// # Errors
/// At the first cell that cannot be used, with line and column.
pub fn read(text: &str) -> Result<Incoming, Problem> {
    let text = text.trim_start_matches('\u{feff}');
    let mut table = csv::ReaderBuilder::new().from_reader(text.as_bytes());
    let header = table.headers().map_err(|error| ragged(&error))?;
    let places: BTreeMap<Column, usize> = Column::ALL
        .iter()
        .filter_map(|column| {
            let is_it = |name: &str| name.trim().eq_ignore_ascii_case(column.name());
            Some((*column, header.iter().position(is_it)?))
        })
        .collect();
    for needed in [Column::Title, Column::Ingredient] {
        if !places.contains_key(&needed) {
            return Err(Problem::whole(Trouble::NoColumn(needed.name().to_owned())));
        }
    }
    let mut reading = Reading::default();
    for record in table.records() {
        let record = record.map_err(|error| ragged(&error))?;
        let row = Row {
            line: record.position().map_or(0, csv::Position::line),
            record: &record,
            places: &places,
        };
        reading.take(&row)?;
    }
    reading.finish()
}

fn ragged(error: &csv::Error) -> Problem {
    let line = error.position().map_or(0, csv::Position::line);
    Problem::in_line(line, "", Trouble::RaggedRow)
}

/// One row of the table.
struct Row<'a> {
    line: u64,
    record: &'a csv::StringRecord,
    places: &'a BTreeMap<Column, usize>,
}

impl Row<'_> {
    /// The text of a cell; empty where there is no such column.
    fn text(&self, column: Column) -> &str {
        let cell = self.places.get(&column).and_then(|at| self.record.get(*at));
        restored(cell.unwrap_or_default())
    }

    fn is_empty(&self, column: Column) -> bool {
        self.text(column).is_empty()
    }

    fn wrong(&self, column: Column, trouble: Trouble) -> Problem {
        Problem::in_line(self.line, column.name(), trouble)
    }

    fn number(&self, column: Column) -> Result<Option<Decimal>, Problem> {
        let text = self.text(column).trim();
        if text.is_empty() {
            return Ok(None);
        }
        let number = Decimal::from_str(text).map(Some);
        number.map_err(|_| self.wrong(column, Trouble::NoNumber(text.to_owned())))
    }

    /// A number that has to be there.
    fn needed(&self, column: Column) -> Result<Decimal, Problem> {
        let missing = || self.wrong(column, Trouble::Missing(column.name().to_owned()));
        self.number(column)?.ok_or_else(missing)
    }

    /// A word of a fixed list.
    fn word<T: DeserializeOwned>(&self, column: Column, text: &str) -> Result<T, Problem> {
        serde_json::from_value(text.trim().into()).map_err(|error| {
            let error = error.to_string();
            let known = error.split_once(", expected ").map(|(_, known)| known);
            let trouble = Trouble::UnknownWord {
                word: text.to_owned(),
                known: known
                    .unwrap_or("SR28:01001, OWN:7")
                    .trim_start_matches("one of ")
                    .replace('`', "\""),
            };
            self.wrong(column, trouble)
        })
    }

    fn optional_word<T: DeserializeOwned>(&self, column: Column) -> Result<Option<T>, Problem> {
        match self.text(column) {
            "" => Ok(None),
            text => self.word(column, text).map(Some),
        }
    }

    /// A recipe's name, or none.
    fn name(&self, column: Column) -> Option<RecipeId> {
        (!self.is_empty(column)).then(|| RecipeId(self.text(column).to_owned()))
    }
}

/// What has been read so far.
#[derive(Default)]
struct Reading {
    recipes: Vec<Recipe>,
    /// Number of the last line, as the table has it.
    line: Option<String>,
    remarks: Vec<Remark>,
}

impl Reading {
    fn take(&mut self, row: &Row<'_>) -> Result<(), Problem> {
        if row.record.iter().all(str::is_empty) {
            return Ok(());
        }
        if self.begins_recipe(row) {
            self.recipes.push(head(row)?);
            self.line = None;
            if row.is_empty(Column::Servings) && row.is_empty(Column::ServingBy) {
                self.remarks.push(Remark {
                    title: row.text(Column::Title).to_owned(),
                    about: About::NoServings,
                });
            }
        }
        let Some(recipe) = self.recipes.last_mut() else {
            return Err(row.wrong(Column::Title, Trouble::RowWithoutRecipe));
        };
        let number = row.text(Column::Line).to_owned();
        let goes_on = !number.is_empty() && self.line.as_ref() == Some(&number);
        if !goes_on {
            let is_line = !number.is_empty() || !row.is_empty(Column::Ingredient);
            if !is_line {
                return Ok(());
            }
            recipe.lines.push(RecipeLine {
                text: row.text(Column::Ingredient).to_owned(),
                correction: correction(row)?,
            });
        }
        self.line = Some(number);
        if let Some(line) = recipe.lines.last_mut() {
            add_further(&mut line.correction, row)?;
        }
        Ok(())
    }

    /// A new name begins a recipe; without names, a title does.
    fn begins_recipe(&self, row: &Row<'_>) -> bool {
        match (row.name(Column::Recipe), self.recipes.last()) {
            (Some(name), Some(last)) => last.id != name,
            (Some(_), None) => true,
            (None, _) => !row.is_empty(Column::Title),
        }
    }

    fn finish(mut self) -> Result<Incoming, Problem> {
        if self.recipes.is_empty() {
            return Err(Problem::whole(Trouble::NoRecipes));
        }
        let empty = self.recipes.iter().filter(|recipe| recipe.lines.is_empty());
        self.remarks.extend(empty.map(|recipe| Remark {
            title: recipe.title.clone(),
            about: About::NoLines,
        }));
        Ok(Incoming {
            recipes: self.recipes,
            remarks: self.remarks,
        })
    }
}

fn head(row: &Row<'_>) -> Result<Recipe, Problem> {
    let servings = row.number(Column::Servings)?;
    Ok(Recipe {
        id: row.name(Column::Recipe).unwrap_or(RecipeId(String::new())),
        title: row.text(Column::Title).to_owned(),
        // None is not a guess of one: the card asks for it.
        servings: servings.map_or(Servings::ZERO, Servings::new),
        serving_words: row.text(Column::ServingWords).to_owned(),
        serving_size: serving_size(row)?,
        finished_weight: row.number(Column::FinishedWeight)?.map(Grams::new),
        lines: Vec::new(),
        beans: row.optional_word(Column::Beans)?.unwrap_or_default(),
        method: row.text(Column::Method).to_owned(),
    })
}

fn serving_size(row: &Row<'_>) -> Result<Option<ServingSize>, Problem> {
    let serving = || row.needed(Column::ServingSize);
    let batch = || row.needed(Column::BatchSize);
    Ok(match row.text(Column::ServingBy).trim() {
        "" => None,
        "weight" => Some(ServingSize::Weight {
            serving: Grams::new(serving()?),
        }),
        "volume" => Some(ServingSize::Volume {
            serving: Millilitres::new(serving()?),
            batch: Millilitres::new(batch()?),
        }),
        "count" => Some(ServingSize::Count {
            serving: serving()?,
            batch: batch()?,
        }),
        other => {
            let trouble = Trouble::UnknownWord {
                word: other.to_owned(),
                known: "\"weight\", \"volume\", \"count\"".to_owned(),
            };
            return Err(row.wrong(Column::ServingBy, trouble));
        }
    })
}

/// What stands in the first row of a line.
fn correction(row: &Row<'_>) -> Result<Correction, Problem> {
    let cooked = match row.optional_word(Column::CookedFood)? {
        None => None,
        Some(food) => Some(CookedAs {
            food,
            weight: row.number(Column::CookedWeight)?.map(Grams::new),
        }),
    };
    Ok(Correction {
        food: row.optional_word(Column::Food)?,
        recipe: row.name(Column::OtherRecipe),
        weight: row.number(Column::Weight)?.map(Grams::new),
        basis: row.optional_word(Column::Basis)?,
        cooked,
        treatments: Vec::new(),
        credits: Vec::new(),
    })
}

/// What each row of a line adds.
fn add_further(correction: &mut Correction, row: &Row<'_>) -> Result<(), Problem> {
    let treatment = row.text(Column::Treatment);
    if !treatment.is_empty() {
        correction
            .treatments
            .push(TreatmentId(treatment.to_owned()));
    }
    let Some(component) = row.optional_word(Column::CreditComponent)? else {
        return Ok(());
    };
    let marks = row.text(Column::CreditMarks).split(';').map(str::trim);
    let marks = marks.filter(|mark| !mark.is_empty());
    correction.credits.push(StatedCredit {
        component,
        amount: row.needed(Column::CreditAmount)?,
        marks: marks
            .map(|mark| row.word(Column::CreditMarks, mark))
            .collect::<Result<_, _>>()?,
        reason: row.text(Column::CreditReason).to_owned(),
        stated_for: Some(row.text(Column::CreditStatedFor).to_owned())
            .filter(|line| !line.is_empty()),
    });
    Ok(())
}
