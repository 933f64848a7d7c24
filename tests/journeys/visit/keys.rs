//! The page by keyboard alone: real key events, wherever the keyboard is. Nothing here clicks, and
//! nothing moves the keyboard but the keys themselves.

use super::Visit;
use thirtyfour::TypingData;
use thirtyfour::prelude::*;

/// How often Tab is pressed before an element counts as out of the keyboard's reach.
const MOST_TABS: usize = 1200;

/// Whether the keyboard is on an element that fits, and what it is on.
const FOCUS: &str = r#"
const focus = document.activeElement;
const name = focus.getAttribute("aria-label") || focus.innerText || focus.value || "";
const words = name.replace(/\s+/g, " ").trim().slice(0, 60);
return [focus.matches(arguments[0]), `${focus.tagName.toLowerCase()}#${focus.id} “${words}”`];
"#;

impl Visit {
    /// Presses keys wherever the keyboard is; Control, Shift and Alt are held until the end.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn press(&self, keys: impl Into<TypingData>) -> WebDriverResult<()> {
        let focus = self.browser.active_element().await?;
        focus.send_keys(keys).await
    }

    /// Types a text letter by letter wherever the keyboard is.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn type_text(&self, text: &str) -> WebDriverResult<()> {
        self.press(text).await
    }

    /// Types over all that the field under the keyboard holds.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn type_over_all(&self, text: &str) -> WebDriverResult<()> {
        self.press(Key::Control + "a").await?;
        self.type_text(text).await
    }

    /// Waits for an element, then presses Tab until the keyboard is on one that fits.
    ///
    /// # Errors
    /// When the browser refuses.
    ///
    /// # Panics
    /// When the keyboard does not get there: with all that it came by.
    pub async fn tab_to(&self, css: &str) -> WebDriverResult<()> {
        self.walk_to(css, || Key::Tab.into()).await
    }

    /// The same backwards, with Shift and Tab.
    ///
    /// # Errors
    /// When the browser refuses.
    ///
    /// # Panics
    /// As [`Self::tab_to`].
    pub async fn tab_back_to(&self, css: &str) -> WebDriverResult<()> {
        self.walk_to(css, || Key::Shift + Key::Tab).await
    }

    async fn walk_to(&self, css: &str, step: impl Fn() -> TypingData) -> WebDriverResult<()> {
        self.element(css).await?;
        let mut passed = Vec::new();
        while passed.len() < MOST_TABS {
            let (is_there, what): (bool, String) = self.ask(FOCUS, css).await?;
            if is_there {
                return Ok(());
            }
            passed.push(what);
            self.press(step()).await?;
        }
        panic!("the keyboard does not reach {css}; it came by {passed:#?}");
    }

    /// Waits until the keyboard is on an element that fits.
    ///
    /// # Errors
    /// When the browser refuses.
    ///
    /// # Panics
    /// When it is elsewhere after all.
    pub async fn see_keyboard_on(&self, css: &str) -> WebDriverResult<()> {
        let look = || self.ask::<(bool, String)>(FOCUS, css);
        self.wait_until(&format!("the keyboard on {css}"), look, |seen| seen.0)
            .await?;
        Ok(())
    }
}
