//! Requirements in the form in which they are shown: those on the average meal
//! and those on what the meals offer, the latter by day or for the week.

use super::words;
use crate::format;
use crate::language::of_table;
use crate::named;
use crate::tables::StudiedWeek;
use engine::exact::{Bounds, Digits};
use engine::findings::{Carrier, Finding, PatternCarrier, PatternFinding, Verdict};
use engine::foods::NutrientId;
use engine::recipe::RecipeId;
use engine::reference::{ServiceStudy, SureFinding};
use engine::rules::{Basis, Bound};
use engine::week::Date;
use rust_decimal::Decimal;

/// One requirement of one service.
#[derive(Debug, Clone, PartialEq)]
pub struct Requirement {
    /// Of what it is asked.
    pub of: Asked,
    /// What is asked.
    pub what: String,
    /// The figure that decides, with its unit.
    pub figure: String,
    /// The limit, with its side and unit.
    pub limit: String,
    /// Kept, broken or unknown.
    pub verdict: Verdict,
    /// How much is known and how sure it is; of what is offered, the average
    /// or the days.
    pub known: String,
    /// Where it stands.
    pub paragraph: String,
    /// How sure the limit itself is.
    pub status: String,
    /// The days, where each day has to keep it.
    pub days: Vec<DayOf>,
    /// What carries the figure.
    pub carried: Carried,
}

/// Of what something is asked.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Asked {
    /// Of the week's average meal.
    AverageMeal,
    /// Of what the week offers.
    Week,
    /// Of what each day offers.
    EachDay,
}

/// One day of a requirement on days.
#[derive(Debug, Clone, PartialEq)]
pub struct DayOf {
    /// The day.
    pub date: Date,
    /// Its figure, with its unit.
    pub figure: String,
    /// Kept, broken or unknown on that day.
    pub verdict: Verdict,
}

/// Where the carriers of a figure are found.
#[derive(Debug, Clone, PartialEq)]
pub enum Carried {
    /// By this nutrient, in the average meal.
    ByNutrient(NutrientId),
    /// By these choices.
    By(Vec<CarriedBy>),
}

/// A choice and its part in a figure, as it is shown.
#[derive(Debug, Clone, PartialEq)]
pub struct CarriedBy {
    /// On which day.
    pub date: Date,
    /// Which recipe.
    pub recipe: RecipeId,
    /// Its part, with its unit.
    pub amount: String,
    /// Its share in whole percent; nothing where shares say nothing.
    pub share: Option<String>,
}

/// All requirements of a service: on the average meal first.
pub fn requirements(service: &ServiceStudy) -> Vec<Requirement> {
    let on_average = service.findings.iter().map(on_average);
    let mut all: Vec<Requirement> = on_average.collect();
    let (daily, weekly): (Vec<_>, Vec<_>) = service
        .pattern
        .iter()
        .partition(|finding| finding.date.is_some());
    all.extend(weekly.into_iter().map(|finding| on_offer(&[finding])));
    all.extend(by_rule(&daily).iter().map(|days| on_offer(days)));
    all
}

/// All requirements of a week; nothing where it cannot be studied.
pub fn of_week(study: &StudiedWeek) -> Vec<Requirement> {
    let services = study.as_ref().map_or(&[][..], |study| &study.services);
    services.iter().flat_map(requirements).collect()
}

/// How many requirements are met, missed and unknown.
pub fn tally_counts(requirements: &[Requirement]) -> (usize, usize, usize) {
    let count = |verdict| {
        let of_verdict = requirements.iter().filter(|one| one.verdict == verdict);
        of_verdict.count()
    };
    (
        count(Verdict::Met),
        count(Verdict::Missed),
        count(Verdict::Unknown),
    )
}

