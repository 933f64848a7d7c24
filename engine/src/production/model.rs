//! What an office keeps of its kitchens: schools, packs and prices, pans.

use crate::foods::FoodId;
use crate::recipe::RecipeId;
use crate::units::{Grams, Millilitres, Servings};
use crate::week::{Date, Service};
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

/// A school's name inside the book, stable when its title changes.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(transparent)]
pub struct SiteId(pub String);

/// A school that cooks and serves.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Site {
    /// Name inside the book.
    pub id: SiteId,
    /// Name as printed.
    pub name: String,
    /// What it serves, meal by meal and group by group.
    #[serde(default)]
    pub serves: Vec<SiteMeals>,
}

/// How many meals of a service a school usually serves: its share of what is
/// planned.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct SiteMeals {
    /// Which meal, for whom.
    #[serde(flatten)]
    pub service: Service,
    /// Meals on a usual day.
    pub meals: Servings,
}

impl Site {
    /// The meals of a service on a usual day; zero where it serves none.
    pub fn meals(&self, service: &Service) -> Servings {
        let found = self.serves.iter().find(|one| one.service == *service);
        found.map_or(Servings::ZERO, |one| one.meals)
    }
}

/// Servings of a choice that a person has stated for one school and day; they
/// go before its share.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct StatedServings {
    /// On which day.
    pub date: Date,
    /// Of which meal.
    #[serde(flatten)]
    pub service: Service,
    /// Of which recipe.
    pub recipe: RecipeId,
    /// At which school.
    pub site: SiteId,
    /// How many.
    pub servings: Servings,
}

/// What one pack of a food holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase", tag = "by")]
pub enum PackSize {
    /// By weight as purchased.
    Weight {
        /// Weight of the pack's contents.
        grams: Grams,
    },
    /// By volume; the food's own volume measures weigh it.
    Volume {
        /// Volume of the pack's contents.
        millilitres: Millilitres,
    },
}

/// A pack in which the office buys a food.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Pack {
    /// Which food.
    pub food: FoodId,
    /// The pack in words: "case of 6 No. 10 cans".
    #[serde(default)]
    pub words: String,
    /// What it holds.
    pub size: PackSize,
    /// What it costs, in the office's money; unknown, not zero, where nothing
    /// is stated.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub price: Option<Decimal>,
    /// When that price was read.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub priced_on: Option<Date>,
}

/// By what a pan is filled.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase", tag = "by")]
pub enum Filling {
    /// To the volume that the table of pans gives; the recipe's serving must
    /// be a volume.
    Volume,
    /// So much of the finished dish in each pan.
    Weight {
        /// Weight in a pan.
        grams: Grams,
    },
    /// So many servings in each pan.
    Servings {
        /// Servings in a pan.
        servings: Servings,
    },
}

/// How the office's kitchens cook a recipe.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct KitchenWay {
    /// Which recipe.
    pub recipe: RecipeId,
    /// The pan that it goes into, by its name in the table of pans.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pan: Option<Panning>,
    /// Minutes before service at which its cooking begins.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub minutes: Option<u32>,
}

/// A pan and how it is filled.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Panning {
    /// The pan's name in the table.
    pub pan: String,
    /// By what it is filled.
    pub filling: Filling,
}

/// All that an office keeps of its kitchens.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase", default)]
pub struct Production {
    /// Its schools, in the order of the book.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub sites: Vec<Site>,
    /// Servings stated for a school and day.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub stated: Vec<StatedServings>,
    /// Packs and prices.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub packs: Vec<Pack>,
    /// How recipes are cooked.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub ways: Vec<KitchenWay>,
    /// The scale that the kitchens weigh with, by its name in the table of
    /// scales; the table's first where nothing is stated.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub scale: Option<String>,
}

impl Production {
    /// Whether nothing is kept.
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }

    /// How a recipe is cooked, where the office says so.
    pub fn way(&self, recipe: &RecipeId) -> Option<&KitchenWay> {
        self.ways.iter().find(|way| way.recipe == *recipe)
    }

    /// A school by its name.
    pub fn site(&self, id: &SiteId) -> Option<&Site> {
        self.sites.iter().find(|site| site.id == *id)
    }
}
