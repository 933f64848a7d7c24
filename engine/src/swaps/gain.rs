//! What the goals gain, in thousandths of what the line brings.

use super::goals::{Aim, Goals};
use super::measure::Rough;
use super::rank::WHOLE;

/// A gain below this for every goal is no reason to change a recipe: a
/// twentieth of what the line brings. Our own judgement.
const LEAST: i32 = 50;

/// What is gained by one food for another.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Gain {
    /// So much, weighted over the goals.
    Known(i32),
    /// No goal is known to gain, and of one it is unknown.
    Unknown,
    /// Nothing worth the change.
    Nothing,
}

/// Weighs up the goals by the amounts that `amounts` gives for each aim, before
/// and after. What is unknown gains nothing and loses nothing.
pub(super) fn gain(goals: &Goals, amounts: impl Fn(Aim) -> (Rough, Rough)) -> Gain {
    let (mut sum, mut weights, mut best) = (0, 0, 0);
    let mut unknown = false;
    for goal in goals.counted() {
        let (before, after) = amounts(goal.aim);
        let one = match goal.aim {
            Aim::Less(_) | Aim::LessCost => fall(before, after),
            Aim::More(_) => fall(after, before),
        };
        weights += i32::from(goal.weight);
        match one {
            Some(one) => {
                sum += one * i32::from(goal.weight);
                best = best.max(one);
            }
            None => unknown = true,
        }
    }
    if best >= LEAST && sum > 0 {
        Gain::Known(lessening(sum / weights))
    } else if unknown && best < LEAST {
        Gain::Unknown
    } else {
        Gain::Nothing
    }
}

/// The first half of a gain counts for more than the second: a variant of the
/// same food that halves the sodium goes before another food that takes all.
fn lessening(gain: i32) -> i32 {
    gain * (2 * WHOLE - gain) / WHOLE
}

/// How far an amount falls for certain, as a share of the larger of the two;
/// negative where it rises for certain; nothing where neither is sure.
fn fall(before: Rough, after: Rough) -> Option<i32> {
    let sure_fall = after.high.map(|high| before.low - high);
    let sure_rise = before.high.map(|high| after.low - high);
    let (change, of) = match (sure_fall, sure_rise) {
        (Some(fall), _) if fall > 0.0 => (fall, before.low),
        (_, Some(rise)) if rise > 0.0 => (-rise, after.low),
        (Some(_), Some(_)) if before.high == Some(before.low) && after.high == Some(after.low) => {
            return Some(0);
        }
        _ => return None,
    };
    Some((change / of * f64::from(WHOLE)) as i32)
}
