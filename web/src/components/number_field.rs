//! A field for a number. What is typed stays as typed; only a readable number
//! is passed on.

use crate::{format, words};
use rust_decimal::Decimal;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// What the field shows.
#[derive(Debug, Clone, PartialEq, Properties)]
pub struct NumberFieldProps {
    /// Id of the field in the document.
    pub id: AttrValue,
    /// What the number is; hidden where the surroundings say it.
    pub label: AttrValue,
    /// What the label is of, where that is marked as in another language.
    #[prop_or_default]
    pub of: Html,
    /// Whether only readers of the screen get the label.
    #[prop_or_default]
    pub hide_label: bool,
    /// The number in use; nothing leaves the field empty.
    pub value: Option<Decimal>,
    /// The smallest number that makes sense.
    #[prop_or_default]
    pub least: Decimal,
    /// Told of every readable number.
    pub on_change: Callback<Decimal>,
    /// Told when the field is emptied, where that means something.
    #[prop_or_default]
    pub on_clear: Option<Callback<()>>,
    /// Words behind the field, such as a unit.
    #[prop_or_default]
    pub unit: AttrValue,
    /// Name for tests.
    #[prop_or_default]
    pub data_test: AttrValue,
}

/// Reads a number as people type it: "1,200", "2.5".
fn read(text: &str, least: Decimal) -> Result<Decimal, String> {
    let plain: String = text.trim().replace([',', ' '], "");
    let value: Decimal = plain.parse().map_err(|_| words::no_number(text.trim()))?;
    if value < least {
        return Err(words::below(text.trim(), &format::stated(least)));
    }
    Ok(value)
}

/// The field with its label and, if need be, what is wrong.
#[component]
pub fn NumberField(props: &NumberFieldProps) -> Html {
    let draft = use_state(|| None::<String>);
    let shown = props.value.map(format::stated).unwrap_or_default();
    // A draft that does not say the value in use any more was overtaken, by
    // undo or from elsewhere.
    let problem = draft.as_ref().and_then(|text| match text.trim() {
        "" if props.on_clear.is_some() => None,
        text => read(text, props.least).err(),
    });
    let overtaken = draft
        .as_ref()
        .and_then(|text| read(text, props.least).ok())
        .is_some_and(|value| Some(value) != props.value);
    let text = match &*draft {
        Some(text) if !overtaken => text.clone(),
        _ => shown,
    };
    let oninput = {
        let (draft, props) = (draft.clone(), props.clone());
        Callback::from(move |event: InputEvent| {
            let text = event.target_unchecked_into::<HtmlInputElement>().value();
            match (text.trim(), &props.on_clear) {
                ("", Some(clear)) => clear.emit(()),
                (typed, _) => {
                    if let Ok(value) = read(typed, props.least) {
                        props.on_change.emit(value);
                    }
                }
            }
            draft.set(Some(text));
        })
    };
    let onblur = {
        let (draft, has_problem) = (draft.clone(), problem.is_some());
        Callback::from(move |_| {
            if !has_problem {
                draft.set(None);
            }
        })
    };
    let problem_id = format!("{}-problem", props.id);
    html! {
        <span class="number-field">
            <label for={&props.id} class={classes!(props.hide_label.then_some("for-readers"))}>
                { &props.label }{ props.of.clone() }
            </label>
            <input id={&props.id} type="text" inputmode="decimal" autocomplete="off"
                data-test={&props.data_test}
                value={text} {oninput} {onblur}
                aria-invalid={problem.is_some().then_some("true")}
                aria-describedby={problem.is_some().then(|| problem_id.clone())} />
            if !props.unit.is_empty() { <span class="unit">{ &props.unit }</span> }
            if let Some(problem) = problem {
                <span id={problem_id} class="field-problem" role="alert">{ problem }</span>
            }
        </span>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_as_people_type_them() {
        for (text, value) in [
            ("250", "250"),
            (" 1,200 ", "1200"),
            ("2.50", "2.5"),
            (".5", "0.5"),
        ] {
            let expected: Decimal = value.parse().unwrap();
            assert_eq!(read(text, Decimal::ZERO), Ok(expected), "{text}");
        }
        for text in ["", "two", "1..2", "5 cups", "-3"] {
            assert!(read(text, Decimal::ZERO).is_err(), "{text}");
        }
        assert!(read("0", Decimal::ONE).unwrap_err().contains("1 or more"));
    }
}
