//! Drawings of figures: what fills a limit, and how figures lie in their
//! ranges. Each has a title, a description and its figures as a table. Kinds
//! are told apart by hatching, which colour only repeats, so that a drawing
//! holds in grey print and for every eye.

mod fill;
mod frame;
mod hatch;
mod range;
mod words;

pub use fill::{FillChart, FillRow, Mark, Segment};
pub use range::{RangeChart, RangeRow};

use engine::exact::{Digits, round_half_up};
use rust_decimal::Decimal;

/// Room to the right of the largest figure, as a share of it.
const ROOM: Decimal = Decimal::from_parts(105, 0, 0, false, 2);

/// Where a figure lies on an axis from nought to `most`, as an SVG length.
fn place(value: Decimal, most: Decimal) -> String {
    if most <= Decimal::ZERO {
        return "0%".to_owned();
    }
    let share = (value * Decimal::ONE_HUNDRED / most).clamp(Decimal::ZERO, Decimal::ONE_HUNDRED);
    format!("{}%", round_half_up(share, Digits(3)).normalize())
}

/// The end of an axis that holds all of these figures.
fn axis(figures: impl Iterator<Item = Decimal>) -> Decimal {
    figures.max().unwrap_or(Decimal::ZERO) * ROOM
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn figures_lie_on_their_axis() {
        for (value, most, length) in [
            (0, 200, "0%"),
            (50, 200, "25%"),
            (1, 3, "33.333%"),
            (300, 200, "100%"),
            (5, 0, "0%"),
        ] {
            assert_eq!(place(Decimal::from(value), Decimal::from(most)), length);
        }
        let most = axis([3, 8, 5].into_iter().map(Decimal::from));
        assert_eq!(most, Decimal::new(84, 1));
        assert_eq!(axis(std::iter::empty()), Decimal::ZERO);
    }
}
