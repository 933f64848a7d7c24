//! Everything that the engine looks things up in, and the two questions that
//! callers ask: what is in this recipe, and does this week keep its rules?

mod origin;
mod prepare;
mod recipe;
mod serving;
mod sub_recipe;
mod uses;
mod week;

pub use origin::{FigureOrigin, PartOrigin};
pub use prepare::{LineStudy, PrepareProblem, Retained};
pub use recipe::{RecipeAllergen, RecipeStudy, StudyProblem};
pub use serving::{CARBOHYDRATE_CAUTION, CarbohydrateCount, ServingAmount};
pub use sub_recipe::SubRecipeProblem;
pub use sub_recipe::batches as batches_asked;
pub use uses::{Uses, uses};
pub use week::{ServiceStudy, SureFinding, WeekStudy};

use crate::allergens::AllergenTerms;
use crate::book::Book;
use crate::claims::{ClaimTables, ClaimTexts};
use crate::components::CreditRules;
use crate::foods::{FoodTable, Provenance, SearchIndex, SynonymError};
use crate::kitchen::FoodSafety;
use crate::label::{LabelTables, LabelTexts};
use crate::own_foods::{ImportError, OwnFood, entry};
use crate::production::{Pans, PrepWords, Scales};
use crate::rules::{MealPatterns, OwnRules, Specifications, Switches, WeekRules};
use crate::tables::TableError;
use crate::uncertainty::Evidence;
use crate::yields::{BasisWords, Treatments, TrimYields, YieldTable};
use nutrient_data::format::AssetError;
use nutrient_data::{kitchen, rules};
use std::collections::BTreeSet;
use std::fmt;
use std::sync::Arc;

/// The dataset, the office's own foods, and all tables, read and checked.
#[derive(Debug, Clone)]
pub struct Reference {
    /// Foods with their values.
    pub foods: FoodTable,
    /// Search over the dataset's foods.
    pub search: Arc<SearchIndex>,
    /// Search over the office's own foods.
    pub own_search: Arc<SearchIndex>,
    /// Limits on the average meal.
    pub specifications: Specifications,
    /// Amounts of meal components that meals and weeks must offer.
    pub meal_patterns: MealPatterns,
    /// Shares, options and product limits over a week.
    pub week_rules: WeekRules,
    /// How foods credit toward meal components.
    pub credit_rules: CreditRules,
    /// The tables of Nutrition Facts.
    pub label: LabelTables,
    /// Criteria of nutrient content claims.
    pub claims: ClaimTables,
    /// Words that point to allergens.
    pub allergen_terms: AllergenTerms,
    /// Cooking and holding temperatures.
    pub food_safety: FoodSafety,
    /// Words that tell what a weight means.
    pub basis_words: BasisWords,
    /// Yields of peeling, trimming and draining.
    pub trim_yields: TrimYields,
    /// Cooking yields.
    pub yields: YieldTable,
    /// What drains, rinses or fries away.
    pub treatments: Treatments,
    /// What kitchen scales show.
    pub scales: Scales,
    /// What pans hold.
    pub pans: Pans,
    /// Words that tell the order of work.
    pub prep_words: PrepWords,
    /// Standard errors; nothing until [`Self::with_provenance`].
    pub evidence: Option<Arc<Evidence>>,
}

/// Why the reference cannot be made.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum ReferenceError {
    /// The dataset's file is not what it should be.
    Asset(AssetError),
    /// A table is damaged.
    Table(TableError),
    /// The table of kitchen words is damaged.
    Synonyms(SynonymError),
    /// A food of the office's own cannot be used.
    OwnFood(ImportError),
}

impl fmt::Display for ReferenceError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Asset(error) => error.fmt(out),
            Self::Table(error) => error.fmt(out),
            Self::Synonyms(error) => error.fmt(out),
            Self::OwnFood(error) => error.fmt(out),
        }
    }
}

impl std::error::Error for ReferenceError {}

impl From<AssetError> for ReferenceError {
    fn from(error: AssetError) -> Self {
        Self::Asset(error)
    }
}

impl From<TableError> for ReferenceError {
    fn from(error: TableError) -> Self {
        Self::Table(error)
    }
}

impl From<SynonymError> for ReferenceError {
    fn from(error: SynonymError) -> Self {
        Self::Synonyms(error)
    }
}

impl From<ImportError> for ReferenceError {
    fn from(error: ImportError) -> Self {
        Self::OwnFood(error)
    }
}

