//! A file that was chosen: what would come in, and the question whether it
//! should.

pub(super) mod words;

use crate::format;
use crate::page::{Page, focus, use_page};
use crate::state::Action;
use crate::troubles;
use crate::words::title_or_untitled;
use engine::book::Book;
use engine::exchange::{
    Arrival, Arriving, Problem, Remark, Trouble, read_book, read_recipes, recipe_ld,
};
use engine::recipe::Recipe;
use yew::prelude::*;

/// What a file holds.
#[derive(Debug, Clone, PartialEq)]
pub enum Held {
    /// A book, to take the place of the one that lies open.
    Book(Box<Book>),
    /// Recipes, to be added.
    Recipes {
        /// As they were read.
        recipes: Vec<Recipe>,
        /// What was not taken over.
        remarks: Vec<Remark>,
    },
}

/// A file that waits for an answer.
#[derive(Debug, Clone, PartialEq)]
pub struct IncomingFile {
    name: String,
    held: Held,
}

/// Reads a file as what it is: a book, or recipes of either form.
///
/// # Errors
/// In words for the user, when it is neither.
pub fn look_at(page: &Page, name: &str, text: &str) -> Result<IncomingFile, String> {
    let start = text.trim_start_matches('\u{feff}').trim_start();
    let is_table = !start.is_empty()
        && !start.starts_with(['{', '['])
        && name.to_lowercase().ends_with(".csv");
    let held = if is_table {
        read_recipes(text).map(recipes)
    } else {
        match read_book(text) {
            Ok(book) => Ok(Held::Book(Box::new(book))),
            Err(Problem {
                trouble: Trouble::RecipesOnly,
                ..
            }) => recipe_ld::read(text).map(recipes),
            // A list of recipes is JSON that is no book.
            Err(problem) if problem.trouble == Trouble::NoBook => {
                recipe_ld::read(text).map(recipes).map_err(|_| problem)
            }
            Err(problem) => Err(problem),
        }
    };
    let held = held.map_err(|problem| troubles::told(&problem))?;
    // A book that cannot be told from the open one is no news either.
    if matches!(&held, Held::Book(book) if **book == page.contents().book()) {
        return Err(words::SAME_BOOK.to_string());
    }
    Ok(IncomingFile {
        name: name.to_owned(),
        held,
    })
}

fn recipes(incoming: engine::exchange::Incoming) -> Held {
    Held::Recipes {
        recipes: incoming.recipes,
        remarks: incoming.remarks,
    }
}

/// Which file.
#[derive(Clone, PartialEq, Properties)]
pub struct IncomingProps {
    /// The file.
    pub file: IncomingFile,
    /// Told when the question is answered.
    pub put_away: Callback<()>,
}

const HEADING: &str = "incoming";

/// What would come in.
#[component]
pub fn Incoming(props: &IncomingProps) -> Html {
    let page = use_page();
    use_effect_with(props.file.clone(), |_| focus(HEADING));
    let IncomingFile { name, held } = &props.file;
    let leave = props.put_away.reform(|_: MouseEvent| ());
    let (body, take, label) = match held {
        Held::Book(book) => (
            book_words(book),
            take_book(&page, props, book),
            words::TAKE_BOOK.to_string(),
        ),
        Held::Recipes { recipes, remarks } => {
            let arriving = page.contents().arriving(recipes.clone());
            let is_new = |one: &&Arriving| one.arrival != Arrival::Present;
            let count = arriving.iter().filter(is_new).count();
            let label = words::take_recipes(count);
            let take = (count > 0).then(|| take_recipes(&page, props, recipes, count));
            (recipe_list(&arriving, remarks), take.flatten(), label)
        }
    };
    html! {
        <section class="incoming" aria-labelledby={HEADING} data-test="incoming">
            <h3 id={HEADING} tabindex="-1">{ words::heading(name) }</h3>
            { body }
            <p>{ words::NOTHING_YET }</p>
            <div class="ways">
                if let Some(take) = take {
                    <button type="button" id="take-incoming" class="main-way" onclick={take}>
                        { label }
                    </button>
                }
                <button type="button" id="leave-incoming" onclick={leave}>{ words::LEAVE }</button>
            </div>
        </section>
    }
}

fn take_book(page: &Page, props: &IncomingProps, book: &Book) -> Option<Callback<MouseEvent>> {
    let (page, props, book) = (page.clone(), props.clone(), book.clone());
    Some(Callback::from(move |_| {
        page.act(Action::Open(book.clone().into()));
        page.tell(words::opened(&props.file.name), true);
        props.put_away.emit(());
    }))
}

fn take_recipes(
    page: &Page,
    props: &IncomingProps,
    recipes: &[Recipe],
    count: usize,
) -> Option<Callback<MouseEvent>> {
    let (page, props, recipes) = (page.clone(), props.clone(), recipes.to_vec());
    Some(Callback::from(move |_| {
        page.act(Action::BringIn(recipes.clone()));
        page.tell(words::brought_in(count, &props.file.name), true);
        props.put_away.emit(());
    }))
}

fn book_words(book: &Book) -> Html {
    html! {<>
        <p data-test="incoming-book">{ words::book(book) }</p>
        <p>{ words::BOOK_INSTEAD }</p>
    </>}
}

fn recipe_list(arriving: &[Arriving], remarks: &[Remark]) -> Html {
    html! {<>
        <div class="scrolls" tabindex="0" role="group" aria-label={words::LIST}>
            <table class="incoming-list">
                <thead><tr>
                    <th scope="col">{ words::RECIPE }</th>
                    <th scope="col" class="number">{ words::LINES }</th>
                    <th scope="col" class="number">{ words::SERVINGS }</th>
                    <th scope="col">{ words::BECOMES }</th>
                </tr></thead>
                <tbody>{ for arriving.iter().map(|one| html! {
                    <tr data-test="incoming-recipe">
                        <th scope="row">{ title_or_untitled(&one.recipe.title) }</th>
                        <td class="number">{ one.recipe.lines.len() }</td>
                        <td class="number">{ format::group(one.recipe.servings.servings()) }</td>
                        <td>{ words::becomes(one) }</td>
                    </tr>
                }) }</tbody>
            </table>
        </div>
        if !remarks.is_empty() {
            <ul class="incoming-remarks">{ for remarks.iter().map(|remark| html! {
                <li data-test="incoming-remark">{ troubles::remark(remark) }</li>
            }) }</ul>
        }
    </>}
}
