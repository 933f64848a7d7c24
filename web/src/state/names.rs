//! Names by which the book refers to its recipes and weeks.

/// A name made from a title, that none of `taken` has: "Bean soup" becomes
/// `bean-soup`, then `bean-soup-2`.
pub fn unique_name<'a>(
    title: &str,
    fallback: &str,
    taken: impl Iterator<Item = &'a str> + Clone,
) -> String {
    let mut plain = String::new();
    for c in title.chars().flat_map(char::to_lowercase) {
        if c.is_alphanumeric() {
            plain.push(c);
        } else if !plain.is_empty() && !plain.ends_with('-') {
            plain.push('-');
        }
    }
    let plain = plain.trim_end_matches('-');
    let plain = if plain.is_empty() { fallback } else { plain };
    let free = |name: &str| !taken.clone().any(|other| other == name);
    if free(plain) {
        return plain.to_owned();
    }
    (2..)
        .map(|number| format!("{plain}-{number}"))
        .find(|name| free(name))
        .unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::unique_name;

    #[test]
    fn names_are_plain_and_free() {
        for (title, taken, expected) in [
            ("Bean soup", &[][..], "bean-soup"),
            ("Bean soup", &["bean-soup"][..], "bean-soup-2"),
            (
                " Bean soup (50) ",
                &["bean-soup", "bean-soup-50"][..],
                "bean-soup-50-2",
            ),
            ("½ !", &[][..], "½"),
            ("...", &[][..], "recipe"),
            ("", &["recipe"][..], "recipe-2"),
        ] {
            assert_eq!(
                unique_name(title, "recipe", taken.iter().copied()),
                expected
            );
        }
    }
}
