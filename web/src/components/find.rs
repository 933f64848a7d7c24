//! One field that finds recipes, weeks, foods and views as one types.

use super::{Pick, Picker};
use crate::language::{Say, of_table};
use crate::page::{Page, go, use_page};
use crate::route::Route;
use crate::state::Contents;
use crate::views::kitchen::words as kitchen;
use crate::words::{self, title_or_untitled};
use yew::prelude::*;

/// Id of the field; the shortcut leads there.
pub const FIELD: &str = "find-anything";

/// Most answers of one kind, so that each kind is seen.
const OF_A_KIND: usize = 6;

/// One or two letters stand in thousands of foods.
const LETTERS_FOR_FOODS: usize = 3;

/// The field.
#[component]
pub fn Find() -> Html {
    let page = use_page();
    let search = use_callback(page, |typed: String, page: &Page| found(page, &typed));
    let on_pick = Callback::from(|address: AttrValue| go(&Route::from_fragment(&address)));
    html! {
        <div class="find" aria-keyshortcuts="Control+K">
            <Picker id={FIELD} data_test={FIELD} label={Say("find-label")} hide_label={true}
                placeholder={Say("find-hint")} {search} {on_pick} />
        </div>
    }
}

fn found(page: &Page, typed: &str) -> Vec<Pick> {
    let wanted = wanted(typed);
    if wanted.is_empty() {
        return Vec::new();
    }
    let mut picks = of_book(page.contents(), &wanted);
    picks.extend(views(&wanted));
    if typed.trim().chars().count() >= LETTERS_FOR_FOODS {
        picks.extend(foods(page, typed));
    }
    picks
}

/// Views by their names.
fn views(wanted: &[String]) -> Vec<Pick> {
    let views = [
        (Route::Recipes, words::RECIPES),
        (Route::Weeks, words::WEEKS),
        (Route::Month(None), Say("find-month")),
        (Route::Kitchen(None, None), kitchen::TITLE),
        (Route::Buying(None, None), kitchen::BUYING),
        (Route::Foods, words::FOODS),
        (Route::Rules(None), words::RULES),
        (Route::About, words::ABOUT),
    ];
    views
        .into_iter()
        .map(|(route, name)| pick(&route, name.to_string(), Say("find-view")))
        .filter(|pick| has_all(&pick.name, wanted))
        .collect()
}

/// Recipes and weeks whose titles have all the words.
fn of_book(contents: &Contents, wanted: &[String]) -> Vec<Pick> {
    let recipes = contents
        .recipes
        .iter()
        .filter(|recipe| has_all(&recipe.title, wanted))
        .take(OF_A_KIND)
        .map(|recipe| {
            let route = Route::Recipe(recipe.id.clone());
            pick(&route, title_or_untitled(&recipe.title), Say("find-recipe"))
        });
    let weeks = contents
        .weeks
        .iter()
        .filter(|week| has_all(&week.title, wanted))
        .take(OF_A_KIND)
        .map(|week| {
            let route = Route::Week(week.id.clone());
            pick(&route, title_or_untitled(&week.title), Say("find-week"))
        });
    recipes.chain(weeks).collect()
}

/// Foods of the office's own, then the dataset's.
fn foods(page: &Page, typed: &str) -> Vec<Pick> {
    let groups = &page.tables.reference.foods;
    let found = page.tables.foods_found(typed, OF_A_KIND).take(OF_A_KIND);
    found
        .map(|food| {
            let group = groups.group_name(food.group).map(of_table);
            let note = group.unwrap_or_else(|| Say("find-food").to_string());
            Pick {
                key: Route::Food(food.id).fragment().into(),
                ..Pick::food(food, note.into())
            }
        })
        .collect()
}

fn pick(route: &Route, name: String, kind: Say) -> Pick {
    Pick {
        key: route.fragment().into(),
        name: name.into(),
        lang: None,
        note: kind.into(),
    }
}

/// The words that are looked for.
fn wanted(typed: &str) -> Vec<String> {
    typed.split_whitespace().map(folded).collect()
}

fn has_all(title: &str, wanted: &[String]) -> bool {
    let title = folded(title);
    wanted.iter().all(|word| title.contains(word.as_str()))
}

/// Small letters without accents: who types "pina" finds "Piña".
fn folded(text: &str) -> String {
    let plain = |c: char| match c {
        'á' | 'à' | 'â' | 'ä' => 'a',
        'é' | 'è' | 'ê' | 'ë' => 'e',
        'í' | 'ì' | 'î' | 'ï' => 'i',
        'ó' | 'ò' | 'ô' | 'ö' => 'o',
        'ú' | 'ù' | 'û' | 'ü' => 'u',
        'ñ' => 'n',
        'ç' => 'c',
        other => other,
    };
    text.to_lowercase().chars().map(plain).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::saving::demo_book;
    use crate::state::Saved;

    fn names(typed: &str) -> Vec<String> {
        let saved: Saved = demo_book().into();
        let contents = Contents::from(saved);
        let picks = of_book(&contents, &wanted(typed));
        picks.iter().map(|pick| pick.name.to_string()).collect()
    }

    #[test]
    fn words_are_found_in_any_order_without_case_and_accents() {
        assert_eq!(names("CHILI beef"), ["Beef and Bean Chili"]);
        assert_eq!(names("chíli"), ["Beef and Bean Chili"]);
        assert_eq!(
            names("week november"),
            [
                "Lunches, week of November 30",
                "Breakfasts, week of November 30"
            ]
        );
        assert!(names("no such dish").is_empty());
    }
}
