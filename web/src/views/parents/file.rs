//! The paper as one file that needs nothing else: its own style, no script.

use crate::language::Language;

/// The style of the paper and of the panels on it.
const STYLE: [&str; 2] = [
    include_str!("../../../style/family.css"),
    include_str!("../../../style/facts.css"),
];

/// The file's text; nothing when the element is not shown.
pub fn text_of(element: &str, title: &str, tongue: Language) -> Option<String> {
    let element = gloo::utils::document().get_element_by_id(element)?;
    Some(around(&element.outer_html(), title, tongue))
}

/// A whole document around a part of one.
fn around(part: &str, title: &str, tongue: Language) -> String {
    let title = title
        .replace('&', "&amp;")
        .replace('<', "&lt;")
        .replace('>', "&gt;");
    let tag = tongue.tag();
    let style = STYLE.concat();
    format!(
        "<!DOCTYPE html>\n<html lang=\"{tag}\">\n<head>\n<meta charset=\"utf-8\">\n\
         <meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n\
         <title>{title}</title>\n<style>\n{style}</style>\n</head>\n\
         <body class=\"family-file\">\n<main>\n{part}\n</main>\n</body>\n</html>\n"
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_file_is_a_document_of_its_own() {
        let file = around("<p>Soup</p>", "Soup <& Rolls>", Language::Spanish);
        assert!(file.starts_with("<!DOCTYPE html>\n<html lang=\"es-US\">"));
        assert!(file.contains("<title>Soup &lt;&amp; Rolls&gt;</title>"));
        assert!(file.contains(".family"), "with its style");
        for elsewhere in ["<script", "<link", "@import", "url("] {
            assert!(!file.contains(elsewhere), "{elsewhere}");
        }
    }
}
