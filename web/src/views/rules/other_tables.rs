//! All other tables that figures come from, as they are kept.

use super::words;
use crate::language::Say;
use nutrient_data::{kitchen, rules};
use yew::prelude::*;

/// The tables with what each is for.
const TABLES: [(Say, &str); 16] = [
    (words::CREDIT_RULES, rules::CREDIT_RULES),
    (words::GRAIN_GROUPS, rules::GRAIN_GROUPS),
    (words::CREDIT_DEFINITIONS, rules::CREDIT_DEFINITIONS),
    (words::DAILY_VALUES, rules::DAILY_VALUES),
    (words::LABEL_ROUNDING, rules::LABEL_ROUNDING),
    (words::LABEL_NUTRIENTS, rules::LABEL_NUTRIENTS),
    (words::LABEL_STATEMENTS, rules::LABEL_STATEMENTS),
    (words::LABEL_LAYOUT, rules::LABEL_LAYOUT),
    (words::CLAIMS, rules::CLAIMS),
    (words::CLAIM_DISCLOSURE, rules::CLAIM_DISCLOSURE),
    (words::ALLERGEN_TERMS, rules::ALLERGEN_TERMS),
    (words::FOOD_SAFETY, rules::FOOD_SAFETY),
    (words::COOKING_YIELDS, kitchen::COOKING_YIELDS),
    (words::TRIM_YIELDS, kitchen::TRIM_YIELDS),
    (words::TREATMENTS, kitchen::TREATMENTS),
    (words::SYNONYMS, kitchen::SYNONYMS),
];

/// The section.
#[component]
pub fn OtherTables() -> Html {
    html! {
        <section aria-labelledby="other-tables">
            <h2 id="other-tables">{ words::OTHER }</h2>
            <p>{ words::OTHER_LEAD }</p>
            { for TABLES.iter().map(|(title, text)| html! { <OneTable title={*title} text={*text} /> }) }
        </section>
    }
}

#[derive(Clone, PartialEq, Properties)]
struct OneTableProps {
    title: Say,
    text: &'static str,
}

/// One table; drawn only while it is open, for some are long.
#[component]
fn OneTable(props: &OneTableProps) -> Html {
    let open = use_state(|| false);
    let ontoggle = {
        let open = open.clone();
        Callback::from(move |event: Event| {
            let element = event.target_unchecked_into::<web_sys::Element>();
            open.set(element.has_attribute("open"));
        })
    };
    html! {
        <details class="kept-table" data-test="kept-table" {ontoggle}>
            <summary>{ props.title }</summary>
            if *open {
                <div class="scroll" tabindex="0" role="region" aria-label={props.title}>
                    { table(props.text) }
                </div>
            }
        </details>
    }
}

fn table(text: &str) -> Html {
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    let header = reader.headers().cloned().unwrap_or_default();
    // Committed tables are read whole when the page starts.
    let rows: Vec<csv::StringRecord> = reader.records().flatten().collect();
    html! {
        <table class="kept" lang="en">
            <thead><tr>{ for header.iter().map(|name| html! { <th scope="col">{ name }</th> }) }</tr></thead>
            <tbody>{ for rows.iter().map(|row| html! {
                <tr>{ for row.iter().map(|cell| html! { <td>{ cell }</td> }) }</tr>
            }) }</tbody>
        </table>
    }
}
