//! The figures of a serving in one line, in sight while a card is written
//! where there is no room beside it.

use super::figures::{FIGURES, difference};
use super::words;
use crate::format;
use crate::tables::StudiedRecipe;
use yew::prelude::*;

/// What is shown.
#[derive(Clone, PartialEq, Properties)]
pub struct GlanceProps {
    /// What is found out about the recipe.
    pub study: StudiedRecipe,
    /// The same of the card as last kept, where it was another.
    pub before: Option<StudiedRecipe>,
}

/// The line; the figures beside the card say the same to readers of the screen.
#[component]
pub fn Glance(props: &GlanceProps) -> Html {
    let Ok(analysis) = &props.study.analysis else {
        return Html::default();
    };
    if props.study.ingredient_count() == 0 {
        return Html::default();
    }
    let was_written = |study: &&StudiedRecipe| study.ingredient_count() > 0;
    let before = props.before.as_ref().filter(was_written);
    let before = before.and_then(|study| study.analysis.as_ref().ok());
    html! {
        <p class="glance" aria-hidden="true">
            { for FIGURES.iter().map(|figure| {
                let sum = analysis.per_serving(figure.nutrient);
                let known = sum.and_then(|sum| format::known(&sum, figure.digits));
                let change = before.and_then(|before| difference(before, analysis, figure));
                html! {
                    <span>
                        <small>{ figure.name }</small>
                        <strong>{ known.unwrap_or_else(|| words::UNKNOWN.to_string()) }</strong>
                        if let Some(change) = change { <em>{ change }</em> }
                    </span>
                }
            }) }
        </p>
    }
}
