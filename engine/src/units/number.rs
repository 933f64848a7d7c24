//! Numbers and ranges of numbers at the start of an amount.

use super::cursor::Cursor;
use super::error::LARGEST_AMOUNT;
use super::token::TokenKind;
use super::vocabulary::{self, NumberWord, UnitWord, VagueKind};
use super::{Amount, QuantityError};

/// Marks that a range is written with.
pub(super) const DASHES: [char; 5] = ['-', '–', '—', '−', '‐'];

/// A number, or a range of numbers.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Numbers {
    pub low: Amount,
    pub high: Amount,
    pub form: Form,
    /// Whether the number word itself is loose: "a couple".
    pub approximate: bool,
}

/// How a number was written, where that bears on what may follow.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Form {
    /// "a": needs something that it belongs to.
    Article,
    /// A fraction above one such as 85/15: an amount only if a unit follows.
    ImproperFraction,
    /// Anything else.
    Plain,
}

impl Cursor<'_> {
    /// Reads a number or a range, or nothing if none stands here.
    pub fn numbers(&mut self) -> Result<Option<Numbers>, QuantityError> {
        let start = self.place();
        let Some(first) = self.number()? else {
            return Ok(None);
        };
        let after_first = self.place();
        if self.range_sign()
            && let Some(second) = self.number()?
            && second.form == Form::Plain
        {
            self.check(first, start)?;
            self.check(second, start)?;
            return Ok(Some(Numbers {
                low: first.low.min(second.low),
                high: first.high.max(second.high),
                form: Form::Plain,
                approximate: first.approximate,
            }));
        }
        self.back_to(after_first);
        self.check(first, start)?;
        Ok(Some(first))
    }

    /// Moves past the sign or word between the ends of a range.
    pub fn range_sign(&mut self) -> bool {
        let dashes = usize::from(self.is_mark(0, &DASHES));
        let words = usize::from(self.is_word(dashes, &["to", "or", "through"]));
        // "3- to 4-lb": a hyphen that belongs to the first number.
        self.skip(dashes + words);
        dashes + words > 0
    }

    fn check(&self, number: Numbers, start: usize) -> Result<(), QuantityError> {
        let words = || self.read_since(start).to_owned();
        if number.low.is_zero() {
            return Err(QuantityError::Zero { words: words() });
        }
        if number.high > Amount::whole(LARGEST_AMOUNT) {
            return Err(QuantityError::TooLarge { words: words() });
        }
        Ok(())
    }

    /// Reads one number with the words that multiply it.
    fn number(&mut self) -> Result<Option<Numbers>, QuantityError> {
        let start = self.place();
        let Some(mut number) = self.plain_number()? else {
            self.back_to(start);
            return Ok(None);
        };
        if self.is_mark(0, &['%', '°']) || self.runs_into_a_word() {
            self.back_to(start);
            return Ok(None);
        }
        if let Some(NumberWord::Times(factor)) = self.word(0).and_then(vocabulary::number) {
            self.skip(1);
            let words = self.read_since(start);
            number.low = multiplied(number.low, factor, words)?;
            number.high = number.low;
            number.form = Form::Plain;
        }
        Ok(Some(number))
    }

    fn plain_number(&mut self) -> Result<Option<Numbers>, QuantityError> {
        let plain = |amount, form| {
            Some(Numbers {
                low: amount,
                high: amount,
                form,
                approximate: false,
            })
        };
        Ok(match self.kind(0).cloned() {
            Some(TokenKind::NotANumber(error)) => return Err(error),
            Some(TokenKind::Integer(whole)) => {
                self.skip(1);
                let amount = self.with_fraction(whole)?;
                plain(amount, Form::Plain)
            }
            Some(TokenKind::Decimal(amount)) => {
                self.skip(1);
                plain(amount, Form::Plain)
            }
            Some(TokenKind::Fraction(amount)) => {
                self.skip(1);
                let form = if amount > Amount::ONE {
                    Form::ImproperFraction
                } else {
                    Form::Plain
                };
                plain(amount, form)
            }
            Some(TokenKind::Word) => self.number_in_words()?,
            _ => None,
        })
    }

    /// The fraction after a whole number, if there is one: "1 1/2", "1-1/2",
    /// "1½", "1 and 1/2", "1 and a half".
    fn with_fraction(&mut self, whole: Amount) -> Result<Amount, QuantityError> {
        let start = self.place();
        let joined = self.is_mark(0, &DASHES)
            || self.is_mark(0, &['&', '+'])
            || self.is_word(0, &["and", "n"]);
        let said_and = joined && !self.is_mark(0, &DASHES);
        self.skip(usize::from(joined));
        if said_and && self.is_word(0, &["a", "one"]) {
            self.skip(1);
        }
        let part = match self.kind(0) {
            Some(TokenKind::NotANumber(error)) if !joined => return Err(error.clone()),
            Some(TokenKind::Fraction(part)) if part.is_proper_fraction() => Some(*part),
            Some(TokenKind::Word) if said_and => match self.word(0).and_then(vocabulary::number) {
                Some(NumberWord::Part(part)) => Some(part),
                _ => None,
            },
            _ => None,
        };
        let Some(part) = part else {
            self.back_to(start);
            return Ok(whole);
        };
        self.skip(1);
        whole.plus(part).ok_or_else(|| QuantityError::TooFine {
            words: self.read_since(start).to_owned(),
        })
    }

    fn number_in_words(&mut self) -> Result<Option<Numbers>, QuantityError> {
        let Some(first) = self.word(0).and_then(vocabulary::number) else {
            return Ok(None);
        };
        let start = self.place();
        let approximate = |cursor: &Self| {
            cursor
                .word(0)
                .and_then(vocabulary::vague)
                .is_some_and(|kind| kind == VagueKind::Approximate)
        };
        let mut loose = approximate(self);
        self.skip(1);
        let (amount, form) = match first {
            NumberWord::Times(amount) => (amount, Form::Plain),
            NumberWord::Part(part) => {
                if self.is_half_and_half() {
                    return Ok(None);
                }
                self.skip_of_a();
                (part, Form::Plain)
            }
            NumberWord::Article => match self.word(0).and_then(vocabulary::number) {
                Some(NumberWord::Number(amount)) => {
                    loose |= approximate(self);
                    self.skip(1);
                    self.skip(usize::from(loose && self.is_word(0, &["of"])));
                    (amount, Form::Plain)
                }
                Some(NumberWord::Part(part)) => {
                    self.skip(1);
                    self.skip_of_a();
                    (part, Form::Plain)
                }
                _ => (Amount::ONE, Form::Article),
            },
            NumberWord::Number(whole) => {
                self.skip(usize::from(loose && self.is_word(0, &["of"])));
                let hyphen = usize::from(self.is_mark(0, &['-']));
                match self.word(hyphen).and_then(vocabulary::number) {
                    Some(NumberWord::Part(part)) => {
                        self.skip(hyphen + 1);
                        self.skip_of_a();
                        let words = self.read_since(start);
                        (multiplied(whole, part, words)?, Form::Plain)
                    }
                    _ => (self.with_fraction(whole)?, Form::Plain),
                }
            }
        };
        Ok(Some(Numbers {
            low: amount,
            high: amount,
            form,
            approximate: loose,
        }))
    }

    /// The dairy product, not a number: "half and half", "half & half".
    fn is_half_and_half(&self) -> bool {
        let mut ahead = usize::from(self.is_mark(0, &['-']));
        if !self.is_word(ahead, &["and", "n"]) && !self.is_mark(ahead, &['&']) {
            return false;
        }
        ahead += 1;
        ahead += usize::from(self.is_mark(ahead, &['-']));
        self.is_word(ahead, &["half"])
    }

    /// Moves past the "a" of "half a cup" and the "of a" of "half of a cup".
    pub fn skip_of_a(&mut self) {
        let of = usize::from(self.is_word(0, &["of"]));
        let article = usize::from(self.is_word(of, &["a", "an", "one", "the"]));
        self.skip(of + article);
    }

    /// Whether what was read as a number is part of a word, as in "7-grain",
    /// "7UP" or "2nd": a word that is no unit follows without a space.
    fn runs_into_a_word(&self) -> bool {
        let hyphen = usize::from(self.is_mark(0, &['-']) && self.is_glued(0));
        let glued = self.is_glued(0) && self.is_glued(hyphen);
        let Some(word) = self.word(hyphen).filter(|_| glued) else {
            return false;
        };
        let is_unit = self
            .phrase(hyphen, |phrase| match vocabulary::unit(phrase)? {
                // "10-inch tortillas": a dimension, not an amount.
                UnitWord::Piece(piece) if piece == "inch" && hyphen > 0 => None,
                unit => Some(unit),
            })
            .is_some();
        let may_follow = ["x", "to", "or"]
            .iter()
            .any(|one| one.eq_ignore_ascii_case(word));
        !is_unit && !may_follow && vocabulary::number(word).is_none()
    }
}

fn multiplied(amount: Amount, factor: Amount, words: &str) -> Result<Amount, QuantityError> {
    amount.times(factor).ok_or_else(|| QuantityError::TooFine {
        words: words.to_owned(),
    })
}
