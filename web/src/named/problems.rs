//! What is wrong, and how to mend it.

use super::{group, meal, quantity};
use crate::format;
use crate::language::{Say, of_table, of_table_in_parts, say};
use crate::state::Contents;
use crate::words::{not_analysed, title_or_untitled};
use engine::analysis::AnalysisError;
use engine::claims::{ClaimError, Missing, WhichFood};
use engine::label::PanelProblem;
use engine::own_foods::ImportError;
use engine::recipe::WeighProblem;
use engine::reference::{PrepareProblem, StudyProblem, SubRecipeProblem};
use engine::tables::TableError;
use engine::units::{QuantityError, Unit};
use engine::week::WeekError;

/// Why a recipe has no totals.
pub fn study(problem: &StudyProblem) -> String {
    match problem {
        StudyProblem::NoServings { servings } => analysis(&AnalysisError::NoServings(*servings)),
        StudyProblem::NoServingSize => Say("problem-no-serving-size").to_string(),
        StudyProblem::NoBatchWeight => Say("problem-no-batch-weight").to_string(),
    }
}

/// Why a recipe cannot be analysed.
pub fn analysis(problem: &AnalysisError) -> String {
    match problem {
        AnalysisError::NoServings(servings) => say(
            "problem-no-servings",
            &[("servings", format::stated(servings.servings()).into())],
        ),
    }
}

/// Why a line cannot be taken to the dish.
pub fn prepare(problem: &PrepareProblem) -> String {
    match problem {
        PrepareProblem::NoYield { raw, cooked } => say(
            "problem-no-yield",
            &[
                ("raw", raw.to_string().into()),
                ("cooked", cooked.to_string().into()),
            ],
        ),
        PrepareProblem::NegativeWeight => Say("problem-negative-weight").to_string(),
        PrepareProblem::SubRecipe(problem) => sub_recipe(problem),
    }
}

fn sub_recipe(problem: &SubRecipeProblem) -> String {
    match problem {
        SubRecipeProblem::Cycle { path } => {
            say("problem-cycle", &[("path", path.join(" → ").into())])
        }
        SubRecipeProblem::NotInBook { recipe } => say(
            "problem-recipe-not-in-book",
            &[("recipe", recipe.0.as_str().into())],
        ),
        SubRecipeProblem::AmountUnclear { title } => say(
            "problem-amount-unclear",
            &[("title", title.as_str().into())],
        ),
        SubRecipeProblem::NotAnalysed { title } => {
            say("problem-not-analysed", &[("title", title.as_str().into())])
        }
    }
}

/// Why a line has no weight.
pub fn weigh(problem: &WeighProblem) -> String {
    match problem {
        WeighProblem::NotAnIngredient => Say("problem-not-an-ingredient").to_string(),
        WeighProblem::NoFood => Say("problem-no-food").to_string(),
        WeighProblem::UnknownFood { food } => {
            say("problem-unknown-food", &[("food", food.to_string().into())])
        }
        WeighProblem::NoAmount => Say("problem-no-amount").to_string(),
        WeighProblem::Vague { words } => say("problem-vague", &[("words", words.as_str().into())]),
        WeighProblem::Faulty { error } => amount(error),
        // The measures that there are follow in a list of their own.
        WeighProblem::NoSuchMeasure { wanted, .. } => {
            let asked = quantity(wanted);
            match wanted.unit == Unit::pieces() {
                true => say("problem-no-piece", &[("wanted", asked.into())]),
                false => say("problem-no-measure", &[("wanted", asked.into())]),
            }
        }
    }
}

/// What can be done about a line without a weight.
pub fn weigh_remedy(problem: &WeighProblem) -> Say {
    match problem {
        WeighProblem::NotAnIngredient => Say("problem-mend-not-an-ingredient"),
        WeighProblem::NoFood | WeighProblem::UnknownFood { .. } => Say("problem-mend-food"),
        WeighProblem::NoAmount => Say("problem-mend-no-amount"),
        WeighProblem::Vague { .. } => Say("problem-mend-vague"),
        WeighProblem::Faulty { error } => amount_remedy(error),
        WeighProblem::NoSuchMeasure { .. } => Say("problem-mend-measure"),
    }
}

fn amount(error: &QuantityError) -> String {
    let key = match error {
        QuantityError::Nothing => "problem-amount-nothing",
        QuantityError::LeftOver { .. } => "problem-amount-left-over",
        QuantityError::NoNumber { .. } => "problem-amount-no-number",
        QuantityError::ZeroDenominator { .. } => "problem-amount-divides-by-zero",
        QuantityError::Malformed { .. } => "problem-amount-malformed",
        QuantityError::Negative { .. } => "problem-amount-negative",
        QuantityError::Zero { .. } => "problem-amount-zero",
        QuantityError::TooLarge { .. } => "problem-amount-too-large",
        QuantityError::TooFine { .. } => "problem-amount-too-fine",
        QuantityError::MixedKinds { .. } => "problem-amount-mixed-kinds",
    };
    let most = format::group(engine::units::LARGEST_AMOUNT.into());
    say(
        key,
        &[("words", error.words().into()), ("most", most.into())],
    )
}

