//! From the weight that is stated to the weight in the dish.
//!
//! | step | module | by |
//! |---|---|---|
//! | as purchased → edible portion | [`refuse`] | a table's yield, or the dataset's refuse |
//! | edible → cooked | [`cooked`] | a measured weight, a table's factor, or the dataset's own raw and cooked entries |
//! | cooked → kept | [`treatment`] | shares that drain, rinse or fry away |

pub mod cooked;
pub mod doneness;
mod pair;
pub mod refuse;
pub mod treatment;

pub use cooked::{CookedYield, YieldRoute, YieldTable};
pub use doneness::Doneness;
pub use pair::{CookedPair, cooked_pairs};
pub use refuse::{AmountBasis, BasisWords, EdiblePortion, TrimRoute, TrimYields};
pub use treatment::{Treatment, TreatmentId, Treatments};
