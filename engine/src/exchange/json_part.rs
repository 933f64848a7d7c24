//! Which part of a JSON text does not fit what was asked for.
//!
//! The readers of types tell line and column only; the part is looked up in the
//! text afterwards. A reader that keeps track of the parts would have to be made
//! for every type again, which was a twentieth of the page's program.

/// A step from the whole to a part.
enum Step {
    /// Into an object, by the name that was read last.
    Name(Option<String>),
    /// Into a list.
    Entry(usize),
}

/// The part of a JSON text at which its reader stopped, as in
/// "recipes[2].servings"; empty when the whole is meant.
pub fn part(text: &str, error: &serde_json::Error) -> String {
    match error.line() {
        0 => String::new(),
        line => {
            // What is missing is told once its object has ended; a value that does not fit is told
            // there too, where a type of ours refuses it.
            let is_missing = error.to_string().starts_with("missing field");
            part_at(text, line, error.column(), is_missing)
        }
    }
}

fn part_at(text: &str, line: usize, column: usize, is_missing: bool) -> String {
    let before: usize = text
        .split_inclusive('\n')
        .take(line - 1)
        .map(str::len)
        .sum();
    let end = (before + column).min(text.len());
    let mut letters = text.as_bytes()[..end].iter();
    let mut steps = Vec::new();
    let mut is_name = false;
    while let Some(letter) = letters.next() {
        match letter {
            b'{' => steps.push(Step::Name(None)),
            b'[' => steps.push(Step::Entry(0)),
            b'}' | b']' if is_missing || !letters.as_slice().is_empty() => drop(steps.pop()),
            b',' => {
                if let Some(Step::Entry(at)) = steps.last_mut() {
                    *at += 1;
                }
            }
            b'"' => {
                let string = string(&mut letters);
                if let (true, Some(Step::Name(name))) = (is_name, steps.last_mut()) {
                    *name = Some(string);
                }
            }
            _ => {}
        }
        is_name = match letter {
            b'{' | b',' => true,
            letter if letter.is_ascii_whitespace() => is_name,
            _ => false,
        };
    }
    in_words(&steps)
}

/// The rest of a string whose opening mark has been read, escapes as written.
fn string(letters: &mut std::slice::Iter<'_, u8>) -> String {
    let mut bytes = Vec::new();
    while let Some(&letter) = letters.next() {
        match letter {
            b'"' => break,
            b'\\' => {
                bytes.push(letter);
                bytes.extend(letters.next());
            }
            _ => bytes.push(letter),
        }
    }
    String::from_utf8_lossy(&bytes).into_owned()
}

fn in_words(steps: &[Step]) -> String {
    let mut words = String::new();
    for step in steps {
        match step {
            Step::Name(Some(name)) if words.is_empty() => words.push_str(name),
            Step::Name(Some(name)) => words.extend([".", name]),
            Step::Name(None) => {}
            Step::Entry(at) => words.extend(["[", &at.to_string(), "]"]),
        }
    }
    words
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde::Deserialize;
    use serde::de::DeserializeOwned;
    use std::collections::BTreeMap;

    #[derive(Debug, Deserialize)]
    #[expect(dead_code, reason = "only its errors are looked at")]
    struct Dish {
        title: String,
        lines: Vec<BTreeMap<String, u8>>,
    }

    fn wrong_part<T: DeserializeOwned>(text: &str) -> String {
        match serde_json::from_str::<T>(text) {
            Ok(_) => "nothing is wrong".to_owned(),
            Err(error) => part(text, &error),
        }
    }

    /// Where we would point by hand.
    #[test]
    fn the_part_that_is_wrong_is_named() {
        for (text, part) in [
            (r#"{"title": 5, "lines": []}"#, "title"),
            ("{\"title\": \"a, {b\",\n \"lines\": {}}", "lines"),
            (
                "{\"title\": \"\", \"lines\": [{\"a\": 1}, {\"b\": 2,\n\"c\\\"d\": \"3\"}]}",
                "lines[1].c\\\"d",
            ),
            (r#"{"title": "é", "lines": [{"a": 1}, 7]}"#, "lines[1]"),
            (r#"{"title": ""}"#, ""),
            (
                r#"{"title": "", "lines": [{"a": 1, "b": 300}]}"#,
                "lines[0].b",
            ),
        ] {
            assert_eq!(wrong_part::<Dish>(text), part, "{text}");
        }
        let dishes = r#"[{"title": ""}, {"title": "", "lines": []}]"#;
        assert_eq!(wrong_part::<Vec<Dish>>(dishes), "[0]");
    }
}