impl Reference {
    /// The dataset's asset with the tables that come with the engine.
    ///
    /// # Errors
    /// When the asset or a table is damaged.
    pub fn committed(foods_asset: &[u8]) -> Result<Self, ReferenceError> {
        let foods = FoodTable::from_asset(foods_asset)?;
        Ok(Self {
            search: Arc::new(SearchIndex::build(&foods, kitchen::SYNONYMS)?),
            own_search: Arc::new(SearchIndex::from_foods(&[], "")?),
            foods,
            specifications: Specifications::from_csv(rules::DIETARY_SPECIFICATIONS)?,
            meal_patterns: MealPatterns::from_csv(rules::MEAL_PATTERNS)?,
            week_rules: WeekRules::from_csv(rules::WEEK_RULES)?,
            credit_rules: CreditRules::committed()?,
            label: LabelTables::new(&LabelTexts::committed())?,
            claims: ClaimTables::new(&ClaimTexts::committed())?,
            allergen_terms: AllergenTerms::from_csv(rules::ALLERGEN_TERMS)?,
            food_safety: FoodSafety::from_csv(rules::FOOD_SAFETY)?,
            basis_words: BasisWords::from_csv(kitchen::AMOUNT_BASIS)?,
            trim_yields: TrimYields::from_csv(kitchen::TRIM_YIELDS)?,
            yields: YieldTable::from_csv(kitchen::COOKING_YIELDS)?,
            treatments: Treatments::from_csv(kitchen::TREATMENTS)?,
            scales: Scales::from_csv(kitchen::SCALES)?,
            pans: Pans::from_csv(kitchen::PANS)?,
            prep_words: PrepWords::from_csv(kitchen::PREP_WORDS)?,
            evidence: None,
        })
    }

    /// Adds where the dataset's values come from, which may be loaded later.
    ///
    /// # Errors
    /// When the asset is damaged.
    pub fn with_provenance(mut self, asset: &[u8]) -> Result<Self, ReferenceError> {
        let provenance = Provenance::from_asset(asset)?;
        self.evidence = Some(Arc::new(Evidence::new(&self.foods, provenance)));
        Ok(self)
    }

    /// The same tables with a book's own foods, own limits and choices of how
    /// to read the rules. `self` must be without any of these.
    ///
    /// # Errors
    /// At the first food or row that cannot be used.
    pub fn for_book(&self, book: &Book) -> Result<Self, ReferenceError> {
        Ok(self
            .clone()
            .with_own_foods(&book.own_foods)?
            .with_own_rules(&book.own_rules)?
            .with_switches(&book.switches))
    }

    /// Takes these foods of the office's own in place of any before.
    ///
    /// # Errors
    /// At the first food that cannot be used.
    pub fn with_own_foods(mut self, own: &[OwnFood]) -> Result<Self, ReferenceError> {
        let entries = own
            .iter()
            .map(|food| entry(food, &self.label))
            .collect::<Result<Vec<_>, _>>()?;
        let foods: Vec<_> = entries.iter().map(|entry| entry.food.clone()).collect();
        self.own_search = Arc::new(SearchIndex::from_foods(&foods, kitchen::SYNONYMS)?);
        self.foods = self.foods.with_own(entries);
        Ok(self)
    }

    /// Adds an office's own limits to the tables that came with the engine.
    ///
    /// # Errors
    /// At the first row that cannot be used.
    pub fn with_own_rules(mut self, own: &OwnRules) -> Result<Self, ReferenceError> {
        // The patterns say which groups there are.
        if let Some(text) = &own.meal_patterns {
            self.meal_patterns = self.meal_patterns.and_own(text)?;
        }
        if let Some(text) = &own.dietary_specifications {
            self.specifications = self.specifications.and_own(text, &self.meal_patterns)?;
        }
        if let Some(text) = &own.week_rules {
            self.week_rules = self.week_rules.and_own(text, &self.meal_patterns)?;
        }
        Ok(self)
    }

    /// The switches by which an office settles how it reads the rules, by name.
    pub fn switches(&self) -> Vec<String> {
        let names: BTreeSet<&str> = self
            .specifications
            .switches()
            .chain(self.meal_patterns.switches())
            .chain(self.week_rules.switches())
            .collect();
        names.into_iter().map(str::to_owned).collect()
    }

    /// Follows the readings of the rules that an office has chosen.
    pub fn with_switches(mut self, switches: &Switches) -> Self {
        self.specifications = self.specifications.with(switches.clone());
        self.meal_patterns = self.meal_patterns.with(switches.clone());
        self.week_rules = self.week_rules.with(switches.clone());
        self
    }
}
