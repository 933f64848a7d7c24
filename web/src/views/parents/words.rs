//! Words of the page for families. Each is asked for in a language, since both
//! may stand on one page.

use crate::language::{FluentValue, Language, Say, of_table_in, say, say_in};
use crate::named;
use crate::views::recipe::sentence;
use engine::allergens::Allergen;
use engine::foods::NutrientId;
use engine::label::{FactsPanel, LabelTables, PanelRow};
use engine::week::{Date, GradeGroup, MealKind};
use yew::prelude::*;

/// Leads to the page for families.
pub const TO_FAMILIES: Say = Say("parents-to");
pub const WAYS: Say = Say("parents-ways");
pub const LANGUAGES: Say = Say("parents-languages");
pub const WITH_PANELS: Say = Say("parents-with-panels");
pub const PRINT: Say = Say("parents-print");
pub const SAVE: Say = Say("parents-save");
pub const SAVE_HOW: Say = Say("parents-save-how");

/// A message in a language.
pub fn text(tongue: Language, key: &str) -> String {
    say_in(tongue, key, &[])
}

fn with(tongue: Language, key: &str, name: &str, value: impl Into<FluentValue<'static>>) -> String {
    say_in(tongue, key, &[(name, value.into())])
}

/// Title of the document.
pub fn document_title(title: &str) -> String {
    say("parents-title", &[("title", title.into())])
}

/// The way back to the card or the plan.
pub fn back(title: &str) -> String {
    say("parents-back", &[("title", title.into())])
}

/// The name of a choice of languages, each in itself.
pub fn tongues(choice: &[Language]) -> AttrValue {
    let names: Vec<&str> = choice.iter().map(|tongue| tongue.own_name()).collect();
    names.join(" + ").into()
}

/// A figure that is not fully known.
pub fn at_least(tongue: Language, figure: &str) -> String {
    with(tongue, "parents-at-least", "amount", figure.to_owned())
}

/// A figure of the panel: the engine words what is not a plain number.
pub fn figure(tongue: Language, printed: &str) -> String {
    if let Some(amount) = printed.strip_prefix("at least ") {
        return at_least(tongue, amount);
    }
    if let Some(amount) = printed.strip_prefix("less than ") {
        return with(tongue, "parents-less-than", "amount", amount.to_owned());
    }
    match printed {
        "not known" => text(tongue, "parents-not-known"),
        figure => figure.to_owned(),
    }
}

/// What stands before and behind the amount of a row: "Includes" and "Added
/// Sugars".
pub fn around_amount(tongue: Language, row: &PanelRow) -> (String, String) {
    const MARK: &str = "\u{1}";
    let is_known = row.cells.iter().any(|cell| cell.exact.is_some());
    let key = match row.nutrient {
        // "Includes not known Added Sugars" is no sentence.
        NutrientId::ADDED_SUGARS if !is_known => "parents-added-sugars",
        nutrient => line_of(nutrient),
    };
    let line = with(tongue, key, "amount", MARK);
    match line.split_once(MARK) {
        Some((before, after)) => (before.trim_end().to_owned(), after.to_owned()),
        // A nutrient that is listed on request has its name from the table.
        None => (of_table_in(tongue, &row.name), String::new()),
    }
}

/// The nutrients whose rows are left out for their small amounts.
pub fn left_out(tongue: Language, facts: &FactsPanel, tables: &LabelTables) -> Option<String> {
    let rows = facts.left_out.iter().filter_map(|id| tables.nutrient(*id));
    let names: Vec<String> = rows
        .map(|row| match tongue {
            Language::English => row.in_text.clone(),
            Language::Spanish => small(&of_table_in(tongue, &row.name)),
        })
        .collect();
    let (last, others) = names.split_last()?;
    let name = ("name", last.clone().into());
    Some(match others {
        [] => say_in(tongue, "parents-left-out-one", &[name]),
        others => {
            let names = ("names", others.join(", ").into());
            say_in(tongue, "parents-left-out", &[names, name])
        }
    })
}

/// A name inside a sentence.
fn small(name: &str) -> String {
    let mut letters = name.chars();
    let first = letters.next().into_iter().flat_map(char::to_lowercase);
    first.chain(letters).collect()
}

