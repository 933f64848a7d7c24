//! A field for a day.

use engine::week::Date;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// The first year that is taken for a finished one. While a year is typed
/// digit by digit, browsers tell of years of the first thousand.
const FIRST_YEAR: i32 = 2000;

/// What the field shows.
#[derive(Debug, Clone, PartialEq, Properties)]
pub struct DateFieldProps {
    /// Id of the field in the document.
    pub id: AttrValue,
    /// What the day is; hidden where the surroundings say it.
    pub label: AttrValue,
    /// Whether only readers of the screen get the label.
    #[prop_or_default]
    pub hide_label: bool,
    /// The day in use; nothing leaves the field empty.
    pub value: Option<Date>,
    /// Told of every day that is written out.
    pub on_change: Callback<Date>,
    /// Told when the field is empty or incomplete, where that means something.
    #[prop_or_default]
    pub on_clear: Option<Callback<()>>,
}

/// What a text of the field says.
#[derive(Debug, PartialEq, Eq)]
enum Typed {
    Day(Date),
    /// The field gives an empty text while its date is incomplete.
    Nothing,
    PartOfYear,
}

fn read(text: &str) -> Typed {
    match text.parse::<Date>() {
        Ok(day) if day.year() >= FIRST_YEAR => Typed::Day(day),
        Ok(_) => Typed::PartOfYear,
        Err(_) => Typed::Nothing,
    }
}

/// The field with its label.
#[component]
pub fn DateField(props: &DateFieldProps) -> Html {
    let onchange = {
        let (change, clear) = (props.on_change.clone(), props.on_clear.clone());
        Callback::from(move |event: Event| {
            let text = event.target_unchecked_into::<HtmlInputElement>().value();
            match (read(&text), &clear) {
                (Typed::Day(day), _) => change.emit(day),
                (Typed::Nothing, Some(clear)) => clear.emit(()),
                (Typed::Nothing, None) | (Typed::PartOfYear, _) => {}
            }
        })
    };
    let value = props.value.map(|day| day.to_string()).unwrap_or_default();
    html! {<>
        <label for={&props.id} class={classes!(props.hide_label.then_some("for-readers"))}>
            { &props.label }
        </label>
        <input id={&props.id} type="date" {value} {onchange} />
    </>}
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_year_is_read_when_it_is_finished() {
        let day = |text: &str| Typed::Day(text.parse().expect("a day"));
        for (text, typed) in [
            ("2026-12-14", day("2026-12-14")),
            ("2000-01-01", day("2000-01-01")),
            ("0002-12-14", Typed::PartOfYear),
            ("0202-12-14", Typed::PartOfYear),
            ("", Typed::Nothing),
        ] {
            assert_eq!(read(text), typed, "{text}");
        }
    }
}
