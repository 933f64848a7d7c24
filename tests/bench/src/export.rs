//! The tables of a book as Parquet files, which the columnar engines of the
//! trade read; `sql/weekly_averages.sql` computes the weekly averages from
//! them. Files of several districts are one state: each row names its own.

use anyhow::{Context, Result};
use engine::foods::FoodId;
use engine::recipe::{Keep, RecipeId};
use engine::reference::{RecipeStudy, Reference};
use engine::week::Week;
use parquet::basic::Compression;
use parquet::data_type::{
    ByteArray, ByteArrayType, FixedLenByteArray, FixedLenByteArrayType, Int32Type,
};
use parquet::file::properties::WriterProperties;
use parquet::file::writer::SerializedFileWriter;
use parquet::schema::parser::parse_message_type;
use rust_decimal::Decimal;
use std::borrow::Borrow;
use std::fs::{self, File};
use std::path::Path;
use std::sync::Arc;

/// Decimal places of amounts: nine more than are looked at for print, so that
/// a weight that no decimal holds does not move a digit.
const PLACES: u32 = 24;

/// A column with its values. A missing one is nothing.
#[derive(Debug)]
enum Column {
    Words(Vec<Option<String>>),
    Whole(Vec<Option<i32>>),
    Amount(Vec<Option<Decimal>>),
}

/// A table under construction.
#[derive(Debug)]
struct Table {
    name: &'static str,
    columns: Vec<(&'static str, Column)>,
}

/// One cell.
enum Cell {
    Words(String),
    Whole(usize),
    Amount(Decimal),
    Nothing,
}

impl Table {
    /// The kinds of columns are written as in "district: words, meals: amount".
    fn new(name: &'static str, columns: &[(&'static str, fn() -> Column)]) -> Self {
        let columns = columns.iter().map(|(name, column)| (*name, column()));
        Self {
            name,
            columns: columns.collect(),
        }
    }

    fn push(&mut self, row: impl IntoIterator<Item = Cell>) {
        for ((name, column), cell) in self.columns.iter_mut().zip(row) {
            match (column, cell) {
                (Column::Words(cells), Cell::Words(words)) => cells.push(Some(words)),
                (Column::Whole(cells), Cell::Whole(number)) => {
                    cells.push(i32::try_from(number).ok());
                }
                (Column::Amount(cells), Cell::Amount(amount)) => cells.push(Some(amount)),
                (Column::Words(cells), Cell::Nothing) => cells.push(None),
                (Column::Whole(cells), Cell::Nothing) => cells.push(None),
                (Column::Amount(cells), Cell::Nothing) => cells.push(None),
                _ => unreachable!("{name} holds another kind of values"),
            }
        }
    }

    fn schema(&self) -> String {
        let columns = self.columns.iter().map(|(name, column)| match column {
            Column::Words(_) => format!("optional binary {name} (UTF8);"),
            Column::Whole(_) => format!("optional int32 {name};"),
            Column::Amount(_) => {
                format!("optional fixed_len_byte_array(16) {name} (DECIMAL(38,{PLACES}));")
            }
        });
        let columns: Vec<String> = columns.collect();
        format!("message {} {{ {} }}", self.name, columns.join(" "))
    }

    fn write(&self, folder: &Path) -> Result<()> {
        let path = folder.join(format!("{}.parquet", self.name));
        let file = File::create(&path).with_context(|| path.display().to_string())?;
        let schema = Arc::new(parse_message_type(&self.schema())?);
        let properties = WriterProperties::builder()
            .set_compression(Compression::UNCOMPRESSED)
            .build();
        let mut writer = SerializedFileWriter::new(file, schema, Arc::new(properties))?;
        let mut group = writer.next_row_group()?;
        for (_, column) in &self.columns {
            let mut writer = group
                .next_column()?
                .context("a column for each of the schema")?;
            match column {
                Column::Words(cells) => {
                    let (levels, values) = levels(cells, |words| ByteArray::from(words.as_str()));
                    let typed = writer.typed::<ByteArrayType>();
                    typed.write_batch(&values, Some(&levels), None)?;
                }
                Column::Whole(cells) => {
                    let (levels, values) = levels(cells, |number| *number);
                    let typed = writer.typed::<Int32Type>();
                    typed.write_batch(&values, Some(&levels), None)?;
                }
                Column::Amount(cells) => {
                    let bytes = |amount: &Decimal| {
                        let bytes = scaled(*amount).to_be_bytes().to_vec();
                        FixedLenByteArray::from(ByteArray::from(bytes))
                    };
                    let (levels, values) = levels(cells, bytes);
                    let typed = writer.typed::<FixedLenByteArrayType>();
                    typed.write_batch(&values, Some(&levels), None)?;
                }
            }
            writer.close()?;
        }
        group.close()?;
        writer.close()?;
        Ok(())
    }
}

fn levels<T, V>(cells: &[Option<T>], value: impl Fn(&T) -> V) -> (Vec<i16>, Vec<V>) {
    let levels = cells.iter().map(|cell| i16::from(cell.is_some())).collect();
    (levels, cells.iter().flatten().map(value).collect())
}

/// An amount in units of its last decimal place.
fn scaled(amount: Decimal) -> i128 {
    let (mantissa, scale) = (amount.mantissa(), amount.scale());
    if scale <= PLACES {
        return mantissa * 10_i128.pow(PLACES - scale);
    }
    let divisor = 10_i128.pow(scale - PLACES);
    (mantissa + mantissa.signum() * divisor / 2) / divisor
}

