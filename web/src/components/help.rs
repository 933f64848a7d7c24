//! Help beside a figure: what it is, how it is computed, which source. It
//! opens over the page without holding anybody in it: Escape, a click beside
//! it or its own button closes it (the `popover` attribute of the HTML
//! standard).

use crate::language::{Say, say};
use std::cell::Cell;
use yew::prelude::*;

/// What help is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Topic {
    /// Calories.
    Energy,
    /// Saturated fat.
    SaturatedFat,
    /// Sodium.
    Sodium,
    /// The carbohydrate count.
    Carbohydrate,
    /// Any nutrient in the table of all.
    Nutrients,
    /// For how much of the weight a figure is known.
    Coverage,
    /// How far a figure may be off.
    PlusMinus,
    /// Credits toward meal components.
    Credits,
    /// Met, missed, unknown.
    Verdicts,
    /// Limits on the average meal of a week.
    AverageMeal,
    /// What a week has to offer.
    WeekOffer,
    /// What each day has to offer.
    DayOffer,
    /// The Nutrition Facts panel.
    Panel,
}

impl Topic {
    /// Its name in tests and in the document.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Energy => "energy",
            Self::SaturatedFat => "saturated-fat",
            Self::Sodium => "sodium",
            Self::Carbohydrate => "carbohydrate",
            Self::Nutrients => "nutrients",
            Self::Coverage => "coverage",
            Self::PlusMinus => "plus-minus",
            Self::Credits => "credits",
            Self::Verdicts => "verdicts",
            Self::AverageMeal => "average-meal",
            Self::WeekOffer => "week-offer",
            Self::DayOffer => "day-offer",
            Self::Panel => "panel",
        }
    }

    fn message(self, part: &str) -> String {
        say(&message_key(self, part), &[])
    }

    /// All of them; each has its messages in the language files.
    #[cfg(test)]
    pub(crate) const ALL: [Self; 13] = [
        Self::Energy,
        Self::SaturatedFat,
        Self::Sodium,
        Self::Carbohydrate,
        Self::Nutrients,
        Self::Coverage,
        Self::PlusMinus,
        Self::Credits,
        Self::Verdicts,
        Self::AverageMeal,
        Self::WeekOffer,
        Self::DayOffer,
        Self::Panel,
    ];
}

pub(crate) fn message_key(topic: Topic, part: &str) -> String {
    format!("help-{}{part}", topic.key())
}

/// Endings of a topic's messages: its name, what it is, how it is computed,
/// which source.
#[cfg(test)]
pub(crate) const PARTS: [&str; 4] = ["", "-what", "-how", "-source"];

/// What the help is about.
#[derive(Debug, Clone, PartialEq, Properties)]
pub struct HelpProps {
    /// The topic.
    pub topic: Topic,
}

thread_local! {
    static NEXT: Cell<u32> = const { Cell::new(0) };
}

/// A small button, and what it opens.
#[component]
pub fn Help(props: &HelpProps) -> Html {
    // Several may be about one topic; ids are unique in a document.
    let number = use_memo((), |()| {
        NEXT.set(NEXT.get() + 1);
        NEXT.get()
    });
    let topic = props.topic;
    let id = format!("help-{number}");
    let name = topic.message("");
    let part = |heading: Say, ending: &str| {
        html! { <><dt>{ heading }</dt><dd>{ topic.message(ending) }</dd></> }
    };
    html! {
        <span class="help" data-test="help" data-topic={topic.key()}>
            <button type="button" class="help-button" popovertarget={id.clone()}
                aria-label={say("help-open", &[("name", name.as_str().into())])}>{ "?" }</button>
            <div class="help-text" popover="auto" {id} role="group" aria-label={name.clone()}>
                <p class="help-name">{ name }</p>
                <dl>
                    { part(Say("help-what"), "-what") }
                    { part(Say("help-how"), "-how") }
                    { part(Say("help-source"), "-source") }
                </dl>
            </div>
        </span>
    }
}
