//! What a serving of both forms credits toward meal components.

use super::{Side, TwoProps};
use crate::views::recipe::credits::{component_name, credited};
use crate::views::recipe::versions::words;
use engine::components::{Component, Credit};
use yew::prelude::*;

/// The table; a line where neither form credits anything.
#[component]
pub fn Credits(props: &TwoProps) -> Html {
    let [left, right] = &props.sides;
    let of = |side: &Side, component: Component| -> Option<Credit> {
        let credits = side.study.credits.as_ref()?;
        let mut rows = credits.per_serving.iter();
        rows.find(|row| row.component == component).cloned()
    };
    let rows: Vec<_> = Component::ALL
        .into_iter()
        .map(|component| (component, of(left, component), of(right, component)))
        .filter(|(_, before, after)| before.is_some() || after.is_some())
        .collect();
    if rows.is_empty() {
        return html! { <p class="note">{ words::NO_CREDITS }</p> };
    }
    let shown = |credit: &Option<Credit>| match credit {
        Some(credit) => credited(credit),
        None => words::NOTHING.to_string(),
    };
    html! {
        <table class="two" data-test="two-credits">
            <caption>{ words::CREDITS }</caption>
            <thead><tr>
                <th scope="col">{ words::COMPONENT }</th>
                <th scope="col" class="number">{ &left.name }</th>
                <th scope="col" class="number">{ &right.name }</th>
            </tr></thead>
            <tbody>{ for rows.iter().map(|(component, before, after)| {
                let differs = shown(before) != shown(after);
                html! {
                    <tr class={classes!(differs.then_some("differs"))}
                        data-component={component.to_string()}>
                        <th scope="row">{ component_name(*component) }</th>
                        <td class="number">{ shown(before) }</td>
                        <td class="number">{ shown(after) }</td>
                    </tr>
                }
            }) }</tbody>
        </table>
    }
}
