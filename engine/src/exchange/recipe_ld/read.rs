//! JSON-LD → recipes.

use crate::exchange::book_file::read_json;
use crate::exchange::{About, Incoming, Problem, Remark, Trouble};
use crate::recipe::{Recipe, RecipeId, RecipeLine};
use crate::units::Servings;
use rust_decimal::Decimal;
use serde_json::{Map, Value};
use std::str::FromStr;

/// How deep recipes may lie within other things.
const DEEPEST: usize = 16;

/// Reads all recipes that a text holds, wherever they lie in it.
///
/// # Errors
/// When it is no JSON, or holds no recipe.
pub fn read(text: &str) -> Result<Incoming, Problem> {
    let value: Value = read_json(text.trim_start_matches('\u{feff}'))?;
    let mut nodes = Vec::new();
    collect(&value, 0, &mut nodes);
    if nodes.is_empty() {
        return Err(Problem::whole(Trouble::NoRecipes));
    }
    let mut remarks = Vec::new();
    let recipes = nodes.into_iter().map(|node| recipe(node, &mut remarks));
    Ok(Incoming {
        recipes: recipes.collect(),
        remarks,
    })
}

/// Recipes lie in lists, in an `@graph`, or as part of a page.
fn collect<'a>(value: &'a Value, depth: usize, found: &mut Vec<&'a Map<String, Value>>) {
    match value {
        _ if depth > DEEPEST => {}
        Value::Array(list) => {
            for item in list {
                collect(item, depth + 1, found);
            }
        }
        Value::Object(node) if is_a(node, "Recipe") => found.push(node),
        Value::Object(node) => {
            for part in node.values() {
                collect(part, depth + 1, found);
            }
        }
        _ => {}
    }
}

/// A type may be a word, a full address or a list of both.
fn is_a(node: &Map<String, Value>, kind: &str) -> bool {
    let last = |text: &str| text.rsplit(['/', '#', ':']).next() == Some(kind);
    match node.get("@type") {
        Some(Value::String(text)) => last(text),
        Some(Value::Array(kinds)) => kinds.iter().filter_map(Value::as_str).any(last),
        _ => false,
    }
}

fn recipe(node: &Map<String, Value>, remarks: &mut Vec<Remark>) -> Recipe {
    let title = node.get("name").map(words).unwrap_or_default();
    let mut remark = |about| {
        remarks.push(Remark {
            title: title.clone(),
            about,
        });
    };
    let servings = match node.get("recipeYield").or_else(|| node.get("yield")) {
        None => {
            remark(About::NoServings);
            Servings::ZERO
        }
        Some(stated) => servings(stated).unwrap_or_else(|| {
            remark(About::YieldInWords(words(stated)));
            Servings::ZERO
        }),
    };
    // An older word for the lines is still met.
    let lines = node
        .get("recipeIngredient")
        .or_else(|| node.get("ingredients"));
    let lines = lines.map(lines_of).unwrap_or_default();
    if lines.is_empty() {
        remark(About::NoLines);
    }
    let nutrition = node.get("nutrition").and_then(Value::as_object);
    let stated = |(name, _): (&String, &Value)| !matches!(&**name, "@type" | "@id" | "servingSize");
    if nutrition.is_some_and(|nutrition| nutrition.iter().any(stated)) {
        remark(About::NutritionLeft);
    }
    let serving_words = nutrition.and_then(|nutrition| nutrition.get("servingSize"));
    Recipe {
        id: RecipeId(name(node).unwrap_or_default()),
        title: title.clone(),
        servings,
        serving_words: serving_words.map(words).unwrap_or_default(),
        serving_size: None,
        finished_weight: None,
        lines,
        beans: Default::default(),
        method: node
            .get("recipeInstructions")
            .map(steps)
            .unwrap_or_default(),
    }
}

/// The name that we gave it; the identifiers of others are addresses or codes.
fn name(node: &Map<String, Value>) -> Option<String> {
    let name = node.get("identifier")?.as_str()?;
    let is_ours = !name.is_empty() && !name.contains([':', '/']);
    is_ours.then(|| name.to_owned())
}

/// A text as it stands; of anything else its name, its text or its first part.
fn words(value: &Value) -> String {
    match value {
        Value::String(text) => text.clone(),
        Value::Number(number) => number.to_string(),
        Value::Array(list) => list.first().map(words).unwrap_or_default(),
        Value::Object(node) => ["text", "name", "@value", "value"]
            .iter()
            .find_map(|key| node.get(*key))
            .map(words)
            .unwrap_or_default(),
        Value::Bool(_) | Value::Null => String::new(),
    }
}

/// "50", "50 servings", "Serves 50", 50, a list of such, or a quantity. A yield
/// in other things ("1 loaf") is no number of servings.
fn servings(value: &Value) -> Option<Servings> {
    match value {
        Value::Number(number) => positive(&number.to_string()),
        Value::String(text) => servings_in(text),
        Value::Array(list) => list.iter().find_map(servings),
        Value::Object(node) => {
            let unit = node.get("unitText").map(words).unwrap_or_default();
            servings_in(&format!("{} {unit}", words(node.get("value")?)))
        }
        Value::Bool(_) | Value::Null => None,
    }
}

/// Words with which a number of servings is stated, in English and Spanish.
const SERVING_WORDS: [&str; 13] = [
    "serving",
    "servings",
    "serves",
    "portion",
    "portions",
    "makes",
    "yield",
    "yields",
    "people",
    "persons",
    "porciones",
    "raciones",
    "personas",
];

fn servings_in(text: &str) -> Option<Servings> {
    let lower = text.to_lowercase();
    let mut parts = lower
        .split(|c: char| !(c.is_alphanumeric() || c == '.'))
        .filter(|part| !part.is_empty());
    let numbers: Vec<&str> = parts
        .clone()
        .filter(|part| part.starts_with(|c: char| c.is_ascii_digit()))
        .collect();
    let only_servings = parts.all(|part| {
        part.starts_with(|c: char| c.is_ascii_digit()) || SERVING_WORDS.contains(&part)
    });
    match numbers[..] {
        [number] if only_servings => positive(number),
        _ => None,
    }
}

fn positive(text: &str) -> Option<Servings> {
    let number = Decimal::from_str(text).ok()?;
    (number > Decimal::ZERO).then(|| Servings::new(number))
}

fn lines_of(value: &Value) -> Vec<RecipeLine> {
    let line = |text: &str| RecipeLine {
        text: text.to_owned(),
        ..RecipeLine::default()
    };
    match value {
        // One text may hold all lines.
        Value::String(text) => text.lines().map(line).collect(),
        Value::Array(list) => list.iter().map(|one| line(&words(one))).collect(),
        _ => Vec::new(),
    }
}

/// Directions as one text: steps one below the other, sections with their
/// names.
fn steps(value: &Value) -> String {
    match value {
        Value::Array(list) => {
            let steps: Vec<String> = list.iter().map(steps).collect();
            steps.join("\n")
        }
        Value::Object(node) => match node.get("itemListElement") {
            None => words(value),
            Some(items) => match node.get("name").map(words) {
                Some(name) => format!("{name}\n{}", steps(items)),
                None => steps(items),
            },
        },
        other => words(other),
    }
}
