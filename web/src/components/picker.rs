//! A field that searches as one types, with a list to choose from (the
//! combobox pattern of the ARIA Authoring Practices).

use crate::language::lang_of_food;
use crate::words;
use engine::foods::Food;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// Something to choose.
#[derive(Debug, Clone, PartialEq)]
pub struct Pick {
    /// What is passed on when it is chosen.
    pub key: AttrValue,
    /// Its name.
    pub name: AttrValue,
    /// The language of its name, where that is not the one that is spoken.
    pub lang: Option<&'static str>,
    /// What else is to be said of it.
    pub note: AttrValue,
}

impl Pick {
    /// A food by its number.
    pub fn food(food: &Food, note: AttrValue) -> Self {
        Self {
            key: food.id.to_string().into(),
            name: food.description.clone().into(),
            lang: lang_of_food(food.id),
            note,
        }
    }
}

/// What the field searches.
#[derive(Debug, Clone, PartialEq, Properties)]
pub struct PickerProps {
    /// Id of the field in the document.
    pub id: AttrValue,
    /// What is searched for.
    pub label: AttrValue,
    /// Whether only readers of the screen get the label.
    #[prop_or_default]
    pub hide_label: bool,
    /// Words in the empty field.
    #[prop_or_default]
    pub placeholder: AttrValue,
    /// Words that are in the field at first.
    #[prop_or_default]
    pub words: AttrValue,
    /// Answers for what is typed, best first.
    pub search: Callback<String, Vec<Pick>>,
    /// Told what was chosen.
    pub on_pick: Callback<AttrValue>,
    /// Whether the list is there before anything is typed.
    #[prop_or_default]
    pub open: bool,
    /// Name for tests.
    #[prop_or_default]
    pub data_test: AttrValue,
}

/// The field and its list.
#[component]
pub fn Picker(props: &PickerProps) -> Html {
    let text = use_state(|| props.words.to_string());
    let at = use_state(|| None::<usize>);
    let open = use_state(|| props.open);
    let answers = use_memo((text.clone(), *open, props.search.clone()), {
        |(text, open, search)| match open {
            true => search.emit(text.to_string()),
            false => Vec::new(),
        }
    });
    let choose = {
        let (text, open, at) = (text.clone(), open.clone(), at.clone());
        let (on_pick, stay) = (props.on_pick.clone(), props.open);
        Callback::from(move |pick: Pick| {
            text.set(String::new());
            at.set(None);
            open.set(stay);
            on_pick.emit(pick.key);
        })
    };
    let oninput = {
        let (text, open, at) = (text.clone(), open.clone(), at.clone());
        Callback::from(move |event: InputEvent| {
            text.set(event.target_unchecked_into::<HtmlInputElement>().value());
            at.set(None);
            open.set(true);
        })
    };
    let onfocus = {
        let open = open.clone();
        Callback::from(move |_| open.set(true))
    };
    let onblur = {
        let (open, stay) = (open.clone(), props.open);
        Callback::from(move |_| open.set(stay))
    };
    let is_empty = text.trim().is_empty();
    let onkeydown = on_key(&answers, &at, &open, &choose, props.open, is_empty);
    // The list goes as soon as the field loses the keyboard, so nothing in it may take that.
    let stay_in_field = Callback::from(|event: MouseEvent| event.prevent_default());
    let list_id = format!("{}-list", props.id);
    let option_id = |index: usize| format!("{list_id}-{index}");
    let is_open = *open && !answers.is_empty();
    html! {
        <div class={classes!("picker", props.open.then_some("picker-open"))}>
            <label for={&props.id} class={classes!(props.hide_label.then_some("for-readers"))}>
                { &props.label }
            </label>
            <input id={&props.id} type="text" role="combobox" autocomplete="off" spellcheck="false"
                data-test={&props.data_test} placeholder={&props.placeholder}
                aria-expanded={is_open.to_string()} aria-controls={list_id.clone()}
                aria-autocomplete="list" aria-activedescendant={at.map(option_id)}
                value={(*text).clone()} {oninput} {onfocus} {onblur} {onkeydown} />
            // Browsers make a stop of what scrolls, unless it says that it is none.
            <ul id={list_id.clone()} role="listbox" aria-label={&props.label} hidden={!is_open}
                tabindex="-1" onmousedown={stay_in_field}>
                { for answers.iter().enumerate().map(|(index, pick)| {
                    option(option_id(index), pick, *at == Some(index), &choose)
                }) }
            </ul>
            <span class="for-readers" role="status">
                if *open && !text.is_empty() { { words::picker::answers(answers.len()) } }
            </span>
        </div>
    }
}

fn option(id: String, pick: &Pick, chosen: bool, choose: &Callback<Pick>) -> Html {
    // On mousedown: a click would come after the field has lost its focus and
    // the list is gone.
    let onmousedown = {
        let (choose, pick) = (choose.clone(), pick.clone());
        Callback::from(move |_: MouseEvent| choose.emit(pick.clone()))
    };
    html! {
        <li key={pick.key.to_string()} {id} role="option" aria-selected={chosen.to_string()}
            data-key={&pick.key} {onmousedown}>
            <span class="pick-name" lang={pick.lang}>{ &pick.name }</span>
            <span class="pick-note">{ &pick.note }</span>
        </li>
    }
}

fn on_key(
    answers: &std::rc::Rc<Vec<Pick>>,
    at: &UseStateHandle<Option<usize>>,
    open: &UseStateHandle<bool>,
    choose: &Callback<Pick>,
    stay: bool,
    is_empty: bool,
) -> Callback<KeyboardEvent> {
    let (answers, at, open, choose) = (answers.clone(), at.clone(), open.clone(), choose.clone());
    Callback::from(move |event: KeyboardEvent| {
        let last = answers.len().checked_sub(1);
        match (event.key().as_str(), last) {
            ("ArrowDown", Some(last)) => {
                at.set(Some(at.map_or(0, |at| if at >= last { 0 } else { at + 1 })));
            }
            ("ArrowUp", Some(last)) => {
                at.set(Some(
                    at.map_or(last, |at| at.checked_sub(1).unwrap_or(last)),
                ));
            }
            ("Enter", Some(_)) => {
                if let Some(pick) = answers.get(at.unwrap_or(0)) {
                    choose.emit(pick.clone());
                }
            }
            ("ArrowDown", None) => open.set(true),
            // What is typed finds nothing: the key must not seem to have taken it.
            ("Enter", None) if !is_empty => {}
            ("Escape", _) if *open && !stay => {
                open.set(false);
                event.stop_propagation();
            }
            _ => return,
        }
        event.prevent_default();
    })
}
