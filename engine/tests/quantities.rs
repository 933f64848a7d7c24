//! Amounts as offices write them, against the table of readings beside this
//! file. What a kitchen means by such words is common practice, no source.

use engine::units::{Quantity, QuantityError, read_amount};

#[derive(serde::Deserialize)]
struct Case {
    text: String,
    /// "low" or "low..high", "none", or the kind of error.
    amount: String,
    unit: String,
    near: String,
    rest: String,
}

fn cases() -> Vec<Case> {
    csv::Reader::from_reader(include_str!("quantities.csv").as_bytes())
        .deserialize()
        .collect::<Result<_, _>>()
        .expect("quantities.csv has the columns of a case")
}

fn kind(error: &QuantityError) -> String {
    let value = serde_json::to_value(error).expect("errors can be written");
    value["kind"].as_str().unwrap_or_default().to_owned()
}

fn written(quantity: &Quantity) -> String {
    if quantity.is_range() {
        format!("{}..{}", quantity.low, quantity.high)
    } else {
        quantity.low.to_string()
    }
}

#[test]
fn amounts_read_as_meant() {
    let mut wrong = Vec::new();
    for case in cases() {
        let read = match read_amount(&case.text) {
            Ok(Some(read)) => [
                written(&read.quantity),
                read.quantity.unit.to_string(),
                if read.approximate { "yes" } else { "" }.to_owned(),
                read.rest.to_owned(),
            ],
            Ok(None) => ["none", "", "", ""].map(str::to_owned),
            Err(error) => [kind(&error), String::new(), String::new(), String::new()],
        };
        let expected = [case.amount, case.unit, case.near, case.rest];
        if read != expected {
            wrong.push(format!(
                "{:?}: read {read:?}, expected {expected:?}",
                case.text
            ));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn each_error_says_what_and_how_to_mend_it() {
    for case in cases() {
        if let Err(error) = read_amount(&case.text) {
            let message = error.to_string();
            assert!(message.contains('"'), "{message} quotes what was typed");
            assert!(error.remedy().ends_with('.'), "{message}");
        }
    }
    assert_eq!("".parse::<Quantity>(), Err(QuantityError::Nothing));
    assert_eq!(
        "flour".parse::<Quantity>(),
        Err(QuantityError::NoNumber {
            words: "flour".to_owned()
        })
    );
    assert_eq!(
        "1 cup flour".parse::<Quantity>(),
        Err(QuantityError::LeftOver {
            words: "flour".to_owned()
        })
    );
}
