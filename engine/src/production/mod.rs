//! From a planned day to the kitchens: who cooks how much of what, in which
//! pans, from what is bought.
//!
//! | step | module | turns | into |
//! |---|---|---|---|
//! | share | [`share`] | planned servings | whole servings at each school |
//! | cook | [`cook`] | servings | batches, each recipe once, its lines weighed out |
//! | weigh | [`weighed_as`] | a line | raw or cooked, as purchased or edible |
//! | scale | [`scale`] | a weight | what a scale shows of it |
//! | pans | [`pans`] | servings | pans |
//! | order | [`order`] | words of recipes | the order of work |
//! | buy | [`purchase`] | servings | weights as purchased, whole packs, costs |
//! | day | [`day`] | all of these | the sheet of one school |
//!
//! A missing price is unknown, never zero; sums tell how much they know.

pub mod cook;
pub mod day;
mod kitchen;
mod model;
pub mod order;
pub mod pans;
pub mod purchase;
pub mod scale;
pub mod share;
pub mod weighed_as;

pub use cook::{CookItem, NotCooked, WeighOut};
pub use day::{KitchenDay, MenuRow, planned_servings};
pub use kitchen::Kitchen;
pub use model::{
    Filling, KitchenWay, Pack, PackSize, Panning, Production, Site, SiteId, SiteMeals,
    StatedServings,
};
pub use order::{Moment, PrepStep, PrepWords};
pub use pans::{Pan, PanCount, PanProblem, Pans, pans_for, serving_volume};
pub use purchase::{Need, PackOrder, PurchaseList, PurchaseRow, RecipeCost};
pub use scale::{Scale, ScaleStep, Scales, Shown};
pub use share::{ShareProblem, SharedChoice, SiteServings, apportion, shared_day};
pub use weighed_as::WeighedAs;
