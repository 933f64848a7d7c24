//! Everything that can be done to the book.

use super::contents::Saved;
use super::kitchen_edit::{CalendarEdit, ProductionEdit};
use engine::book::RecipeLabel;
use engine::components::BeansRole;
use engine::foods::NutrientId;
use engine::mend::WeekChange;
use engine::own_foods::{OwnFood, OwnMeasure};
use engine::recipe::{Correction, Recipe, RecipeId, RecipeLine, ServingSize};
use engine::units::{Grams, Servings};
use engine::week::{Date, GradeGroup, MealKind, Week, WeekId};
use rust_decimal::Decimal;

/// One change.
#[derive(Debug, Clone, PartialEq)]
pub enum Action {
    /// Put another book on the desk.
    Open(Saved),
    /// Name the office whose book it is.
    Office(String),
    /// Follow a reading of the rules, or do not.
    Switch(String, bool),
    /// Add a recipe; its id is made unique.
    AddRecipe(Recipe),
    /// Bring in recipes from elsewhere, under names that are free; those that
    /// the book has already are left.
    BringIn(Vec<Recipe>),
    /// Take a recipe out of the book.
    RemoveRecipe(RecipeId),
    /// Change a recipe.
    Recipe(RecipeId, RecipeEdit),
    /// Decide about the label of a recipe.
    Label(RecipeLabel),
    /// Keep a recipe as it stands: later changes are compared with it.
    Keep(RecipeId),
    /// Go back to a recipe as it was last kept.
    GoBack(RecipeId),
    /// Change the named versions of a recipe, or go back to one.
    Version(RecipeId, VersionEdit),
    /// Add a week with this title and these days, all of them empty.
    AddWeek {
        /// Title as printed.
        title: String,
        /// Its days.
        dates: Vec<Date>,
    },
    /// Add weeks in one step; their ids are made unique.
    AddWeeks(Vec<Week>),
    /// Take a week out of the book.
    RemoveWeek(WeekId),
    /// Change a week.
    Week(WeekId, WeekEdit),
    /// Make a change that a search for the fewest proposes, for this week.
    Mend(WeekId, WeekChange),
    /// Add foods of the office's own; their numbers are made unique.
    AddFoods(Vec<OwnFood>),
    /// Take an own food out of the book.
    RemoveFood(u32),
    /// Change an own food.
    Food(u32, FoodEdit),
    /// Write one of the office's own tables of limits, usable or not.
    OwnRules(OwnTable, String),
    /// Change what the office keeps of its kitchens.
    Production(ProductionEdit),
    /// Change what the office keeps of the school year.
    Calendar(CalendarEdit),
    /// Take the last step back.
    Undo,
    /// Do the step again that was taken back.
    Redo,
}

/// One change of a recipe.
#[derive(Debug, Clone, PartialEq)]
pub enum RecipeEdit {
    /// Another title; the recipe keeps its id.
    Title(String),
    /// Another number of servings.
    Servings(Servings),
    /// Other words for one serving.
    ServingWords(String),
    /// Other ingredient lines, as one text.
    Lines(String),
    /// Other directions.
    Method(String),
    /// The size of a serving, where the number of servings follows from it.
    ServingSize(Option<ServingSize>),
    /// The measured weight of the finished batch.
    FinishedWeight(Option<Grams>),
    /// As what the beans of the recipe are served.
    Beans(BeansRole),
    /// What a person says of the reading of a line.
    Correct {
        /// Index of the line.
        line: usize,
        /// All that is set right about it.
        correction: Correction,
    },
    /// Put other lines in place of one.
    Swap {
        /// Index of the line.
        line: usize,
        /// What takes its place.
        lines: Vec<RecipeLine>,
    },
}

