//! What the office decides about the panel.

use super::also::Also;
use super::words;
use crate::components::{NumberField, Select};
use engine::label::{Audience, Content, Form, PanelOptions};
use engine::units::{Grams, Servings};
use rust_decimal::Decimal;
use web_sys::HtmlInputElement;
use yew::prelude::*;

#[derive(Clone, PartialEq, Properties)]
pub struct OptionsFieldProps {
    pub options: PanelOptions,
    pub on_change: Callback<PanelOptions>,
}

/// The options as fields.
#[component]
pub fn OptionsField(props: &OptionsFieldProps) -> Html {
    let options = &props.options;
    let change = |with: fn(&mut PanelOptions, Option<Decimal>)| {
        let props = props.clone();
        move |value: Option<Decimal>| {
            let mut options = props.options.clone();
            with(&mut options, value);
            props.on_change.emit(options);
        }
    };
    let weight = change(|options, value| options.serving_weight = value.map(Grams::new));
    let container =
        change(|options, value| options.servings_per_container = value.map(Servings::new));
    let choose = |with: fn(&mut PanelOptions, usize)| {
        let props = props.clone();
        Callback::from(move |index: usize| {
            let mut options = props.options.clone();
            with(&mut options, index);
            props.on_change.emit(options);
        })
    };
    let dual = {
        let props = props.clone();
        Callback::from(move |event: Event| {
            let dual = event.target_unchecked_into::<HtmlInputElement>().checked();
            props.on_change.emit(PanelOptions {
                dual,
                ..props.options.clone()
            });
        })
    };
    html! {
        <section class="facts-options" aria-labelledby="facts-options">
            <h2 id="facts-options">{ words::OPTIONS }</h2>
            <NumberField id="serving-weight" label={words::SERVING_WEIGHT} unit={words::GRAMS}
                value={options.serving_weight.map(Grams::grams)}
                on_change={emitting(&weight)} on_clear={clearing(&weight)} />
            <NumberField id="per-container" label={words::CONTAINER}
                value={options.servings_per_container.map(Servings::servings)}
                on_change={emitting(&container)} on_clear={clearing(&container)} />
            <Select id="audience" label={words::AUDIENCE}
                names={vec![words::FOUR_AND_OVER.into(), words::ONE_TO_THREE.into()]}
                chosen={AUDIENCES.iter().position(|one| *one == options.audience)}
                on_choose={choose(|options, index| options.audience = AUDIENCES[index])} />
            <Select id="content-rows" label={words::CONTENT}
                names={vec![
                    words::FULL.into(), words::WITHOUT_INSIGNIFICANT.into(), words::SIMPLIFIED.into(),
                ]}
                chosen={CONTENTS.iter().position(|one| *one == options.content)}
                on_choose={choose(|options, index| options.content = CONTENTS[index])} />
            <Select id="form" label={words::FORM}
                names={vec![words::VERTICAL.into(), words::TABULAR.into(), words::LINEAR.into()]}
                chosen={FORMS.iter().position(|one| *one == options.form)}
                on_choose={choose(|options, index| options.form = FORMS[index])} />
            // Running text has no columns.
            if options.form != Form::Linear {
                <p class="check">
                    <input id="dual" type="checkbox" checked={options.dual} onchange={dual} />
                    <label for="dual">{ words::DUAL }</label>
                </p>
            }
            <Also options={options.clone()} on_change={props.on_change.clone()} />
        </section>
    }
}

const AUDIENCES: [Audience; 2] = [Audience::FourAndOver, Audience::OneToThree];
const CONTENTS: [Content; 3] = [
    Content::Full,
    Content::WithoutInsignificant,
    Content::Simplified,
];
const FORMS: [Form; 3] = [Form::Vertical, Form::Tabular, Form::Linear];

fn emitting(change: &(impl Fn(Option<Decimal>) + Clone + 'static)) -> Callback<Decimal> {
    let change = change.clone();
    Callback::from(move |value| change(Some(value)))
}

fn clearing(change: &(impl Fn(Option<Decimal>) + Clone + 'static)) -> Callback<()> {
    let change = change.clone();
    Callback::from(move |()| change(None))
}
