//! What is printed has the same digits in the browser as natively: these run in both.

use engine::exact::{Digits, round_half_up};
use rust_decimal::Decimal;
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test as test;

fn dec(text: &str) -> Decimal {
    text.parse().expect("a decimal in a test table")
}

/// Quotients worked by hand to the last digit that fits, then rounded half up (common practice, no
/// source).
#[test]
fn divides_and_rounds_alike() {
    for (dividend, divisor, quotient, printed) in [
        ("1", "3", "0.3333333333333333333333333333", "0.33"),
        ("2", "7", "0.2857142857142857142857142857", "0.29"),
        ("28.3495", "16", "1.77184375", "1.77"),
        ("1", "8", "0.125", "0.13"),
    ] {
        let found = dec(dividend) / dec(divisor);
        assert_eq!(found.to_string(), quotient, "{dividend} / {divisor}");
        assert_eq!(
            round_half_up(found, Digits(2)).to_string(),
            printed,
            "{dividend} / {divisor}"
        );
    }
}
