//! The kitchens: a planned day shared among the schools, what each cooks, and
//! what is bought.

mod buying;
mod cook;
mod cost;
mod packs;
mod pick;
mod servings;
mod sheet;
mod sites;
mod ways;
pub(crate) mod words;

pub use buying::BuyingView;
pub use cost::Cost;

use crate::components::Select;
use crate::page::{Page, note_address, use_page, use_title};
use crate::route::Route;
use crate::state::{Action, ProductionEdit};
use engine::production::{Kitchen, KitchenDay, SiteId};
use engine::recipe::RecipeId;
use engine::week::{Date, Week, WeekId};
use pick::{PickDay, Picked, picked};
use servings::Servings;
use sheet::KitchenSheet;
use sites::Sites;
use std::rc::Rc;
use ways::Ways;
use yew::prelude::*;

/// How a part of the view changes the kitchens.
pub type Edit = Callback<ProductionEdit>;

/// Changes the kitchens by actions of the page.
#[hook]
pub fn use_edit() -> Edit {
    let page = use_page();
    use_callback(page, |edit, page| page.act(Action::Production(edit)))
}

/// Asks the kitchens of the book on the desk about these recipes and what they are made with.
pub fn ask<T>(
    page: &Page,
    recipes: impl IntoIterator<Item = RecipeId>,
    question: impl FnOnce(&Kitchen<'_>) -> T,
) -> T {
    let contents = page.contents();
    let studies = page.tables.studies_of(recipes, contents);
    let recipes = studies.iter().map(|(recipe, study)| (&**recipe, &**study));
    let reference = &page.tables.reference;
    question(&Kitchen::new(reference, &contents.rest.production, recipes))
}

/// Which day of which week.
#[derive(Clone, PartialEq, Properties)]
pub struct KitchenViewProps {
    /// The week; the first of the book where none is named.
    pub week: Option<WeekId>,
    /// The day; the week's first where none is named.
    pub date: Option<Date>,
}

/// The view of a day in the kitchens.
#[component]
pub fn KitchenView(props: &KitchenViewProps) -> Html {
    let page = use_page();
    let title = words::TITLE.to_string();
    use_title(&title);
    // The school whose sheet is shown; all together where none is chosen.
    let site = use_state(|| None::<SiteId>);
    let chosen = use_state(|| (props.week.clone(), props.date));
    let Some(Picked { week, date }) = picked(page.contents(), chosen.0.as_ref(), chosen.1) else {
        return html! {
            <div class="kitchen">
                <h1>{ words::TITLE }</h1>
                <p>{ words::NO_WEEKS }</p>
                <Sites />
            </div>
        };
    };
    let sites = &page.contents().rest.production.sites;
    let shown = site
        .as_ref()
        .filter(|id| sites.iter().any(|site| site.id == **id));
    let day = ask(&page, week.recipes(), |kitchen| {
        kitchen.day(&week, date, shown)
    });
    let on_pick = Callback::from(move |(week, date): (WeekId, Option<Date>)| {
        note_address(&Route::Kitchen(Some(week.clone()), date));
        chosen.set((Some(week), date));
    });
    let names: Vec<AttrValue> = std::iter::once(words::ALL_SCHOOLS.into())
        .chain(sites.iter().map(|site| AttrValue::from(site.name.clone())))
        .collect();
    let of_site = shown.map_or(0, |id| {
        sites
            .iter()
            .position(|site| site.id == *id)
            .map_or(0, |at| at + 1)
    });
    let on_choose = {
        let (site, ids) = (
            site.clone(),
            sites.iter().map(|one| one.id.clone()).collect::<Vec<_>>(),
        );
        Callback::from(move |index: usize| {
            let id = index.checked_sub(1).and_then(|at| ids.get(at).cloned());
            site.set(id);
        })
    };
    html! {
        <div class="kitchen">
            <h1>{ words::TITLE }</h1>
            <p class="lead">{ words::LEAD }</p>
            <div class="kitchen-head">
                <PickDay week={week.clone()} date={Some(date)} {on_pick} />
                <div class="ways">
                    <button type="button" id="print" class="main-way" onclick={Callback::from(|_| {
                        drop(gloo::utils::window().print());
                    })}>{ words::PRINT_SHEETS }</button>
                    <a class="button" id="to-buying" href={Route::Buying(Some(week.id.clone()), Some(date)).fragment()}>
                        { words::TO_BUYING }
                    </a>
                    <a class="button" href={Route::Week(week.id.clone()).fragment()}>{ words::TO_WEEK }</a>
                </div>
            </div>
            <Servings week={week.clone()} {date} />
            <section class="kitchen-day" aria-labelledby="kitchen-day">
                <h2 id="kitchen-day">{ words::TO_COOK }</h2>
                <Select id="kitchen-site" label={words::SHEET_OF} {names} chosen={Some(of_site)} {on_choose} />
                <div class="kitchen-page"><KitchenSheet day={Rc::new(day)} heading={3} /></div>
            </section>
            <Ways week={week.clone()} {date} />
            <Sites />
            <Sheets week={week.clone()} {date} />
        </div>
    }
}

#[derive(Clone, PartialEq, Properties)]
struct SheetsProps {
    week: Rc<Week>,
    date: Date,
}

/// One sheet for each school; only printers show them.
#[component]
fn Sheets(props: &SheetsProps) -> Html {
    let page = use_page();
    let sites = &page.contents().rest.production.sites;
    let days: Vec<Rc<KitchenDay>> = ask(&page, props.week.recipes(), |kitchen| {
        let of = |site: Option<&SiteId>| Rc::new(kitchen.day(&props.week, props.date, site));
        match sites.is_empty() {
            true => vec![of(None)],
            false => sites.iter().map(|site| of(Some(&site.id))).collect(),
        }
    });
    let cooking = days.into_iter().filter(|day| !day.menu.is_empty());
    html! {
        <div class="sheet" aria-hidden="true">
            { for cooking.map(|day| html! {
                <div class="kitchen-sheet"><KitchenSheet {day} heading={2} /></div>
            }) }
        </div>
    }
}