/// One change of the named versions of a recipe. A name that another version
/// has already gets a number.
#[derive(Debug, Clone, PartialEq)]
pub enum VersionEdit {
    /// Keep the recipe as it stands.
    Keep {
        /// Under this name.
        name: String,
        /// Which day it is, where that is known.
        on: Option<Date>,
    },
    /// Take a version out of the book.
    Remove(String),
    /// Put a version in the recipe's place.
    GoBack(String),
}

/// Where a meal stands in its week.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct MealAt {
    /// Index of the day.
    pub day: usize,
    /// Index of the meal in the day.
    pub meal: usize,
}

/// Where an offer stands in its week.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct OfferAt {
    /// Its meal.
    pub meal: MealAt,
    /// Index of the offer in the meal.
    pub offer: usize,
}

/// Where a choice stands in its week.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct ChoiceAt {
    /// Its offer.
    pub offer: OfferAt,
    /// Index of the choice in the offer.
    pub choice: usize,
}

/// One change of a week.
#[derive(Debug, Clone, PartialEq)]
pub enum WeekEdit {
    /// Another title; the week keeps its id.
    Title(String),
    /// Move all days so that the first falls on this date.
    Start(Date),
    /// Another date for one day.
    DayDate(usize, Date),
    /// Add an empty day after the last.
    AddDay(Date),
    /// Take a day out.
    RemoveDay(usize),
    /// Add a copy of a day after the last.
    CopyDay(usize, Date),
    /// Add a meal to a day. Numbers and parts are those of the same meal on
    /// another day, where there is one.
    AddMeal {
        /// Index of the day.
        day: usize,
        /// Which meal.
        kind: MealKind,
        /// For whom.
        group: GradeGroup,
        /// Titles of its parts, unless another day has the same meal.
        parts: Vec<String>,
    },
    /// Take a meal off its day.
    RemoveMeal(MealAt),
    /// Another kind of meal.
    Kind(MealAt, MealKind),
    /// Another grade group.
    Group(MealAt, GradeGroup),
    /// Another number of planned meals.
    PlannedMeals(MealAt, Servings),
    /// Add a part to a meal.
    AddOffer(MealAt, String),
    /// Take a part out of a meal.
    RemoveOffer(OfferAt),
    /// Another title of a part.
    OfferTitle(OfferAt, String),
    /// How many choices of a part a student may take.
    Take(OfferAt, u32),
    /// Add a choice to a part.
    AddChoice(OfferAt, RecipeId),
    /// Take a choice out of its part.
    RemoveChoice(ChoiceAt),
    /// Offer another recipe instead.
    ChoiceRecipe(ChoiceAt, RecipeId),
    /// Another number of planned servings.
    Planned(ChoiceAt, Servings),
    /// Move a choice so that it stands there.
    MoveChoice(ChoiceAt, ChoiceAt),
    /// Move a choice to the same part of the same meal on another day.
    ChoiceToDay(ChoiceAt, usize),
    /// Move a meal so that it stands there.
    MoveMeal(MealAt, MealAt),
    /// Exchange what two days serve.
    ExchangeDays(usize, usize),
}

/// One change of an own food.
#[derive(Debug, Clone, PartialEq)]
pub enum FoodEdit {
    /// Another description; the food keeps its number.
    Description(String),
    /// The package's ingredient statement.
    Ingredients(String),
    /// Which package or sheet the figures come from.
    Reference(String),
    /// The weight that the figures are for.
    Weight(Grams),
    /// What the label prints of a nutrient.
    Printed(NutrientId, String),
    /// What the sheet states of a nutrient; nothing where it is silent.
    Amount(NutrientId, Option<Decimal>),
    /// Add an empty household measure.
    AddMeasure,
    /// Change a household measure.
    Measure(usize, OwnMeasure),
    /// Take a household measure out.
    RemoveMeasure(usize),
}

/// Tables of limits that an office can write itself.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum OwnTable {
    /// Limits on the average meal.
    DietarySpecifications,
    /// Amounts of components.
    MealPatterns,
    /// Shares, options and product limits.
    WeekRules,
}
