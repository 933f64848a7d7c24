//! What the sources say, and what of it is in the language files.

use super::super::{Language, files};
use super::messages;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

/// All of a folder's files with this ending, in the order of their names.
fn files_in(folder: &Path, ending: &str) -> Vec<PathBuf> {
    let mut found = Vec::new();
    let entries = fs::read_dir(folder).unwrap_or_else(|error| panic!("{folder:?}: {error}"));
    for entry in entries {
        let path = entry.unwrap().path();
        if path.is_dir() {
            found.extend(files_in(&path, ending));
        } else if path.extension().is_some_and(|own| own == ending) {
            found.push(path);
        }
    }
    found.sort();
    found
}

/// The page's sources without comments and tests: path within `web/src`, text.
fn page_sources() -> Vec<(String, String)> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    files_in(&root, "rs")
        .into_iter()
        .map(|path| {
            let name = path.strip_prefix(&root).unwrap().display().to_string();
            (name, plain(&fs::read_to_string(&path).unwrap()))
        })
        .filter(|(name, _)| !name.contains("tests"))
        .collect()
}

/// A source up to its tests, without comments.
fn plain(text: &str) -> String {
    let text = text
        .split("#[cfg(test)]\nmod tests")
        .next()
        .unwrap_or_default();
    let lines = text
        .lines()
        .filter(|line| !line.trim_start().starts_with("//"));
    lines.collect::<Vec<_>>().join("\n")
}

/// A string literal with what stands before it, since the last one, and the
/// sign that comes after it.
struct Literal {
    before: String,
    text: String,
    after: Option<char>,
}

/// The string literals of a source.
fn literals(text: &str) -> Vec<Literal> {
    let mut found = Vec::new();
    let (mut at, bytes) = (0, text.as_bytes());
    while let Some(start) = text[at..].find('"').map(|offset| at + offset) {
        // The character '"' by itself.
        if start > 0 && bytes[start - 1] == b'\'' && bytes.get(start + 1) == Some(&b'\'') {
            at = start + 2;
            continue;
        }
        let mut end = start + 1;
        while end < bytes.len() && bytes[end] != b'"' {
            end += if bytes[end] == b'\\' { 2 } else { 1 };
        }
        let body = &text[start + 1..end.min(text.len())];
        let rest = text.get(end + 1..).unwrap_or_default();
        found.push(Literal {
            before: text[at..start].trim_end().to_owned(),
            text: joined(body),
            after: rest.trim_start().chars().next(),
        });
        at = (end + 1).min(text.len());
    }
    found
}

/// A literal that goes on in the next line, in one.
fn joined(body: &str) -> String {
    let mut parts = body.split("\\\n");
    let first = parts.next().unwrap_or_default().to_owned();
    parts
        .fold(first, |text, part| text + part.trim_start())
        .replace("\\\"", "\"")
}

fn english() -> BTreeMap<String, BTreeSet<String>> {
    let files = files::of(Language::English).iter();
    files
        .flat_map(|(name, text)| messages(name, text))
        .collect()
}

#[test]
fn every_message_that_is_used_exists_and_none_is_left_over() {
    let messages = english();
    let names: Vec<String> = files::of(Language::English)
        .iter()
        .map(|(name, _)| format!("{name}-"))
        .collect();
    let mut used = BTreeSet::new();
    let mut missing = Vec::new();
    for (file, text) in page_sources() {
        // In a module of words nothing but a message has the form of its key.
        let is_words = file.ends_with("words.rs") || file.starts_with("named");
        for Literal {
            before,
            text: literal,
            ..
        } in literals(&text)
        {
            let is_said = before.ends_with("Say(") || before.ends_with(" say(");
            let has_form = names.iter().any(|name| literal.starts_with(name.as_str()))
                && !literal.contains([' ', '.'])
                && literal != IN_THE_DOCUMENT;
            if messages.contains_key(&literal) {
                used.insert(literal);
            } else if is_said || (is_words && has_form) {
                missing.push(format!("{file}: {literal}"));
            }
        }
    }
    assert!(
        missing.is_empty(),
        "no such message:\n{}",
        missing.join("\n")
    );
    for topic in crate::components::Topic::ALL {
        for part in crate::components::HELP_PARTS {
            let key = crate::components::help_key(topic, part);
            match messages.contains_key(&key) {
                true => drop(used.insert(key)),
                false => missing.push(key),
            }
        }
    }
    assert!(
        missing.is_empty(),
        "no such message:\n{}",
        missing.join("\n")
    );
    let unused: Vec<&String> = messages.keys().filter(|key| !used.contains(*key)).collect();
    assert!(unused.is_empty(), "never said: {unused:#?}");
}

