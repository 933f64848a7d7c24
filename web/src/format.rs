//! How figures and dates are printed. Rounding itself is the engine's.
//!
//! English and Spanish of the United States write numbers alike: a point
//! before the decimals, commas between thousands (Unicode CLDR 48, en-US and
//! es-US, which takes its numbers from es-419). Dates differ: their patterns
//! are messages.

use crate::language::{Say, say};
use engine::exact::{Digits, PartialSum, round_half_up, rounding::round_down_to};
use engine::units::Grams;
use engine::week::Date;
use rust_decimal::Decimal;

/// A figure with this many decimals and thousands set apart: "1,110.5".
pub fn number(value: Decimal, digits: Digits) -> String {
    let rounded = round_half_up(value, digits);
    let text = format!("{rounded:.places$}", places = digits.0 as usize);
    // A figure that rounds to nothing has no sign.
    let text = if rounded.is_zero() {
        text.trim_start_matches('-').to_owned()
    } else {
        text
    };
    group_thousands(&text.replace('-', "−"))
}

/// A stated number as it was stated, without trailing zeros: "2.5".
pub fn stated(value: Decimal) -> String {
    value.normalize().to_string()
}

/// A stated number with thousands set apart: "1,110", "2.5".
pub fn group(value: Decimal) -> String {
    group_thousands(&stated(value))
}

/// A difference with its sign: "+12", "−40", "±0".
pub fn signed(value: Decimal, digits: Digits) -> String {
    let text = number(value, digits);
    let is_nothing = round_half_up(value, digits).is_zero();
    match (is_nothing, text.starts_with('−')) {
        (true, _) => format!("±{text}"),
        (false, true) => text,
        (false, false) => format!("+{text}"),
    }
}

/// A figure without superfluous digits: at most so many decimals, and no
/// trailing zeros.
pub fn short(value: Decimal, most: Digits) -> String {
    group(round_half_up(value, most)).replace('-', "−")
}

/// How far a figure with this many decimals may be off: "± 14"; "± less than
/// 1" where it would print as nought.
pub fn plus_minus(value: Decimal, digits: Digits) -> String {
    if !value.is_zero() && round_half_up(value, digits).is_zero() {
        let least = Decimal::new(1, digits.0).to_string();
        return say("format-less-than", &[("least", least.into())]);
    }
    format!("± {}", number(value, digits))
}

/// An amount as cups and ounces are written: "3/4", "1 1/2", "0.33".
pub fn eighths(value: Decimal) -> String {
    let whole = value.trunc();
    let parts = (value - whole) * Decimal::from(8);
    if !parts.fract().is_zero() || value.is_sign_negative() {
        return stated(value);
    }
    let share = match parts.trunc().normalize().to_string().as_str() {
        "0" => return group(whole),
        "2" => "1/4".to_owned(),
        "4" => "1/2".to_owned(),
        "6" => "3/4".to_owned(),
        odd => format!("{odd}/8"),
    };
    match whole.is_zero() {
        true => share,
        false => format!("{} {share}", group(whole)),
    }
}

/// A weight as it stands beside a line: whole grams from 100 g on, tenths
/// below.
pub fn grams(weight: Grams) -> String {
    let whole = weight.grams() >= Decimal::ONE_HUNDRED;
    let digits = Digits(u32::from(!whole));
    format!("{} g", number(weight.grams(), digits))
}

/// What is known of a sum: "312", "≥ 312" where some of it is missing, and
/// nothing where all of it is.
pub fn known(sum: &PartialSum, digits: Digits) -> Option<String> {
    let figure = number(sum.known, digits);
    if sum.is_complete() {
        Some(figure)
    } else if sum.known_mass.grams().is_zero() {
        None
    } else {
        Some(format!("≥ {figure}"))
    }
}

/// A share from 0 to 1 in whole percent, rounded down so that only all of it
/// is 100.
pub fn percent_known(share: Decimal) -> String {
    stated(round_down_to(share * Decimal::ONE_HUNDRED, Decimal::ONE))
}

/// A share from 0 to 1 in whole percent.
pub fn percent(share: Decimal) -> String {
    number(share * Decimal::ONE_HUNDRED, Digits(0))
}

/// A date of medium length: "Nov 30, 2026", "30 nov 2026".
pub fn date(date: Date) -> String {
    let (year, month, day) = parts(date);
    let month = MONTHS.get(month.saturating_sub(1));
    let month = month.map(Say::to_string).unwrap_or_default();
    say(
        "format-date",
        &[
            ("year", year.into()),
            ("month", month.into()),
            ("day", day.to_string().into()),
        ],
    )
}

/// A date with its day of the week: "Monday, Nov 30, 2026".
pub fn day(date: Date) -> String {
    say(
        "format-day",
        &[
            ("weekday", weekday(date).into()),
            ("date", self::date(date).into()),
        ],
    )
}

/// The day of the week in full.
pub fn weekday(date: Date) -> String {
    weekday_in(&WEEKDAYS, date)
}

/// The day of the week in three letters.
pub fn short_weekday(date: Date) -> String {
    weekday_in(&SHORT_WEEKDAYS, date)
}

fn weekday_in(names: &[Say; 7], date: Date) -> String {
    let index = usize::try_from(date.days_since(date.monday())).unwrap_or_default();
    names.get(index).map(Say::to_string).unwrap_or_default()
}

