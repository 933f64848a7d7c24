//! Text cut into numbers, words and marks.

use super::vocabulary;
use super::{Amount, QuantityError};

/// One piece of a text.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Token {
    /// What it is.
    pub kind: TokenKind,
    /// Byte offset of its first character.
    pub start: usize,
    /// Byte offset after its last character.
    pub end: usize,
}

/// What a piece of text is.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum TokenKind {
    /// Digits without point or fraction line; may take a fraction after them.
    Integer(Amount),
    /// Digits with a decimal point or comma.
    Decimal(Amount),
    /// A fraction, written with a line or as one sign.
    Fraction(Amount),
    /// What looks like a number and is not.
    NotANumber(QuantityError),
    /// Letters, with apostrophes inside.
    Word,
    /// Any other character.
    Mark(char),
}

/// Cuts a text into tokens; white space and full stops after words fall away.
pub fn tokens(text: &str) -> Vec<Token> {
    let mut scanner = Scanner { text, at: 0 };
    std::iter::from_fn(|| scanner.next()).collect()
}

struct Scanner<'t> {
    text: &'t str,
    at: usize,
}

impl<'t> Scanner<'t> {
    fn rest(&self) -> &'t str {
        &self.text[self.at..]
    }

    fn next(&mut self) -> Option<Token> {
        let skipped = self.rest().len() - self.rest().trim_start().len();
        self.at += skipped;
        let start = self.at;
        let first = self.rest().chars().next()?;
        let kind = if first.is_ascii_digit() || self.starts_with_decimal_point() {
            self.number()
        } else if let Some(value) = vocabulary::fraction_sign(first) {
            self.at += first.len_utf8();
            TokenKind::Fraction(value)
        } else if first.is_alphabetic() {
            self.word()
        } else {
            self.at += first.len_utf8();
            TokenKind::Mark(first)
        };
        let end = match kind {
            // The full stop of an abbreviation is skipped but not part of it.
            TokenKind::Word => start + self.text[start..self.at].trim_end_matches('.').len(),
            _ => self.at,
        };
        Some(Token { kind, start, end })
    }

    /// Letters and inner apostrophes, and the full stop that may follow.
    fn word(&mut self) -> TokenKind {
        let rest = self.rest();
        let mut end = rest.len();
        for (at, character) in rest.char_indices() {
            let inner_apostrophe = matches!(character, '\'' | '’')
                && rest[at + character.len_utf8()..].starts_with(char::is_alphabetic);
            if !character.is_alphabetic() && !inner_apostrophe {
                end = at;
                break;
            }
        }
        if rest[end..].starts_with('.') {
            end += 1;
        }
        self.at += end;
        TokenKind::Word
    }

    fn starts_with_decimal_point(&self) -> bool {
        let mut characters = self.rest().chars();
        characters.next() == Some('.') && characters.next().is_some_and(|c| c.is_ascii_digit())
    }

    /// A run of digits with points, commas and fraction lines inside.
    fn number(&mut self) -> TokenKind {
        let start = self.at;
        let digits = self.decimal_digits();
        let Some(denominators) = self.below_the_line() else {
            let typed = &self.text[start..self.at];
            return plain_number(typed, &digits);
        };
        let typed = &self.text[start..self.at];
        match denominators.as_slice() {
            [denominator] => fraction(typed, &digits, denominator),
            _ => malformed(typed),
        }
    }

    /// Digits, points and commas up to whatever ends a number.
    fn decimal_digits(&mut self) -> String {
        let rest = self.rest();
        let mut end = 0;
        while let Some(character) = rest[end..].chars().next() {
            let digit_follows =
                rest[end + character.len_utf8()..].starts_with(|next: char| next.is_ascii_digit());
            if character.is_ascii_digit() || (matches!(character, '.' | ',') && digit_follows) {
                end += 1;
            } else {
                break;
            }
        }
        self.at += end;
        rest[..end].to_owned()
    }

    /// The digits after each fraction line, if there is one here.
    fn below_the_line(&mut self) -> Option<Vec<String>> {
        let mut parts = Vec::new();
        loop {
            let rest = self.rest();
            let after_space = rest.trim_start_matches(' ');
            let Some(line) = after_space
                .chars()
                .next()
                .filter(|c| matches!(c, '/' | '⁄' | '∕'))
            else {
                break;
            };
            let below = after_space[line.len_utf8()..].trim_start_matches(' ');
            if !below.starts_with(|c: char| c.is_ascii_digit()) {
                break;
            }
            self.at += rest.len() - below.len();
            parts.push(self.decimal_digits());
        }
        (!parts.is_empty()).then_some(parts)
    }
}

