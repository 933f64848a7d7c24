//! The form in which a person states what a line credits.

use super::words;
use crate::components::{NumberField, Select};
use crate::language::Say;
use crate::named;
use crate::state::RecipeEdit;
use crate::views::recipe::CardProps;
use engine::components::{Component, Mark, StatedCredit};
use rust_decimal::Decimal;
use web_sys::HtmlInputElement;
use yew::prelude::*;

#[derive(Clone, PartialEq, Properties)]
pub struct StateItProps {
    /// The card.
    pub card: CardProps,
    /// Index of the line.
    pub line: usize,
    /// The component that is chosen at first.
    pub toward: Component,
    /// Which of the line's forms this is: a line that names another recipe has
    /// one for each of that recipe's foods.
    pub form: usize,
}

/// What is filled in so far.
#[derive(Debug, Clone, PartialEq)]
struct Draft {
    component: Component,
    amount: Option<Decimal>,
    marks: Vec<Mark>,
    reason: String,
    /// Whether it was tried to state it as it is.
    tried: bool,
}

impl Draft {
    fn empty(component: Component) -> Self {
        Self {
            component,
            amount: None,
            marks: Vec::new(),
            reason: String::new(),
            tried: false,
        }
    }

    fn problem(&self) -> Option<Say> {
        if self.amount.is_none() {
            Some(words::NEEDS_AMOUNT)
        } else if self.reason.trim().is_empty() {
            Some(words::NEEDS_REASON)
        } else {
            None
        }
    }

    /// Nothing while something is missing.
    fn credit(&self) -> Option<StatedCredit> {
        let amount = self.amount.filter(|_| self.problem().is_none())?;
        Some(StatedCredit {
            component: self.component,
            amount,
            marks: self.marks.clone(),
            reason: self.reason.trim().to_owned(),
            stated_for: None,
        })
    }
}

/// One change of the draft.
type Change = Box<dyn FnOnce(&mut Draft)>;

/// The form, folded up.
#[component]
pub fn StateIt(props: &StateItProps) -> Html {
    let draft = use_state(|| Draft::empty(props.toward));
    let change: Callback<Change> = {
        let draft = draft.clone();
        Callback::from(move |change: Change| {
            let mut changed = (*draft).clone();
            change(&mut changed);
            draft.set(changed);
        })
    };
    let submit = {
        let (draft, props) = (draft.clone(), props.clone());
        Callback::from(move |_: MouseEvent| match draft.credit() {
            Some(credit) => {
                state(&props, credit);
                draft.set(Draft::empty(props.toward));
            }
            None => draft.set(Draft {
                tried: true,
                ..(*draft).clone()
            }),
        })
    };
    let id = |field: &str| format!("credit-{}-{}-{field}", props.line, props.form);
    let problem = draft.problem().filter(|_| draft.tried);
    let names: Vec<AttrValue> = Component::ALL
        .map(|one| named::component(one).into())
        .into();
    let on_component = change.reform(|index: usize| -> Change {
        Box::new(move |draft| {
            draft.component = Component::ALL[index];
            draft.marks.clear();
        })
    });
    let set_amount =
        |amount: Option<Decimal>| -> Change { Box::new(move |draft| draft.amount = amount) };
    let on_reason = change.reform(|event: InputEvent| -> Change {
        let reason = event.target_unchecked_into::<HtmlInputElement>().value();
        Box::new(move |draft| draft.reason = reason)
    });
    let marks = draft.component.marks();
    html! {
        <details class="state-credit" data-test="state-credit">
            <summary>{ words::STATE_IT }</summary>
            <p class="hint">{ words::STATE_HINT }</p>
            <p class="fields">
                <Select id={id("component")} data_test="credit-component" label={words::TOWARD}
                    {names} chosen={Component::ALL.iter().position(|one| *one == draft.component)} on_choose={on_component} />
                <NumberField id={id("amount")} data_test="credit-amount" label={words::PER_SERVING}
                    unit={draft.component.unit()} value={draft.amount}
                    on_change={change.reform(move |amount| set_amount(Some(amount)))}
                    on_clear={change.reform(move |()| set_amount(None))} />
                <span class="field">
                    <label for={id("reason")}>{ words::REASON }</label>
                    <input id={id("reason")} type="text" autocomplete="off" data-test="credit-reason-field"
                        placeholder={words::REASON_EXAMPLE} value={draft.reason.clone()}
                        oninput={on_reason} />
                </span>
            </p>
            <fieldset>
                <legend class="note">{ words::MARKS }</legend>
                { for marks.iter().map(|mark| mark_check(&id(&mark.to_string()), *mark, &draft, &change)) }
            </fieldset>
            <button type="button" data-test="state-credit-button" onclick={submit}>{ words::STATE }</button>
            if let Some(problem) = problem {
                { " " }<span class="problem" role="alert">{ problem }</span>
            }
        </details>
    }
}

fn mark_check(id: &str, mark: Mark, draft: &Draft, change: &Callback<Change>) -> Html {
    let id = id.replace(' ', "-");
    let onchange = change.reform(move |event: Event| -> Change {
        let on = event.target_unchecked_into::<HtmlInputElement>().checked();
        Box::new(move |draft| {
            draft.marks.retain(|other| *other != mark);
            if on {
                draft.marks.push(mark);
            }
        })
    });
    html! {
        <span class="check">
            <input id={id.clone()} type="checkbox" checked={draft.marks.contains(&mark)} {onchange} />
            <label for={id}>{ named::mark(mark) }</label>
        </span>
    }
}

/// Adds a stated credit to the line.
fn state(props: &StateItProps, credit: StatedCredit) {
    if let Some(line) = props.card.recipe.lines.get(props.line) {
        let mut correction = line.correction.clone();
        correction.credits.push(credit);
        props.card.edit.emit(RecipeEdit::Correct {
            line: props.line,
            correction,
        });
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_credit_needs_an_amount_and_a_reason() {
        let full = Draft {
            amount: Some(Decimal::TWO),
            reason: " CN label 7 ".into(),
            ..Draft::empty(Component::Grains)
        };
        for (draft, problem) in [
            (Draft::empty(Component::Grains), Some(words::NEEDS_AMOUNT)),
            (
                Draft {
                    reason: "  ".into(),
                    ..full.clone()
                },
                Some(words::NEEDS_REASON),
            ),
            (full, None),
        ] {
            assert_eq!(draft.problem(), problem);
            let credit = draft.credit();
            assert_eq!(credit.is_none(), problem.is_some());
            if let Some(credit) = credit {
                assert_eq!(credit.reason, "CN label 7");
            }
        }
    }
}
