//! A place in a text, with the look-ahead that reading an amount needs.

use super::token::{Token, TokenKind, tokens};
use super::vocabulary::LONGEST_PHRASE;

/// A text in tokens and how far it has been read.
#[derive(Debug, Clone)]
pub(super) struct Cursor<'t> {
    text: &'t str,
    tokens: Vec<Token>,
    at: usize,
}

impl<'t> Cursor<'t> {
    pub fn new(text: &'t str) -> Self {
        Self {
            text,
            tokens: tokens(text),
            at: 0,
        }
    }

    /// Where reading stands; give it to [`Self::back_to`].
    pub const fn place(&self) -> usize {
        self.at
    }

    /// Unreads everything after `place`.
    pub const fn back_to(&mut self, place: usize) {
        self.at = place;
    }

    /// Moves past `count` tokens.
    pub const fn skip(&mut self, count: usize) {
        self.at += count;
    }

    /// What has not been read.
    pub fn rest(&self) -> &'t str {
        self.tokens
            .get(self.at)
            .map_or("", |token| &self.text[token.start..])
    }

    /// What has been read since `place`, as typed.
    pub fn read_since(&self, place: usize) -> &'t str {
        match (self.tokens.get(place), self.tokens[..self.at].last()) {
            (Some(first), Some(last)) if first.start < last.end => {
                &self.text[first.start..last.end]
            }
            _ => "",
        }
    }

    /// The kind of the token `ahead` of the next one.
    pub fn kind(&self, ahead: usize) -> Option<&TokenKind> {
        self.tokens.get(self.at + ahead).map(|token| &token.kind)
    }

    /// The word `ahead` of the next token, if a word is there.
    pub fn word(&self, ahead: usize) -> Option<&'t str> {
        let token = self.tokens.get(self.at + ahead)?;
        (token.kind == TokenKind::Word).then(|| &self.text[token.start..token.end])
    }

    /// Whether the token `ahead` is one of these words, by any case.
    pub fn is_word(&self, ahead: usize, words: &[&str]) -> bool {
        self.word(ahead)
            .is_some_and(|word| words.iter().any(|one| one.eq_ignore_ascii_case(word)))
    }

    /// Whether the token `ahead` is one of these marks.
    pub fn is_mark(&self, ahead: usize, marks: &[char]) -> bool {
        matches!(self.kind(ahead), Some(TokenKind::Mark(mark)) if marks.contains(mark))
    }

    /// Whether the token `ahead` is a number of any form, also a faulty one.
    pub fn is_number(&self, ahead: usize) -> bool {
        matches!(
            self.kind(ahead),
            Some(
                TokenKind::Integer(_)
                    | TokenKind::Decimal(_)
                    | TokenKind::Fraction(_)
                    | TokenKind::NotANumber(_)
            )
        )
    }

    /// Whether no space lies between the token `ahead` and the one before it.
    pub fn is_glued(&self, ahead: usize) -> bool {
        let here = self.at + ahead;
        match (
            here.checked_sub(1)
                .and_then(|before| self.tokens.get(before)),
            self.tokens.get(here),
        ) {
            (Some(before), Some(token)) => before.end == token.start,
            _ => false,
        }
    }

    /// The longest phrase of words from the token `ahead` on that `meaning`
    /// knows, and how many tokens it has. Hyphens inside count as spaces.
    pub fn phrase<T>(
        &self,
        ahead: usize,
        meaning: impl Fn(&str) -> Option<T>,
    ) -> Option<(T, usize)> {
        let mut phrase = String::new();
        let mut found = None;
        let mut length = 0;
        for _ in 0..LONGEST_PHRASE {
            let hyphens = usize::from(length > 0 && self.is_mark(ahead + length, &['-']));
            let Some(word) = self.word(ahead + length + hyphens) else {
                break;
            };
            length += hyphens + 1;
            if !phrase.is_empty() {
                phrase.push(' ');
            }
            phrase.push_str(word);
            if let Some(meaning) = meaning(&phrase) {
                found = Some((meaning, length));
            }
        }
        found
    }
}