fn words() -> Column {
    Column::Words(Vec::new())
}

fn whole() -> Column {
    Column::Whole(Vec::new())
}

fn amount() -> Column {
    Column::Amount(Vec::new())
}

/// The tables of one or several books.
#[derive(Debug)]
pub struct Tables {
    nutrients: Table,
    values: Table,
    recipes: Table,
    parts: Table,
    kept: Table,
    meals: Table,
    choices: Table,
}

/// The name of a food in the tables.
fn food_name(food: FoodId) -> String {
    food.to_string()
}

impl Tables {
    /// The tables of the dataset; books are added.
    pub fn new(reference: &Reference) -> Self {
        let mut tables = Self {
            nutrients: Table::new(
                "nutrient",
                &[
                    ("nutrient", whole),
                    ("name", words),
                    ("unit", words),
                    ("digits", whole),
                ],
            ),
            values: Table::new(
                "value",
                &[("food", words), ("nutrient", whole), ("per_100_g", amount)],
            ),
            recipes: Table::new(
                "recipe",
                &[("district", words), ("recipe", words), ("servings", amount)],
            ),
            parts: Table::new(
                "part",
                &[
                    ("district", words),
                    ("recipe", words),
                    ("part", whole),
                    ("food", words),
                    ("grams", amount),
                ],
            ),
            kept: Table::new(
                "kept",
                &[
                    ("district", words),
                    ("recipe", words),
                    ("part", whole),
                    ("nutrient", whole),
                    ("share", amount),
                ],
            ),
            meals: Table::new(
                "meal",
                &[
                    ("district", words),
                    ("week", words),
                    ("day", words),
                    ("meal", words),
                    ("grade_group", words),
                    ("planned_meals", amount),
                ],
            ),
            choices: Table::new(
                "choice",
                &[
                    ("district", words),
                    ("week", words),
                    ("day", words),
                    ("meal", words),
                    ("grade_group", words),
                    ("recipe", words),
                    ("planned", amount),
                ],
            ),
        };
        let foods = &reference.foods;
        for nutrient in foods.nutrients() {
            tables.nutrients.push([
                Cell::Whole(nutrient.id.0.into()),
                Cell::Words(nutrient.name.clone()),
                Cell::Words(nutrient.unit.clone()),
                Cell::Whole(nutrient.decimals.0 as usize),
            ]);
        }
        for food in foods.foods().iter().chain(foods.own_foods()) {
            for nutrient in foods.nutrients() {
                if let Some(value) = foods.per_100_g(food.id, nutrient.id) {
                    tables.values.push([
                        Cell::Words(food_name(food.id)),
                        Cell::Whole(nutrient.id.0.into()),
                        Cell::Amount(value),
                    ]);
                }
            }
        }
        tables
    }

    /// Adds a district's recipes and weeks. Recipes that cannot be analysed
    /// are left out, as the averages leave them out.
    pub fn add<S: Borrow<RecipeStudy>>(
        &mut self,
        reference: &Reference,
        district: &str,
        studies: &[(RecipeId, S)],
        weeks: &[Week],
    ) {
        let words = |text: &str| Cell::Words(text.to_owned());
        for (id, study) in studies {
            let study = study.borrow();
            let Ok(analysis) = &study.analysis else {
                continue;
            };
            self.recipes.push([
                words(district),
                words(&id.0),
                Cell::Amount(analysis.servings.servings()),
            ]);
            for (number, part) in study.parts.iter().enumerate() {
                let place = || [words(district), words(&id.0), Cell::Whole(number)];
                let food = part
                    .food
                    .map_or(Cell::Nothing, |food| Cell::Words(food_name(food)));
                let grams = part
                    .weight
                    .map_or(Cell::Nothing, |weight| Cell::Amount(weight.grams()));
                self.parts.push(place().into_iter().chain([food, grams]));
                for nutrient in reference.foods.nutrients() {
                    let share = Keep::of(&part.keeps, nutrient.id);
                    if share != Decimal::ONE {
                        let kept = [Cell::Whole(nutrient.id.0.into()), Cell::Amount(share)];
                        self.kept.push(place().into_iter().chain(kept));
                    }
                }
            }
        }
        for week in weeks {
            for day in &week.days {
                for meal in &day.meals {
                    let place = || {
                        [
                            words(district),
                            words(&week.id.0),
                            Cell::Words(day.date.to_string()),
                            Cell::Words(meal.kind.to_string()),
                            words(&meal.group.0),
                        ]
                    };
                    let planned = Cell::Amount(meal.planned_meals.servings());
                    self.meals.push(place().into_iter().chain([planned]));
                    for choice in meal.choices() {
                        let planned = Cell::Amount(choice.planned.servings());
                        let choice = [words(&choice.recipe.0), planned];
                        self.choices.push(place().into_iter().chain(choice));
                    }
                }
            }
        }
    }

    /// Writes one file per table.
    ///
    /// # Errors
    /// When the folder or a file cannot be written.
    pub fn write(&self, folder: &Path) -> Result<()> {
        fs::create_dir_all(folder)?;
        let tables = [
            &self.nutrients,
            &self.values,
            &self.recipes,
            &self.parts,
            &self.kept,
            &self.meals,
            &self.choices,
        ];
        tables.into_iter().try_for_each(|table| table.write(folder))
    }
}