/// The name of a field that has the form of a key.
const IN_THE_DOCUMENT: &str = "week-rules";

/// What a person reads stands in the language files. These places hold words
/// that stay as they are.
const AS_THEY_ARE: [&str; 11] = [
    // 21 CFR 101.9 gives the words of the panel.
    "views/facts/words.rs",
    // The engine's words for a weight that is not known, to tell it by.
    "views/parents/words.rs",
    // A style rule.
    "views/review/running.rs",
    // A citation, and the form of a file.
    "views/about/words.rs",
    "views/foods/words.rs",
    // The functions for JavaScript callers speak English.
    "api/",
    // An example line of a table, in the words that the table takes.
    "views/rules/words.rs",
    // Words of the engine and of the tables, to tell them by.
    "views/recipe/credits/words.rs",
    "words.rs",
    // Errors, whose texts have Spanish words like those of the tables.
    "own.rs",
    "book_file.rs",
];

#[test]
fn no_words_stand_between_the_markup() {
    let mut found = Vec::new();
    for (file, text) in page_sources() {
        if AS_THEY_ARE.iter().any(|place| file.starts_with(place)) {
            continue;
        }
        for literal in literals(&text) {
            let ends_with = |ends: &[&str]| ends.iter().any(|end| literal.before.ends_with(end));
            // A class that is chosen among others stands in braces too.
            let is_class =
                !literal.text.contains(' ') && literal.text.starts_with(char::is_lowercase);
            let is_text =
                (literal.before.ends_with('{') && literal.after == Some('}') && !is_class)
                    || ends_with(&["title=", "aria-label=", " label=", "placeholder=", "alt="]);
            let is_other = ends_with(&[
                "expect(",
                "panic!(",
                "class=",
                "classes!(",
                " d=",
                "viewBox=",
            ]);
            let least = if is_text { 1 } else { 3 };
            if !is_other && words(&literal.text) >= least {
                found.push(format!("{file}: “{}”", literal.text));
            }
        }
    }
    assert!(
        found.is_empty(),
        "not in the language files:\n{}",
        found.join("\n")
    );
}

/// How many words of two letters or more stand in a text.
fn words(text: &str) -> usize {
    let is_word = |word: &&str| {
        let letters = word.trim_matches(|c: char| ".,;:!?“”()".contains(c));
        letters.chars().count() > 1 && letters.chars().all(|c| c.is_alphabetic() || c == '’')
    };
    text.split_whitespace().filter(is_word).count()
}

/// The English texts for which the Spanish file has words: those of the
/// tables, and those that the engine and the page put into errors.
fn known_texts() -> BTreeSet<String> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
    let mut known = BTreeSet::new();
    for folder in [
        "nutrient-data/rules",
        "nutrient-data/kitchen",
        "nutrient-data/tables/added",
    ] {
        for path in files_in(&root.join(folder), "csv") {
            known.extend(cells(&fs::read_to_string(path).unwrap()));
        }
    }
    for table in ["nutrients", "groups", "source_codes"] {
        let path = root.join(format!("nutrient-data/tables/sr28/{table}.csv"));
        known.extend(cells(&fs::read_to_string(path).unwrap()));
    }
    let page = root.join("web/src");
    for path in files_in(&root.join("engine/src"), "rs")
        .into_iter()
        .chain(files_in(&page, "rs"))
    {
        for Literal { text: literal, .. } in literals(&plain(&fs::read_to_string(path).unwrap())) {
            known.extend(literal.split(": ").map(str::to_owned));
            known.insert(literal);
        }
    }
    known
}

