//! Both languages say the same things.

mod sources;

use super::{Language, Say, files, say, say_in, speak};
use fluent_bundle::FluentResource;
use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use std::collections::{BTreeMap, BTreeSet};

/// A file's messages, and the arguments that each takes.
type Messages = BTreeMap<String, BTreeSet<String>>;

fn messages(name: &str, text: &str) -> Messages {
    let resource = FluentResource::try_new(text.to_owned())
        .unwrap_or_else(|(_, problems)| panic!("{name}: {problems:?}"));
    let mut messages = Messages::new();
    for entry in resource.entries() {
        if let Entry::Message(message) = entry {
            let key = message.id.name;
            assert!(
                key.starts_with(&format!("{name}-")),
                "{name}: the key {key} does not begin with the name of its file"
            );
            let mut arguments = BTreeSet::new();
            let pattern = message.value.as_ref();
            gather(
                pattern.unwrap_or_else(|| panic!("{key} says nothing")),
                &mut arguments,
            );
            let before = messages.insert(key.to_owned(), arguments);
            assert!(before.is_none(), "{key} is there twice");
        }
    }
    messages
}

fn gather(pattern: &Pattern<&str>, arguments: &mut BTreeSet<String>) {
    for element in &pattern.elements {
        let PatternElement::Placeable { expression } = element else {
            continue;
        };
        let (inline, variants) = match expression {
            Expression::Inline(inline) => (inline, None),
            Expression::Select { selector, variants } => (selector, Some(variants)),
        };
        if let InlineExpression::VariableReference { id } = inline {
            arguments.insert(id.name.to_owned());
        }
        for variant in variants.into_iter().flatten() {
            gather(&variant.value, arguments);
        }
    }
}

#[test]
fn both_languages_have_the_same_messages_with_the_same_arguments() {
    let english = files::of(Language::English);
    let spanish = files::of(Language::Spanish);
    assert_eq!(english.len(), spanish.len());
    for ((name, english), (twin, spanish)) in english.iter().zip(spanish) {
        assert_eq!(name, twin);
        assert_eq!(messages(name, english), messages(name, spanish), "{name}");
    }
}

#[test]
fn a_message_follows_the_language_that_is_spoken() {
    let undo = Say("frame-undo");
    assert_eq!(undo.to_string(), "Undo");
    speak(Language::Spanish);
    assert_eq!(undo.to_string(), "Deshacer");
    assert_eq!(
        say("frame-taken-out", &[("title", "Chili".into())]),
        "Se quitó «Chili» del libro."
    );
    speak(Language::English);
}

#[test]
fn a_message_that_is_nowhere_shows_its_key() {
    assert_eq!(
        say_in(Language::Spanish, "frame-no-such", &[]),
        "frame-no-such"
    );
}

#[test]
fn a_language_is_found_by_its_tag() {
    assert_eq!(Language::from_tag("es-MX"), Some(Language::Spanish));
    assert_eq!(Language::from_tag("EN"), Some(Language::English));
    assert_eq!(Language::from_tag("fr-CA"), None);
}