/// The percent Daily Value inside running text.
pub fn daily_value(tongue: Language, percent: &str) -> String {
    match percent {
        "not known" => text(tongue, "parents-daily-value-unknown"),
        percent => with(
            tongue,
            "parents-daily-value",
            "percent",
            figure(tongue, percent),
        ),
    }
}

/// The line of a nutrient that every panel lists.
fn line_of(nutrient: NutrientId) -> &'static str {
    match nutrient.0 {
        204 => "parents-nutrient-204",
        606 => "parents-nutrient-606",
        605 => "parents-nutrient-605",
        601 => "parents-nutrient-601",
        307 => "parents-nutrient-307",
        205 => "parents-nutrient-205",
        291 => "parents-nutrient-291",
        269 => "parents-nutrient-269",
        539 => "parents-nutrient-539",
        203 => "parents-nutrient-203",
        328 => "parents-nutrient-328",
        301 => "parents-nutrient-301",
        303 => "parents-nutrient-303",
        306 => "parents-nutrient-306",
        _ => "",
    }
}

/// The size of a serving: the office's own words, and the weight.
pub fn serving_size(tongue: Language, facts: &FactsPanel, words: &str) -> String {
    if !facts.serving_size.ends_with("(weight not known)") {
        return facts.serving_size.clone();
    }
    let words = match words.trim() {
        "" => text(tongue, "parents-one-serving"),
        words => words.to_owned(),
    };
    with(tongue, "parents-weight-not-known", "serving", words)
}

/// Lines that are not counted.
pub fn open_lines(tongue: Language, count: usize) -> String {
    with(tongue, "parents-open-lines", "count", count)
}

/// An allergen's name.
pub fn allergen(tongue: Language, allergen: Allergen) -> String {
    text(tongue, named::allergen(allergen).0)
}

/// "Lunch (K-5, 6-8)".
pub fn meal(tongue: Language, kind: MealKind, groups: &[GradeGroup]) -> String {
    let groups: Vec<&str> = groups.iter().map(|group| group.0.as_str()).collect();
    say_in(
        tongue,
        "parents-meal",
        &[
            ("kind", sentence(&text(tongue, named::meal(kind).0)).into()),
            ("groups", groups.join(", ").into()),
        ],
    )
}

/// A day, with its weekday.
pub fn day(tongue: Language, date: Date) -> String {
    let written = date.to_string();
    let mut parts = written.split('-');
    let year = parts.next().unwrap_or_default().to_owned();
    let month = format!("m{}", parts.next().unwrap_or_default());
    let day = parts.next().unwrap_or_default().trim_start_matches('0');
    say_in(
        tongue,
        "parents-day",
        &[
            ("weekday", date.weekday().into()),
            ("day", day.to_owned().into()),
            ("month", month.into()),
            ("year", year.into()),
        ],
    )
}

/// What stands at the end of each page.
pub fn ending(tongue: Language) -> Html {
    html! {
        <p class="family-ending">{ text(tongue, "parents-ending") }</p>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn dates_are_said_in_both_languages() {
        let date = "2026-11-30".parse().unwrap();
        assert_eq!(day(Language::English, date), "Monday, November 30, 2026");
        assert_eq!(
            day(Language::Spanish, date),
            "lunes, 30 de noviembre de 2026"
        );
    }

    #[test]
    fn figures_of_the_panel_are_said_in_both_languages() {
        for (printed, spanish) in [
            ("8 g", "8 g"),
            ("less than 5 mg", "menos de 5 mg"),
            ("at least 210 mg", "al menos 210 mg"),
            ("not known", "no se conoce"),
        ] {
            assert_eq!(figure(Language::English, printed), printed);
            assert_eq!(figure(Language::Spanish, printed), spanish);
        }
    }

    /// Every text that the label's table prints in place of a number has words
    /// in Spanish.
    #[test]
    fn no_printed_words_are_left_in_english() {
        let table = nutrient_data::rules::LABEL_ROUNDING;
        let mut reader = csv::Reader::from_reader(table.as_bytes());
        let header = reader.headers().unwrap().clone();
        let prints = header.iter().position(|name| name == "prints").unwrap();
        let mut words = 0;
        for row in reader.records() {
            let row = row.unwrap();
            let printed = &row[prints];
            if printed.contains(char::is_alphabetic) && printed.starts_with(char::is_alphabetic) {
                words += 1;
                assert_ne!(figure(Language::Spanish, printed), printed);
            }
        }
        assert!(words > 0);
    }
}
