//! The heading and the number of each printed page.
//!
//! The margins of a page are reached by a style rule only, and the heading
//! names the week: so the rule is put into the style sheet as long as the view
//! is shown.

use wasm_bindgen::JsCast;
use web_sys::CssStyleSheet;
use yew::prelude::*;

/// Puts a heading on each printed page while the view is shown.
#[hook]
pub fn use_running_head(text: &str) {
    use_effect_with(text.to_owned(), |text| {
        let place = sheet().and_then(|sheet| {
            let end = sheet.css_rules().ok()?.length();
            sheet.insert_rule_with_index(&rule(text), end).ok()
        });
        move || {
            if let Some((sheet, place)) = sheet().zip(place) {
                // It fails only if the rule is gone already.
                drop(sheet.delete_rule(place));
            }
        }
    });
}

/// The page's last style sheet.
fn sheet() -> Option<CssStyleSheet> {
    let sheets = gloo::utils::document().style_sheets();
    let last = sheets.length().checked_sub(1)?;
    sheets.item(last)?.dyn_into().ok()
}

fn rule(text: &str) -> String {
    let text = text.replace('\\', "\\\\").replace('"', "\\\"");
    let text = text.replace(['\n', '\r'], " ");
    format!(
        "@page {{ margin: 18mm 14mm; \
         @top-left {{ content: \"{text}\"; font: 8pt sans-serif; }} \
         @bottom-right {{ content: counter(page) \" / \" counter(pages); font: 8pt sans-serif; }} }}"
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_title_cannot_leave_its_quotes() {
        let rule = rule("Week \"1\" \\ 2\n");
        assert!(rule.contains(r#"content: "Week \"1\" \\ 2 ";"#), "{rule}");
    }
}
