//! The Nutrition Facts panel by 21 CFR 101.9.
//!
//! | step | module | turns | into |
//! |---|---|---|---|
//! | rules | [`LabelTables`] | tables in CSV | rows with their rounding and Daily Values |
//! | figures | `cell` | an exact sum | printed amount and percent Daily Value |
//! | choice | `significance` | all sums | which rows the panel may leave out |
//! | panel | [`nutrition_facts`] | an analysed recipe | a [`FactsPanel`] to show |
//!
//! Every printed figure comes from the exact sum of the serving; nothing is
//! rounded before. Where the regulation lets the percent Daily Value be taken
//! from the printed or from the exact amount, the exact one is taken, except
//! that a printed nought has a percent of nought. A sum of which a part is not
//! known is printed rounded down, as "at least"; a sum of which nothing is
//! known as "not known". Neither is ever printed as zero.
//!
//! Binary floating point is refused here by lint and by a test.
#![deny(clippy::float_arithmetic)]

mod bands;
mod cell;
mod daily_value;
mod facts;
mod layout;
mod nutrient_row;
mod options;
mod panel;
mod running_text;
mod significance;
mod statement;
mod tables;

pub use crate::exact::FigureStatus;
pub use bands::{Band, Bands, Figure, Printed};
pub use daily_value::{Audience, DailyValue, DailyValueKind};
pub use facts::nutrition_facts;
pub use layout::{LayoutFact, LayoutScope, LayoutStanding};
pub use nutrient_row::{
    InSimplified, LabelNutrient, Listed, MeasuredIn, Omission, PercentRule, RowGroup,
};
pub use options::{Content, Form, PanelOptions, PanelProblem};
pub use panel::{FactsPanel, PanelCell, PanelColumn, PanelRow};
pub use statement::Statement;
pub use tables::{LabelTables, LabelTexts};

const LABEL_ROUNDING: &str = "label_rounding";
const DAILY_VALUES: &str = "daily_values";
const LABEL_NUTRIENTS: &str = "label_nutrients";
const LABEL_STATEMENTS: &str = "label_statements";
const LABEL_LAYOUT: &str = "label_layout";
