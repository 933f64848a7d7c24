//! A decimal number with all the digits of its text.

use std::fmt;

/// A decimal number: `mantissa × 10^-scale`. The scale keeps trailing zeros, so `5.0` and `5` are
/// two values with the same size and different digits.
///
/// ```
/// use nutrient_data::format::Scaled;
/// let grams = Scaled::parse("14.20").unwrap();
/// assert_eq!(grams, Scaled { mantissa: 1420, scale: 2 });
/// assert_eq!(grams.to_string(), "14.20");
/// assert_eq!(Scaled::parse(".5").unwrap().to_string(), "0.5");
/// assert_eq!(Scaled::parse("1e3"), None);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Scaled {
    /// All digits, without the decimal point.
    pub mantissa: i32,
    /// How many of the digits stand after the decimal point.
    pub scale: u8,
}

impl Scaled {
    /// Reads plain decimal notation: an optional minus, digits, at most one point. `None` for
    /// anything else, and for more digits than an `i32` holds.
    pub fn parse(text: &str) -> Option<Self> {
        let (negative, unsigned) = match text.strip_prefix('-') {
            Some(rest) => (true, rest),
            None => (false, text),
        };
        let (whole, fraction) = unsigned.split_once('.').unwrap_or((unsigned, ""));
        let digits = || whole.bytes().chain(fraction.bytes());
        if digits().next().is_none() || !digits().all(|byte| byte.is_ascii_digit()) {
            return None;
        }
        let mut mantissa = 0_i32;
        for digit in digits() {
            mantissa = mantissa
                .checked_mul(10)?
                .checked_add(i32::from(digit - b'0'))?;
        }
        Some(Self {
            mantissa: if negative { -mantissa } else { mantissa },
            scale: u8::try_from(fraction.len()).ok()?,
        })
    }
}

impl fmt::Display for Scaled {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let scale = usize::from(self.scale);
        let sign = if self.mantissa < 0 { "-" } else { "" };
        let digits = format!(
            "{:0width$}",
            self.mantissa.unsigned_abs(),
            width = scale + 1
        );
        let (whole, fraction) = digits.split_at(digits.len() - scale);
        if scale == 0 {
            write!(f, "{sign}{whole}")
        } else {
            write!(f, "{sign}{whole}.{fraction}")
        }
    }
}
