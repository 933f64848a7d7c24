//! Moving choices, meals and days: by dragging their handle, or by pressing it
//! and choosing where to.

use super::{Edit, moving_words as words};
use crate::state::{ChoiceAt, MealAt, OfferAt, WeekEdit};
use engine::week::Week;
use std::cell::Cell;
use std::rc::Rc;
use yew::prelude::*;

/// Something that can be moved.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Thing {
    /// A choice of a part.
    Choice(ChoiceAt),
    /// A meal of a day.
    Meal(MealAt),
    /// All that a day serves.
    Day(usize),
}

/// Where something is moved.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Way {
    /// One place up; a day one day back.
    Up,
    /// One place down; a day one day on.
    Down,
    /// To another day.
    ToDay(usize),
}

/// What is being moved in a week; shared by all parts of its view.
#[derive(Clone, PartialEq)]
pub struct Moving {
    week: Rc<Week>,
    edit: Edit,
    /// What the pressed handle belongs to.
    open: UseStateHandle<Option<Thing>>,
    /// What is being dragged.
    dragged: Rc<Cell<Option<Thing>>>,
    /// Where the keyboard goes once the move is drawn.
    focus: UseStateHandle<Option<String>>,
}

/// Around what can be moved.
#[derive(Clone, PartialEq, Properties)]
pub struct MoverProps {
    /// The week.
    pub week: Rc<Week>,
    /// How to change it.
    pub edit: Edit,
    /// The view of the week.
    pub children: Children,
}

/// Keeps what is being moved.
#[component]
pub fn Mover(props: &MoverProps) -> Html {
    let MoverProps { week, edit, .. } = props;
    let open = use_state(|| None);
    let focus = use_state(|| None::<String>);
    let dragged = use_memo((), |()| Cell::new(None));
    use_effect_with((focus.clone(), week.clone()), |(focus, _)| {
        if let Some(id) = &**focus {
            crate::page::focus(id);
            focus.set(None);
        }
    });
    let moving = Moving {
        week: week.clone(),
        edit: edit.clone(),
        open,
        dragged,
        focus,
    };
    html! {
        <ContextProvider<Moving> context={moving}>{ props.children.clone() }</ContextProvider<Moving>>
    }
}

/// What makes an element a place to drop onto; nothing where nothing moves.
#[hook]
pub fn use_target(thing: Thing) -> (Option<Callback<DragEvent>>, Option<Callback<DragEvent>>) {
    let moving = use_context::<Moving>();
    let target = moving.map(|moving| moving.target(thing));
    target.unzip()
}

impl Moving {
    /// Moves something by its handle's choice; the keyboard stays with it.
    fn go(&self, thing: Thing, way: Way) {
        if let Some((edit, place)) = moved(&self.week, thing, way) {
            self.edit.emit(edit);
            self.open.set(Some(place));
            self.focus.set(Some(button_id(way)));
        }
    }

    /// Drops what is dragged onto something.
    fn drop_on(&self, target: Thing) {
        let edit = match (self.dragged.take(), target) {
            (Some(Thing::Choice(from)), Thing::Choice(to)) if from != to => {
                WeekEdit::MoveChoice(from, to)
            }
            (Some(Thing::Choice(from)), Thing::Meal(MealAt { day, .. }) | Thing::Day(day)) => {
                WeekEdit::ChoiceToDay(from, day)
            }
            (Some(Thing::Meal(from)), Thing::Meal(to)) if from != to => {
                WeekEdit::MoveMeal(from, to)
            }
            (
                Some(Thing::Meal(from)),
                Thing::Day(day)
                | Thing::Choice(ChoiceAt {
                    offer:
                        OfferAt {
                            meal: MealAt { day, .. },
                            ..
                        },
                    ..
                }),
            ) if from.day != day => WeekEdit::MoveMeal(
                from,
                MealAt {
                    day,
                    meal: usize::MAX,
                },
            ),
            (Some(Thing::Day(from)), to) => WeekEdit::ExchangeDays(from, day_of(to)),
            _ => return,
        };
        self.edit.emit(edit);
    }

    /// What makes an element a place to drop onto.
    fn target(&self, thing: Thing) -> (Callback<DragEvent>, Callback<DragEvent>) {
        let over = {
            let dragged = self.dragged.clone();
            Callback::from(move |event: DragEvent| {
                if dragged.get().is_some() {
                    event.prevent_default();
                }
            })
        };
        let drop = {
            let moving = self.clone();
            Callback::from(move |event: DragEvent| {
                event.prevent_default();
                // What holds the element is a place to drop onto too.
                event.stop_propagation();
                moving.drop_on(thing);
            })
        };
        (over, drop)
    }
}

fn day_of(thing: Thing) -> usize {
    match thing {
        Thing::Choice(at) => at.offer.meal.day,
        Thing::Meal(at) => at.day,
        Thing::Day(day) => day,
    }
}

