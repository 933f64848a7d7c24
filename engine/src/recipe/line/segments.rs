//! The text of a line cut where commas, brackets and dashes cut it.

/// A stretch of a line.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Segment<'t> {
    /// Its text, trimmed and never empty.
    pub text: &'t str,
    /// Whether it stood in brackets.
    pub bracketed: bool,
}

/// Cuts a text at commas, semicolons, tabs, spaced dashes and colons, and
/// around brackets. A comma between digits is part of a number.
pub(super) fn segments(text: &str) -> Vec<Segment<'_>> {
    let mut found = Vec::new();
    let mut start = 0;
    let mut depth = 0_usize;
    for (at, character) in text.char_indices() {
        let end = at + character.len_utf8();
        let opens = matches!(character, '(' | '[');
        let closes = matches!(character, ')' | ']') && depth > 0;
        let cuts = match depth {
            0 => opens || separates(text, at, character),
            1 => closes,
            _ => false,
        };
        if cuts {
            push(&mut found, &text[start..at], depth > 0);
            start = end;
        }
        depth = depth + usize::from(opens) - usize::from(closes);
    }
    push(&mut found, &text[start..], depth > 0);
    found
}

fn push<'t>(found: &mut Vec<Segment<'t>>, text: &'t str, bracketed: bool) {
    let text = text.trim_matches(|c: char| c.is_whitespace() || matches!(c, ',' | ';' | '*'));
    if text.chars().any(char::is_alphanumeric) {
        found.push(Segment { text, bracketed });
    }
}

fn separates(text: &str, at: usize, character: char) -> bool {
    let before = text[..at].chars().next_back();
    let after = text[at + character.len_utf8()..].chars().next();
    let spaced = |side: Option<char>| side.is_none_or(char::is_whitespace);
    let digit = |side: Option<char>| side.is_some_and(|c| c.is_ascii_digit());
    match character {
        ';' | '\t' => true,
        ',' => !(digit(before) && digit(after)),
        ':' => spaced(after),
        '-' | '–' | '—' => spaced(before) && spaced(after),
        _ => false,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn cuts() {
        for (text, expected) in [
            ("onions, chopped", vec!["onions", "chopped"]),
            ("1,5 kg flour", vec!["1,5 kg flour"]),
            ("flour: 2 lb", vec!["flour", "2 lb"]),
            ("salt - 1 tsp", vec!["salt", "1 tsp"]),
            ("all-purpose flour", vec!["all-purpose flour"]),
            (
                "beans (15 oz (net)) drained",
                vec!["beans", "15 oz (net)", "drained"],
            ),
            ("beans (15 oz", vec!["beans", "15 oz"]),
            ("milk) warm", vec!["milk) warm"]),
        ] {
            let texts: Vec<&str> = segments(text).iter().map(|one| one.text).collect();
            assert_eq!(texts, expected, "{text}");
        }
    }
}
