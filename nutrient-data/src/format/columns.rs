//! The building blocks of the content: what [`Writer`] writes, [`Reader`] reads under the same
//! name.
//!
//! A single number takes four bytes, little endian. A column of numbers is written in two runs:
//! the first bytes of all, then the further bytes of those that need them, high byte first. A
//! general compressor finds more in such a run of like bytes than in packed bits.
//!
//! | first byte | further bytes | number |
//! |---|---|---|
//! | 0–191 | none | the first byte itself |
//! | 192–247 | 1 | 192 and up |
//! | 248–254 | 2 | 14,528 and up |
//! | 255 | 4 | the further bytes themselves |

use std::collections::BTreeMap;

use super::{AssetError, MISSING, Scaled};

/// Separates texts; no text of the tables holds it.
const END_OF_TEXT: u8 = 0;
/// Stands for "none" among scales.
const NO_SCALE: u8 = u8::MAX;

/// First of the first bytes with one further byte; also the first number written so.
const ONE_FURTHER: u8 = 192;
/// First of the first bytes with two further bytes.
const TWO_FURTHER: u8 = 248;
/// The first byte with four further bytes.
const FOUR_FURTHER: u8 = 255;
/// First number that is written with two further bytes.
const TWO_FROM: u32 = ONE_FURTHER as u32 + ((TWO_FURTHER - ONE_FURTHER) as u32) * 0x100;
/// First number that is written with four further bytes.
const FOUR_FROM: u32 = TWO_FROM + ((FOUR_FURTHER - TWO_FURTHER) as u32) * 0x1_0000;

/// Collects the content of an asset.
#[derive(Default)]
pub(super) struct Writer {
    pub(super) content: Vec<u8>,
}

/// Reads the content of an asset; `part` names the piece at work for the error.
pub(super) struct Reader<'a> {
    rest: &'a [u8],
    pub(super) part: &'static str,
}

impl Writer {
    pub(super) fn byte(&mut self, value: u8) {
        self.content.push(value);
    }

    pub(super) fn bytes(&mut self, values: impl IntoIterator<Item = u8>) {
        self.content.extend(values);
    }

    pub(super) fn number(&mut self, value: u32) {
        self.content.extend(value.to_le_bytes());
    }

    /// # Panics
    /// If there are more rows than a `u32` counts.
    pub(super) fn count(&mut self, rows: usize) {
        self.number(u32::try_from(rows).expect("a table has far fewer rows"));
    }

    pub(super) fn column(&mut self, numbers: impl IntoIterator<Item = u32>) {
        let mut further = Vec::new();
        for number in numbers {
            if number < ONE_FURTHER.into() {
                self.content.push(number as u8);
            } else if number < TWO_FROM {
                let [.., high, low] = (number - u32::from(ONE_FURTHER)).to_be_bytes();
                self.content.push(ONE_FURTHER + high);
                further.push(low);
            } else if number < FOUR_FROM {
                let [_, high, middle, low] = (number - TWO_FROM).to_be_bytes();
                self.content.push(TWO_FURTHER + high);
                further.extend([middle, low]);
            } else {
                self.content.push(FOUR_FURTHER);
                further.extend(number.to_be_bytes());
            }
        }
        self.content.append(&mut further);
    }

    /// # Panics
    /// If the text holds a NUL character.
    pub(super) fn text(&mut self, text: &str) {
        assert!(
            !text.as_bytes().contains(&END_OF_TEXT),
            "a text of the tables holds a NUL character: {text:?}"
        );
        self.content.extend(text.as_bytes());
        self.content.push(END_OF_TEXT);
    }

    pub(super) fn texts<'t>(&mut self, texts: impl IntoIterator<Item = &'t str>) {
        texts.into_iter().for_each(|text| self.text(text));
    }

    /// Rising numbers as the steps between them.
    ///
    /// # Panics
    /// If a number is smaller than the one before.
    pub(super) fn rising(&mut self, values: impl IntoIterator<Item = u32>) {
        let mut before = 0;
        self.column(values.into_iter().map(|value| {
            let step = value.checked_sub(before).expect("numbers rise");
            before = value;
            step
        }));
    }

    /// Decimals: the scales of all, then the mantissas of those that are there.
    pub(super) fn decimals(&mut self, values: &[Option<Scaled>]) {
        self.bytes(values.iter().map(|v| v.map_or(NO_SCALE, |v| v.scale)));
        let mantissas: Vec<i32> = values.iter().flatten().map(|v| v.mantissa).collect();
        self.mantissas(&mantissas);
    }

    /// Mantissas as their distance from the smallest, plus one; zero stands for missing.
    pub(super) fn mantissas(&mut self, values: &[i32]) {
        let there = values.iter().copied().filter(|&v| v != MISSING);
        let least = there.min().unwrap_or(0);
        self.content.extend(least.to_le_bytes());
        self.column(values.iter().map(|&value| match value {
            MISSING => 0,
            value => value.abs_diff(least) + 1,
        }));
    }

    /// Each different text once, in the order of first appearance, then a place for each row.
    pub(super) fn repeated_texts(&mut self, texts: &[&str]) {
        let mut places = BTreeMap::new();
        let mut different = Vec::new();
        let mut rows = Vec::with_capacity(texts.len());
        for &text in texts {
            rows.push(*places.entry(text).or_insert_with(|| {
                different.push(text);
                different.len() as u32 - 1
            }));
        }
        self.count(different.len());
        self.texts(different);
        self.column(rows);
    }
}

