//! Recipes → JSON-LD.

use crate::analysis::RecipeAnalysis;
use crate::exact::{PartialSum, round_half_up};
use crate::foods::{FoodTable, NutrientId};
use crate::recipe::Recipe;
use serde_json::{Map, Value, json};

/// A recipe to write, with its figures where it has some.
#[derive(Debug, Clone, Copy)]
pub struct Shared<'a> {
    /// The recipe.
    pub recipe: &'a Recipe,
    /// Its figures.
    pub analysis: Option<&'a RecipeAnalysis>,
}

/// Properties of `NutritionInformation` that hold a mass, and the nutrients
/// that each adds up.
const MASSES: [(&str, &[NutrientId]); 9] = [
    ("fatContent", &[NutrientId::FAT]),
    ("saturatedFatContent", &[NutrientId::SATURATED_FAT]),
    ("unsaturatedFatContent", &[NutrientId(645), NutrientId(646)]),
    ("transFatContent", &[NutrientId::TRANS_FAT]),
    ("cholesterolContent", &[NutrientId::CHOLESTEROL]),
    ("sodiumContent", &[NutrientId::SODIUM]),
    ("carbohydrateContent", &[NutrientId::CARBOHYDRATE]),
    ("fiberContent", &[NutrientId::FIBRE]),
    ("sugarContent", &[NutrientId::SUGARS]),
];

/// The text of a file with these recipes.
pub fn write<'a>(foods: &FoodTable, recipes: impl IntoIterator<Item = Shared<'a>>) -> String {
    let graph: Vec<Value> = recipes
        .into_iter()
        .map(|shared| node(foods, shared))
        .collect();
    let all = json!({ "@context": "https://schema.org", "@graph": graph });
    // Plain data with text keys: it always has a JSON form.
    serde_json::to_string_pretty(&all).unwrap_or_default() + "\n"
}

fn node(foods: &FoodTable, shared: Shared<'_>) -> Value {
    let recipe = shared.recipe;
    let lines: Vec<&str> = recipe.lines.iter().map(|line| line.text.as_str()).collect();
    let mut node = json!({
        "@type": "Recipe",
        "identifier": recipe.id.0,
        "name": recipe.title,
        "recipeYield": format!("{} servings", recipe.servings.servings()),
        "recipeIngredient": lines,
        "recipeInstructions": recipe.method,
    });
    let nutrition = nutrition(foods, shared);
    if !nutrition.is_empty() {
        node["nutrition"] = json!({ "@type": "NutritionInformation" });
        for (name, value) in nutrition {
            node["nutrition"][name] = value;
        }
    }
    node
}

fn nutrition(foods: &FoodTable, shared: Shared<'_>) -> Map<String, Value> {
    let mut found = Map::new();
    let mut put = |name: &str, text: Option<String>| {
        if let Some(text) = text {
            found.insert(name.to_owned(), text.into());
        }
    };
    let words = &shared.recipe.serving_words;
    put("servingSize", (!words.is_empty()).then(|| words.clone()));
    let Some(analysis) = shared.analysis else {
        return found;
    };
    let energy = printed(foods, analysis, &[NutrientId::ENERGY]);
    put(
        "calories",
        energy.map(|(figure, _)| format!("{figure} calories")),
    );
    let masses = MASSES
        .iter()
        .chain(&[("proteinContent", &[NutrientId::PROTEIN] as &[_])]);
    for (name, nutrients) in masses {
        let mass = printed(foods, analysis, nutrients);
        put(name, mass.map(|(figure, unit)| format!("{figure} {unit}")));
    }
    found
}

/// The figure of one serving with its unit, where all of it is known.
fn printed(
    foods: &FoodTable,
    analysis: &RecipeAnalysis,
    nutrients: &[NutrientId],
) -> Option<(String, String)> {
    let first = nutrients.first()?;
    let nutrient = foods.nutrients().iter().find(|one| one.id == *first)?;
    let mut sum = PartialSum::default();
    for id in nutrients {
        sum.merge(&analysis.per_serving(*id)?);
    }
    let value = round_half_up(sum.complete()?, nutrient.decimals);
    Some((value.normalize().to_string(), nutrient.unit.clone()))
}
