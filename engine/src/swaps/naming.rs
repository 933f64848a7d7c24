//! What a kitchen calls a food of the dataset.

use crate::foods::{Food, FoodId};
use crate::tables::{self, TableError};
use serde::Deserialize;
use std::cmp::Reverse;
use std::collections::BTreeMap;

#[derive(Deserialize)]
struct SynonymRow {
    kitchen: String,
    foods: String,
}

/// Kitchen words by food.
#[derive(Debug, Clone)]
pub(super) struct KitchenNames(BTreeMap<FoodId, Vec<String>>);

impl KitchenNames {
    /// Reads the table of kitchen words the other way round.
    ///
    /// # Errors
    /// When the table is damaged.
    pub fn from_csv(text: &str) -> Result<Self, TableError> {
        let mut names: BTreeMap<FoodId, Vec<String>> = BTreeMap::new();
        for row in tables::read::<SynonymRow>("synonyms", text)? {
            let numbers = row
                .row
                .foods
                .split_whitespace()
                .filter_map(|number| number.parse().ok());
            // Words for several foods are the name of none.
            let numbers: Vec<u32> = numbers.collect();
            for number in &numbers {
                let entry = names.entry(FoodId::Sr28(*number)).or_default();
                if numbers.len() == 1 {
                    entry.push(row.row.kitchen.clone());
                }
            }
        }
        Ok(Self(names))
    }

    /// True for a food that kitchen words name.
    pub fn is_staple(&self, food: FoodId) -> bool {
        self.0.contains_key(&food)
    }

    /// The words that a line can have for a food: the kitchen's, of several
    /// those that the description bears out best, or the description turned
    /// round. Words that the line has for its old food already would change
    /// nothing for the cook, and are not taken.
    pub fn of(&self, food: &Food, old: &str) -> String {
        if matches!(food.id, FoodId::Own(_)) {
            return food.description.clone();
        }
        let description = food.description.to_lowercase();
        let old = old.to_lowercase();
        let stem = |word: &str| word.trim_end_matches(['s', '%', 'y']).to_owned();
        let count_in = |text: &str, words: &str| {
            let stands = |word: &&str| text.contains(&stem(word));
            words.split(' ').filter(stands).count()
        };
        let said = self.0.get(&food.id).into_iter().flatten();
        said.filter(|words| count_in(&old, words) < words.split(' ').count())
            .min_by_key(|words| {
                let length = words.split(' ').count();
                (Reverse(count_in(&description, words)), length)
            })
            .map_or_else(
                || turned_round(&food.description),
                |words| as_many(words, &description),
            )
    }
}

/// Kitchen words in the number in which the description has them: "carrots".
fn as_many(words: &str, description: &str) -> String {
    let last = words.rsplit(' ').next().unwrap_or(words);
    let many = [
        format!("{last}s"),
        format!("{last}es"),
        format!("{}ies", last.trim_end_matches('y')),
    ];
    let said = many.iter().find(|many| {
        let mut own = description.split(|letter: char| !letter.is_alphanumeric());
        own.any(|word| word == many.as_str())
    });
    let before = &words[..words.len() - last.len()];
    format!("{before}{}", said.map_or(last, String::as_str))
}

/// First words that only sort the dataset.
const HEADINGS: [&str; 9] = [
    "spices",
    "nuts",
    "seeds",
    "snacks",
    "fish",
    "soup",
    "cereals",
    "beverages",
    "salad dressing",
];

/// Parts of descriptions that no kitchen says.
const UNSAID: [&str; 26] = [
    "as purchased",
    "all varieties",
    "broilers or fryers",
    "remaining",
    "fluid",
    "with added vitamin",
    "without added vitamin",
    "fortified with",
    "mature seeds",
    "all types",
    "all classes",
    "all commercial varieties",
    "year round average",
    "salad or cooking",
    "commercial",
    "commercially prepared",
    "enriched",
    "unenriched",
    "bleached",
    "cultured",
    "household",
    "composite",
    "regular",
    "ready-to-serve",
    "ready to serve",
    "grams protein",
];

/// Words with which a part of a description goes behind the name.
const BEHIND: [&str; 13] = [
    "with",
    "without",
    "made",
    "in",
    "packed",
    "from",
    "drained",
    "rinsed",
    "boiled",
    "raw",
    "unprepared",
    "solids",
    "meat",
];

/// How much fat, salt or sugar: said before all else.
const FIRST: [&str; 10] = [
    "low",
    "reduced",
    "less",
    "fat",
    "nonfat",
    "light",
    "unsweetened",
    "lowfat",
    "no",
    "low-sodium",
];

