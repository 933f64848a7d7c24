//! An amount with its unit at the start of a text.

use super::cursor::Cursor;
use super::number::{DASHES, Form, Numbers};
use super::read_unit::{ReadUnit, scooped};
use super::stated::containers_of_size;
use super::vocabulary::{self, VagueKind};
use super::{Amount, Quantity, QuantityError, Unit};
use std::str::FromStr;

/// An amount read from the start of a text.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ReadAmount<'t> {
    /// The amount. Where the weight of each container or of the whole is
    /// stated, it is that weight.
    pub quantity: Quantity,
    /// Whether the words say that it is near this ("about", "heaping").
    pub approximate: bool,
    /// The container whose stated contents the amount is: "can".
    pub container: Option<String>,
    /// What was counted or measured besides the stated weight, as in
    /// "1 cup (240 g)".
    pub beside: Option<Quantity>,
    /// Whether the amount is meant for each piece: "(6 oz each)".
    pub each: bool,
    /// How the measure is filled: "packed".
    pub filling: Vec<String>,
    /// The text after the amount.
    pub rest: &'t str,
}

/// Reads an amount at the start of a text: "1 1/2 cups flour" is one and a
/// half cups and leaves "flour". Nothing if the text starts with no amount.
///
/// # Errors
/// When the text starts with what looks like an amount and is none.
pub fn read_amount(text: &str) -> Result<Option<ReadAmount<'_>>, QuantityError> {
    let mut cursor = Cursor::new(text);
    if cursor.is_mark(0, &DASHES) && cursor.is_glued(1) && cursor.is_number(1) {
        cursor.skip(2);
        return Err(QuantityError::Negative {
            words: cursor.read_since(0).to_owned(),
        });
    }
    let Some(mut read) = cursor.amount()? else {
        return Ok(None);
    };
    read.rest = cursor.rest();
    Ok(Some(read))
}

impl FromStr for Quantity {
    type Err = QuantityError;

    /// Reads a text that is an amount and nothing else.
    fn from_str(text: &str) -> Result<Self, QuantityError> {
        if text.trim().is_empty() {
            return Err(QuantityError::Nothing);
        }
        let words = || text.trim().to_owned();
        let read = read_amount(text)?.ok_or_else(|| QuantityError::NoNumber { words: words() })?;
        if read.rest.is_empty() {
            Ok(read.quantity)
        } else {
            Err(QuantityError::LeftOver {
                words: read.rest.to_owned(),
            })
        }
    }
}