fn malformed(typed: &str) -> TokenKind {
    TokenKind::NotANumber(QuantityError::Malformed {
        words: typed.to_owned(),
    })
}

fn too_fine(typed: &str) -> TokenKind {
    TokenKind::NotANumber(QuantityError::TooFine {
        words: typed.to_owned(),
    })
}

fn fraction(typed: &str, above: &str, below: &str) -> TokenKind {
    let whole = |digits: &str| digits.chars().all(|c| c.is_ascii_digit());
    if !whole(above) || !whole(below) {
        return malformed(typed);
    }
    match (above.parse(), below.parse()) {
        (Ok(_), Ok(0)) => TokenKind::NotANumber(QuantityError::ZeroDenominator {
            words: typed.to_owned(),
        }),
        (Ok(above), Ok(below)) => {
            Amount::fraction(above, below).map_or_else(|| too_fine(typed), TokenKind::Fraction)
        }
        _ => too_fine(typed),
    }
}

/// Digits with points and commas, of which one may be a decimal sign.
///
/// A comma before exactly three digits groups thousands, unless the digits
/// before it are a lone zero; any other comma is a decimal sign.
fn plain_number(typed: &str, digits: &str) -> TokenKind {
    let Some(plain) = without_grouping(digits) else {
        return malformed(typed);
    };
    if !plain.contains('.') && plain.trim_start_matches('0').len() > 18 {
        return TokenKind::NotANumber(QuantityError::TooLarge {
            words: typed.to_owned(),
        });
    }
    match Amount::from_digits(&plain) {
        None => too_fine(typed),
        Some(amount) if plain.contains('.') => TokenKind::Decimal(amount),
        Some(amount) => TokenKind::Integer(amount),
    }
}

/// The digits with at most one decimal point, or nothing if they are no number.
fn without_grouping(digits: &str) -> Option<String> {
    let (whole, decimals) = match digits.split_once('.') {
        Some((_, after)) if after.contains(['.', ',']) => return None,
        Some((whole, decimals)) => (whole, Some(decimals)),
        None => (digits, None),
    };
    let mut groups = whole.split(',');
    let first = groups.next().unwrap_or_default();
    let groups: Vec<&str> = groups.collect();
    if groups.is_empty() {
        return Some(digits.to_owned());
    }
    let groups_thousands = (1..=3).contains(&first.len())
        && !first.starts_with('0')
        && groups.iter().all(|group| group.len() == 3);
    match (groups_thousands, groups.as_slice(), decimals) {
        (true, _, None) => Some(whole.replace(',', "")),
        (true, _, Some(decimals)) => Some(format!("{}.{decimals}", whole.replace(',', ""))),
        (false, [decimals], None) => Some(format!("{first}.{decimals}")),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn commas_group_or_divide() {
        for (digits, plain) in [
            ("1,000", Some("1000")),
            ("12,345,678", Some("12345678")),
            ("1,5", Some("1.5")),
            ("0,250", Some("0.250")),
            ("1,2500", Some("1.2500")),
            ("1,000.5", Some("1000.5")),
            ("1,5,2", None),
            ("1.2.3", None),
            ("1.000,5", None),
        ] {
            assert_eq!(without_grouping(digits).as_deref(), plain, "{digits}");
        }
    }

    #[test]
    fn offsets_point_into_the_text() {
        let text = "1½ fl. oz (\u{20ac})";
        let words: Vec<&str> = tokens(text)
            .iter()
            .map(|token| &text[token.start..token.end])
            .collect();
        assert_eq!(words, ["1", "½", "fl", "oz", "(", "\u{20ac}", ")"]);
    }
}
