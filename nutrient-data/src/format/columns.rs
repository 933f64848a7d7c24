//! The building blocks of the content: each `write_…` has its `read_…` beside it.
//!
//! Every whole number is a varint: seven bits to a byte, lowest first, the high bit set on all
//! bytes but the last. A general compressor finds more in these plain bytes than in packed bits.

use std::collections::BTreeMap;

use super::{AssetError, MISSING, Scaled};

/// Separates texts; no text of the tables holds it.
const END_OF_TEXT: u8 = 0;
/// Stands for "none" among scales.
const NO_SCALE: u8 = u8::MAX;

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

    pub(super) fn number(&mut self, mut value: u64) {
        while value >= 0x80 {
            self.content.push(value as u8 | 0x80);
            value >>= 7;
        }
        self.content.push(value as u8);
    }

    pub(super) fn numbers(&mut self, values: impl IntoIterator<Item = u64>) {
        values.into_iter().for_each(|value| self.number(value));
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
        for value in values {
            let step = value.checked_sub(before).expect("numbers rise");
            self.number(u64::from(step));
            before = value;
        }
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
        self.numbers(values.iter().map(|&value| {
            if value == MISSING {
                0
            } else {
                u64::from(value.abs_diff(least)) + 1
            }
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
                different.len() as u64 - 1
            }));
        }
        self.number(different.len() as u64);
        self.texts(different);
        self.numbers(rows);
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

    pub(super) fn number(&mut self) -> Result<u64, AssetError> {
        let mut value = 0;
        for shift in (0..63).step_by(7) {
            let byte = self.byte()?;
            value |= u64::from(byte & 0x7f) << shift;
            if byte < 0x80 {
                return Ok(value);
            }
        }
        self.malformed()
    }

    /// A number that must fit a smaller type.
    pub(super) fn small<T: TryFrom<u64>>(&mut self) -> Result<T, AssetError> {
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

    pub(super) fn smalls<T: TryFrom<u64>>(&mut self, count: usize) -> Result<Vec<T>, AssetError> {
        (0..count).map(|_| self.small()).collect()
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
        (0..count)
            .map(|_| {
                let step = self.small()?;
                value = self.checked(value.checked_add(step))?;
                Ok(value)
            })
            .collect()
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
        let least = i64::from(i32::from_le_bytes(least));
        (0..count)
            .map(|_| match self.small::<u32>()? {
                0 => Ok(MISSING),
                distance => self.checked(i32::try_from(least + i64::from(distance) - 1).ok()),
            })
            .collect()
    }

    pub(super) fn repeated_texts(&mut self, count: usize) -> Result<Vec<String>, AssetError> {
        let different = self.count()?;
        let texts = self.texts(different)?;
        (0..count)
            .map(|_| {
                let place: usize = self.small()?;
                self.checked(texts.get(place).cloned())
            })
            .collect()
    }
}
