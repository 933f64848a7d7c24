//! What is bought for a day, a week, or for all that is planned on the same
//! days: in whole packs, with what they cost and what is left.

use super::packs::Packs;
use super::pick::{PickDay, Picked, picked};
use super::sheet::title_of;
use super::{ask, words};
use crate::format;
use crate::language::lang_of_food;
use crate::page::{Page, note_address, use_page, use_title};
use crate::route::Route;
use engine::exact::{Digits, FigureStatus, PartialSum};
use engine::production::{PurchaseList, PurchaseRow, planned_servings};
use engine::recipe::RecipeId;
use engine::units::Servings;
use engine::week::{Date, Week, WeekId};
use std::collections::BTreeMap;
use std::rc::Rc;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// For which days.
#[derive(Clone, PartialEq, Properties)]
pub struct BuyingViewProps {
    /// The week; the first of the book where none is named.
    pub week: Option<WeekId>,
    /// The day; the whole week where none is named.
    pub date: Option<Date>,
}

/// Decimals of money.
pub const CENTS: Digits = Digits(2);

/// The view.
#[component]
pub fn BuyingView(props: &BuyingViewProps) -> Html {
    let page = use_page();
    let others = use_state(|| false);
    let title = words::BUYING.to_string();
    use_title(&title);
    let chosen = use_state(|| (props.week.clone(), props.date));
    let Some(Picked { week, .. }) = picked(page.contents(), chosen.0.as_ref(), None) else {
        return html! {
            <div class="kitchen">
                <h1>{ words::BUYING }</h1>
                <p>{ words::NO_WEEKS }</p>
                <Packs />
            </div>
        };
    };
    let date = chosen
        .1
        .filter(|date| week.days.iter().any(|day| day.date == *date));
    let menu = menu(&page, &week, date, *others);
    let list = ask(&page, menu.keys().cloned(), |kitchen| {
        kitchen.purchase_list(&menu)
    });
    let on_pick = Callback::from(move |(week, date): (WeekId, Option<Date>)| {
        note_address(&Route::Buying(Some(week.clone()), date));
        chosen.set((Some(week), date));
    });
    let onchange = {
        let others = others.clone();
        Callback::from(move |event: Event| {
            others.set(event.target_unchecked_into::<HtmlInputElement>().checked());
        })
    };
    html! {
        <div class="kitchen">
            <h1>{ words::BUYING }</h1>
            <p class="lead">{ words::BUYING_LEAD }</p>
            <div class="kitchen-head">
                <PickDay week={week.clone()} {date} whole_week={true} {on_pick} />
                <label class="check"><input type="checkbox" id="other-weeks" checked={*others} {onchange} />
                    { " " }{ words::OTHER_WEEKS }</label>
                <div class="ways">
                    <button type="button" id="print" class="main-way" onclick={Callback::from(|_| {
                        drop(gloo::utils::window().print());
                    })}>{ words::PRINT_LIST }</button>
                    <a class="button" href={Route::Kitchen(Some(week.id.clone()), date).fragment()}>
                        { words::TO_KITCHEN }
                    </a>
                </div>
            </div>
            <section>
                <h2 id="to-buy">{ words::TO_BUY }</h2>
                <div class="wide" role="region" tabindex="0" aria-labelledby="to-buy">
                    { table(&page, &list) }
                </div>
                { unlisted(&page, &list) }
            </section>
            <Packs />
            <div class="sheet" aria-hidden="true">
                <p class="sheet-title">{ words::BUYING }{ ", " }{ date.map_or_else(|| week.title.clone(), format::day) }</p>
                <p class="sheet-small">{ page.contents().office().to_owned() }</p>
                { table(&page, &list) }
                { unlisted(&page, &list) }
            </div>
        </div>
    }
}

/// The servings to buy for; on request with those of all other weeks on the
/// same days.
fn menu(
    page: &Page,
    week: &Rc<Week>,
    date: Option<Date>,
    others: bool,
) -> BTreeMap<RecipeId, Servings> {
    let mut menu = planned_servings(week, date);
    if others {
        let days = || week.days.iter().map(|day| day.date);
        let dates: Vec<Date> = days()
            .filter(|day| date.is_none_or(|date| date == *day))
            .collect();
        for other in page
            .contents()
            .weeks
            .iter()
            .filter(|other| other.id != week.id)
        {
            for date in &dates {
                for (recipe, servings) in planned_servings(other, Some(*date)) {
                    *menu.entry(recipe).or_default() += servings;
                }
            }
        }
    }
    menu
}

/// A sum of money with how much of it is known.
pub fn money(sum: &PartialSum) -> String {
    let amount = words::money(&format::number(sum.known, CENTS));
    match sum.status() {
        FigureStatus::Known => amount,
        FigureStatus::LowerBound { coverage } => {
            words::money_at_least(&amount, &format::percent_known(coverage))
        }
        FigureStatus::Missing => words::UNKNOWN.to_string(),
    }
}

fn table(page: &Page, list: &PurchaseList) -> Html {
    html! {
        <table class="plain-table sheet-table purchase-list" data-test="purchase-list">
            <thead><tr>
                <th scope="col">{ words::FOOD }</th>
                <th scope="col" class="number">{ words::EDIBLE }</th>
                <th scope="col" class="number">{ words::PURCHASED }</th>
                <th scope="col">{ words::PACKS_COLUMN }</th>
                <th scope="col" class="number">{ words::LEFT }</th>
                <th scope="col" class="number">{ words::COST }</th>
            </tr></thead>
            <tbody>{ for list.rows.iter().map(|row| food_row(page, row)) }</tbody>
            <tfoot><tr>
                <th scope="row" colspan="3">{ words::TOTAL }</th>
                <td class="number" colspan="3" data-test="total-cost">{ money(&list.total) }</td>
            </tr></tfoot>
        </table>
    }
}

fn food_row(page: &Page, row: &PurchaseRow) -> Html {
    let food = page.tables.reference.foods.food(row.food);
    let name = food.map_or_else(|| row.food.to_string(), |food| food.description.clone());
    let packs = &page.contents().rest.production.packs;
    let order = row.order.as_ref();
    let pack = order.and_then(|order| packs.get(order.pack));
    html! {
        <tr data-test="to-buy" data-food={row.food.to_string()}>
            <th scope="row" lang={lang_of_food(row.food)}>{ name }</th>
            <td class="number">{ words::weight(row.edible) }</td>
            <td class="number">{ words::weight(row.purchased) }</td>
            <td>
                { order.zip(pack).map_or_else(
                    || words::NO_PACK.to_string(),
                    |(order, pack)| words::packs(&format::group(order.packs), &pack.words),
                ) }
            </td>
            <td class="number">{ order.map(|order| words::weight(order.left)) }</td>
            <td class="number">
                { match order.and_then(|order| order.cost) {
                    Some(cost) => html! { { words::money(&format::number(cost, CENTS)) } },
                    None => html! { <span class="unknown">{ words::UNKNOWN }</span> },
                } }
            </td>
        </tr>
    }
}

/// Lines of which nobody can tell what to buy.
fn unlisted(page: &Page, list: &PurchaseList) -> Html {
    if list.unlisted.is_empty() {
        return Html::default();
    }
    html! {<>
        <p>{ words::UNLISTED }</p>
        <ul data-test="unlisted">{ for list.unlisted.iter().map(|need| html! {
            <li>{ &need.text }{ " (" }{ title_of(page, &need.recipe) }{ ")" }</li>
        }) }</ul>
    </>}
}
