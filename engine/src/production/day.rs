//! One day at one school, or at all of them: the sheet that hangs in the
//! kitchen.

use super::{CookItem, Kitchen, NotCooked, PrepStep, SharedChoice, SiteId, shared_day};
use crate::foods::Food;
use crate::kitchen::SafetyStep;
use crate::recipe::RecipeId;
use crate::units::Servings;
use crate::week::{Date, Service, Week};
use serde::Serialize;
use std::collections::BTreeMap;

/// A choice of the menu with the servings to make.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct MenuRow {
    /// Which meal, for whom.
    pub service: Service,
    /// The part of the meal.
    pub part: String,
    /// The recipe.
    pub recipe: RecipeId,
    /// Servings.
    pub servings: Servings,
}

/// A kitchen's day.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct KitchenDay {
    /// The school; nothing for all together.
    pub site: Option<SiteId>,
    /// The day.
    pub date: Date,
    /// The menu in the order of the plan.
    pub menu: Vec<MenuRow>,
    /// What is cooked, recipes within others first.
    pub cook: Vec<CookItem>,
    /// What cannot be cooked by the book.
    pub not_cooked: Vec<NotCooked>,
    /// The order of work.
    pub order: Vec<PrepStep>,
}

impl<'a> Kitchen<'a> {
    /// A day at a school, or at all together where none is named: then all
    /// that is planned is cooked in one place.
    pub fn day(&self, week: &Week, date: Date, site: Option<&SiteId>) -> KitchenDay {
        let shared = shared_day(self.production, week, date);
        let menu: Vec<MenuRow> = shared
            .into_iter()
            .filter_map(|choice| {
                let servings = servings_at(&choice, site);
                (servings > Servings::ZERO).then_some(MenuRow {
                    service: choice.service,
                    part: choice.part,
                    recipe: choice.recipe,
                    servings,
                })
            })
            .collect();
        let (cook, not_cooked) = self.cook_list(&summed(&menu));
        KitchenDay {
            site: site.cloned(),
            date,
            order: self.prep_order(&cook),
            menu,
            cook,
            not_cooked,
        }
    }

    /// Temperatures that a recipe's foods call for.
    pub fn temperatures(&self, id: &RecipeId) -> Vec<&'a SafetyStep> {
        let Some((_, study)) = self.recipe(id) else {
            return Vec::new();
        };
        let foods: Vec<&Food> = study
            .parts
            .iter()
            .filter_map(|part| self.reference.foods.food(part.food?))
            .collect();
        self.reference.food_safety.steps_for(&foods, self.held(id))
    }
}

fn servings_at(choice: &SharedChoice, site: Option<&SiteId>) -> Servings {
    let Some(site) = site else {
        return choice.planned;
    };
    let at = choice.sites.iter().find(|one| one.site == *site);
    at.map_or(Servings::ZERO, |one| one.servings)
}

/// The servings of each recipe of a menu.
fn summed(menu: &[MenuRow]) -> BTreeMap<RecipeId, Servings> {
    let mut sums: BTreeMap<RecipeId, Servings> = BTreeMap::new();
    for row in menu {
        *sums.entry(row.recipe.clone()).or_default() += row.servings;
    }
    sums
}

/// The servings planned of each recipe over the days of a week, or on one day.
pub fn planned_servings(week: &Week, date: Option<Date>) -> BTreeMap<RecipeId, Servings> {
    let days = week.days.iter();
    let mut sums: BTreeMap<RecipeId, Servings> = BTreeMap::new();
    for choice in days
        .filter(|day| date.is_none_or(|date| day.date == date))
        .flat_map(|day| &day.meals)
        .flat_map(crate::week::Meal::choices)
    {
        *sums.entry(choice.recipe.clone()).or_default() += choice.planned;
    }
    sums
}