impl<'t> Cursor<'t> {
    /// Reads an amount, with sums and the weights stated beside it.
    pub(super) fn amount(&mut self) -> Result<Option<ReadAmount<'t>>, QuantityError> {
        let Some(mut read) = self.simple_amount()? else {
            return Ok(None);
        };
        self.range_with_units(&mut read)?;
        self.terms(&mut read)?;
        self.stated_beside(&mut read)?;
        self.alternative(&mut read)?;
        if self.is_word(0, &["or", "more"])
            && let Some((_, length)) = self.phrase(0, approximate)
        {
            self.skip(length);
            read.approximate = true;
        }
        if self.is_word(0, &["each", "apiece"]) && !matches!(read.quantity.unit, Unit::Count(_)) {
            self.skip(1);
            read.each = true;
        }
        if self.is_word(0, &["of"]) {
            self.skip_of_a();
        }
        Ok(Some(read))
    }

    /// One number or range with one unit.
    pub(super) fn simple_amount(&mut self) -> Result<Option<ReadAmount<'t>>, QuantityError> {
        let start = self.place();
        let mut loose = self.loose_words();
        let numbers = if self.is_can_number() {
            None
        } else {
            let Some(numbers) = self.numbers()? else {
                self.back_to(start);
                return Ok(None);
            };
            loose |= numbers.approximate;
            Some(numbers)
        };
        let (low, high) = numbers.map_or((Amount::ONE, Amount::ONE), |n| (n.low, n.high));
        let count = Quantity {
            low,
            high,
            unit: Unit::pieces(),
        };
        if let Some(mut read) = self.of_stated_size(&count)? {
            read.approximate |= loose;
            return Ok(Some(read));
        }
        let unit = self.unit().or_else(|| self.unit_of_a());
        if unit.is_none() && !self.may_count_food(numbers) {
            self.back_to(start);
            return Ok(None);
        }
        let unit = unit.unwrap_or_else(|| ReadUnit {
            unit: Unit::pieces(),
            approximate: false,
            container: None,
            filling: Vec::new(),
        });
        let typed = self.read_since(start);
        let count = containers_of_size(&count, &unit).unwrap_or(count);
        Ok(Some(ReadAmount {
            quantity: scooped(count, unit.unit).ok_or_else(|| too_fine(typed))?,
            approximate: loose | unit.approximate,
            container: unit.container,
            beside: None,
            each: false,
            filling: unit.filling,
            rest: "",
        }))
    }

    /// "1/2 of a small" onion.
    fn unit_of_a(&mut self) -> Option<ReadUnit> {
        let start = self.place();
        self.skip_of_a();
        let unit = self.unit();
        if unit.is_none() {
            self.back_to(start);
        }
        unit
    }

    /// Whether a number without a unit can count the food itself: "a" needs a
    /// food after it, and 85/15 is no number of pieces.
    fn may_count_food(&self, numbers: Option<Numbers>) -> bool {
        match numbers.map(|numbers| numbers.form) {
            Some(Form::Plain) => true,
            Some(Form::Article) => self.word(0).is_some(),
            Some(Form::ImproperFraction) | None => false,
        }
    }

    /// Moves past "about" and its like before a number.
    fn loose_words(&mut self) -> bool {
        let mut loose = false;
        loop {
            if self.is_mark(0, &['~', '≈']) {
                self.skip(1);
            } else if let Some((_, length)) = self.phrase(0, approximate)
                && vocabulary::number(self.word(0).unwrap_or("")).is_none()
            {
                self.skip(length);
            } else {
                return loose;
            }
            loose = true;
        }
    }

    /// Whether an amount can start here, so that a fault in what follows is a
    /// fault of an amount.
    pub(super) fn starts_amount(&self) -> bool {
        let mut ahead = self.clone();
        ahead.loose_words();
        ahead.is_number(0) || ahead.word(0).and_then(vocabulary::number).is_some()
    }

    /// The other end of a range that repeats the unit: "2 tbsp to 3 tbsp".
    fn range_with_units(&mut self, read: &mut ReadAmount<'t>) -> Result<(), QuantityError> {
        let start = self.place();
        if self.range_sign()
            && self.starts_amount()
            && let Some(other) = self.simple_amount()?
            && other.quantity.unit != Unit::pieces()
            && let Some(range) = read.quantity.up_to(&other.quantity)
        {
            read.quantity = range;
            return Ok(());
        }
        self.back_to(start);
        Ok(())
    }

    /// What is added or taken away: "2 lb 4 oz", "1 cup plus 2 tbsp",
    /// "1 cup minus 1 tbsp".
    pub(super) fn terms(&mut self, read: &mut ReadAmount<'t>) -> Result<(), QuantityError> {
        loop {
            let start = self.place();
            let takes_away = self.is_word(0, &["minus", "less"]);
            let adds = self.is_word(0, &["plus"]) || self.is_mark(0, &['+']);
            let joins = adds || self.is_word(0, &["and"]) || self.is_mark(0, &['&', ',']);
            self.skip(usize::from(takes_away || joins));
            let term = if self.starts_amount() {
                self.simple_amount()?
            } else {
                None
            };
            let Some(term) = term.filter(|term| !matches!(term.quantity.unit, Unit::Count(_)))
            else {
                self.back_to(start);
                return Ok(());
            };
            let smaller = read
                .quantity
                .unit
                .ratio_to(&term.quantity.unit)
                .is_some_and(|ratio| ratio > Amount::ONE);
            let explicit = takes_away || adds;
            let typed = self.read_since(start);
            let result = match (explicit, smaller) {
                (false, false) => {
                    self.back_to(start);
                    return Ok(());
                }
                _ if takes_away => read.quantity.minus(&term.quantity),
                _ => read.quantity.plus(&term.quantity),
            };
            read.quantity =
                result.ok_or_else(|| unjoined(&read.quantity, &term.quantity, typed))?;
            if read.quantity.low.is_zero() {
                return Err(QuantityError::Zero {
                    words: typed.to_owned(),
                });
            }
            read.approximate |= term.approximate;
        }
    }

    /// A second way to say the amount: "500 g / 1 lb 2 oz", "1 lb or 3 cups".
    /// A weight is kept before a volume, and otherwise the first.
    pub(super) fn alternative(&mut self, read: &mut ReadAmount<'t>) -> Result<(), QuantityError> {
        let start = self.place();
        let offered = self.is_mark(0, &['/', '=']) || self.is_word(0, &["or"]);
        self.skip(usize::from(offered));
        if offered
            && self.starts_amount()
            && let Some(mut other) = self.simple_amount()?
            && !matches!(other.quantity.unit, Unit::Count(_))
        {
            self.terms(&mut other)?;
            let is_mass = |read: &ReadAmount<'_>| matches!(read.quantity.unit, Unit::Mass(_));
            if is_mass(&other) && !is_mass(read) {
                read.beside = Some(std::mem::replace(&mut read.quantity, other.quantity));
            } else {
                read.beside = Some(other.quantity);
            }
            return self.alternative(read);
        }
        self.back_to(start);
        Ok(())
    }
}

pub(super) fn approximate(phrase: &str) -> Option<()> {
    (vocabulary::vague(phrase)? == VagueKind::Approximate).then_some(())
}

pub(super) fn too_fine(words: &str) -> QuantityError {
    QuantityError::TooFine {
        words: words.to_owned(),
    }
}

/// Why two amounts cannot be joined.
fn unjoined(one: &Quantity, two: &Quantity, words: &str) -> QuantityError {
    let words = words.to_owned();
    match one.unit.ratio_to(&two.unit) {
        None => QuantityError::MixedKinds { words },
        Some(_) => QuantityError::Negative { words },
    }
}
