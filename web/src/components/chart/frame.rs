//! What every drawing has around it: title, description, the kinds of its
//! parts, and its figures as a table.

use super::{hatch, words};
use yew::prelude::*;

/// A drawing and what stands around it.
pub(super) struct Frame<'a> {
    /// Id of the drawing in the document.
    pub id: &'a AttrValue,
    /// What it shows, in a few words.
    pub title: &'a AttrValue,
    /// What it says, in a sentence.
    pub summary: &'a AttrValue,
    /// How many kinds of hatching it needs.
    pub hatchings: usize,
    /// Its height in pixels.
    pub height: usize,
    /// What is drawn, as children of the drawing.
    pub drawn: Html,
    /// What its marks mean, as entries of a list.
    pub kinds: Html,
    /// The figures, as the inside of a table.
    pub figures: Html,
}

impl Frame<'_> {
    /// All of it.
    pub fn draw(self) -> Html {
        let (title, desc) = (format!("{}-title", self.id), format!("{}-desc", self.id));
        html! {
            <figure class="chart" data-test="chart" id={self.id}>
                // The drawing is called so for readers already.
                <p class="chart-title" aria-hidden="true">{ self.title }</p>
                <svg role="img" width="100%" height={self.height.to_string()} focusable="false"
                    aria-labelledby={title.clone()} aria-describedby={desc.clone()}>
                    <title id={title}>{ self.title }</title>
                    <desc id={desc}>{ self.summary }</desc>
                    { hatch::definitions(self.id, self.hatchings) }
                    { self.drawn }
                </svg>
                <ul class="chart-kinds" aria-hidden="true">{ self.kinds }</ul>
                <figcaption>{ self.summary }</figcaption>
                <details class="chart-table" data-test="chart-table">
                    <summary>{ words::AS_TABLE }<span class="for-readers">{ ": " }{ self.title }</span></summary>
                    <table>{ self.figures }</table>
                </details>
            </figure>
        }
    }
}