fn on_average(sure: &SureFinding) -> Requirement {
    let SureFinding {
        finding,
        uncertainty,
        likelihood,
    } = sure;
    let rule = &finding.rule;
    let share = format::percent_known(finding.coverage);
    let mut known = vec![words::known_for(&share)];
    if let Some(uncertainty) = uncertainty.as_ref().filter(|_| finding.complete) {
        let margin = format::number(uncertainty.expanded(), figure_digits(finding));
        let margin = named::counted(&margin, &rule.unit);
        known.push(words::give_or_take(&margin, uncertainty.at_least));
    }
    if let Some(likelihood) = likelihood {
        known.push(words::likelihood(*likelihood).to_string());
    }
    Requirement {
        of: Asked::AverageMeal,
        what: of_table(&rule.words),
        figure: average_figure(finding),
        limit: limit(rule.bound, rule.limit, &rule.unit),
        verdict: finding.verdict,
        known: known.join(", "),
        paragraph: rule.paragraph.clone(),
        status: rule.status.clone(),
        days: Vec::new(),
        carried: Carried::ByNutrient(rule.nutrient),
    }
}

/// Uncertainties are printed with the decimals that figures of their kind have
/// at least.
fn figure_digits(finding: &Finding) -> Digits {
    match finding.rule.basis {
        Basis::PerMeal => Digits(0),
        Basis::ShareOfEnergy => Digits(1),
    }
}

fn average_figure(finding: &Finding) -> String {
    let unit = &finding.rule.unit;
    let Some(figure) = finding.figure else {
        return words::UNKNOWN.to_string();
    };
    if !finding.complete && finding.coverage.is_zero() {
        return words::UNKNOWN.to_string();
    }
    let figure = named::counted(&format::number(figure, finding.digits), unit);
    match (finding.complete, finding.rule.basis) {
        (true, _) => figure,
        (false, Basis::PerMeal) => format!("≥ {figure}"),
        (false, Basis::ShareOfEnergy) => words::of_the_known(&figure),
    }
}

/// A limit with its side and unit.
pub fn limit(bound: Bound, limit: Decimal, unit: &str) -> String {
    words::limit(bound, &named::counted(&format::group(limit), unit))
}

/// Findings on days, gathered by what they ask, in the order of the table.
fn by_rule<'a>(daily: &[&'a PatternFinding]) -> Vec<Vec<&'a PatternFinding>> {
    let mut rules: Vec<Vec<&PatternFinding>> = Vec::new();
    for finding in daily {
        let same =
            |days: &&mut Vec<&PatternFinding>| days.iter().any(|other| other.rule == finding.rule);
        match rules.iter_mut().find(same) {
            Some(days) => days.push(finding),
            None => rules.push(vec![finding]),
        }
    }
    rules
}

/// A requirement on the week, or on each of some days. Of several days the
/// worst decides.
fn on_offer(findings: &[&PatternFinding]) -> Requirement {
    let worst = worst(findings);
    let rule = &worst.rule;
    let is_daily = worst.date.is_some();
    let days: Vec<DayOf> = findings
        .iter()
        .filter_map(|finding| {
            Some(DayOf {
                date: finding.date?,
                figure: offer_figure(finding, finding.figure),
                verdict: finding.verdict,
            })
        })
        .collect();
    let of_verdict = |verdict| -> Vec<Date> {
        let of_verdict = days.iter().filter(|day| day.verdict == verdict);
        of_verdict.map(|day| day.date).collect()
    };
    let figure = match (is_daily, worst.date) {
        (true, Some(date)) => words::on_day(&offer_figure(worst, worst.figure), date),
        _ => offer_figure(worst, worst.figure),
    };
    Requirement {
        of: if is_daily {
            Asked::EachDay
        } else {
            Asked::Week
        },
        what: of_table(&rule.words),
        figure,
        limit: limit(rule.bound, rule.limit, &rule.unit),
        verdict: worst.verdict,
        known: match (is_daily, worst.average) {
            (true, _) => words::on_days(
                days.len(),
                &of_verdict(Verdict::Missed),
                &of_verdict(Verdict::Unknown),
            ),
            (false, Some(average)) => words::on_average(&average_offer(worst, average)),
            (false, None) => String::new(),
        },
        paragraph: rule.paragraph.clone(),
        status: rule.status.clone(),
        days,
        carried: Carried::By(carried(findings)),
    }
}

