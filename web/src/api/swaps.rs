//! What else could go in a line's place.

use super::engine::{Engine, from_js, to_js};
use super::error::{ApiError, ErrorKind};
use super::forms::AmountForm;
use engine::book::Book;
use engine::recipe::{Recipe, RecipeLine};
use engine::swaps::{
    Change, ChangeBounds, CreditChange, Goals, LeftOut, NutrientChange, Place, Proposal, Reach,
    ServiceChange, SwapIndex, SwapOptions, SwapProblem, VerdictChange, WeekChange, apply, propose,
};
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};
use wasm_bindgen::prelude::*;

/// Foods that are proposed where no number is asked for.
const LIMIT: usize = 8;

/// For which line, and what is asked of the swap.
#[derive(Debug, Clone, Deserialize)]
#[serde(rename_all = "camelCase")]
struct SwapRequest {
    line: usize,
    goals: Goals,
    #[serde(default)]
    options: SwapOptions,
    limit: Option<usize>,
}

#[derive(Serialize)]
#[serde(rename_all = "camelCase")]
struct NutrientChangeForm {
    nutrient: engine::foods::NutrientId,
    before: AmountForm,
    after: AmountForm,
    change: ChangeBounds,
}

impl From<&NutrientChange> for NutrientChangeForm {
    fn from(row: &NutrientChange) -> Self {
        let normal = |bound: Option<Decimal>| bound.map(|bound| bound.normalize());
        Self {
            nutrient: row.nutrient,
            before: (&row.before).into(),
            after: (&row.after).into(),
            change: ChangeBounds {
                low: normal(row.change.low),
                high: normal(row.change.high),
            },
        }
    }
}

#[derive(Serialize)]
struct ServiceChangeForm {
    meal: engine::week::MealKind,
    group: engine::week::GradeGroup,
    nutrients: Vec<NutrientChangeForm>,
}

impl From<ServiceChange> for ServiceChangeForm {
    fn from(service: ServiceChange) -> Self {
        Self {
            meal: service.service.kind,
            group: service.service.group,
            nutrients: service.nutrients.iter().map(Into::into).collect(),
        }
    }
}

#[derive(Serialize)]
struct WeekChangeForm {
    week: engine::week::WeekId,
    title: String,
    services: Vec<ServiceChangeForm>,
    verdicts: Vec<VerdictChange>,
    problem: Option<String>,
}

impl From<WeekChange> for WeekChangeForm {
    fn from(week: WeekChange) -> Self {
        let (services, problem) = match week.services {
            Ok(services) => (services, None),
            Err(problem) => (Vec::new(), Some(problem.to_string())),
        };
        Self {
            week: week.week,
            title: week.title,
            services: services.into_iter().map(Into::into).collect(),
            verdicts: week.verdicts,
            problem,
        }
    }
}

#[derive(Serialize)]
struct ProposalForm<'a> {
    change: &'a Change,
    lines: &'a [RecipeLine],
    nutrients: Vec<NutrientChangeForm>,
    credits: &'a [CreditChange],
    cost: Option<Decimal>,
    reasons: Vec<String>,
    weeks: Vec<WeekChangeForm>,
}

#[derive(Serialize)]
#[serde(rename_all = "camelCase")]
struct ProposalsForm<'a> {
    foods: Vec<ProposalForm<'a>>,
    moves: Vec<ProposalForm<'a>>,
    left_out: LeftOut,
}

#[wasm_bindgen]
impl Engine {
    /// What else could go in the place of a recipe's line: foods and kitchen
    /// moves, best first, with what each changes in a serving and in the
    /// average meals of the book's weeks.
    ///
    /// # Errors
    /// When an argument has another form, or the line or its recipe does not
    /// say enough.
    #[wasm_bindgen(js_name = proposeSwaps, unchecked_return_type = "SwapProposals")]
    pub fn propose_swaps(
        &self,
        #[wasm_bindgen(unchecked_param_type = "Recipe")] recipe: JsValue,
        #[wasm_bindgen(unchecked_param_type = "SwapRequest")] request: JsValue,
        #[wasm_bindgen(unchecked_optional_param_type = "Book")] book: JsValue,
    ) -> Result<JsValue, JsValue> {
        let recipe: Recipe = from_js("recipe", recipe)?;
        let request: SwapRequest = from_js("request", request)?;
        let book: Option<Book> = from_js("book", book)?;
        let book = with(book.unwrap_or_else(|| Book::empty("")), &recipe);
        let reference = self.for_book(&book)?;
        let study = reference.study_recipe(&book, &recipe);
        let place = Place {
            book: &book,
            recipe: &recipe,
            study: &study,
            line: request.line,
        };
        let (goals, options) = (&request.goals, &request.options);
        let limit = request.limit.unwrap_or(LIMIT);
        let found = propose(
            &reference,
            self.swap_index()?,
            &place,
            goals,
            options,
            limit,
        );
        let found = found.map_err(no_swaps)?;
        let reach = Reach::new(&reference, &book, &recipe.id, |one| {
            reference.study_recipe(&book, one)
        });
        let in_full = |proposal| {
            let changed = apply(&recipe, request.line, proposal);
            form(proposal, &reach, &changed)
        };
        to_js(&ProposalsForm {
            foods: found.foods.iter().map(in_full).collect(),
            moves: found.moves.iter().map(in_full).collect(),
            left_out: found.left_out,
        })
    }

    /// All foods as swaps compare them, made at the first call.
    fn swap_index(&self) -> Result<&SwapIndex, ApiError> {
        if let Some(index) = self.swap_index.get() {
            return Ok(index);
        }
        let index = SwapIndex::build(&self.reference).map_err(|error| {
            let remedy = "load the program anew";
            ApiError::new(ErrorKind::Tables, "swaps", error, remedy)
        })?;
        Ok(self.swap_index.get_or_init(|| index))
    }
}

/// The book with this form of a recipe, so that weeks are compared with it.
fn with(mut book: Book, recipe: &Recipe) -> Book {
    for of_book in &mut book.recipes {
        if of_book.id == recipe.id {
            of_book.clone_from(recipe);
        }
    }
    book
}

fn form<'a>(
    proposal: &'a Proposal,
    reach: &Reach<'_, engine::reference::RecipeStudy>,
    changed: &Recipe,
) -> ProposalForm<'a> {
    let effect = &proposal.effect;
    let nutrients: Vec<_> = effect.nutrients.iter().map(|row| row.nutrient).collect();
    let weeks = reach.with(changed, &nutrients);
    ProposalForm {
        change: &proposal.change,
        lines: &proposal.lines,
        nutrients: effect.nutrients.iter().map(Into::into).collect(),
        credits: &effect.credits,
        cost: effect.cost.map(|cost| cost.normalize()),
        reasons: proposal.reasons.iter().map(ToString::to_string).collect(),
        weeks: weeks.into_iter().map(Into::into).collect(),
    }
}

fn no_swaps(problem: SwapProblem) -> ApiError {
    let at = match problem {
        SwapProblem::NoGoal => "request.goals",
        SwapProblem::NotAnalysed => "recipe",
        _ => "request.line",
    };
    // The message says what to do after its colon.
    let text = problem.to_string();
    let (message, remedy) = text.split_once(": ").unwrap_or((&text, &text));
    ApiError::new(ErrorKind::Recipe, at, message, remedy)
}
