//! The school year: days without school, months, and cycle menus laid over
//! dates.

mod cycle;
mod model;
mod month;

pub use cycle::{LaidWeek, lay_out};
pub use model::{Calendar, Cycle, CycleId, NoSchool, OnBreak};
pub use month::{DayKind, month_weeks};
