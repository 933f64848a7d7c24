//! Prints one figure of the panel.

use super::bands::with_unit;
use super::{Audience, LabelNutrient, LabelTables, PanelCell, PercentRule};
use crate::exact::{FigureStatus, PartialSum};
use rust_decimal::Decimal;

pub(super) const NOT_KNOWN: &str = "not known";

/// The figure of `sum`, in the nutrient's label unit.
pub(super) fn cell(
    tables: &LabelTables,
    row: &LabelNutrient,
    audience: Audience,
    sum: &PartialSum,
) -> PanelCell {
    let status = sum.status();
    let exact = (status != FigureStatus::Missing).then_some(sum.known);
    let amount = match (status, exact) {
        (FigureStatus::Known, Some(value)) => Some(row.amounts.print(value).with_unit(&row.unit)),
        (_, Some(value)) => row
            .amounts
            .surely_reached(value)
            .map(|reached| at_least(reached, &row.unit)),
        (_, None) => None,
    };
    let fill = |pattern: &str| match &amount {
        Some(amount) => pattern.replace("{}", amount),
        None => format!("{}: {NOT_KNOWN}", row.name),
    };
    PanelCell {
        status,
        exact,
        line: fill(&row.line),
        short_line: fill(&row.short_line),
        percent: percent(tables, row, audience, status, exact),
        amount: amount.unwrap_or_else(|| NOT_KNOWN.to_owned()),
    }
}

fn at_least(reached: Decimal, unit: &str) -> String {
    format!("at least {}", with_unit(reached, unit))
}

/// Nothing where the regulation has no percent for the row.
fn percent(
    tables: &LabelTables,
    row: &LabelNutrient,
    audience: Audience,
    status: FigureStatus,
    exact: Option<Decimal>,
) -> Option<String> {
    let shown = match (row.percent, audience) {
        (PercentRule::None, _) | (PercentRule::Corrected, Audience::FourAndOver) => return None,
        // The data cannot correct protein for its quality.
        (PercentRule::Corrected, Audience::OneToThree) => false,
        (PercentRule::Shown, _) => true,
    };
    let known = exact
        .filter(|_| shown)
        .zip(row.daily_value(audience))
        .and_then(|(value, daily)| {
            let bands = tables.percents(daily.kind);
            let percent = daily.percent(value);
            match status {
                FigureStatus::Known if row.amounts.print(value).is_zero() => {
                    Some(with_unit(Decimal::ZERO, "%"))
                }
                FigureStatus::Known => Some(bands.print(percent).with_unit("%")),
                _ => bands
                    .surely_reached(percent)
                    .map(|reached| at_least(reached, "%")),
            }
        });
    Some(known.unwrap_or_else(|| NOT_KNOWN.to_owned()))
}
