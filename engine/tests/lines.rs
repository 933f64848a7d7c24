//! Lines as offices write them, against the table of readings beside this
//! file. What a kitchen means by such words is common practice, no source.

use engine::recipe::{LineAmount, LineReading, read_line};

#[derive(serde::Deserialize)]
struct Case {
    text: String,
    kind: String,
    /// An amount, "~" and vague words, "!" and the kind of error, or "none".
    amount: String,
    food: String,
    preparation: String,
    flags: String,
}

fn cases() -> Vec<Case> {
    csv::Reader::from_reader(include_str!("lines.csv").as_bytes())
        .deserialize()
        .collect::<Result<_, _>>()
        .expect("lines.csv has the columns of a case")
}

fn word(value: impl serde::Serialize) -> String {
    let value = serde_json::to_value(value).expect("readings can be written");
    value
        .as_str()
        .or(value["kind"].as_str())
        .unwrap_or_default()
        .to_owned()
}

fn amount(reading: &LineReading) -> String {
    match &reading.amount {
        LineAmount::Stated { quantity } => quantity.to_string(),
        LineAmount::Vague { words, .. } => format!("~{words}"),
        LineAmount::Absent => "none".to_owned(),
        LineAmount::Faulty { error } => format!("!{}", word(error)),
    }
}

fn flags(reading: &LineReading) -> String {
    let flags = [
        (reading.approximate, "near"),
        (reading.optional, "optional"),
        (reading.and_more, "more"),
        (reading.or_instead.is_some(), "instead"),
    ];
    let set: Vec<&str> = flags
        .iter()
        .filter(|(set, _)| *set)
        .map(|(_, name)| *name)
        .collect();
    set.join(" ")
}

#[test]
fn lines_read_as_meant() {
    let mut wrong = Vec::new();
    for case in cases() {
        let reading = read_line(&case.text);
        let read = [
            word(reading.kind),
            amount(&reading),
            reading.food_words.clone(),
            reading.preparation.join(" "),
            flags(&reading),
        ];
        let expected = [
            case.kind,
            case.amount,
            case.food,
            case.preparation,
            case.flags,
        ];
        if read != expected {
            wrong.push(format!(
                "{:?}\n  read     {read:?}\n  expected {expected:?}",
                case.text
            ));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}
