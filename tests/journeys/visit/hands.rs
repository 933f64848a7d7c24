//! What a person does and sees on the page. Everything waits for what it needs, as a person does.

use super::Visit;
use std::fmt::Debug;
use std::fs;
use std::time::{Duration, Instant};
use thirtyfour::extensions::query::ElementQueryable;
use thirtyfour::prelude::*;
use tokio::time::sleep;

/// How long anything may take to appear before the journey fails.
pub const PATIENCE: Duration = Duration::from_secs(20);

/// Pause between two looks.
pub const BLINK: Duration = Duration::from_millis(50);

/// The texts of all elements that fit, as they are shown.
const TEXTS: &str = r#"
return Array.from(document.querySelectorAll(arguments[0]), (element) =>
  element.innerText.replace(/\s+/g, " ").trim());
"#;

/// What the fields that fit hold.
const VALUES: &str =
    "return Array.from(document.querySelectorAll(arguments[0]), (field) => field.value);";

impl Visit {
    /// Waits for an element, and gives it.
    ///
    /// # Errors
    /// When there is none in time.
    pub async fn element(&self, css: &str) -> WebDriverResult<WebElement> {
        self.browser.query(By::Css(css)).desc(css).first().await
    }

    /// Clicks on the first element that fits, once it can be clicked.
    ///
    /// # Errors
    /// When it cannot be in time.
    pub async fn click(&self, css: &str) -> WebDriverResult<()> {
        let begun = Instant::now();
        loop {
            let outcome = self.try_to_click(css).await;
            // A page that is just being drawn may take the element away, or move another over it.
            if outcome.is_ok() || begun.elapsed() > PATIENCE {
                return outcome;
            }
            sleep(BLINK).await;
        }
    }

    async fn try_to_click(&self, css: &str) -> WebDriverResult<()> {
        let element = self.element(css).await?;
        element.scroll_into_view().await?;
        element.click().await
    }

    /// Types over what a field holds, key by key.
    ///
    /// # Errors
    /// When there is no such field in time.
    pub async fn type_over(&self, css: &str, text: &str) -> WebDriverResult<()> {
        self.click(css).await?;
        self.type_over_all(text).await
    }

    /// Chooses the option with this name.
    ///
    /// # Errors
    /// When there is none in time.
    pub async fn choose(&self, css: &str, name: &str) -> WebDriverResult<()> {
        self.element(css).await?.scroll_into_view().await?;
        let options = self.browser.query(By::Css(format!("{css} option")));
        options
            .with_text(name.to_owned())
            .first()
            .await?
            .click()
            .await
    }

    /// Inserts a text at the caret in one go, as pasting does.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn paste(&self, text: &str) -> WebDriverResult<()> {
        self.browser.cdp().input().insert_text(text).await
    }

    /// The texts of all elements that fit at this moment; white space counts as one space.
    ///
    /// # Errors
    /// When the browser refuses.
    pub async fn texts(&self, css: &str) -> WebDriverResult<Vec<String>> {
        self.ask(TEXTS, css).await
    }

    /// Waits until the elements that fit show exactly these texts.
    ///
    /// # Errors
    /// When the browser refuses.
    ///
    /// # Panics
    /// When it shows others after all.
    pub async fn see(&self, css: &str, expected: &[&str]) -> WebDriverResult<()> {
        self.wait_until(css, || self.texts(css), |texts| texts == expected)
            .await?;
        Ok(())
    }

    /// Waits until the only element that fits shows a text with these words, and gives the text.
    ///
    /// # Errors
    /// When the browser refuses.
    ///
    /// # Panics
    /// When it does not in time.
    pub async fn see_words(&self, css: &str, words: &str) -> WebDriverResult<String> {
        let what = format!("“{words}” in {css}");
        let has = |texts: &Vec<String>| matches!(&texts[..], [text] if text.contains(words));
        let texts = self.wait_until(&what, || self.texts(css), has).await?;
        Ok(texts.concat())
    }

    /// Waits until the fields that fit hold exactly these texts.
    ///
    /// # Errors
    /// When the browser refuses.
    ///
    /// # Panics
    /// When they hold others after all.
    pub async fn see_values(&self, css: &str, expected: &[&str]) -> WebDriverResult<()> {
        let look = || self.ask::<Vec<String>>(VALUES, css);
        self.wait_until(css, look, |values| values == expected)
            .await?;
        Ok(())
    }

    /// Makes sure that nothing is wider than the screen.
    ///
    /// # Errors
    /// When the browser refuses.
    ///
    /// # Panics
    /// When the page can be scrolled sideways.
    pub async fn see_no_sideways_scrolling(&self) -> WebDriverResult<()> {
        // A phone's window widens with what is too wide for it; the root element does not.
        let script =
            "const root = document.documentElement; return root.scrollWidth - root.clientWidth;";
        let over: i64 = self.ask(script, "").await?;
        assert!(over <= 0, "{over} pixels beyond the screen");
        Ok(())
    }

    /// Waits for a file that the browser saves, and reads it.
    ///
    /// # Errors
    /// Never; it is waited for as for anything else.
    ///
    /// # Panics
    /// When there is none of this name in time.
    pub async fn saved_file(&self, name: &str) -> WebDriverResult<String> {
        // The browser first keeps the name free with an empty file, then puts the whole one there.
        let path = self.downloads.join(name);
        let look = async || {
            let text = fs::read_to_string(&path).ok();
            Ok(text.filter(|text| !text.is_empty()))
        };
        let found = self.wait_until(name, look, Option::is_some).await?;
        Ok(found.unwrap_or_default())
    }

    /// Puts a file on the machine and gives it to a field for files.
    ///
    /// # Errors
    /// When there is no such field in time.
    ///
    /// # Panics
    /// When the file cannot be written.
    pub async fn give_file(&self, css: &str, name: &str, text: &str) -> WebDriverResult<()> {
        let path = self.downloads.join(name);
        fs::write(&path, text).expect("a file of its own");
        self.element(css)
            .await?
            .send_keys(path.to_string_lossy())
            .await
    }

    /// Runs a script with one argument.
    ///
    /// # Errors
    /// When it fails, or gives something of another kind.
    pub async fn ask<T>(&self, script: &str, argument: &str) -> WebDriverResult<T>
    where
        T: serde::de::DeserializeOwned,
    {
        let arguments = vec![serde_json::Value::from(argument)];
        self.browser.execute(script, arguments).await?.convert()
    }

    /// Looks until what is seen is `right`, and gives it.
    ///
    /// # Errors
    /// When looking fails.
    ///
    /// # Panics
    /// When it is not right in time: with what was seen last.
    pub async fn wait_until<T: Debug>(
        &self,
        what: &str,
        look: impl AsyncFn() -> WebDriverResult<T>,
        right: impl Fn(&T) -> bool,
    ) -> WebDriverResult<T> {
        let begun = Instant::now();
        loop {
            let seen = look().await?;
            if right(&seen) {
                return Ok(seen);
            }
            assert!(begun.elapsed() < PATIENCE, "{what}: seen is {seen:#?}");
            sleep(BLINK).await;
        }
    }
}
