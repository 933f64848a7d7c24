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
    /// What the label is of, where that is marked as in another language.
    #[prop_or_default]
    pub of: Html,
    /// Whether only readers of the screen get the label.
    #[prop_or_default]
    pub hide_label: bool,
    /// The day in use; nothing leaves the field empty.
    pub value: Option<Date>,
    /// Told of every day that is written out.
    pub on_change: Callback<Date>,
    /// Told when the field is emptied, where that means something.
    #[prop_or_default]
    pub on_clear: Option<Callback<()>>,
}

/// What a text of the field says.
#[derive(Debug, PartialEq, Eq)]
enum Typed {
    Day(Date),
    Nothing,
    /// Something is still to be typed: what stands there is left alone.
    Part,
}

/// The field gives an empty text, and says that it is incomplete, while parts
/// of its date are missing.
fn read(text: &str, is_incomplete: bool) -> Typed {
    match text.parse::<Date>() {
        Ok(day) if day.year() >= FIRST_YEAR => Typed::Day(day),
        Ok(_) => Typed::Part,
        Err(_) if is_incomplete => Typed::Part,
        Err(_) => Typed::Nothing,
    }
}

/// The field with its label.
#[component]
pub fn DateField(props: &DateFieldProps) -> Html {
    let onchange = {
        let (change, clear) = (props.on_change.clone(), props.on_clear.clone());
        Callback::from(move |event: Event| {
            let field = event.target_unchecked_into::<HtmlInputElement>();
            let is_incomplete = field.validity().bad_input();
            match (read(&field.value(), is_incomplete), &clear) {
                (Typed::Day(day), _) => change.emit(day),
                (Typed::Nothing, Some(clear)) => clear.emit(()),
                (Typed::Nothing, None) | (Typed::Part, _) => {}
            }
        })
    };
    let value = props.value.map(|day| day.to_string()).unwrap_or_default();
    html! {<>
        <label for={&props.id} class={classes!(props.hide_label.then_some("for-readers"))}>
            { &props.label }{ props.of.clone() }
        </label>
        <input id={&props.id} type="date" {value} {onchange} />
    </>}
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_day_is_read_when_it_is_finished() {
        let day = |text: &str| Typed::Day(text.parse().expect("a day"));
        for (text, is_incomplete, typed) in [
            ("2026-12-14", false, day("2026-12-14")),
            ("2000-01-01", false, day("2000-01-01")),
            ("0002-12-14", false, Typed::Part),
            ("0202-12-14", false, Typed::Part),
            ("", true, Typed::Part),
            ("", false, Typed::Nothing),
        ] {
            assert_eq!(read(text, is_incomplete), typed, "{text}");
        }
    }
}
