//! Which rows a panel may leave out for their small amounts.

use super::{
    Audience, Content, InSimplified, LabelNutrient, LabelTables, Listed, MeasuredIn, PanelProblem,
};
use crate::exact::{FigureStatus, PartialSum, rounding::guarded};
use crate::foods::NutrientId;
use rust_decimal::Decimal;

/// The sums of one panel: for each nutrient its largest column.
pub(super) struct Sums<'a> {
    pub(super) tables: &'a LabelTables,
    pub(super) audience: Audience,
    pub(super) sum: &'a dyn Fn(NutrientId) -> PartialSum,
}

impl Sums<'_> {
    /// Whether the amount is known to be insignificant. An amount of which a
    /// part is unknown never is.
    pub(super) fn is_insignificant(&self, row: &LabelNutrient) -> bool {
        self.is_below(row.nutrient, row.measured_in, row.insignificant_below)
    }

    /// Nothing if the simplified panel is allowed, otherwise why it is not.
    pub(super) fn simplified_refused(&self) -> Option<PanelProblem> {
        let insignificant = self
            .tables
            .nutrients()
            .filter(|row| row.listed == Listed::Always && self.is_insignificant(row))
            .count();
        let needed = self.tables.layout.simplified_from;
        (insignificant < needed).then_some(PanelProblem::SimplifiedNotAllowed {
            insignificant,
            needed,
        })
    }

    /// Whether a panel of that content leaves the row out.
    pub(super) fn is_left_out(&self, row: &LabelNutrient, content: Content) -> bool {
        match content {
            Content::Full => false,
            Content::WithoutInsignificant => row
                .omission
                .is_some_and(|rule| self.is_below(rule.by, row.measured_in, rule.below)),
            Content::Simplified => {
                row.simplified == InSimplified::IfSignificant && self.is_insignificant(row)
            }
        }
    }

    fn is_below(&self, nutrient: NutrientId, measured_in: MeasuredIn, limit: Decimal) -> bool {
        let sum = (self.sum)(nutrient);
        let measured = match measured_in {
            MeasuredIn::Amount => Some(sum.known),
            MeasuredIn::Percent => self
                .tables
                .nutrient(nutrient)
                .and_then(|row| row.daily_value(self.audience))
                .map(|daily| daily.percent(sum.known)),
        };
        sum.status() == FigureStatus::Known && measured.is_some_and(|value| guarded(value) < limit)
    }
}
