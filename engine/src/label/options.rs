//! What an office decides about a panel.

use super::{Audience, LabelTables};
use crate::foods::NutrientId;
use crate::units::{Grams, Servings};
use serde::{Deserialize, Serialize, Serializer};
use std::fmt;

/// How the panel is laid out.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub enum Form {
    /// One row below the other.
    #[default]
    Vertical,
    /// Side by side, for small packages without the height.
    Tabular,
    /// As running text, for small packages that cannot take a table.
    Linear,
}

/// Which rows the panel has.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub enum Content {
    /// All that are always listed.
    #[default]
    Full,
    /// Without the rows that may be left out for their small amounts; these
    /// are named below. Not for a food whose label makes a claim about them.
    WithoutInsignificant,
    /// The simplified panel, where it is allowed.
    Simplified,
}

/// What an office decides about a panel.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase", default)]
pub struct PanelOptions {
    /// Words for one serving: "1 cup"; may be empty.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub serving_words: String,
    /// Weight of one serving as served; the recipe's own, where that is sure,
    /// if none is given.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub serving_weight: Option<Grams>,
    /// Servings in one container; the recipe's where none is given.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub servings_per_container: Option<Servings>,
    /// For whom the panel is.
    pub audience: Audience,
    /// How it is laid out.
    pub form: Form,
    /// A second column with the figures of the whole container.
    pub dual: bool,
    /// Which rows it has.
    pub content: Content,
    /// Nutrients to list besides those that are always listed.
    pub also: Vec<NutrientId>,
}

/// What of the options could not be followed; written as text.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum PanelProblem {
    /// The servings per container are zero or negative.
    NoServings(Servings),
    /// The weight of a serving is zero or negative.
    NoWeight(Grams),
    /// No panel lists this nutrient.
    NotOnLabels(NutrientId),
    /// Too few amounts are insignificant for the simplified panel.
    SimplifiedNotAllowed {
        /// How many are known to be insignificant.
        insignificant: usize,
        /// How many there must be.
        needed: usize,
    },
}

impl fmt::Display for PanelProblem {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NoServings(servings) => write!(
                out,
                "A container cannot hold {} servings: enter a number above zero. The recipe's own servings are used.",
                servings.servings()
            ),
            Self::NoWeight(weight) => write!(
                out,
                "A serving cannot weigh {} g: enter its weight as served. The recipe's own weight is used.",
                weight.grams()
            ),
            Self::NotOnLabels(nutrient) => write!(
                out,
                "Nutrient {} is not one that a Nutrition Facts panel can list: take it out of the request.",
                nutrient.0
            ),
            Self::SimplifiedNotAllowed {
                insignificant,
                needed,
            } => write!(
                out,
                "The simplified panel needs {needed} nutrients in insignificant amounts; here {insignificant} are known to be. The full panel is shown: choose it, or complete the missing values.",
            ),
        }
    }
}

impl Serialize for PanelProblem {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl PanelOptions {
    /// What of the options makes no sense for any recipe.
    pub(super) fn problems(&self, tables: &LabelTables) -> Vec<PanelProblem> {
        let servings = self
            .servings_per_container
            .filter(|servings| *servings <= Servings::ZERO)
            .map(PanelProblem::NoServings);
        let weight = self
            .serving_weight
            .filter(|weight| *weight <= Grams::ZERO)
            .map(PanelProblem::NoWeight);
        let unlisted = self
            .also
            .iter()
            .filter(|nutrient| tables.nutrient(**nutrient).is_none())
            .map(|nutrient| PanelProblem::NotOnLabels(*nutrient));
        servings.into_iter().chain(weight).chain(unlisted).collect()
    }

    /// The weight of a serving as served, if one above zero is given.
    pub(super) fn weight_as_served(&self) -> Option<Grams> {
        self.serving_weight.filter(|weight| *weight > Grams::ZERO)
    }

    /// The servings in a container, if a number above zero is given.
    pub(super) fn servings_given(&self) -> Option<Servings> {
        self.servings_per_container
            .filter(|servings| *servings > Servings::ZERO)
    }
}
