//! How sure a match is.

use super::rank::Fit;

/// From 0 to 100: how sure it is that `fits[at]` is the food that is meant.
pub fn confidence(fits: &[Fit], at: usize) -> u8 {
    let fit = fits[at];
    let explained = f32::from(fit.explained) / 1000.0;
    let named = f32::from(fit.named) / 1000.0;
    let rival = fits
        .iter()
        .enumerate()
        .filter(|(other, _)| *other != at)
        .map(|(_, other)| other.score)
        .max()
        .unwrap_or(fit.score - 1000);
    let margin = (fit.score - rival) as f32 / 1000.0;
    let clear = (0.5 + margin + named * 0.5).clamp(0.0, 1.0);
    (100.0 * explained * explained * (0.4 + 0.6 * clear)) as u8
}