impl<'a> Reader<'a> {
    pub(super) fn new(content: &'a [u8]) -> Self {
        Self {
            rest: content,
            part: "beginning",
        }
    }

    pub(super) fn malformed<T>(&self) -> Result<T, AssetError> {
        Err(AssetError::Malformed { part: self.part })
    }

    fn checked<T>(&self, value: Option<T>) -> Result<T, AssetError> {
        value.ok_or(AssetError::Malformed { part: self.part })
    }

    /// Nothing may follow the last part.
    pub(super) fn end(mut self) -> Result<(), AssetError> {
        self.part = "end";
        if self.rest.is_empty() {
            Ok(())
        } else {
            self.malformed()
        }
    }

    pub(super) fn byte(&mut self) -> Result<u8, AssetError> {
        let (&byte, rest) = self.checked(self.rest.split_first())?;
        self.rest = rest;
        Ok(byte)
    }

    pub(super) fn bytes(&mut self, count: usize) -> Result<&'a [u8], AssetError> {
        let (bytes, rest) = self.checked(self.rest.split_at_checked(count))?;
        self.rest = rest;
        Ok(bytes)
    }

    pub(super) fn number(&mut self) -> Result<u32, AssetError> {
        let mut bytes = [0; 4];
        bytes.copy_from_slice(self.bytes(4)?);
        Ok(u32::from_le_bytes(bytes))
    }

    /// A number that must fit a smaller type.
    pub(super) fn small<T: TryFrom<u32>>(&mut self) -> Result<T, AssetError> {
        let number = self.number()?;
        self.checked(T::try_from(number).ok())
    }

    /// How many rows follow; each takes a byte or more, so never more than bytes are left.
    pub(super) fn count(&mut self) -> Result<usize, AssetError> {
        let count = self.small()?;
        if count > self.rest.len() {
            return self.malformed();
        }
        Ok(count)
    }

    pub(super) fn column(&mut self, count: usize) -> Result<Vec<u32>, AssetError> {
        // A plain loop: half of the time that the page takes to open its data is spent here.
        let mut numbers = Vec::with_capacity(count);
        for &first in self.bytes(count)? {
            numbers.push(self.number_from(first)?);
        }
        Ok(numbers)
    }

    fn number_from(&mut self, first: u8) -> Result<u32, AssetError> {
        if first < ONE_FURTHER {
            Ok(first.into())
        } else if first < TWO_FURTHER {
            let number = u32::from_be_bytes([0, 0, first - ONE_FURTHER, self.byte()?]);
            Ok(u32::from(ONE_FURTHER) + number)
        } else if first < FOUR_FURTHER {
            let high = first - TWO_FURTHER;
            let number = u32::from_be_bytes([0, high, self.byte()?, self.byte()?]);
            Ok(TWO_FROM + number)
        } else {
            let mut bytes = [0; 4];
            bytes.copy_from_slice(self.bytes(4)?);
            Ok(u32::from_be_bytes(bytes))
        }
    }

    /// A column of numbers that must fit a smaller type.
    pub(super) fn smalls<T: TryFrom<u32>>(&mut self, count: usize) -> Result<Vec<T>, AssetError> {
        let numbers = self.column(count)?;
        let smalls = numbers.into_iter().map(T::try_from);
        self.checked(smalls.collect::<Result<_, _>>().ok())
    }

    pub(super) fn text(&mut self) -> Result<&'a str, AssetError> {
        let end = self.rest.iter().position(|&byte| byte == END_OF_TEXT);
        let text = self.bytes(self.checked(end)?)?;
        self.byte()?;
        self.checked(std::str::from_utf8(text).ok())
    }

    pub(super) fn texts(&mut self, count: usize) -> Result<Vec<String>, AssetError> {
        (0..count).map(|_| self.text().map(str::to_owned)).collect()
    }

    pub(super) fn rising(&mut self, count: usize) -> Result<Vec<u32>, AssetError> {
        let mut value = 0_u32;
        let steps = self.column(count)?;
        let values = steps.into_iter().map(|step| {
            value = value.checked_add(step)?;
            Some(value)
        });
        self.checked(values.collect())
    }

    pub(super) fn decimals(&mut self, count: usize) -> Result<Vec<Option<Scaled>>, AssetError> {
        let scales = self.bytes(count)?;
        let there = scales.iter().filter(|&&scale| scale != NO_SCALE).count();
        let mut mantissas = self.mantissas(there)?.into_iter();
        let decimal = |&scale: &u8| {
            let mantissa = (scale != NO_SCALE).then(|| mantissas.next())?;
            mantissa.map(|mantissa| Scaled { mantissa, scale })
        };
        Ok(scales.iter().map(decimal).collect())
    }

    pub(super) fn mantissas(&mut self, count: usize) -> Result<Vec<i32>, AssetError> {
        let mut least = [0; 4];
        least.copy_from_slice(self.bytes(4)?);
        let least = i32::from_le_bytes(least);
        let mut mantissas = Vec::with_capacity(count);
        for number in self.column(count)? {
            let mantissa = match number.checked_sub(1) {
                None => Some(MISSING),
                Some(distance) => least.checked_add_unsigned(distance),
            };
            mantissas.push(self.checked(mantissa)?);
        }
        Ok(mantissas)
    }

    pub(super) fn repeated_texts(&mut self, count: usize) -> Result<Vec<String>, AssetError> {
        let different = self.count()?;
        let texts = self.texts(different)?;
        let places = self.column(count)?.into_iter();
        self.checked(
            places
                .map(|place| texts.get(place as usize).cloned())
                .collect(),
        )
    }
}