/// The change that moves something, and where it stands then; nothing where
/// there is no such place.
fn moved(week: &Week, thing: Thing, way: Way) -> Option<(WeekEdit, Thing)> {
    match thing {
        Thing::Choice(at) => choice_moved(week, at, way),
        Thing::Meal(at) => {
            let to = match way {
                Way::Up => MealAt {
                    meal: at.meal.checked_sub(1)?,
                    ..at
                },
                Way::Down => {
                    let meal = at.meal + 1;
                    (meal < week.days.get(at.day)?.meals.len()).then_some(MealAt { meal, ..at })?
                }
                Way::ToDay(day) => MealAt {
                    day,
                    meal: week.days.get(day).filter(|_| day != at.day)?.meals.len(),
                },
            };
            Some((WeekEdit::MoveMeal(at, to), Thing::Meal(to)))
        }
        Thing::Day(at) => {
            let to = match way {
                Way::Up => at.checked_sub(1)?,
                Way::Down => at + 1,
                Way::ToDay(day) => day,
            };
            (to < week.days.len() && to != at)
                .then_some((WeekEdit::ExchangeDays(at, to), Thing::Day(to)))
        }
    }
}

fn choice_moved(week: &Week, at: ChoiceAt, way: Way) -> Option<(WeekEdit, Thing)> {
    let meal = week
        .days
        .get(at.offer.meal.day)?
        .meals
        .get(at.offer.meal.meal)?;
    let offer = meal.offers.get(at.offer.offer)?;
    let recipe = &offer.choices.get(at.choice)?.recipe;
    let in_part = |part: usize, choice: usize| ChoiceAt {
        offer: OfferAt {
            offer: part,
            ..at.offer
        },
        choice,
    };
    // At the end of its part a choice goes on into the part beside it.
    let to = match way {
        Way::Up if at.choice > 0 => in_part(at.offer.offer, at.choice - 1),
        Way::Up => {
            let part = at.offer.offer.checked_sub(1)?;
            in_part(part, meal.offers.get(part)?.choices.len())
        }
        Way::Down if at.choice + 1 < offer.choices.len() => in_part(at.offer.offer, at.choice + 1),
        Way::Down => {
            let part = at.offer.offer + 1;
            meal.offers.get(part)?;
            in_part(part, 0)
        }
        Way::ToDay(day) => {
            let meals = &week
                .days
                .get(day)
                .filter(|_| day != at.offer.meal.day)?
                .meals;
            let is_it = |one: &engine::week::Meal| one.kind == meal.kind && one.group == meal.group;
            let index = meals.iter().position(is_it).unwrap_or(meals.len());
            let offers = meals.get(index).map_or(&[][..], |meal| &meal.offers);
            let part = offers
                .iter()
                .position(|one| one.title == offer.title)
                .unwrap_or(offers.len());
            let choices = offers.get(part).map_or(&[][..], |part| &part.choices);
            let twin = choices.iter().position(|one| one.recipe == *recipe);
            let to = ChoiceAt {
                offer: OfferAt {
                    meal: MealAt { day, meal: index },
                    offer: part,
                },
                choice: twin.unwrap_or(choices.len()),
            };
            return Some((WeekEdit::ChoiceToDay(at, day), Thing::Choice(to)));
        }
    };
    // Where the part beside it offers the recipe already, they become one.
    let beside = &meal.offers.get(to.offer.offer)?.choices;
    let twin = beside.iter().position(|one| one.recipe == *recipe);
    let stands = match twin {
        Some(twin) if to.offer != at.offer => ChoiceAt { choice: twin, ..to },
        _ => to,
    };
    Some((WeekEdit::MoveChoice(at, to), Thing::Choice(stands)))
}

/// Ids of the buttons of the open handle; only one is open at a time.
fn button_id(way: Way) -> String {
    match way {
        Way::Up => "move-up".to_owned(),
        Way::Down => "move-down".to_owned(),
        Way::ToDay(_) => "move-done".to_owned(),
    }
}

/// Whose handle.
#[derive(Clone, PartialEq, Properties)]
pub struct HandleProps {
    /// What it moves.
    pub thing: Thing,
    /// What that is called.
    pub name: AttrValue,
}

/// The handle: dragged, or pressed for a list of places.
#[component]
pub fn Handle(props: &HandleProps) -> Html {
    let Some(moving) = use_context::<Moving>() else {
        return Html::default();
    };
    let thing = props.thing;
    let is_open = *moving.open == Some(thing);
    let id = handle_id(thing);
    let ondragstart = {
        let dragged = moving.dragged.clone();
        Callback::from(move |event: DragEvent| {
            event.stop_propagation();
            dragged.set(Some(thing));
            // Some browsers drag only what has data.
            if let Some(data) = event.data_transfer() {
                drop(data.set_data("text/plain", ""));
            }
        })
    };
    let onclick = {
        let moving = moving.clone();
        Callback::from(move |_| {
            moving.open.set((!is_open).then_some(thing));
        })
    };
    html! {
        <span class="mover">
            <button type="button" {id} class="quiet small handle" draggable="true" data-test="handle"
                aria-expanded={is_open.to_string()} aria-label={words::move_it(&props.name)}
                {ondragstart} {onclick}>
                <svg width="10" height="14" aria-hidden="true" focusable="false">
                    <path class="handle-dots" d="M2 2h2v2h-2z M6 2h2v2h-2z M2 6h2v2h-2z M6 6h2v2h-2z M2 10h2v2h-2z M6 10h2v2h-2z" />
                </svg>
            </button>
            if is_open { { places(&moving, thing, &props.name) } }
        </span>
    }
}

