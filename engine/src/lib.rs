//! Exact, unit-aware nutrient computation for school meals.
//!
//! The engine is pure: every table, every date and every setting comes in by
//! argument, so the same input gives the same digits natively and in
//! WebAssembly. Data flows one way through the modules below.
//!
//! | stage | module | turns | into |
//! |---|---|---|---|
//! | numbers | [`exact`] | exact decimals | printed digits |
//! | units | [`units`] | words such as "1 1/2 cups" | quantities with a unit |
//! | foods | [`foods`] | the dataset's asset | a table of foods that can be searched |
//! | recipe | [`recipe`] | lines of kitchen text | foods with a weight |
//! | analysis | [`analysis`] | weighed lines | totals, per serving, per 100 g, with coverage |
//! | allergens | [`allergens`] | words of lines and foods | contains, may be present, unknown |
//! | label | [`label`] | an analysed recipe | a Nutrition Facts panel |
//! | components | [`components`] | weighed lines and credit rules | cups, ounce equivalents, fluid ounces per serving |
//! | claims | [`claims`] | an analysed recipe | claims that its data proves |
//! | swaps | [`swaps`] | a line and goals | other foods and other ways, ranked with reasons |
//! | rules | [`rules`] | rule tables in CSV | limits in force on a date |
//! | week | [`week`] | planned meals | averages weighted by servings |
//! | findings | [`findings`] | averages and limits | met, missed or unknown |
//! | production | [`production`] | a planned day | what each school cooks and buys |
//! | calendar | [`calendar`] | cycle menus and days without school | weeks on their dates |
//! | mend | [`mend`] | a week with findings | the fewest changes that bring it inside its limits |
//! | year | [`year`] | studied recipes and many weeks | the same averages and verdicts, all at once |

pub mod allergens;
pub mod analysis;
pub mod book;
pub mod calendar;
pub mod claims;
pub mod components;
pub mod exact;
pub mod exchange;
pub mod findings;
pub mod foods;
pub mod kitchen;
pub mod label;
pub mod mend;
pub mod own_foods;
pub mod production;
pub mod recipe;
pub mod reference;
pub mod rules;
pub mod swaps;
pub mod tables;
pub mod uncertainty;
pub mod units;
pub mod week;
pub mod year;
pub mod yields;
