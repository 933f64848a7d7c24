//! A generated district year, as the engine takes it and as plain numbers.

use anyhow::{Context, Result};
use engine::foods::{FoodId, NutrientId};
use engine::reference::Reference;
use engine::rules::{Basis, Bound, LeftOut};
use engine::week::Service;
use gramwright_tests::district::{District, Size};
use rust_decimal::prelude::ToPrimitive;
use serde_json::json;
use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

/// A limit in force, as rivals compare it.
#[derive(Debug, Clone)]
pub struct PlainRule {
    /// Services with these limits.
    pub pattern: u32,
    /// Its place among them.
    pub rule: u32,
    /// The limited nutrient's column; of a rule that leaves out fluid milk,
    /// that of saturated fat.
    pub column: usize,
    /// Whether fluid milk is left out.
    pub milk_free: bool,
    /// Whether it limits a share of the energy.
    pub is_share: bool,
    /// Energy of a gram.
    pub kcal: f64,
    /// "at least", "at most" or "below".
    pub bound: &'static str,
    /// The limit.
    pub limit: f64,
}

/// The year as plain numbers. Nutrient values are per 100 g; a missing one is
/// not a number.
#[derive(Debug)]
pub struct PlainYear {
    /// Column count of [`Self::values`].
    pub nutrients: usize,
    /// Printed decimals of each.
    pub digits: Vec<u32>,
    /// Column of energy.
    pub energy: usize,
    /// Column of saturated fat.
    pub saturated_fat: usize,
    /// One row of values per food.
    pub values: Vec<f64>,
    /// Lines of each recipe.
    pub lines: usize,
    /// Food of each line.
    pub line_food: Vec<u32>,
    /// Grams of each line.
    pub line_grams: Vec<f64>,
    /// Servings of each recipe.
    pub servings: Vec<f64>,
    /// Saturated fat in the fluid milk of a serving, grams.
    pub milk: Vec<f64>,
    /// Which limits hold for each service.
    pub service_pattern: Vec<u32>,
    /// Meals of each service.
    pub service_meals: Vec<f64>,
    /// Service of each choice.
    pub choice_service: Vec<u32>,
    /// Recipe of each choice.
    pub choice_recipe: Vec<u32>,
    /// Servings planned of each choice.
    pub choice_planned: Vec<f64>,
    /// Limits in force.
    pub rules: Vec<PlainRule>,
}

fn float(value: impl ToPrimitive) -> f64 {
    value.to_f64().unwrap_or(f64::NAN)
}

impl PlainYear {
    /// Writes a district down in numbers.
    ///
    /// # Panics
    /// When a part of the district lacks what a generated one has.
    pub fn of(reference: &Reference, district: &District, size: Size) -> Self {
        let foods = &reference.foods;
        let nutrients = foods.nutrients();
        let column = |id: NutrientId| nutrients.iter().position(|n| n.id == id).expect("kept");
        let place: BTreeMap<FoodId, u32> =
            (0..).zip(foods.foods()).map(|(at, f)| (f.id, at)).collect();
        let values = foods.foods().iter().flat_map(|food| {
            let value = |id| foods.per_100_g(food.id, id).map_or(f64::NAN, float);
            nutrients.iter().map(move |nutrient| value(nutrient.id))
        });
        let mut year = Self {
            nutrients: nutrients.len(),
            digits: nutrients
                .iter()
                .map(|nutrient| nutrient.decimals.0)
                .collect(),
            energy: column(NutrientId::ENERGY),
            saturated_fat: column(NutrientId::SATURATED_FAT),
            values: values.collect(),
            lines: size.lines,
            line_food: Vec::new(),
            line_grams: Vec::new(),
            servings: Vec::new(),
            milk: Vec::new(),
            service_pattern: Vec::new(),
            service_meals: Vec::new(),
            choice_service: Vec::new(),
            choice_recipe: Vec::new(),
            choice_planned: Vec::new(),
            rules: Vec::new(),
        };
        for (_, study) in &district.studies {
            for part in &study.parts {
                year.line_food
                    .push(place[&part.food.expect("a known food")]);
                year.line_grams
                    .push(float(part.weight.expect("a weight").grams()));
            }
            let servings = study.analysis.as_ref().expect("an analysis").servings;
            year.servings.push(float(servings.servings()));
            let credits = study.credits.as_ref().expect("credits");
            let milk = credits.fluid_milk(&reference.credit_rules.definitions);
            let fat = milk.iter().map(|(food, grams)| {
                let value = foods.per_100_g(*food, NutrientId::SATURATED_FAT);
                value.map_or(0.0, float) * float(grams.grams()) / 100.0
            });
            year.milk.push(fat.sum());
        }
        let mut patterns: Vec<(Service, Vec<String>)> = Vec::new();
        for week in &district.weeks {
            for service in week.services() {
                year.service(reference, district, week, &service, &mut patterns, column);
            }
        }
        year
    }

