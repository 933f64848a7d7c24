//! Singular forms of English food words, so that "berries" finds "berry".
//!
//! The aim is one form for both numbers, not good English: "cookie" and
//! "cookies" both become "cooky".

/// Words in -ves whose singular ends in -f or -fe.
const F_PLURALS: &[(&str, &str)] = &[
    ("calves", "calf"),
    ("halves", "half"),
    ("knives", "knife"),
    ("leaves", "leaf"),
    ("loaves", "loaf"),
];

/// The singular of a folded word; a word that is singular stays as it is.
pub fn singular(word: &str) -> String {
    if word.len() < 4 || !word.ends_with(|last: char| last.is_ascii_lowercase()) {
        // "peas" has four letters; "gas", "pie" and "2" stay.
        return word.to_owned();
    }
    if let Some((_, one)) = F_PLURALS.iter().find(|(many, _)| *many == word) {
        return (*one).to_owned();
    }
    match word {
        "geese" => return "goose".to_owned(),
        "species" => return word.to_owned(),
        _ => {}
    }
    let stem = |cut: usize| &word[..word.len() - cut];
    if word.ends_with("ies") {
        return if word.len() == 4 {
            stem(1).to_owned()
        } else {
            format!("{}y", stem(3))
        };
    }
    if word.ends_with("ie") && word.len() > 4 {
        return format!("{}y", stem(2));
    }
    if word.ends_with("oes") && word.len() > 5 {
        return stem(2).to_owned();
    }
    if word.ends_with("oe") && word.len() > 5 {
        // "tomatoe", half typed or misspelt.
        return stem(1).to_owned();
    }
    let hissing = ["ches", "shes", "xes", "sses", "zzes"];
    if hissing.iter().any(|end| word.ends_with(end)) {
        return stem(2).to_owned();
    }
    if word.ends_with("ss") || word.ends_with("us") || word.ends_with("is") {
        return word.to_owned();
    }
    if word.ends_with('s') {
        return stem(1).to_owned();
    }
    word.to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Common practice, no source.
    #[test]
    fn one_form_for_both_numbers() {
        let table = [
            ("berry", "berries"),
            ("cherry", "cherries"),
            ("cookie", "cookies"),
            ("pie", "pies"),
            ("tomato", "tomatoes"),
            ("potato", "potatoes"),
            ("tomatoe", "tomatos"),
            ("leaf", "leaves"),
            ("half", "halves"),
            ("loaf", "loaves"),
            ("olive", "olives"),
            ("chive", "chives"),
            ("peach", "peaches"),
            ("radish", "radishes"),
            ("box", "boxes"),
            ("sandwich", "sandwiches"),
            ("cheese", "cheeses"),
            ("grape", "grapes"),
            ("egg", "eggs"),
            ("pea", "peas"),
            ("sausage", "sausages"),
            ("goose", "geese"),
            ("asparagus", "asparagus"),
            ("couscous", "couscous"),
            ("bran", "bran"),
            ("cress", "cress"),
        ];
        for (one, many) in table {
            assert_eq!(singular(one), singular(many), "{one}/{many}");
        }
    }
}
