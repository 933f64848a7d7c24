//! The Gramwright page.

use wasm_bindgen::prelude::*;
use yew::prelude::*;

/// The page's frame.
#[component]
fn App() -> Html {
    html! {
        <main>
            <h1>{ "Gramwright" }</h1>
        </main>
    }
}

/// Starts the page in the element that `index.html` keeps for it.
///
/// # Errors
/// When the document has no element with the id `app`.
#[wasm_bindgen(start)]
pub fn start() -> Result<(), JsValue> {
    let place = gloo::utils::document()
        .get_element_by_id("app")
        .ok_or("index.html has no element with the id app")?;
    yew::Renderer::<App>::with_root(place).render();
    Ok(())
}
