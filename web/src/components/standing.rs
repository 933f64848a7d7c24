//! How sure a rule's figure is, wherever a rule is shown.

use crate::words::standing as words;
use yew::prelude::*;

/// Which standing.
#[derive(Debug, Clone, PartialEq, Properties)]
pub struct StandingNoteProps {
    /// The rule's status as its table has it.
    pub status: AttrValue,
    /// Whether a figure that was read in its source says so too.
    #[prop_or_default]
    pub always: bool,
}

/// A note, in strong words where the figure has to be checked.
#[component]
pub fn StandingNote(props: &StandingNoteProps) -> Html {
    if props.status == words::VERIFIED && !props.always {
        return Html::default();
    }
    let class = if words::is_from_memory(&props.status) {
        "problem"
    } else {
        "note"
    };
    html! {
        <span {class} data-test="standing">{ words::of(&props.status) }</span>
    }
}