/// The finding that decides: of the worst verdict, the one nearest to its limit
/// or farthest on the wrong side.
fn worst<'a>(findings: &[&'a PatternFinding]) -> &'a PatternFinding {
    let smallest = |a: &&&PatternFinding, b: &&&PatternFinding| {
        let by_figure = match a.rule.bound {
            Bound::AtLeast => a.figure.low.cmp(&b.figure.low),
            Bound::AtMost | Bound::Below => b.figure.low.cmp(&a.figure.low),
        };
        severity(a.verdict)
            .cmp(&severity(b.verdict))
            .then(by_figure)
    };
    let found = findings.iter().min_by(smallest);
    found.expect("a rule has at least one finding")
}

/// The worst verdict comes first.
fn severity(verdict: Verdict) -> u8 {
    match verdict {
        Verdict::Missed => 0,
        Verdict::Unknown => 1,
        Verdict::Met => 2,
    }
}

fn offer_figure(finding: &PatternFinding, figure: Bounds) -> String {
    with_unit(bounds(figure, finding.digits), &finding.rule.unit)
}

/// Averages are no amounts that anyone is served: two decimals will do.
fn average_offer(finding: &PatternFinding, average: Bounds) -> String {
    let digits = finding.digits.min(Digits(2));
    with_unit(bounds(average, digits), &finding.rule.unit)
}

/// A figure with its unit; nothing has no unit.
fn with_unit(figure: Option<String>, unit: &str) -> String {
    figure.map_or_else(
        || words::UNKNOWN.to_string(),
        |figure| named::counted(&figure, unit),
    )
}

/// What is known of a figure: "0.5", "0.5 to 0.75", "≥ 0.5", and nothing where
/// nothing is.
fn bounds(figure: Bounds, digits: Digits) -> Option<String> {
    let low = format::number(figure.low, digits);
    match figure.high {
        _ if figure.is_exact() => Some(low),
        Some(high) => Some(words::between(&low, &format::number(high, digits))),
        None if figure.low.is_zero() => None,
        None => Some(format!("≥ {low}")),
    }
}

fn carried(findings: &[&PatternFinding]) -> Vec<CarriedBy> {
    let mut carried: Vec<CarriedBy> = findings
        .iter()
        .flat_map(|finding| finding.carriers.iter().map(move |by| (*finding, by)))
        .map(
            |(finding, by): (&PatternFinding, &PatternCarrier)| CarriedBy {
                date: by.date,
                recipe: by.recipe.clone(),
                amount: offer_figure(finding, by.amount),
                share: None,
            },
        )
        .collect();
    carried.dedup();
    carried
}

/// The parts of choices in the average meal, as they are shown.
pub fn shown(carriers: &[Carrier], unit: &str) -> Vec<CarriedBy> {
    carriers
        .iter()
        .map(|carrier| {
            let amount = format::number(carrier.amount, Digits(1));
            CarriedBy {
                date: carrier.date,
                recipe: carrier.recipe.clone(),
                amount: match carrier.incomplete {
                    true => format!("≥ {amount} {unit}"),
                    false => format!("{amount} {unit}"),
                },
                share: carrier.share.map(format::percent),
            }
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn dec(text: &str) -> rust_decimal::Decimal {
        text.parse().unwrap()
    }

    #[test]
    fn bounds_never_pass_for_figures() {
        let of = |low, high: Option<&str>| Bounds {
            low: dec(low),
            high: high.map(dec),
        };
        for (figure, shown) in [
            (of("0.5", Some("0.5")), Some("0.5")),
            (of("0.5", Some("0.75")), Some("0.5 to 0.8")),
            (of("0.5", None), Some("≥ 0.5")),
            (of("0", None), None),
            (of("0", Some("0")), Some("0.0")),
        ] {
            assert_eq!(bounds(figure, Digits(1)).as_deref(), shown);
        }
    }
}
