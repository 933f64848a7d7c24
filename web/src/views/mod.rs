//! The views: one folder or file each, with its words beside it.

pub mod about;
pub mod facts;
pub mod foods;
pub mod kitchen;
pub mod month;
pub mod parents;
pub mod recipe;
pub mod review;
pub mod rules;
pub mod week;