fn handle_id(thing: Thing) -> String {
    match thing {
        Thing::Choice(at) => format!(
            "handle-{}-{}-{}-{}",
            at.offer.meal.day, at.offer.meal.meal, at.offer.offer, at.choice
        ),
        Thing::Meal(at) => format!("handle-{}-{}", at.day, at.meal),
        Thing::Day(day) => format!("handle-{day}"),
    }
}

fn places(moving: &Moving, thing: Thing, name: &str) -> Html {
    let button = |way: Way, id: String, text: String| {
        let possible = moved(&moving.week, thing, way).is_some();
        let onclick = {
            let moving = moving.clone();
            Callback::from(move |_| moving.go(thing, way))
        };
        // Not disabled: a button that loses the keyboard at the end of the
        // way would lose the reader too.
        html! {
            <button type="button" {id} class="small" aria-disabled={(!possible).then_some("true")} {onclick}>
                { text }
            </button>
        }
    };
    let done = {
        let moving = moving.clone();
        Callback::from(move |_| {
            moving.open.set(None);
            crate::page::focus(&handle_id(thing));
        })
    };
    let here = day_of(thing);
    let days = moving
        .week
        .days
        .iter()
        .enumerate()
        .filter(|(index, _)| *index != here);
    let (up, down) = match thing {
        Thing::Day(_) => (words::DAY_BACK, words::DAY_ON),
        _ => (words::UP, words::DOWN),
    };
    html! {
        <span class="move-places" role="group" aria-label={words::move_it(name)} data-test="move-places">
            { button(Way::Up, button_id(Way::Up), up.to_string()) }
            { button(Way::Down, button_id(Way::Down), down.to_string()) }
            { for days.map(|(index, day)| {
                button(Way::ToDay(index), format!("move-to-{index}"), words::to_day(day.date))
            }) }
            <button type="button" id="move-done" class="small" onclick={done}>{ words::DONE }</button>
        </span>
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use engine::recipe::RecipeId;
    use engine::units::Servings;
    use engine::week::{Choice, Day, GradeGroup, Meal, MealKind, Offer, WeekId};

    fn week() -> Week {
        let choice = |recipe: &str| Choice {
            recipe: RecipeId(recipe.into()),
            planned: Servings::ZERO,
        };
        let offer = |title: &str, recipes: &[&str]| Offer {
            title: title.into(),
            take: 1,
            choices: recipes.iter().map(|recipe| choice(recipe)).collect(),
        };
        let lunch = |offers: Vec<Offer>| Meal {
            kind: MealKind::Lunch,
            group: GradeGroup("K-5".into()),
            planned_meals: Servings::ZERO,
            offers,
        };
        let date: engine::week::Date = "2026-11-30".parse().unwrap();
        Week {
            id: WeekId("w".into()),
            title: String::new(),
            days: vec![
                Day {
                    date,
                    meals: vec![lunch(vec![
                        offer("main", &["a", "b"]),
                        offer("fruit", &["c"]),
                    ])],
                },
                Day {
                    date: date.plus_days(1),
                    meals: vec![lunch(vec![offer("main", &["b"])])],
                },
            ],
        }
    }

    fn at(day: usize, offer: usize, choice: usize) -> ChoiceAt {
        let meal = MealAt { day, meal: 0 };
        ChoiceAt {
            offer: OfferAt { meal, offer },
            choice,
        }
    }

    #[test]
    fn the_keyboard_follows_what_it_moves() {
        for (from, way, to) in [
            (at(0, 0, 0), Way::Up, None),
            (at(0, 0, 0), Way::Down, Some(at(0, 0, 1))),
            (at(0, 0, 1), Way::Down, Some(at(0, 1, 0))),
            (at(0, 1, 0), Way::Up, Some(at(0, 0, 2))),
            (at(0, 1, 0), Way::Down, None),
            (at(0, 0, 0), Way::ToDay(1), Some(at(1, 0, 1))),
            (at(0, 0, 1), Way::ToDay(1), Some(at(1, 0, 0))),
            (at(0, 1, 0), Way::ToDay(1), Some(at(1, 1, 0))),
            (at(0, 1, 0), Way::ToDay(0), None),
        ] {
            let found = moved(&week(), Thing::Choice(from), way).map(|(_, thing)| thing);
            assert_eq!(found, to.map(Thing::Choice), "{from:?} {way:?}");
        }
        let day = |way| moved(&week(), Thing::Day(0), way).map(|(_, thing)| thing);
        assert_eq!(day(Way::Up), None);
        assert_eq!(day(Way::Down), Some(Thing::Day(1)));
    }
}
