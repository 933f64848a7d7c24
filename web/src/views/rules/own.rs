//! One of the office's own tables of limits: its text, what its columns hold,
//! and whether it is in use.

use super::words;
use crate::page::use_page;
use crate::state::{Action, OwnTable};
use crate::words::own_table;
use engine::tables::TableError;
use wasm_bindgen::JsCast;
use web_sys::HtmlTextAreaElement;
use yew::prelude::*;

/// Which table.
#[derive(Clone, PartialEq, Properties)]
pub struct OwnLimitsProps {
    /// The table.
    pub table: OwnTable,
    /// Its text as typed; empty where there is none.
    pub text: String,
}

/// The table as a field.
#[component]
pub fn OwnLimits(props: &OwnLimitsProps) -> Html {
    let page = use_page();
    let field = use_node_ref();
    let (table, text) = (props.table, &props.text);
    let id = format!("own-{}", words::key(table));
    let oninput = {
        let page = page.clone();
        Callback::from(move |event: InputEvent| {
            let text = event.target_unchecked_into::<HtmlTextAreaElement>().value();
            page.act(Action::OwnRules(table, text));
        })
    };
    let example = {
        let page = page.clone();
        Callback::from(move |_| page.act(Action::OwnRules(table, words::example_text(table))))
    };
    let problem = page.own.of_table(table);
    let status = format!("{id}-status");
    html! {
        <section class="own-table" data-test="own-table" data-table={words::key(table)}>
            <h3><label for={id.clone()} class="section-label">{ own_table::name(table) }</label></h3>
            <p>{ words::own_lead(table) }</p>
            <textarea ref={field.clone()} id={id} rows={rows(text)} spellcheck="false" wrap="off"
                placeholder={table.header()} value={text.clone()} {oninput}
                aria-invalid={problem.is_some().then_some("true")} aria-describedby={status.clone()} />
            <div id={status}>
                { standing(text, problem, &field) }
            </div>
            if text.trim().is_empty() {
                <div class="ways">
                    <button type="button" data-test="own-example" onclick={example}>
                        { words::START_WITH_EXAMPLE }
                    </button>
                </div>
            }
            <details data-test="own-columns">
                <summary>{ words::COLUMNS }</summary>
                <p class="hint">{ words::COLUMNS_LEAD }</p>
                <dl class="meanings">
                    { for table.header().split(',').map(|column| html! {<>
                        <dt><code>{ column }</code></dt>
                        <dd>{ words::column(table, column) }</dd>
                    </>}) }
                </dl>
            </details>
        </section>
    }
}

/// Rows of the field: room for the text and a line more.
fn rows(text: &str) -> String {
    (text.lines().count() + 1).clamp(3, 16).to_string()
}

fn standing(text: &str, problem: Option<&TableError>, field: &NodeRef) -> Html {
    match problem {
        None if text.trim().is_empty() => html! { <p class="hint">{ words::NO_OWN }</p> },
        None => html! {
            <p class="hint" role="status" data-test="own-in-use">{ words::in_use(data_rows(text)) }</p>
        },
        Some(problem) => {
            let to_line = to_line(field, text, problem.line);
            html! {
                <p class="field-problem" role="alert" data-test="own-table-problem">
                    { words::not_in_use(problem) }{ " " }
                    if problem.line > 0 {
                        <button type="button" class="quiet" onclick={to_line}>{ words::TO_LINE }</button>
                    }
                </p>
            }
        }
    }
}

/// Lines after the header that are not empty.
fn data_rows(text: &str) -> usize {
    let lines = text.lines().skip(1);
    lines.filter(|line| !line.trim().is_empty()).count()
}

/// Selects a line of the field.
fn to_line(field: &NodeRef, text: &str, line: u64) -> Callback<MouseEvent> {
    let (field, (start, end)) = (field.clone(), range(text, line));
    Callback::from(move |_| {
        let area = field
            .get()
            .and_then(|node| node.dyn_into::<HtmlTextAreaElement>().ok());
        if let Some(area) = area {
            // Both fail only for elements that cannot be typed into.
            drop(area.focus());
            drop(area.set_selection_range(start, end));
        }
    })
}

/// From where to where a line goes, counted as browsers count.
fn range(text: &str, line: u64) -> (u32, u32) {
    let length = |line: &str| u32::try_from(line.encode_utf16().count()).unwrap_or(u32::MAX);
    let before = usize::try_from(line.saturating_sub(1)).unwrap_or(usize::MAX);
    let start: u32 = text
        .split('\n')
        .take(before)
        .map(|line| length(line) + 1)
        .sum();
    let own = text.split('\n').nth(before).map_or(0, length);
    (start, start + own)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_line_is_found_as_browsers_count() {
        for (text, line, found) in [
            ("abc\nde\nf", 1, (0, 3)),
            ("abc\nde\nf", 2, (4, 6)),
            ("½😀\nde", 2, (4, 6)),
            ("abc", 7, (4, 4)),
        ] {
            assert_eq!(range(text, line), found, "{text:?} {line}");
        }
    }
}
