//! A verdict by shape and word; colour only repeats them.

use crate::words;
use engine::findings::Verdict;
use yew::prelude::*;

/// Which verdict.
#[derive(Debug, Clone, PartialEq, Properties)]
pub struct VerdictMarkProps {
    /// The verdict.
    pub verdict: Verdict,
}

/// A ring with a tick, a filled square with a cross, a dashed ring with a
/// question mark.
#[component]
pub fn VerdictMark(props: &VerdictMarkProps) -> Html {
    let (class, word, shape) = match props.verdict {
        Verdict::Met => (
            "verdict verdict-met",
            words::verdict::MET,
            html! {<><circle cx="8" cy="8" r="6.75" /><path d="M4.8 8.3 7 10.5 11.2 5.6" /></>},
        ),
        Verdict::Missed => (
            "verdict verdict-missed",
            words::verdict::MISSED,
            html! {<><rect x="1" y="1" width="14" height="14" /><path d="M5 5 11 11 M11 5 5 11" /></>},
        ),
        Verdict::Unknown => (
            "verdict verdict-unknown",
            words::verdict::UNKNOWN,
            html! {<>
                <circle cx="8" cy="8" r="6.75" />
                <path d="M6 6.3 A2 2 0 1 1 8.4 8.2 L8 9.4 M8 11.4 V11.6" />
            </>},
        ),
    };
    html! {
        <span {class}>
            <svg viewBox="0 0 16 16" aria-hidden="true" focusable="false">{ shape }</svg>
            { word }
        </span>
    }
}
