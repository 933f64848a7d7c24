//! Daily and weekly amounts of components and subgroups.

use super::setting::Setting;
use super::{CitedLimit, PatternFinding};
use crate::components::Component;
use crate::exact::Bounds;
use crate::exact::rounding::round_half_up_to;
use crate::rules::{Force, Kind, MealPattern, Period, Subject};
use crate::week::{Counted, Date};
use rust_decimal::Decimal;

/// Days of the week for which the tables give weekly amounts.
const FULL_WEEK: usize = 5;

/// One required amount, as it binds a week.
pub(crate) struct AmountRow<'a> {
    /// The row of the table.
    pub row: &'a MealPattern,
    /// The day; nothing for an amount over the week.
    pub date: Option<Date>,
    /// The limit for this week.
    pub limit: Decimal,
}

/// Checks every required amount, day by day and then over the week.
pub(super) fn check(setting: &Setting<'_>) -> Vec<PatternFinding> {
    let week = Weekly::new(setting);
    let finding = |asked: AmountRow<'_>| match asked.date {
        Some(date) => daily(setting, asked.row, date),
        None => week.finding(asked.row),
    };
    rows(setting).into_iter().map(finding).collect()
}

/// The required amounts, in the order of their findings.
pub(crate) fn rows<'a>(setting: &Setting<'a>) -> Vec<AmountRow<'a>> {
    let patterns = setting.tables.patterns;
    let mut rows = Vec::new();
    for date in setting.days() {
        let of_day = patterns.in_force(setting.service(), *date, Force::Required, Period::Day);
        rows.extend(of_day.map(|row| AmountRow {
            row,
            date: Some(*date),
            limit: row.amount,
        }));
    }
    let week = Weekly::new(setting);
    rows.extend(week.rows.iter().map(|row| AmountRow {
        row,
        date: None,
        limit: week.limit(row),
    }));
    rows
}

/// The subgroups whose surplus counts toward other vegetables.
pub(crate) fn giving(setting: &Setting<'_>) -> Vec<Component> {
    let rules = setting.tables.rules;
    rules
        .of_kind(
            Kind::SurplusCountsAsOther,
            setting.service(),
            setting.first_day(),
        )
        .filter_map(|rule| rule.component)
        .collect()
}

fn daily(setting: &Setting<'_>, row: &MealPattern, date: Date) -> PatternFinding {
    let amount = |choice: &_| setting.amount(choice, row.component);
    let figure = setting.day(date, row.counted, amount);
    let rule = CitedLimit::of_pattern(row, row.amount);
    PatternFinding::new(setting, Some(date), rule, figure)
        .averaging(setting.day(date, Counted::Average, amount))
        .carried_by(setting.carriers(Some(date), amount))
}

/// The weekly rows in force with what they need of each other.
struct Weekly<'s, 'a> {
    setting: &'s Setting<'a>,
    rows: Vec<&'a MealPattern>,
    /// In a short week the subgroups keep their amounts.
    keeps_subgroups: bool,
}

impl<'s, 'a> Weekly<'s, 'a> {
    fn new(setting: &'s Setting<'a>) -> Self {
        let first = setting.first_day();
        let unchanged = setting
            .tables
            .rules
            .of_kind(Kind::SubgroupsUnchanged, setting.service(), first)
            .next()
            .is_some();
        Self {
            rows: setting
                .tables
                .patterns
                .in_force(setting.service(), first, Force::Required, Period::Week)
                .collect(),
            keeps_subgroups: unchanged && setting.days().len() < FULL_WEEK,
            setting,
        }
    }

    fn finding(&self, row: &MealPattern) -> PatternFinding {
        let setting = self.setting;
        let amount = |choice: &_| setting.amount(choice, row.component);
        let figure = match row.component {
            Subject::AdditionalVegetables => self.additional(row),
            Subject::Of(Component::Other) => self.other(row),
            _ => setting.week(row.counted, amount),
        };
        let rule = CitedLimit::of_pattern(row, self.limit(row));
        PatternFinding::new(setting, None, rule, figure)
            .averaging(setting.week(Counted::Average, amount))
            .carried_by(setting.carriers(None, amount))
    }

    /// The amount for a week of as many days: in proportion, a fifth for each
    /// (7 CFR 210.10(c)(2)(iii)(D)), rounded as the row says.
    fn limit(&self, row: &MealPattern) -> Decimal {
        let days = self.setting.days().len();
        if days == FULL_WEEK {
            return row.amount;
        }
        if self.keeps_subgroups {
            match row.component {
                Subject::Of(component) if Component::SUBGROUPS.contains(&component) => {
                    return row.amount;
                }
                Subject::AdditionalVegetables => return self.additional_limit(row),
                _ => {}
            }
        }
        let exact = row.amount * Decimal::from(days) / Decimal::from(FULL_WEEK);
        row.scaled_to
            .map_or(exact, |step| round_half_up_to(exact, step))
    }

    /// What all vegetables ask for beyond the subgroups.
    fn additional_limit(&self, row: &MealPattern) -> Decimal {
        let all = self.row_of(Component::Vegetables);
        let subgroups = Component::SUBGROUPS.into_iter();
        let subgroups: Decimal = subgroups
            .filter_map(|subgroup| self.row_of(subgroup))
            .map(|row| row.amount)
            .sum();
        all.map_or(row.amount, |all| {
            (self.limit(all) - subgroups).max(Decimal::ZERO)
        })
    }

    fn row_of(&self, component: Component) -> Option<&'a MealPattern> {
        self.rows
            .iter()
            .copied()
            .find(|row| row.component == Subject::Of(component))
    }

    /// What a subgroup brings as a vegetable beyond its own amount.
    fn surplus(&self, subgroup: Component) -> Bounds {
        let Some(row) = self.row_of(subgroup) else {
            return Bounds::ZERO;
        };
        self.setting
            .week(row.counted, |choice| {
                self.setting.as_vegetable(choice, subgroup)
            })
            .above(self.limit(row))
    }

    /// Other vegetables, with what others give to them.
    fn other(&self, row: &MealPattern) -> Bounds {
        let own = self.setting.week(row.counted, |choice| {
            self.setting.amount(choice, row.component)
        });
        let given: Bounds = giving(self.setting)
            .into_iter()
            .map(|from| self.surplus(from))
            .sum();
        own + given
    }

    /// Vegetables beyond the subgroup amounts: the surplus of each subgroup,
    /// less what goes to make up other vegetables, and what has no subgroup.
    fn additional(&self, row: &MealPattern) -> Bounds {
        let setting = self.setting;
        let unassigned = setting.week(row.counted, |choice| setting.amount(choice, row.component));
        let giving = giving(setting);
        let kept: Bounds = Component::SUBGROUPS
            .into_iter()
            .filter(|subgroup| *subgroup != Component::Other && !giving.contains(subgroup))
            .map(|subgroup| self.surplus(subgroup))
            .sum();
        let of_other = match self.row_of(Component::Other) {
            Some(other) => self.other(other).above(self.limit(other)),
            None => Bounds::ZERO,
        };
        unassigned + kept + of_other
    }
}
