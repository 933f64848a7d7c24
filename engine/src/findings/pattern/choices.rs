//! Requirements that leave a choice: two components of five in a snack,
//! vegetables in place of fruits.

use super::super::Verdict;
use super::setting::Setting;
use super::{CitedLimit, PatternFinding};
use crate::components::Component;
use crate::exact::Bounds;
use crate::rules::{Bound, Force, Period, Subject, WeekRule};
use crate::week::{Choice, Counted, Date};
use rust_decimal::Decimal;
use std::collections::BTreeSet;

/// How many of the components of a choice a day offers in their amounts,
/// without counting food with the rule's marks.
pub(super) fn components_met(setting: &Setting<'_>, rule: &WeekRule, date: Date) -> PatternFinding {
    let amount = |choice: &Choice, subject: Subject| {
        let all = setting.amount(choice, subject);
        match subject {
            Subject::Of(component) => rule
                .marks
                .iter()
                .map(|mark| setting.marked(choice, component, *mark))
                .fold(all, Bounds::without),
            _ => all,
        }
    };
    let rows: Vec<_> = setting
        .tables
        .patterns
        .in_force(setting.service(), date, Force::Choice, Period::Day)
        .collect();
    let verdicts = rows.iter().map(|row| {
        let figure = setting.day(date, row.counted, |choice| amount(choice, row.component));
        Verdict::of(figure, row.bound, row.amount)
    });
    let figure = verdicts
        .map(|verdict| match verdict {
            Verdict::Met => Bounds::exactly(Decimal::ONE),
            Verdict::Missed => Bounds::ZERO,
            Verdict::Unknown => Bounds {
                low: Decimal::ZERO,
                high: Some(Decimal::ONE),
            },
        })
        .sum();
    let carriers = rows
        .iter()
        .flat_map(|row| setting.carriers(Some(date), |choice| amount(choice, row.component)))
        .collect();
    let cited = CitedLimit::of_rule(rule, (Bound::AtLeast, Decimal::ZERO));
    PatternFinding::new(setting, Some(date), cited, figure).carried_by(carriers)
}

/// The subgroups of vegetables that stand in for fruits, once they do so on as
/// many days as the rule says. Nothing on fewer days.
pub(super) fn vegetables_for_fruits(
    setting: &Setting<'_>,
    rule: &WeekRule,
) -> Option<PatternFinding> {
    let stand_in: Vec<Date> = setting
        .days()
        .iter()
        .copied()
        .filter(|date| stands_in(setting, *date))
        .collect();
    if Decimal::from(stand_in.len()) < rule.per? {
        return None;
    }
    let mut subgroups = BTreeSet::new();
    let mut carriers = Vec::new();
    let mut complete = true;
    for date in &stand_in {
        for subgroup in Component::SUBGROUPS {
            let amount = |choice: &Choice| setting.as_vegetable(choice, subgroup);
            let offered = setting.day(*date, Counted::Largest, amount);
            complete &= offered.is_exact();
            if offered.low > Decimal::ZERO {
                subgroups.insert(subgroup);
                carriers.extend(setting.carriers(Some(*date), amount));
            }
        }
    }
    let found = Decimal::from(subgroups.len());
    let figure = if complete {
        Bounds::exactly(found)
    } else {
        Bounds::at_least(found)
    };
    let cited = CitedLimit::of_rule(rule, (Bound::AtLeast, Decimal::ZERO));
    Some(PatternFinding::new(setting, None, cited, figure).carried_by(carriers))
}

/// True when fruits alone are known to fall short on a day that also offers
/// vegetables.
fn stands_in(setting: &Setting<'_>, date: Date) -> bool {
    let fruits = setting.day(date, Counted::Smallest, |choice| {
        setting.alone(choice, Component::Fruits)
    });
    let vegetables = setting.day(date, Counted::Largest, |choice| {
        setting.amount(choice, Subject::Of(Component::Vegetables))
    });
    let falls_short = setting
        .tables
        .patterns
        .in_force(setting.service(), date, Force::Required, Period::Day)
        .filter(|row| row.component == Subject::Of(Component::Fruits))
        .any(|row| !row.bound.holds(fruits.low, row.amount));
    falls_short && vegetables.low > Decimal::ZERO
}
