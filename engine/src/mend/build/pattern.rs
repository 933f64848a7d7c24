//! Rows of what the meal pattern asks.

use super::super::demand::Demand;
use super::super::gather::to_f64;
use super::super::model::{Model, Sum};
use super::credits::{Credits, Figure, SLACK, behind, variant_name};
use super::{OfService, ROOM};
use crate::components::{Component, RecipeCredits};
use crate::findings::{AmountRow, PatternTables, Setting, amount_rows, giving};
use crate::recipe::RecipeId;
use crate::rules::{Kind, Subject, WeekRule};
use crate::week::{Choice, CreditedRecipe};

impl OfService<'_> {
    /// The rows of all amounts and shares.
    pub(super) fn pattern(&self, model: &mut Model) {
        let mut credited: Vec<CreditedRecipe<'_>> = Vec::new();
        for (id, study) in &self.ground.studies {
            credited.extend(study.credits.as_ref().map(|credits| (id, credits)));
        }
        // A candidate changes one recipe of the week, or a family of which each
        // member is told apart by its own name.
        let mut extra: Vec<(RecipeId, &RecipeCredits)> = Vec::new();
        for (at, candidate) in self.candidates.iter().enumerate() {
            for (nth, (_, study)) in candidate.variants.iter().enumerate() {
                let name = variant_name(at, nth);
                extra.extend(study.credits.as_ref().map(|credits| (name, credits)));
            }
        }
        credited.extend(extra.iter().map(|(id, credits)| (id, *credits)));
        credited.sort_by_key(|(id, _)| *id);
        let reference = self.tools.reference;
        let tables = PatternTables {
            foods: &reference.foods,
            definitions: &reference.credit_rules.definitions,
            patterns: &reference.meal_patterns,
            rules: &reference.week_rules,
        };
        let setting = Setting::new(&tables, &self.ground.week, self.service, &credited);
        let Ok(Some(setting)) = setting else {
            return;
        };
        let setting = setting.knowing(&credited);
        let credits = Credits {
            of: self,
            setting: &setting,
        };
        let patterns = self
            .demands()
            .filter(|(_, demand)| demand.of_average.is_none());
        let patterns: Vec<_> = patterns.collect();
        let rows = amount_rows(&setting);
        let amounts = Amounts {
            credits: &credits,
            rows: &rows,
            demands: &patterns,
        };
        // The findings of amounts come first, in the order of their rows.
        for (row, demand) in rows.iter().zip(&patterns) {
            amounts.amount(model, row, *demand);
        }
        for rule in
            reference
                .week_rules
                .of_kind(Kind::ShareOfOfferings, self.service, setting.first_day())
        {
            let own = patterns.iter().find(|(_, demand)| {
                let requirement = &demand.now.requirement;
                requirement.date.is_none() && requirement.words == rule.words
            });
            if let Some((at, demand)) = own {
                credits.share(model, rule, *at, demand);
            }
        }
    }
}

/// A demand of the pattern, by its place among all demands.
type Placed<'a> = (usize, &'a Demand);

/// The required amounts of one service while their rows are made.
struct Amounts<'s, 'a> {
    credits: &'s Credits<'s, 'a>,
    rows: &'s [AmountRow<'s>],
    /// The demands of these rows first, in their order.
    demands: &'s [Placed<'a>],
}

impl Amounts<'_, '_> {
    /// The row of a required amount.
    fn amount(&self, model: &mut Model, row: &AmountRow<'_>, (at, demand): Placed<'_>) {
        if !demand.owes_a_minimum() {
            return;
        }
        let helpers = model.columns.len();
        let rows_before = model.rows.len();
        let mut needs = vec![at];
        let sum = match row.row.component {
            Subject::Of(Component::Other) if row.date.is_none() => {
                self.other(model, row, &mut needs)
            }
            Subject::AdditionalVegetables if row.date.is_none() => {
                self.additional(model, row, &mut needs)
            }
            _ => self.credits.days(model, row),
        };
        let limit = to_f64(row.limit);
        match sum {
            // A row that no change has a say in, and that holds, says nothing.
            Some(sum) if !(sum.is_constant() && demand.is_kept()) => {
                let mut scaled = Sum::default();
                let scale = limit.max(SLACK);
                scaled.add_times(1.0 / scale, &sum);
                let name = self.credits.of.named(&demand.now.requirement.words);
                model.at_least(name, needs, scaled, limit / scale - ROOM);
            }
            _ => {
                model.columns.truncate(helpers);
                model.rows.truncate(rows_before);
            }
        }
    }