    fn service(
        &mut self,
        reference: &Reference,
        district: &District,
        week: &engine::week::Week,
        service: &Service,
        patterns: &mut Vec<(Service, Vec<String>)>,
        column: impl Fn(NutrientId) -> usize,
    ) {
        let number = u32::try_from(self.service_meals.len()).expect("few services");
        let meals = week.meals_of(service);
        let planned: rust_decimal::Decimal =
            meals.map(|(_, meal)| meal.planned_meals.servings()).sum();
        self.service_meals.push(float(planned));
        for choice in week.meals_of(service).flat_map(|(_, meal)| meal.choices()) {
            let found = district
                .studies
                .binary_search_by_key(&&choice.recipe, |(id, _)| id);
            self.choice_service.push(number);
            self.choice_recipe
                .push(u32::try_from(found.expect("a recipe")).expect("few"));
            self.choice_planned.push(float(choice.planned.servings()));
        }
        let first = week.days[0].date;
        let rules: Vec<_> = reference.specifications.in_force(service, first).collect();
        let words: Vec<String> = rules.iter().map(|rule| format!("{rule:?}")).collect();
        let known = patterns
            .iter()
            .position(|one| *one == (service.clone(), words.clone()));
        let pattern = known.unwrap_or(patterns.len());
        self.service_pattern
            .push(u32::try_from(pattern).expect("few patterns"));
        if known.is_some() {
            return;
        }
        patterns.push((service.clone(), words));
        for (at, rule) in (0..).zip(rules) {
            self.rules.push(PlainRule {
                pattern: u32::try_from(pattern).expect("few patterns"),
                rule: at,
                column: column(rule.nutrient),
                milk_free: rule.leaves_out == Some(LeftOut::FluidMilk),
                is_share: rule.basis == Basis::ShareOfEnergy,
                kcal: rule.kcal_per_gram.map_or(0.0, float),
                bound: match rule.bound {
                    Bound::AtLeast => "at least",
                    Bound::AtMost => "at most",
                    Bound::Below => "below",
                },
                limit: float(rule.limit),
            });
        }
    }

    /// Writes it into a folder for rivals to read.
    ///
    /// # Errors
    /// When the folder cannot be written.
    pub fn write(&self, folder: &Path, foods: &[u8]) -> Result<()> {
        fs::create_dir_all(folder)?;
        let floats = |name: &str, values: &[f64]| {
            let bytes: Vec<u8> = values
                .iter()
                .flat_map(|value| value.to_le_bytes())
                .collect();
            fs::write(folder.join(name), bytes).with_context(|| name.to_owned())
        };
        let numbers = |name: &str, values: &[u32]| {
            let bytes: Vec<u8> = values
                .iter()
                .flat_map(|value| value.to_le_bytes())
                .collect();
            fs::write(folder.join(name), bytes).with_context(|| name.to_owned())
        };
        floats("values.f64", &self.values)?;
        floats("line_grams.f64", &self.line_grams)?;
        numbers("line_food.u32", &self.line_food)?;
        floats("recipe_servings.f64", &self.servings)?;
        floats("recipe_milk.f64", &self.milk)?;
        numbers("service_pattern.u32", &self.service_pattern)?;
        floats("service_meals.f64", &self.service_meals)?;
        numbers("choice_service.u32", &self.choice_service)?;
        numbers("choice_recipe.u32", &self.choice_recipe)?;
        floats("choice_planned.f64", &self.choice_planned)?;
        fs::write(folder.join("foods.bin"), foods)?;
        let subject = |rule: &PlainRule| match rule.milk_free {
            true => "milk free".to_owned(),
            false => format!("v{}", rule.column),
        };
        let rules: Vec<_> = self
            .rules
            .iter()
            .map(|rule| {
                json!({
                    "pattern": rule.pattern, "rule": rule.rule, "subject": subject(rule),
                    "is_share": rule.is_share, "kcal": rule.kcal, "bound": rule.bound,
                    "limit": rule.limit,
                })
            })
            .collect();
        let size = json!({
            "foods": self.values.len() / self.nutrients, "nutrients": self.nutrients,
            "recipes": self.servings.len(), "lines": self.lines,
            "services": self.service_meals.len(), "digits": self.digits,
            "energy": self.energy, "saturated_fat": self.saturated_fat, "rules": rules,
        });
        fs::write(folder.join("size.json"), size.to_string())?;
        Ok(())
    }
}
