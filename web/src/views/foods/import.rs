//! Foods from files: what is in them, which of it is taken in, and what keeps
//! a file from being read.

use super::words;
use crate::files::save_text;
use crate::language::Say;
use crate::page::{Page, use_page};
use crate::state::Action;
use engine::own_foods::{FdcTables, ImportError, OwnFood, from_csv, from_fdc_csv, from_fdc_json};
use gloo::file::File;
use gloo::file::futures::read_as_text;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// So many foods are taken in without asking which.
const FEW: usize = 12;

/// Where a file comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Form {
    OwnCsv,
    FdcJson,
    FdcCsv,
}

/// What has come of the last file.
#[derive(Debug, Clone, PartialEq)]
enum Outcome {
    Nothing,
    Reading(String),
    Failed(String, ImportError),
    Found(Vec<OwnFood>),
}

/// The section.
#[component]
pub fn Import() -> Html {
    let page = use_page();
    let outcome = use_state(|| Outcome::Nothing);
    let read = {
        let (page, outcome) = (page.clone(), outcome.clone());
        Callback::from(move |(form, files): (Form, Vec<File>)| {
            let (page, outcome) = (page.clone(), outcome.clone());
            outcome.set(Outcome::Reading(names(&files)));
            wasm_bindgen_futures::spawn_local(async move {
                let found = match texts(&files).await {
                    Ok(texts) => foods(&page, form, &texts),
                    Err(error) => Err(error),
                };
                outcome.set(match found {
                    Ok(foods) if foods.len() <= FEW => {
                        take(&page, foods);
                        Outcome::Nothing
                    }
                    Ok(foods) => Outcome::Found(foods),
                    Err(error) => Outcome::Failed(names(&files), error),
                });
            });
        })
    };
    let on_taken = {
        let (page, outcome) = (page.clone(), outcome.clone());
        Callback::from(move |foods: Vec<OwnFood>| {
            if !foods.is_empty() {
                take(&page, foods);
            }
            outcome.set(Outcome::Nothing);
        })
    };
    html! {
        <section class="import" aria-labelledby="import">
            <h2 id="import">{ words::IMPORT }</h2>
            <p class="lead">{ words::IMPORT_LEAD }</p>
            <ul class="import-ways">
                <li>{ field("import-csv", words::OWN_CSV, ".csv,text/csv", Form::OwnCsv, &read) }
                    <p class="hint">{ words::OWN_CSV_HINT }{ " " }
                        <button type="button" class="as-text way" id="csv-example" onclick={save_example()}>
                            { words::SAVE_EXAMPLE }
                        </button>
                    </p>
                </li>
                <li>{ field("import-json", words::FDC_JSON, ".json,application/json", Form::FdcJson, &read) }
                    <p class="hint">{ words::FDC_JSON_HINT }</p>
                </li>
                <li>{ field("import-tables", words::FDC_CSV, ".csv,text/csv", Form::FdcCsv, &read) }
                    <p class="hint">{ words::FDC_CSV_HINT }</p>
                </li>
            </ul>
            { match &*outcome {
                Outcome::Nothing => Html::default(),
                Outcome::Reading(name) => html! { <p role="status">{ words::reading(name) }</p> },
                Outcome::Failed(name, error) => html! {
                    <p class="field-problem" role="alert" data-test="import-problem">
                        { words::not_taken(name, error) }
                    </p>
                },
                Outcome::Found(foods) => html! { <Choice foods={foods.clone()} {on_taken} /> },
            } }
        </section>
    }
}

fn field(
    id: &'static str,
    label: Say,
    accept: &'static str,
    form: Form,
    read: &Callback<(Form, Vec<File>)>,
) -> Html {
    let onchange = {
        let read = read.clone();
        Callback::from(move |event: Event| {
            let input = event.target_unchecked_into::<HtmlInputElement>();
            let files: Vec<File> = input.files().map_or_else(Vec::new, |list| {
                (0..list.length())
                    .filter_map(|index| list.get(index))
                    .map(File::from)
                    .collect()
            });
            // The same file can be chosen again once it has been mended.
            input.set_value("");
            if !files.is_empty() {
                read.emit((form, files));
            }
        })
    };
    html! {<>
        <label class="button" for={id}>{ label }</label>
        <input {id} class="for-readers" type="file" {accept} multiple={form == Form::FdcCsv} {onchange} />
    </>}
}

fn names(files: &[File]) -> String {
    let names: Vec<String> = files.iter().map(File::name).collect();
    names.join(", ")
}

async fn texts(files: &[File]) -> Result<Vec<(String, String)>, ImportError> {
    let mut texts = Vec::new();
    for file in files {
        let text = read_as_text(file).await.map_err(|error| ImportError {
            place: file.name(),
            problem: error.to_string(),
            remedy: words::CHOOSE_AGAIN.to_string(),
        })?;
        texts.push((file.name(), text));
    }
    Ok(texts)
}

