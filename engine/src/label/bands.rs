//! Rounding as the regulation writes it: bands of a figure, each with a step
//! or a fixed text. The arithmetic itself is [`crate::exact::rounding`]'s.

use super::LABEL_ROUNDING;
use crate::exact::rounding::{guarded, round_down_to, round_half_up_to};
use crate::foods::NutrientId;
use crate::rules::Citation;
use crate::tables::{self, Row, TableError};
use rust_decimal::Decimal;
use serde::{Deserialize, Deserializer, Serialize};
use std::collections::BTreeMap;
use std::fmt;

/// What is rounded.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Figure {
    /// The amount of a nutrient in its label unit.
    Amount(NutrientId),
    /// Percent of a Reference Daily Intake: vitamins and minerals.
    PercentOfRdi,
    /// Percent of a Daily Reference Value: all other nutrients.
    PercentOfDrv,
    /// Number of servings in a container.
    ServingsPerContainer,
    /// Weight of a serving, grams.
    ServingWeight,
}

impl fmt::Display for Figure {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Amount(nutrient) => write!(out, "{}", nutrient.0),
            Self::PercentOfRdi => out.write_str("percent of RDI"),
            Self::PercentOfDrv => out.write_str("percent of DRV"),
            Self::ServingsPerContainer => out.write_str("servings per container"),
            Self::ServingWeight => out.write_str("serving weight"),
        }
    }
}

impl<'de> Deserialize<'de> for Figure {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = String::deserialize(deserializer)?;
        let words = [
            Self::PercentOfRdi,
            Self::PercentOfDrv,
            Self::ServingsPerContainer,
            Self::ServingWeight,
        ];
        match text.parse() {
            Ok(number) => Ok(Self::Amount(NutrientId(number))),
            Err(_) => words
                .into_iter()
                .find(|figure| figure.to_string() == text)
                .ok_or_else(|| {
                    serde::de::Error::custom(format!(
                        "\"{text}\" is not a figure: write a nutrient's number, or one of {}",
                        words.map(|word| word.to_string()).join(", ")
                    ))
                }),
        }
    }
}

/// A figure as it is printed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(untagged)]
pub enum Printed {
    /// A number, without trailing zeros.
    Number(Decimal),
    /// Words that stand for the number and its unit: "less than 1 g".
    Words(String),
}

impl Printed {
    /// True for a printed nought.
    pub fn is_zero(&self) -> bool {
        matches!(self, Self::Number(number) if number.is_zero())
    }

    /// With its unit, which words have already.
    pub fn with_unit(&self, unit: &str) -> String {
        match self {
            Self::Number(number) => with_unit(*number, unit),
            Self::Words(words) => words.clone(),
        }
    }
}

/// A number and its unit: "8 g", "10%", "230".
pub(super) fn with_unit(number: Decimal, unit: &str) -> String {
    let number = number.normalize();
    match unit {
        "" => number.to_string(),
        "%" => format!("{number}%"),
        unit => format!("{number} {unit}"),
    }
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Edge {
    value: Decimal,
    included: bool,
}

#[derive(Debug, Clone, PartialEq, Eq)]
enum Rule {
    Step(Decimal),
    Fixed(Printed),
}

/// One row of the rounding table.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Band {
    lower: Edge,
    upper: Option<Edge>,
    rule: Rule,
    /// Where the rule stands.
    pub citation: Citation,
    /// What is rounded, in words.
    pub words: String,
}

impl Band {
    fn reached_by(&self, value: Decimal) -> bool {
        value > self.lower.value || (self.lower.included && value == self.lower.value)
    }

    /// The part of the band that prints as a figure.
    fn amounts_of(&self, printed: &str) -> Option<(Decimal, Decimal)> {
        let end = self.upper.map(|edge| edge.value);
        match &self.rule {
            Rule::Fixed(Printed::Words(words)) => {
                let same = words == printed || words.starts_with(&format!("{printed} "));
                (same && !printed.is_empty()).then_some((self.lower.value, end?))
            }
            Rule::Fixed(Printed::Number(number)) => {
                (printed.parse() == Ok(*number)).then_some((self.lower.value, end?))
            }
            Rule::Step(step) => {
                let number: Decimal = printed.parse().ok()?;
                let half = step / Decimal::TWO;
                let low = (number - half).max(self.lower.value);
                let high = end.map_or(number + half, |end| end.min(number + half));
                let on_scale = round_half_up_to(number, *step) == number;
                (on_scale && low < high).then_some((low, high))
            }
        }
    }

    /// Whether this band begins where the other ends.
    fn follows(&self, other: &Self) -> bool {
        other
            .upper
            .is_some_and(|end| end.value == self.lower.value && end.included != self.lower.included)
    }
}

/// The bands of one figure, from zero upwards without gap or overlap.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Bands(Vec<Band>);

impl Bands {
    /// The figure as the regulation prints it. `value` is the exact figure.
    pub fn print(&self, value: Decimal) -> Printed {
        let value = guarded(value);
        match &self.band(value).rule {
            Rule::Step(step) => Printed::Number(round_half_up_to(value, *step)),
            Rule::Fixed(printed) => printed.clone(),
        }
    }

