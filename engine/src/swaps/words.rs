//! What the words of a description say when foods are compared.

use crate::foods::{singular, words};
use crate::tables::{self, TableError};
use serde::Deserialize;
use std::collections::BTreeMap;

/// What a word says of a food, besides which food it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "lowercase")]
pub(super) enum Class {
    /// Nothing: "with", "added", "mature".
    Quiet,
    /// How much fat, salt, sugar or bran: "reduced", "unsalted", "skinless".
    /// Foods that differ in such words only are variants of one food.
    Aim,
    /// Not cooked.
    Raw,
    /// Cooked or canned.
    Ready,
    /// Mixed as it is eaten: stronger than "dry" and "condensed".
    Prepared,
    /// Without its water.
    Dry,
    /// To be thinned.
    Concentrated,
    /// Makes another thing of the food: "juice", "meal". It is part of the name.
    Thing,
    /// Of no use in a school kitchen unless it is asked for: "imitation".
    Poor,
}

#[derive(Deserialize)]
struct WordRow {
    word: String,
    class: Class,
}

/// The table of words.
#[derive(Debug, Clone)]
pub(super) struct WordClasses(BTreeMap<String, Class>);

impl WordClasses {
    /// Reads the table.
    ///
    /// # Errors
    /// At the first row with an unknown class, or with a word of an earlier row.
    pub fn from_csv(text: &str) -> Result<Self, TableError> {
        const TABLE: &str = "swap_words";
        let mut classes = BTreeMap::new();
        for row in tables::read::<WordRow>(TABLE, text)? {
            let word = row.row.word;
            if classes.insert(word.clone(), row.row.class).is_some() {
                return Err(TableError {
                    table: TABLE.to_owned(),
                    line: row.line,
                    problem: format!("\"{word}\" stands above already: remove one of the two"),
                });
            }
        }
        Ok(Self(classes))
    }

    /// The class of a singular word; nothing for a word that names a food.
    /// Numbers ("2 milkfat", "80 lean") speak of degree, never of which food.
    pub fn class(&self, word: &str) -> Option<Class> {
        if word.starts_with(|first: char| first.is_ascii_digit()) {
            return Some(Class::Aim);
        }
        self.0.get(word).copied()
    }

    /// Whether a word of a line says in which state a food is, or how much fat,
    /// salt or sugar is in it.
    pub fn is_state(&self, word: &str) -> bool {
        matches!(
            self.class(&singular(&word.to_lowercase())),
            Some(
                Class::Raw
                    | Class::Ready
                    | Class::Prepared
                    | Class::Dry
                    | Class::Concentrated
                    | Class::Aim
            )
        )
    }
}

/// The state in which a food is measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Form {
    /// Its words do not say.
    Unstated,
    /// Raw or frozen.
    Raw,
    /// Cooked, canned or ready to eat.
    Ready,
    /// Dry.
    Dry,
    /// Condensed.
    Concentrated,
}

/// A description as comparisons see it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Sorted {
    /// Words that tell which food it is, in the singular, each once.
    pub name: Vec<String>,
    /// Those of them that make another thing of it.
    pub things: Vec<String>,
    /// Its state.
    pub form: Form,
    /// Number of words that make it of little use.
    pub poor: usize,
    /// Number of words in capitals: trade names.
    pub trade_names: usize,
}

/// Sorts the words of a description. `grain` tells that "raw" means dry, as it
/// does for grains and legumes.
pub(super) fn sort(classes: &WordClasses, description: &str, grain: bool) -> Sorted {
    let mut sorted = Sorted {
        name: Vec::new(),
        things: Vec::new(),
        form: Form::Unstated,
        poor: 0,
        trade_names: 0,
    };
    let mut seen = Vec::new();
    let mut before = String::new();
    for word in words(description) {
        let text = singular(&word.text);
        let class = classes.class(&text);
        match class {
            None | Some(Class::Thing) => {
                if class.is_some() && !word.bracketed {
                    sorted.things.push(text.clone());
                }
                sorted.trade_names += usize::from(word.capitals);
                if !word.bracketed && !sorted.name.contains(&text) {
                    sorted.name.push(text.clone());
                }
            }
            Some(Class::Quiet | Class::Aim) => {}
            Some(Class::Poor) => sorted.poor += 1,
            // "From concentrate" has its water again, "commercially prepared"
            // is no mix, and nuts are "dry roasted".
            Some(Class::Concentrated) if before == "from" => {}
            Some(Class::Prepared) if before == "commercially" => {}
            Some(class) => seen.push(class),
        }
        before = text;
    }
    sorted.form = form(&seen, grain);
    sorted
}

fn form(seen: &[Class], grain: bool) -> Form {
    let has = |class| seen.contains(&class);
    match () {
        () if has(Class::Prepared) => Form::Ready,
        () if has(Class::Dry) => Form::Dry,
        () if has(Class::Concentrated) => Form::Concentrated,
        () if grain && has(Class::Raw) && !has(Class::Ready) => Form::Dry,
        () if has(Class::Ready) => Form::Ready,
        () if has(Class::Raw) => Form::Raw,
        () => Form::Unstated,
    }
}

#[cfg(test)]
mod tests {
    use super::{Form, WordClasses, sort};
    use nutrient_data::kitchen::SWAP_WORDS;

    #[test]
    fn a_word_has_one_class() {
        let error = WordClasses::from_csv("word,class\nraw,raw\nraw,ready\n").unwrap_err();
        assert_eq!(error.line, 3, "{error}");
        assert!(error.to_string().contains("remove"), "{error}");
        assert!(WordClasses::from_csv("word,class\nraw,rare\n").is_err());
    }

    /// SR28 descriptions; what they mean is common practice, no source.
    #[test]
    fn descriptions_are_sorted() {
        let classes = WordClasses::from_csv(SWAP_WORDS).expect("the committed table");
        for (description, grain, name, form) in [
            (
                "Soy sauce made from soy and wheat (shoyu), low sodium",
                false,
                "soy sauce wheat",
                Form::Unstated,
            ),
            (
                "Soup, chicken broth, canned, condensed",
                false,
                "soup chicken broth",
                Form::Concentrated,
            ),
            (
                "Soup, chicken broth cubes, dry, prepared with water",
                false,
                "soup chicken broth",
                Form::Ready,
            ),
            (
                "Soup, chicken broth cubes, dry",
                false,
                "soup chicken broth",
                Form::Dry,
            ),
            (
                "Rice, brown, long-grain, raw",
                true,
                "rice long grain",
                Form::Dry,
            ),
            ("Carrots, raw", false, "carrot", Form::Raw),
            (
                "Bread, white, commercially prepared (includes soft bread crumbs)",
                false,
                "bread",
                Form::Unstated,
            ),
            (
                "Orange juice, chilled, includes from concentrate",
                false,
                "orange juice chilled",
                Form::Unstated,
            ),
            (
                "Milk, reduced fat, fluid, 2% milkfat",
                false,
                "milk",
                Form::Unstated,
            ),
        ] {
            let sorted = sort(&classes, description, grain);
            assert_eq!(sorted.name.join(" "), name, "{description}");
            assert_eq!(sorted.form, form, "{description}");
        }
    }
}
