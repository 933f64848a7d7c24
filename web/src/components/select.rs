//! A choice among a few names.

use wasm_bindgen::JsCast;
use web_sys::HtmlSelectElement;
use yew::prelude::*;

/// What the choice shows.
#[derive(Debug, Clone, PartialEq, Properties)]
pub struct SelectProps {
    /// Id of the field in the document.
    pub id: AttrValue,
    /// What is chosen.
    pub label: AttrValue,
    /// What the label is of, where that is marked as in another language.
    #[prop_or_default]
    pub of: Html,
    /// Whether only readers of the screen get the label.
    #[prop_or_default]
    pub hide_label: bool,
    /// The names to choose from.
    pub names: Vec<AttrValue>,
    /// Languages of the names, in their order, where they are not in the one
    /// that is spoken.
    #[prop_or_default]
    pub langs: Vec<Option<&'static str>>,
    /// Which of them is chosen.
    pub chosen: Option<usize>,
    /// Told which of them was chosen.
    pub on_choose: Callback<usize>,
    /// Name for tests.
    #[prop_or_default]
    pub data_test: AttrValue,
}

/// The element's own way of telling that nothing is chosen.
fn element_index(chosen: Option<usize>) -> i32 {
    let index = chosen.and_then(|index| i32::try_from(index).ok());
    index.unwrap_or(-1)
}

/// The choice with its label.
#[component]
pub fn Select(props: &SelectProps) -> Html {
    let onchange = {
        let chosen = props.chosen;
        props.on_choose.reform(move |event: Event| {
            let select = event.target_unchecked_into::<HtmlSelectElement>();
            let index = usize::try_from(select.selected_index()).unwrap_or_default();
            // What is chosen is the caller's to say, and may stay as it was.
            select.set_selected_index(element_index(chosen));
            index
        })
    };
    // The browser keeps what was chosen when options come or go; this sets it
    // right.
    let field = use_node_ref();
    use_effect_with((props.chosen, props.names.clone()), {
        let field = field.clone();
        move |(chosen, _)| {
            if let Some(select) = field
                .get()
                .and_then(|node| node.dyn_into::<HtmlSelectElement>().ok())
            {
                select.set_selected_index(element_index(*chosen));
            }
        }
    });
    html! {
        <span class="select">
            <label for={&props.id} class={classes!(props.hide_label.then_some("for-readers"))}>
                { &props.label }{ props.of.clone() }
            </label>
            <select ref={field} id={&props.id} data-test={&props.data_test} {onchange}>
                { for props.names.iter().enumerate().map(|(index, name)| html! {
                    <option lang={props.langs.get(index).copied().flatten()}
                        selected={props.chosen == Some(index)}>{ name }</option>
                }) }
            </select>
        </span>
    }
}
