//! Descriptions and terms as lists of plain words.

/// Lower-case words of a text; everything but letters and digits separates.
pub(super) fn words(text: &str) -> Vec<String> {
    text.split(|c: char| !c.is_alphanumeric())
        .filter(|word| !word.is_empty())
        .map(str::to_lowercase)
        .collect()
}

/// Where `phrase` stands in `text`, word by word; a plural "s" on a word of the
/// text is not held against it.
pub(super) fn positions(text: &[String], phrase: &[String]) -> Vec<usize> {
    if phrase.is_empty() || phrase.len() > text.len() {
        return Vec::new();
    }
    (0..=text.len() - phrase.len())
        .filter(|&start| {
            text[start..]
                .iter()
                .zip(phrase)
                .all(|(word, wanted)| word == wanted || word.strip_suffix('s') == Some(wanted))
        })
        .collect()
}

/// The text with every occurrence of `phrase` blanked out, so that its words
/// are not found again on their own ("peanut butter" is no butter).
pub(super) fn without(mut text: Vec<String>, phrase: &[String]) -> Vec<String> {
    for start in positions(&text, phrase) {
        for word in &mut text[start..start + phrase.len()] {
            word.clear();
        }
    }
    text
}