/// "Cheese, cheddar, reduced fat" as "reduced fat cheddar cheese".
fn turned_round(description: &str) -> String {
    let plain = without_brackets(description).to_lowercase();
    let mut parts: Vec<&str> = plain
        .split(", ")
        .map(str::trim)
        .filter(|part| !part.is_empty() && !is_unsaid(part))
        .collect();
    if parts.len() > 1 && HEADINGS.contains(&parts[0]) && !needs_heading(&parts) {
        parts.remove(0);
    }
    // "Tomato products, canned, sauce" is canned tomato sauce.
    let mut name = match parts.first() {
        Some(name) => (*name).to_owned(),
        None => return plain,
    };
    let mut others = parts.split_off(1);
    if let Some(of) = name.strip_suffix(" products")
        && let Some(made) = others.iter().rposition(|part| !part.contains(' '))
    {
        name = format!("{of} {}", others.remove(made));
    }
    let first_word = |part: &str| part.split([' ', '/']).next().unwrap_or("").to_owned();
    let behind = |part: &&&str| {
        BEHIND.contains(&first_word(part).as_str())
            || part.contains(" in ")
            || part.split(' ').count() > 3
    };
    let (after, before): (Vec<&&str>, Vec<&&str>) = others.iter().partition(behind);
    let (first, kind): (Vec<&str>, Vec<&str>) = before
        .into_iter()
        .rev()
        .copied()
        .partition(|part| FIRST.contains(&first_word(part).as_str()));
    let mut words: Vec<&str> = first.into_iter().chain(kind).collect();
    // "Ranch dressing" needs no second "dressing".
    let last = |text: &str| text.rsplit(' ').next().map(str::to_owned);
    if words.last().is_none_or(|said| last(said) != last(&name)) {
        words.push(&name);
    }
    let mut said = words.join(" ");
    for part in after {
        said.push_str(", ");
        said.push_str(part);
    }
    said
}

fn is_unsaid(part: &str) -> bool {
    UNSAID.iter().any(|unsaid| match *unsaid {
        "grams protein" => part.contains(unsaid),
        "remaining" => part.starts_with(unsaid),
        _ if unsaid.starts_with("with") || unsaid.ends_with("with") => part.starts_with(unsaid),
        _ => part == *unsaid,
    })
}

/// "Soup, chicken broth" is broth; "Soup, cream of mushroom" is soup.
fn needs_heading(parts: &[&str]) -> bool {
    let own: &[&str] = match parts[0] {
        "soup" => &["broth", "stock", "bouillon"],
        "salad dressing" => &["dressing", "mayonnaise"],
        _ => return false,
    };
    !own.iter()
        .any(|own| parts[1].split(' ').any(|word| word == *own))
}

/// A description without its asides.
pub(super) fn without_brackets(text: &str) -> String {
    let mut depth = 0_usize;
    let mut out = String::new();
    for letter in text.chars() {
        match letter {
            '(' => depth += 1,
            ')' => depth = depth.saturating_sub(1),
            _ if depth == 0 => out.push(letter),
            _ => {}
        }
    }
    let out = out
        .replace("less/reduced", "reduced")
        .replace("USDA Commodity ", "");
    let words: Vec<&str> = out.split_whitespace().collect();
    words
        .join(" ")
        .replace(" ,", ",")
        .replace(",,", ",")
        .trim_end_matches(',')
        .to_owned()
}

#[cfg(test)]
mod tests {
    use super::turned_round;

    /// Common practice, no source: how a kitchen would say it.
    #[test]
    fn descriptions_become_words() {
        for (description, said) in [
            ("Cheese, cheddar, reduced fat", "reduced fat cheddar cheese"),
            (
                "Cheese, low fat, cheddar or colby",
                "low fat cheddar or colby cheese",
            ),
            (
                "Cream, sour, reduced fat, cultured",
                "reduced fat sour cream",
            ),
            (
                "Milk, nonfat, fluid, with added vitamin A and vitamin D (fat free or skim)",
                "nonfat milk",
            ),
            (
                "Soup, chicken broth, less/reduced sodium, ready to serve",
                "reduced sodium chicken broth",
            ),
            (
                "Soup, cream of mushroom, canned, condensed",
                "condensed canned cream of mushroom soup",
            ),
            ("Spices, garlic powder", "garlic powder"),
            (
                "Yogurt, plain, low fat, 12 grams protein per 8 ounce",
                "low fat plain yogurt",
            ),
            ("Pasta, whole-wheat, dry", "dry whole-wheat pasta"),
            ("Tomato products, canned, sauce", "canned tomato sauce"),
            (
                "Salad dressing, ranch dressing, reduced fat",
                "reduced fat ranch dressing",
            ),
            (
                "Beans, kidney, red, mature seeds, canned, drained solids",
                "canned red kidney beans, drained solids",
            ),
        ] {
            assert_eq!(turned_round(description), said, "{description}");
        }
    }
}