/// The foods in the texts of files with their names.
fn foods(page: &Page, form: Form, texts: &[(String, String)]) -> Result<Vec<OwnFood>, ImportError> {
    let nutrients = page.tables.reference.foods.nutrients();
    let first = page.contents().free_food_number();
    let found = match (form, texts) {
        (Form::OwnCsv, [(name, text), ..]) => from_csv(text, nutrients, first, name)?,
        (Form::FdcJson, [(_, text), ..]) => from_fdc_json(text, nutrients, first)?,
        (Form::FdcCsv, texts) => from_fdc_csv(tables(texts)?, nutrients, first)?,
        (_, []) => Vec::new(),
    };
    if found.is_empty() {
        return Err(ImportError {
            place: words::THE_FILE.to_string(),
            problem: words::NO_FOODS.to_string(),
            remedy: words::CHOOSE_ANOTHER.to_string(),
        });
    }
    Ok(found)
}

fn tables(texts: &[(String, String)]) -> Result<FdcTables<'_>, ImportError> {
    let text = |name: &str| {
        let found = texts.iter().find(|(of, _)| of.eq_ignore_ascii_case(name));
        found
            .map(|(_, text)| text.as_str())
            .ok_or_else(|| ImportError {
                place: words::THE_FILES.to_string(),
                problem: words::table_missing(name),
                remedy: words::CHOOSE_THREE.to_string(),
            })
    };
    Ok(FdcTables {
        food: text("food.csv")?,
        food_nutrient: text("food_nutrient.csv")?,
        nutrient: text("nutrient.csv")?,
    })
}

fn take(page: &Page, foods: Vec<OwnFood>) {
    let text = words::taken(foods.len());
    page.act(Action::AddFoods(foods));
    page.tell(text, true);
}

fn save_example() -> Callback<MouseEvent> {
    Callback::from(|_| save_text(words::EXAMPLE_NAME, words::CSV_EXAMPLE))
}

#[derive(Clone, PartialEq, Properties)]
struct ChoiceProps {
    foods: Vec<OwnFood>,
    /// Told which were chosen; none when the file is put away.
    on_taken: Callback<Vec<OwnFood>>,
}

/// Foods shown of a long list at a time.
const SHOWN: usize = 60;

/// Which foods of a long list to take in.
#[component]
fn Choice(props: &ChoiceProps) -> Html {
    let chosen = use_state(Vec::<u32>::new);
    let filter = use_state(String::new);
    let fits = |food: &&OwnFood| {
        let name = food.description.to_lowercase();
        let typed = filter.to_lowercase();
        typed.split_whitespace().all(|word| name.contains(word))
    };
    let fitting: Vec<&OwnFood> = props.foods.iter().filter(fits).collect();
    let oninput = {
        let filter = filter.clone();
        Callback::from(move |event: InputEvent| {
            filter.set(event.target_unchecked_into::<HtmlInputElement>().value());
        })
    };
    let take = {
        let (props, chosen) = (props.clone(), chosen.clone());
        Callback::from(move |_| {
            let is_chosen = |food: &&OwnFood| chosen.contains(&food.number);
            let foods = props.foods.iter().filter(is_chosen).cloned().collect();
            props.on_taken.emit(foods);
        })
    };
    let put_away = props.on_taken.reform(|_| Vec::new());
    let row = |food: &OwnFood| {
        let (number, is_on) = (food.number, chosen.contains(&food.number));
        let onchange = {
            let chosen = chosen.clone();
            Callback::from(move |_| {
                let mut now = (*chosen).clone();
                if is_on {
                    now.retain(|other| *other != number);
                } else {
                    now.push(number);
                }
                chosen.set(now);
            })
        };
        let id = format!("found-{number}");
        html! {
            <li key={number} class="check">
                <input id={id.clone()} type="checkbox" checked={is_on} {onchange} />
                <label for={id}>{ &food.description }</label>
            </li>
        }
    };
    html! {
        <div class="import-choice" data-test="import-choice">
            <h3>{ words::found(props.foods.len()) }</h3>
            <p class="field">
                <label for="found-filter">{ words::FILTER }</label>
                <input id="found-filter" type="text" autocomplete="off" value={(*filter).clone()} {oninput} />
                <span class="hint" role="status">{ words::fitting(fitting.len(), SHOWN) }</span>
            </p>
            <ul>{ for fitting.iter().take(SHOWN).map(|food| row(food)) }</ul>
            <div class="ways">
                <button type="button" id="take-found" class="main-way" disabled={chosen.is_empty()}
                    onclick={take}>{ words::take(chosen.len()) }</button>
                <button type="button" id="put-away-found" onclick={put_away}>{ words::PUT_AWAY }</button>
            </div>
        </div>
    }
}
