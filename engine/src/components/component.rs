//! Meal components and the marks that rules ask for.

use serde::{Deserialize, Serialize};
use std::fmt;

/// A meal component, or a vegetable subgroup, toward which food credits.
///
/// 7 CFR 210.10(c): fruits, vegetables with five subgroups, grains, meats/meat
/// alternates and fluid milk.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum Component {
    /// Fruits, cups.
    #[serde(rename = "fruits")]
    Fruits,
    /// All vegetables; for a food, vegetables of no one subgroup. Cups.
    #[serde(rename = "vegetables")]
    Vegetables,
    /// Dark green vegetables, cups.
    #[serde(rename = "dark green vegetables")]
    DarkGreen,
    /// Red and orange vegetables, cups.
    #[serde(rename = "red and orange vegetables")]
    RedOrange,
    /// Beans, peas and lentils, cups.
    #[serde(rename = "beans, peas and lentils")]
    Beans,
    /// Starchy vegetables, cups.
    #[serde(rename = "starchy vegetables")]
    Starchy,
    /// Other vegetables, cups.
    #[serde(rename = "other vegetables")]
    Other,
    /// Grains, ounce equivalents.
    #[serde(rename = "grains")]
    Grains,
    /// Meats and meat alternates, ounce equivalents.
    #[serde(rename = "meats and meat alternates")]
    MeatAlternates,
    /// Fluid milk, fluid ounces.
    #[serde(rename = "fluid milk")]
    Milk,
}

impl Component {
    /// All components in the order of the meal pattern.
    pub const ALL: [Self; 10] = [
        Self::Fruits,
        Self::Vegetables,
        Self::DarkGreen,
        Self::RedOrange,
        Self::Beans,
        Self::Starchy,
        Self::Other,
        Self::Grains,
        Self::MeatAlternates,
        Self::Milk,
    ];

    /// The vegetable subgroups.
    pub const SUBGROUPS: [Self; 5] = [
        Self::DarkGreen,
        Self::RedOrange,
        Self::Beans,
        Self::Starchy,
        Self::Other,
    ];

    /// The unit in which the component is counted.
    pub fn unit(self) -> &'static str {
        match self {
            Self::Grains | Self::MeatAlternates => "oz eq",
            Self::Milk => "fl oz",
            _ => "cup",
        }
    }

    /// The marks that a food credited toward the component may bear.
    pub fn marks(self) -> &'static [Mark] {
        match self {
            Self::Grains => &[
                Mark::WholeGrainRich,
                Mark::WholeGrainUnstated,
                Mark::GrainDessert,
                Mark::Cereal,
            ],
            Self::MeatAlternates => &[Mark::Yogurt],
            Self::Milk => &[
                Mark::Unflavored,
                Mark::Flavored,
                Mark::FatFree,
                Mark::LowFat,
                Mark::ReducedFat,
                Mark::Whole,
                Mark::Beverage,
            ],
            Self::Fruits | Self::Vegetables => &[Mark::Juice, Mark::Beverage],
            Self::Beans => &[Mark::SubgroupOnly],
            Self::DarkGreen | Self::RedOrange | Self::Starchy | Self::Other => {
                &[Mark::Juice, Mark::Beverage]
            }
        }
    }

    /// True for vegetables and their subgroups.
    pub fn is_vegetable(self) -> bool {
        self == Self::Vegetables || Self::SUBGROUPS.contains(&self)
    }

    /// True when something that may credit toward `self` could change the
    /// amount of `other`.
    pub fn touches(self, other: Self) -> bool {
        self == other
            || (self == Self::Vegetables && other.is_vegetable())
            || (other == Self::Vegetables && self.is_vegetable())
    }
}

impl fmt::Display for Component {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.serialize(out)
    }
}

/// What rules on a week ask of a food besides its component.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum Mark {
    /// Full-strength juice.
    #[serde(rename = "juice")]
    Juice,
    /// A drink: only one of a snack's two components may be one.
    #[serde(rename = "beverage")]
    Beverage,
    /// Whole grain, or half of it whole and the rest enriched.
    #[serde(rename = "whole grain-rich")]
    WholeGrainRich,
    /// The food's description does not say how much of the grain is whole.
    #[serde(rename = "whole grain unstated")]
    WholeGrainUnstated,
    /// Flour or meal: it becomes one item with the other flours of the recipe.
    #[serde(rename = "dough")]
    Dough,
    /// A grain-based dessert.
    #[serde(rename = "grain dessert")]
    GrainDessert,
    /// A breakfast cereal, whose added sugars are limited.
    #[serde(rename = "breakfast cereal")]
    Cereal,
    /// Yogurt, whose added sugars are limited.
    #[serde(rename = "yogurt")]
    Yogurt,
    /// Flavored milk.
    #[serde(rename = "flavored")]
    Flavored,
    /// Unflavored milk.
    #[serde(rename = "unflavored")]
    Unflavored,
    /// Fat-free milk.
    #[serde(rename = "fat-free")]
    FatFree,
    /// Low-fat (1 percent) milk.
    #[serde(rename = "low-fat")]
    LowFat,
    /// Reduced-fat (2 percent) milk.
    #[serde(rename = "reduced-fat")]
    ReducedFat,
    /// Whole milk.
    #[serde(rename = "whole")]
    Whole,
    /// Beans served as a meat alternate: they count toward their weekly
    /// subgroup but not toward vegetables.
    #[serde(rename = "subgroup only")]
    SubgroupOnly,
}

impl fmt::Display for Mark {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.serialize(out)
    }
}

/// As what a dish serves its beans, peas and lentils: never both.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum BeansRole {
    /// As a vegetable.
    #[default]
    #[serde(rename = "vegetable")]
    Vegetable,
    /// As a meat alternate.
    #[serde(rename = "meat alternate")]
    MeatAlternate,
}