    /// The largest figure on the label's scale that `value` surely reaches,
    /// for a sum of which a part is unknown; nothing if that is only zero.
    pub fn surely_reached(&self, value: Decimal) -> Option<Decimal> {
        let value = guarded(value);
        let band = self.band(value);
        let reached = match band.rule {
            Rule::Step(step) => round_down_to(value, step),
            Rule::Fixed(_) => band.lower.value,
        };
        (reached > Decimal::ZERO).then_some(reached)
    }

    /// The amounts that print as this figure, from the smallest to where they
    /// end; nothing where no amount does. Words may come without their unit.
    pub fn interval(&self, printed: &str) -> Option<(Decimal, Decimal)> {
        let printed = printed.trim();
        let ranges = self.0.iter().filter_map(|band| band.amounts_of(printed));
        ranges.reduce(|(low, high), (other_low, other_high)| {
            (low.min(other_low), high.max(other_high))
        })
    }

    /// The rows behind these bands.
    pub fn rows(&self) -> &[Band] {
        &self.0
    }

    fn band(&self, value: Decimal) -> &Band {
        self.0
            .iter()
            .rev()
            .find(|band| band.reached_by(value))
            .unwrap_or(&self.0[0])
    }
}

#[derive(Deserialize)]
struct BandRow {
    figure: Figure,
    #[serde(with = "rust_decimal::serde::str_option")]
    at_least: Option<Decimal>,
    #[serde(with = "rust_decimal::serde::str_option")]
    above: Option<Decimal>,
    #[serde(with = "rust_decimal::serde::str_option")]
    below: Option<Decimal>,
    #[serde(with = "rust_decimal::serde::str_option")]
    at_most: Option<Decimal>,
    prints: String,
    #[serde(with = "rust_decimal::serde::str_option")]
    step: Option<Decimal>,
    words: String,
    #[serde(flatten)]
    citation: Citation,
}

impl BandRow {
    fn band(self) -> Result<(Figure, Band), String> {
        let edge = |included: Option<Decimal>, excluded: Option<Decimal>| match (included, excluded)
        {
            (Some(_), Some(_)) => Err("an edge is given twice: keep one of its two columns"),
            (included, None) => Ok(included.map(|value| Edge {
                value,
                included: true,
            })),
            (None, excluded) => Ok(excluded.map(|value| Edge {
                value,
                included: false,
            })),
        };
        let lower =
            edge(self.at_least, self.above)?.ok_or("no lower edge: fill at_least or above")?;
        let rule = match (self.step, self.prints.as_str()) {
            (Some(step), "") if step > Decimal::ZERO => Rule::Step(step),
            (None, text) if !text.is_empty() => Rule::Fixed(match Decimal::from_str_exact(text) {
                Ok(number) => Printed::Number(number),
                Err(_) => Printed::Words(text.to_owned()),
            }),
            _ => return Err("fill either prints or step, the step above zero".into()),
        };
        let band = Band {
            lower,
            upper: edge(self.at_most, self.below)?,
            rule,
            citation: self.citation,
            words: self.words,
        };
        Ok((self.figure, band))
    }
}

/// The rounding table, by figure.
pub(super) struct Rounding(BTreeMap<Figure, Vec<Band>>);

impl Rounding {
    /// Reads the table.
    ///
    /// # Errors
    /// When a row is incomplete, or the bands of a figure leave a gap, overlap
    /// or do not run from zero to an open end.
    pub(super) fn from_csv(text: &str) -> Result<Self, TableError> {
        let mut figures: BTreeMap<Figure, Vec<Band>> = BTreeMap::new();
        for Row { line, row } in tables::read::<BandRow>(LABEL_ROUNDING, text)? {
            let problem = |problem: String| TableError {
                table: LABEL_ROUNDING.to_owned(),
                line,
                problem,
            };
            let (figure, band) = row.band().map_err(problem)?;
            let bands = figures.entry(figure).or_default();
            let joins = match bands.last() {
                None => band.lower.included && band.lower.value.is_zero(),
                Some(last) => band.follows(last),
            };
            if !joins {
                return Err(problem(format!(
                    "{figure}: begin at zero, and each further row where the one before it ends"
                )));
            }
            bands.push(band);
        }
        match figures
            .iter()
            .find(|(_, bands)| bands.last().is_some_and(|band| band.upper.is_some()))
        {
            Some((figure, _)) => Err(whole_table(format!(
                "{figure} ends at a figure: leave the last row's upper edge open"
            ))),
            None => Ok(Self(figures)),
        }
    }

    /// Takes the bands of one figure out.
    pub(super) fn take(&mut self, figure: Figure) -> Result<Bands, TableError> {
        self.0
            .remove(&figure)
            .map(Bands)
            .ok_or_else(|| whole_table(format!("has no rows for {figure}: add them")))
    }

    /// Refuses figures that nothing prints.
    pub(super) fn check_all_taken(self) -> Result<(), TableError> {
        match self.0.keys().next() {
            Some(figure) => Err(whole_table(format!(
                "rounds {figure}, which no row of the panel prints: remove it or add the row"
            ))),
            None => Ok(()),
        }
    }
}

fn whole_table(problem: String) -> TableError {
    TableError {
        table: LABEL_ROUNDING.to_owned(),
        line: 0,
        problem,
    }
}