/// Year, month from 1, day.
fn parts(date: Date) -> (String, usize, u32) {
    let text = date.to_string();
    let mut parts = text.split('-');
    let mut next = || parts.next().unwrap_or_default();
    let year = next().to_owned();
    let month = next().parse().unwrap_or_default();
    (year, month, next().parse().unwrap_or_default())
}

const MONTHS: [Say; 12] = [
    Say("format-jan"),
    Say("format-feb"),
    Say("format-mar"),
    Say("format-apr"),
    Say("format-may"),
    Say("format-jun"),
    Say("format-jul"),
    Say("format-aug"),
    Say("format-sep"),
    Say("format-oct"),
    Say("format-nov"),
    Say("format-dec"),
];

const WEEKDAYS: [Say; 7] = [
    Say("format-monday"),
    Say("format-tuesday"),
    Say("format-wednesday"),
    Say("format-thursday"),
    Say("format-friday"),
    Say("format-saturday"),
    Say("format-sunday"),
];

const SHORT_WEEKDAYS: [Say; 7] = [
    Say("format-mon"),
    Say("format-tue"),
    Say("format-wed"),
    Say("format-thu"),
    Say("format-fri"),
    Say("format-sat"),
    Say("format-sun"),
];

fn group_thousands(text: &str) -> String {
    let (whole, decimals) = match text.split_once('.') {
        Some((whole, decimals)) => (whole, format!(".{decimals}")),
        None => (text, String::new()),
    };
    let digits = whole.chars().filter(char::is_ascii_digit).count();
    let mut left = digits;
    let mut grouped = String::new();
    for c in whole.chars() {
        grouped.push(c);
        if c.is_ascii_digit() {
            left -= 1;
            if left > 0 && left.is_multiple_of(3) {
                grouped.push(',');
            }
        }
    }
    grouped + &decimals
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::language::{Language, speak};

    fn dec(text: &str) -> Decimal {
        text.parse().unwrap()
    }

    #[test]
    fn figures_are_printed_with_their_digits() {
        for (value, digits, printed) in [
            ("0", 0, "0"),
            ("999.5", 0, "1,000"),
            ("1110.04", 2, "1,110.04"),
            ("1234567.25", 1, "1,234,567.3"),
            ("2.5", 3, "2.500"),
            ("-1234.4", 0, "−1,234"),
            ("-0.4", 0, "0"),
        ] {
            assert_eq!(number(dec(value), Digits(digits)), printed, "{value}");
        }
    }

    #[test]
    fn long_figures_are_cut_short() {
        for (value, most, printed) in [
            ("5443.108", 3, "5,443.108"),
            ("28.349523125", 4, "28.3495"),
            ("3.000", 2, "3"),
            ("-0.5", 2, "−0.5"),
        ] {
            assert_eq!(short(dec(value), Digits(most)), printed, "{value}");
        }
    }

    #[test]
    fn a_small_tolerance_is_not_none() {
        for (value, digits, printed) in [
            ("41.4", 0, "± 41"),
            ("0.26", 1, "± 0.3"),
            ("0.2", 0, "± less than 1"),
            ("0.004", 2, "± less than 0.01"),
            ("0", 1, "± 0.0"),
        ] {
            assert_eq!(plus_minus(dec(value), Digits(digits)), printed, "{value}");
        }
    }

    #[test]
    fn cups_and_ounces_are_written_as_fractions() {
        for (value, printed) in [
            ("0", "0"),
            ("0.125", "1/8"),
            ("0.5", "1/2"),
            ("0.750", "3/4"),
            ("1.25", "1 1/4"),
            ("2", "2"),
            ("2.03", "2.03"),
        ] {
            assert_eq!(eighths(dec(value)), printed, "{value}");
        }
    }

    #[test]
    fn differences_have_a_sign() {
        for (value, printed) in [("12", "+12"), ("-40", "−40"), ("0", "±0"), ("-0.3", "±0")] {
            assert_eq!(signed(dec(value), Digits(0)), printed, "{value}");
        }
    }

    /// As Node 24 prints them with `Intl` and Unicode CLDR 48, `dateStyle`
    /// "medium" and `weekday` "short" for en-US and es-US.
    #[test]
    fn dates_are_written_as_in_cldr() {
        let date: Date = "2026-11-30".parse().unwrap();
        assert_eq!(self::date(date), "Nov 30, 2026");
        assert_eq!(short_weekday(date), "Mon");
        speak(Language::Spanish);
        assert_eq!(self::date(date), "30 nov 2026");
        assert_eq!(short_weekday(date), "lun");
        let september: Date = "2026-09-05".parse().unwrap();
        assert_eq!(self::date(september), "5 sept 2026");
        assert_eq!(short_weekday(september), "sáb");
        speak(Language::English);
    }

    #[test]
    fn a_missing_value_is_not_zero() {
        let mut sum = PartialSum::default();
        assert_eq!(known(&sum, Digits(0)).as_deref(), Some("0"));
        sum.add(Grams::new(dec("100")), None);
        assert_eq!(known(&sum, Digits(0)), None);
        sum.add(Grams::new(dec("100")), Some(dec("7.6")));
        assert_eq!(known(&sum, Digits(0)).as_deref(), Some("≥ 8"));
        assert_eq!(percent_known(sum.coverage()), "50");
    }

    #[test]
    fn nearly_all_is_not_all() {
        assert_eq!(percent_known(dec("0.9999")), "99");
        assert_eq!(percent_known(Decimal::ONE), "100");
    }
}