fn cells(csv: &str) -> Vec<String> {
    let mut reader = csv::Reader::from_reader(csv.as_bytes());
    let records = reader.records().map(|record| record.unwrap());
    records
        .flat_map(|record| record.iter().map(str::to_owned).collect::<Vec<_>>())
        .collect()
}

fn column(csv: &str, name: &str) -> Vec<String> {
    let mut reader = csv::Reader::from_reader(csv.as_bytes());
    let headers = reader.headers().unwrap().clone();
    let at = headers.iter().position(|header| header == name);
    let at = at.unwrap_or_else(|| panic!("no column {name}"));
    reader
        .records()
        .map(|record| record.unwrap()[at].to_owned())
        .filter(|text| !text.is_empty())
        .collect()
}

fn spanish_of_tables() -> BTreeSet<String> {
    let files = files::of_tables(Language::Spanish).iter();
    files
        .flat_map(|(name, text)| messages(name, text).into_keys())
        .collect()
}

#[test]
fn the_texts_of_the_tables_have_spanish_words() {
    use nutrient_data::{kitchen, rules};
    let nutrients = concat!(env!("CARGO_MANIFEST_DIR"), "/../nutrient-data/tables");
    let read = |file: &str| fs::read_to_string(format!("{nutrients}/{file}")).unwrap();
    let asked = [
        (rules::DIETARY_SPECIFICATIONS.to_owned(), "words"),
        (rules::MEAL_PATTERNS.to_owned(), "words"),
        (rules::WEEK_RULES.to_owned(), "words"),
        (rules::CREDIT_RULES.to_owned(), "words"),
        (rules::GRAIN_GROUPS.to_owned(), "words"),
        (rules::CLAIMS.to_owned(), "words"),
        (rules::CLAIMS.to_owned(), "name"),
        (rules::FOOD_SAFETY.to_owned(), "what"),
        (rules::FOOD_SAFETY.to_owned(), "duration"),
        (rules::LABEL_NUTRIENTS.to_owned(), "name"),
        (kitchen::TREATMENTS.to_owned(), "words"),
        (kitchen::TRIM_YIELDS.to_owned(), "words"),
        (kitchen::PANS.to_owned(), "words"),
        (kitchen::SCALES.to_owned(), "words"),
        (kitchen::SWAP_KINDS.to_owned(), "part"),
        (kitchen::MOVES.to_owned(), "words"),
        (kitchen::MOVES.to_owned(), "effect"),
        (kitchen::PANS.to_owned(), "words"),
        (kitchen::SCALES.to_owned(), "words"),
        (read("sr28/nutrients.csv"), "name"),
        (read("added/nutrients.csv"), "name"),
        (read("sr28/groups.csv"), "name"),
        (read("sr28/source_codes.csv"), "description"),
    ];
    let spanish = spanish_of_tables();
    let missing: BTreeSet<String> = asked
        .iter()
        .flat_map(|(table, name)| column(table, name))
        .filter(|text| !spanish.contains(&super::super::table::key(text)))
        .collect();
    assert!(missing.is_empty(), "without Spanish words: {missing:#?}");
}

#[test]
fn no_spanish_words_are_left_for_texts_that_are_gone() {
    let known: BTreeSet<String> = known_texts()
        .iter()
        .map(|text| super::super::table::key(text))
        .collect();
    let spanish = spanish_of_tables();
    let gone: Vec<&String> = spanish.iter().filter(|key| !known.contains(*key)).collect();
    assert!(gone.is_empty(), "no table says this any more: {gone:#?}");
}