    /// The weekly row of a component, if a plan owes it.
    fn owed_row(&self, component: Component) -> Option<(usize, &AmountRow<'_>)> {
        let own =
            |row: &AmountRow<'_>| row.date.is_none() && row.row.component == Subject::Of(component);
        let nth = self.rows.iter().position(own)?;
        let (at, demand) = self.demands.get(nth)?;
        demand.is_owed().then_some((*at, &self.rows[nth]))
    }

    /// What subgroups bring beyond their own amounts, at most; nothing where a
    /// plan does not owe the subgroup's own amount.
    fn surplus(
        &self,
        model: &mut Model,
        subgroups: &[Component],
        needs: &mut Vec<usize>,
    ) -> Option<Sum> {
        let mut total = Sum::default();
        for subgroup in subgroups {
            let (at, row) = self.owed_row(*subgroup)?;
            needs.push(at);
            total.add_times(1.0, &self.credits.days(model, row)?);
            total.constant -= to_f64(row.limit);
        }
        Some(total)
    }

    fn other(&self, model: &mut Model, row: &AmountRow<'_>, needs: &mut Vec<usize>) -> Option<Sum> {
        let mut total = self.credits.days(model, row)?;
        let giving = giving(self.credits.setting);
        total.add_times(1.0, &self.surplus(model, &giving, needs)?);
        Some(total)
    }

    fn additional(
        &self,
        model: &mut Model,
        row: &AmountRow<'_>,
        needs: &mut Vec<usize>,
    ) -> Option<Sum> {
        let mut total = self.credits.days(model, row)?;
        let giving = giving(self.credits.setting);
        let own =
            |subgroup: &Component| *subgroup != Component::Other && !giving.contains(subgroup);
        let keeping: Vec<Component> = Component::SUBGROUPS.into_iter().filter(own).collect();
        total.add_times(1.0, &self.surplus(model, &keeping, needs)?);
        let (at, other) = self.owed_row(Component::Other)?;
        needs.push(at);
        total.add_times(1.0, &self.other(model, other, needs)?);
        total.constant -= to_f64(other.limit);
        Some(total)
    }
}

impl Credits<'_, '_> {
    /// The row of a share of what is offered: marked part less limit times all.
    fn share(&self, model: &mut Model, rule: &WeekRule, at: usize, demand: &Demand) {
        let (Some(component), Some(mark)) = (rule.component, rule.marks.first()) else {
            return;
        };
        if !demand.owes_a_minimum() {
            return;
        }
        let limit = to_f64(demand.now.requirement.limit) / 100.0;
        let amount = |choice: &Choice| {
            let marked = to_f64(self.setting.marked(choice, component, *mark).low);
            marked - limit * to_f64(self.setting.amount(choice, Subject::Of(component)).low)
        };
        let mut total = Sum::default();
        for slot in &self.of.slots {
            // A dough bears its mark as a whole: several changes of one dish may
            // turn all of its grain.
            let whole = to_f64(self.setting.amount(slot.choice, Subject::Of(component)).low);
            let figure = Figure {
                amount: &amount,
                of: behind(Subject::Of(component)),
                slack: SLACK + whole,
            };
            total.add_times(1.0, &self.credit(slot, &figure));
        }
        if total.is_constant() {
            return;
        }
        let name = self.of.named(&rule.words);
        model.at_least(name, vec![at], total, -ROOM);
    }
}
