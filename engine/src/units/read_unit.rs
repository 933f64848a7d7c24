//! A unit of any kind at the start of a text.

use super::cursor::Cursor;
use super::number::{Form, Numbers};
use super::vocabulary::{self, UnitWord, VagueKind};
use super::{Amount, CountUnit, Quantity, Size, Unit, VolumeUnit};

/// A unit with what was read beside it.
pub(super) struct ReadUnit {
    pub unit: Unit,
    pub approximate: bool,
    pub container: Option<String>,
    pub filling: Vec<String>,
}

impl Cursor<'_> {
    /// Reads a unit of any kind with the words that lead up to it.
    pub fn unit(&mut self) -> Option<ReadUnit> {
        let start = self.place();
        let mut approximate = false;
        let mut filling = Vec::new();
        self.skip(usize::from(self.is_mark(0, &['-'])));
        while let Some((kind, length)) = self.phrase(0, vocabulary::vague) {
            match kind {
                VagueKind::Approximate => approximate = true,
                VagueKind::Exact => {}
                VagueKind::Filling => filling.extend(self.word(0).map(str::to_lowercase)),
                _ => break,
            }
            self.skip(length);
        }
        let Some((unit, container)) = self.bare_unit() else {
            self.back_to(start);
            return None;
        };
        Some(ReadUnit {
            unit,
            approximate,
            container,
            filling,
        })
    }

    /// A unit, and the container that goes with it: "15-oz can".
    fn bare_unit(&mut self) -> Option<(Unit, Option<String>)> {
        if self.is_can_number() {
            return self.numbered_can();
        }
        let pound_sign = self.is_mark(0, &['#']) && !self.is_number(1);
        let (word, length) = if pound_sign {
            (vocabulary::unit("#")?, 1)
        } else {
            self.phrase(0, vocabulary::unit)?
        };
        self.skip(length);
        match word {
            UnitWord::Mass(unit) => Some((Unit::Mass(unit), self.container())),
            UnitWord::Volume(unit) => Some((Unit::Volume(unit), self.container())),
            UnitWord::Size(size) => {
                let (noun, container) = match self.phrase(0, vocabulary::unit) {
                    Some((UnitWord::Container(noun), length)) => {
                        self.skip(length);
                        (Some(noun.clone()), Some(noun))
                    }
                    Some((
                        UnitWord::Piece(noun) | UnitWord::Part(noun) | UnitWord::Vague(noun),
                        length,
                    )) => {
                        self.skip(length);
                        (Some(noun), None)
                    }
                    _ => (None, None),
                };
                let unit = CountUnit {
                    size: Some(size),
                    noun,
                    can_number: None,
                };
                Some((Unit::Count(unit), container))
            }
            UnitWord::Piece(noun) if noun == "inch" => {
                // "1 inch piece of ginger" is an inch of ginger.
                let piece = usize::from(self.is_mark(0, &['-']));
                if self.is_word(piece, &["piece", "knob"]) {
                    self.skip(piece + 1);
                }
                Some((Unit::counted(&noun), None))
            }
            UnitWord::Container(noun) => Some((Unit::counted(&noun), Some(noun))),
            UnitWord::Piece(noun) if noun == "each" => Some((Unit::pieces(), None)),
            UnitWord::Vague(noun) => Some((Unit::counted(&noun), None)),
            UnitWord::Piece(noun) | UnitWord::Part(noun) => {
                let unit = CountUnit {
                    size: self.size(),
                    noun: Some(noun),
                    can_number: None,
                };
                Some((Unit::Count(unit), None))
            }
        }
    }

    /// A size after the piece: "1 head large".
    fn size(&mut self) -> Option<Size> {
        let (UnitWord::Size(size), length) = self.phrase(0, vocabulary::unit)? else {
            return None;
        };
        self.skip(length);
        Some(size)
    }

    fn container(&mut self) -> Option<String> {
        let hyphen = usize::from(self.is_mark(0, &['-']));
        match self.phrase(hyphen, vocabulary::unit) {
            Some((UnitWord::Container(noun), length)) => {
                self.skip(hyphen + length);
                Some(noun)
            }
            _ => None,
        }
    }

    /// Whether "#10 can", "No. 10 can" or "#16 scoop" stands here.
    pub fn is_can_number(&self) -> bool {
        self.clone().numbered_can().is_some()
    }

    fn numbered_can(&mut self) -> Option<(Unit, Option<String>)> {
        let sign = self.is_mark(0, &['#', '№']) || self.is_word(0, &["no", "number", "nbr"]);
        if !sign {
            return None;
        }
        self.skip(1);
        let number = match self.numbers().ok()?? {
            Numbers {
                low,
                high,
                form: Form::Plain,
                ..
            } if low == high => low,
            _ => return None,
        };
        self.skip(usize::from(self.is_mark(0, &['-'])));
        if self.is_word(0, &["scoop", "scoops", "disher", "dishers"]) {
            self.skip(1);
            let unit = CountUnit {
                size: None,
                noun: Some(SCOOP.to_owned()),
                can_number: Some(number.to_string()),
            };
            return Some((Unit::Count(unit), None));
        }
        let (word, length) = self.phrase(0, vocabulary::unit)?;
        let UnitWord::Container(noun) = word else {
            return None;
        };
        self.skip(length);
        let unit = CountUnit {
            size: None,
            noun: Some(noun.clone()),
            can_number: Some(number.to_string()),
        };
        Some((Unit::Count(unit), Some(noun)))
    }
}

const SCOOP: &str = "scoop";

/// A scoop's number is how many level scoopfuls make a quart (USDA Food Buying
/// Guide; value from memory), so that numbered scoops are a volume.
pub(super) fn scooped(count: Quantity, unit: Unit) -> Option<Quantity> {
    let scoops_per_quart = match &unit {
        Unit::Count(CountUnit {
            noun: Some(noun),
            can_number: Some(number),
            ..
        }) if noun == SCOOP => Amount::from_digits(number),
        _ => None,
    };
    let Some(per_quart) = scoops_per_quart else {
        return Some(Quantity { unit, ..count });
    };
    Some(Quantity {
        low: count.low.over(per_quart)?,
        high: count.high.over(per_quart)?,
        unit: Unit::Volume(VolumeUnit::Quart),
    })
}