fn amount_remedy(error: &QuantityError) -> Say {
    match error {
        QuantityError::Nothing | QuantityError::NoNumber { .. } => Say("problem-mend-no-number"),
        QuantityError::LeftOver { .. } => Say("problem-mend-left-over"),
        QuantityError::ZeroDenominator { .. } => Say("problem-mend-divides-by-zero"),
        QuantityError::Malformed { .. } => Say("problem-mend-malformed"),
        QuantityError::Negative { .. } => Say("problem-mend-negative"),
        QuantityError::Zero { .. } => Say("problem-mend-zero"),
        QuantityError::TooLarge { .. } => Say("problem-mend-too-large"),
        QuantityError::TooFine { .. } => Say("problem-mend-too-fine"),
        QuantityError::MixedKinds { .. } => Say("problem-mend-mixed-kinds"),
    }
}

/// Why a week cannot be averaged.
pub fn week(problem: &WeekError, contents: &Contents) -> String {
    match problem {
        WeekError::UnknownRecipe { date, recipe } => {
            let date = format::date(*date);
            match contents.recipe(recipe) {
                // It is in the book, but has no totals.
                Some(recipe) => not_analysed(&date, &title_or_untitled(&recipe.title)),
                None => say(
                    "problem-week-unknown-recipe",
                    &[("date", date.into()), ("recipe", recipe.0.as_str().into())],
                ),
            }
        }
        WeekError::NegativeServings { date, recipe } => say(
            "problem-week-negative-servings",
            &[
                ("date", format::date(*date).into()),
                ("recipe", recipe.0.as_str().into()),
            ],
        ),
        WeekError::NoMeals {
            date,
            kind,
            group: of,
        } => say(
            "problem-week-no-meals",
            &[
                ("date", format::date(*date).into()),
                ("meal", meal(*kind).to_string().into()),
                ("group", group(&of.0).into()),
            ],
        ),
    }
}

/// What of a panel's options could not be followed.
pub fn panel(problem: &PanelProblem) -> String {
    match problem {
        PanelProblem::NoServings(servings) => say(
            "problem-panel-no-servings",
            &[("servings", format::stated(servings.servings()).into())],
        ),
        PanelProblem::NoWeight(weight) => say(
            "problem-panel-no-weight",
            &[("grams", format::stated(weight.grams()).into())],
        ),
        PanelProblem::NotOnLabels(nutrient) => say(
            "problem-panel-not-on-labels",
            &[("nutrient", nutrient.0.to_string().into())],
        ),
        PanelProblem::SimplifiedNotAllowed {
            insignificant,
            needed,
        } => say(
            "problem-panel-not-simplified",
            &[
                ("insignificant", (*insignificant).into()),
                ("needed", (*needed).into()),
            ],
        ),
    }
}

/// Why claims cannot be checked.
pub fn claim(problem: &ClaimError) -> String {
    match problem {
        ClaimError::NoReferenceAmount(weight) => say(
            "problem-claim-reference-amount",
            &[("grams", format::stated(weight.grams()).into())],
        ),
        ClaimError::NoServingWeight(weight) => say(
            "problem-claim-serving-weight",
            &[("grams", format::stated(weight.grams()).into())],
        ),
    }
}

/// What is missing for the proof of a claim.
pub fn missing(missing: &Missing) -> String {
    let is_this = |food: &WhichFood| *food == WhichFood::This;
    match missing {
        Missing::Value { food, name, .. } => {
            let key = match is_this(food) {
                true => "problem-claim-value",
                false => "problem-claim-value-of-reference",
            };
            say(key, &[("name", of_table(name).into())])
        }
        Missing::ServingWeight { food } => match is_this(food) {
            true => Say("problem-claim-no-serving-weight").to_string(),
            false => Say("problem-claim-no-reference-weight").to_string(),
        },
        Missing::ReferenceAmount => Say("problem-claim-no-reference-amount").to_string(),
        Missing::ReferenceFood => Say("problem-claim-no-reference-food").to_string(),
        Missing::Ingredient { words, .. } => say(
            "problem-claim-ingredient",
            &[("words", of_table(words).into())],
        ),
    }
}

/// Why foods could not be taken in.
pub fn import(error: &ImportError) -> String {
    format!(
        "{}: {}: {}",
        of_table(&error.place),
        of_table(&error.problem),
        of_table(&error.remedy)
    )
}

/// What is wrong with a table.
pub fn table(error: &TableError) -> String {
    let problem = of_table_in_parts(&error.problem);
    match error.line {
        0 => problem,
        line => say(
            "problem-at-line",
            &[
                ("line", line.to_string().into()),
                ("problem", problem.into()),
            ],
        ),
    }
}
