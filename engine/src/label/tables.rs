//! The label's tables, read and joined once.

use super::bands::{Bands, Figure, Rounding};
use super::layout::Layout;
use super::statement::Statements;
use super::{
    DailyValue, DailyValueKind, LABEL_NUTRIENTS, LabelNutrient, RowGroup, daily_value, nutrient_row,
};
use crate::foods::NutrientId;
use crate::tables::TableError;

/// The texts of the label's tables.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct LabelTexts<'a> {
    /// Rounding.
    pub rounding: &'a str,
    /// Daily Values.
    pub daily_values: &'a str,
    /// Rows of the panel.
    pub nutrients: &'a str,
    /// Wording.
    pub statements: &'a str,
    /// Type sizes and bars.
    pub layout: &'a str,
}

impl LabelTexts<'static> {
    /// The texts that come with this version.
    pub const fn committed() -> Self {
        Self {
            rounding: nutrient_data::rules::LABEL_ROUNDING,
            daily_values: nutrient_data::rules::DAILY_VALUES,
            nutrients: nutrient_data::rules::LABEL_NUTRIENTS,
            statements: nutrient_data::rules::LABEL_STATEMENTS,
            layout: nutrient_data::rules::LABEL_LAYOUT,
        }
    }
}

/// Everything that a panel is made by.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LabelTables {
    calories: LabelNutrient,
    others: Vec<LabelNutrient>,
    daily_values: Vec<DailyValue>,
    percent_of_rdi: Bands,
    percent_of_drv: Bands,
    servings_per_container: Bands,
    serving_weight: Bands,
    pub(super) statements: Statements,
    pub(super) layout: Layout,
}

impl LabelTables {
    /// Reads the tables.
    ///
    /// # Errors
    /// At the first table that is incomplete or does not agree with another.
    pub fn new(texts: &LabelTexts<'_>) -> Result<Self, TableError> {
        let mut rounding = Rounding::from_csv(texts.rounding)?;
        let daily_values = daily_value::read(texts.daily_values)?;
        let nutrients = nutrient_row::read(texts.nutrients, &mut rounding, &daily_values)?;
        let (calories, others) = split(nutrients)?;
        let tables = Self {
            calories,
            others,
            daily_values,
            percent_of_rdi: rounding.take(Figure::PercentOfRdi)?,
            percent_of_drv: rounding.take(Figure::PercentOfDrv)?,
            servings_per_container: rounding.take(Figure::ServingsPerContainer)?,
            serving_weight: rounding.take(Figure::ServingWeight)?,
            statements: Statements::from_csv(texts.statements)?,
            layout: Layout::from_csv(texts.layout)?,
        };
        rounding.check_all_taken()?;
        Ok(tables)
    }

    /// Calories, which stand above the other rows.
    pub fn calories(&self) -> &LabelNutrient {
        &self.calories
    }

    /// The other nutrients that a panel can list, in the regulation's order.
    pub fn others(&self) -> &[LabelNutrient] {
        &self.others
    }

    /// Calories and all others.
    pub fn nutrients(&self) -> impl Iterator<Item = &LabelNutrient> {
        std::iter::once(&self.calories).chain(&self.others)
    }

    /// One of them.
    pub fn nutrient(&self, id: NutrientId) -> Option<&LabelNutrient> {
        self.nutrients().find(|row| row.nutrient == id)
    }

    /// All Daily Values, also of nutrients that the dataset lacks.
    pub fn daily_values(&self) -> &[DailyValue] {
        &self.daily_values
    }

    /// Rounding of percents of one kind of Daily Value.
    pub fn percents(&self, kind: DailyValueKind) -> &Bands {
        match kind {
            DailyValueKind::ReferenceDailyIntake => &self.percent_of_rdi,
            DailyValueKind::DailyReferenceValue => &self.percent_of_drv,
        }
    }

    /// Rounding of the number of servings in a container.
    pub fn servings_per_container(&self) -> &Bands {
        &self.servings_per_container
    }

    /// Rounding of the weight of a serving, grams.
    pub fn serving_weight(&self) -> &Bands {
        &self.serving_weight
    }
}

fn split(nutrients: Vec<LabelNutrient>) -> Result<(LabelNutrient, Vec<LabelNutrient>), TableError> {
    let (energy, others): (Vec<_>, Vec<_>) = nutrients
        .into_iter()
        .partition(|row| row.group == RowGroup::Energy);
    match <[LabelNutrient; 1]>::try_from(energy) {
        Ok([calories]) => Ok((calories, others)),
        Err(energy) => Err(TableError {
            table: LABEL_NUTRIENTS.to_owned(),
            line: 0,
            problem: format!("has {} rows of energy: keep one, calories", energy.len()),
        }),
    }
}
