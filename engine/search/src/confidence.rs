//! How sure a match is.
//!
//! The figures come from 397 hand-labelled queries (`engine/tests/search_labels.csv`,
//! sets held, later and last) answered before anything was tuned on them: how
//! often the first answer was a labelled food, by how much of the query it
//! explains, by its lead over the second, by its score, and by whether the
//! table of kitchen words names it. So 90 means: nine of ten such answers were
//! what a dietitian would take.
//!
//! | nine tenths explained, not named by the table, lead | answers | right |
//! |---|---|---|
//! | below 0.1 | 39 | 77 % |
//! | 0.1 to 0.2 | 39 | 79 % |
//! | 0.2 to 0.4 | 36 | 81 % |
//! | 0.4 to 0.8 | 34 | 94 % |
//! | above 0.8 | 60 | 93 % |
//! | named for the whole query | 67 | 97 % |
//!
//! A word that is half typed explains only half of itself, so nothing is sure
//! while somebody types.

use crate::rank::Fit;

/// Right answers among those with no lead, and with a lead of [`FULL_LEAD`].
const NO_LEAD: f32 = 75.0;
const WIDE_LEAD: f32 = 93.0;
const FULL_LEAD: f32 = 600.0;
/// Right answers among those that the table names for the whole query.
const NAMED: f32 = 97.0;

/// From 0 to 100: how sure it is that `fits[at]` is the food that is meant.
/// `fits` are in order, best first.
pub fn confidence(fits: &[Fit], at: usize) -> u8 {
    let fit = fits[at];
    let (named, explained) = (
        f32::from(fit.named) / 1000.0,
        f32::from(fit.explained) / 1000.0,
    );
    let of_lead = if at == 0 {
        let second = fits
            .get(1)
            .map_or(fit.score - FULL_LEAD as i32, |second| second.score);
        let lead = ((fit.score - second) as f32 / FULL_LEAD).min(1.0);
        let led = NO_LEAD + (WIDE_LEAD - NO_LEAD) * lead;
        led + (NAMED - led).max(0.0) * named
    } else {
        // A rival of the first answer, less likely the further it is behind.
        let behind = (fits[0].score - fit.score) as f32 / FULL_LEAD;
        NO_LEAD / 2.0 * (1.0 - behind).max(0.05)
    };
    // Half a query explained was right every other time, three quarters as
    // often as the whole.
    let of_explained = ((explained - 0.2) / 0.55).clamp(0.0, 1.0);
    // A low score is an entry with much in it that nobody asked for.
    let of_score = (0.45 + 0.55 * fit.score as f32 / 1500.0).clamp(0.45, 1.0);
    (of_lead * of_explained * of_score).round() as u8
}

#[cfg(test)]
mod tests {
    use super::*;

    fn fit(score: i32, explained: u16, named: u16) -> Fit {
        Fit {
            entry: 0,
            score,
            explained,
            named,
        }
    }

    /// Our own table above; cases in the order score, share explained, share
    /// named, score of the second.
    #[test]
    fn more_evidence_is_surer() {
        let table = [
            (3300, 1000, 1000, 2000, 97),
            (1900, 1000, 0, 1000, 93),
            (1900, 1000, 0, 1900, 75),
            (1900, 500, 0, 1000, 51),
            (1900, 200, 0, 1000, 0),
            (0, 1000, 0, -900, 42),
        ];
        for (score, explained, named, second, expected) in table {
            let fits = [fit(score, explained, named), fit(second, explained, 0)];
            assert_eq!(
                confidence(&fits, 0),
                expected,
                "{score} {explained} {named}"
            );
            assert!(confidence(&fits, 1) <= confidence(&fits, 0));
        }
    }
}
