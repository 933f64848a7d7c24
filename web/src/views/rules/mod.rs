//! Rules: what is in force on a date, how unsettled ones are read, and the
//! office's own limits.

mod in_force;
mod lines;
mod other_tables;
mod own;
mod switches;
mod words;

pub use in_force::record;
pub use switches::Switches;

use crate::components::DateField;
use crate::page::{use_page, use_title};
use engine::week::Date;
use in_force::InForce;
use other_tables::OtherTables;
use own::OwnLimits;
use yew::prelude::*;

/// On which day.
#[derive(Clone, PartialEq, Properties)]
pub struct RulesViewProps {
    /// The day at first; today where none is asked for.
    pub date: Option<Date>,
}

/// The view.
#[component]
pub fn RulesView(props: &RulesViewProps) -> Html {
    let page = use_page();
    use_title(&crate::words::RULES.to_string());
    let asked = props.date;
    let chosen = use_state(|| asked.unwrap_or_else(super::week::today));
    let date = *chosen;
    let on_change = Callback::from(move |date| chosen.set(date));
    html! {
        <div class="rules">
            <h1>{ words::TITLE }</h1>
            <p class="lead">{ words::LEAD }</p>
            <section aria-labelledby="rules-in-force">
                <h2 id="rules-in-force">{ words::IN_FORCE }</h2>
                <p class="field">
                    <DateField id="rules-date" label={words::DATE} value={date} {on_change} />
                </p>
                <InForce {date} />
            </section>
            <section aria-labelledby="switches">
                <h2 id="switches">{ words::SWITCHES }</h2>
                <Switches />
            </section>
            <section aria-labelledby="own-limits">
                <h2 id="own-limits">{ words::OWN }</h2>
                { for words::OWN_LEAD.iter().map(|text| html! { <p>{ *text }</p> }) }
                { for crate::state::OwnTable::ALL.into_iter().map(|table| {
                    let text = table.text(&page.contents().rest.own_rules).unwrap_or_default();
                    html! { <OwnLimits {table} text={text.to_owned()} /> }
                }) }
            </section>
            <OtherTables />
        </div>
    }
}
