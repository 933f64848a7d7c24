//! A field for a mass or a volume in the unit that one measures in.

use super::{NumberField, Select};
use engine::units::{Grams, MassUnit, Millilitres, VolumeUnit};
use rust_decimal::Decimal;
use yew::prelude::*;

/// A unit to choose.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Measured {
    /// A mass; the value is in grams.
    Mass(MassUnit),
    /// A volume; the value is in millilitres.
    Volume(VolumeUnit),
}

/// Units in which a kitchen weighs.
pub const MASSES: &[Measured] = &[
    Measured::Mass(MassUnit::Gram),
    Measured::Mass(MassUnit::Pound),
    Measured::Mass(MassUnit::Ounce),
    Measured::Mass(MassUnit::Kilogram),
];

/// Units in which a kitchen measures.
pub const VOLUMES: &[Measured] = &[
    Measured::Volume(VolumeUnit::Cup),
    Measured::Volume(VolumeUnit::Gallon),
    Measured::Volume(VolumeUnit::Quart),
    Measured::Volume(VolumeUnit::FluidOunce),
    Measured::Volume(VolumeUnit::Tablespoon),
    Measured::Volume(VolumeUnit::Millilitre),
    Measured::Volume(VolumeUnit::Litre),
];

/// More decimals than anybody enters: the number was not entered in this unit.
const MOST_DECIMALS: u32 = 5;

impl Measured {
    fn symbol(self) -> &'static str {
        match self {
            Self::Mass(unit) => unit.symbol(),
            Self::Volume(unit) => unit.symbol(),
        }
    }

    /// So many of this unit, in grams or millilitres.
    fn of(self, number: Decimal) -> Decimal {
        match self {
            Self::Mass(unit) => unit.of(number).grams(),
            Self::Volume(unit) => unit.of(number).millilitres(),
        }
    }

    /// How many of this unit a value is.
    fn number_in(self, value: Decimal) -> Decimal {
        match self {
            Self::Mass(unit) => unit.number_in(Grams::new(value)),
            Self::Volume(unit) => unit.number_in(Millilitres::new(value)),
        }
    }

    fn is_plain(self, value: Decimal) -> bool {
        self.number_in(value).normalize().scale() <= MOST_DECIMALS
    }
}

/// The unit in which a value was probably entered: the first in which it is a
/// plain number, the one in use before all others.
fn unit_for(units: &[Measured], in_use: Measured, value: Option<Decimal>) -> Measured {
    let Some(value) = value else {
        return in_use;
    };
    std::iter::once(&in_use)
        .chain(units)
        .copied()
        .find(|unit| unit.is_plain(value))
        .unwrap_or(in_use)
}

/// What the field shows.
#[derive(Debug, Clone, PartialEq, Properties)]
pub struct UnitFieldProps {
    /// Id of the field in the document.
    pub id: AttrValue,
    /// What is measured.
    pub label: AttrValue,
    /// The units to choose from, the usual one first.
    pub units: &'static [Measured],
    /// The value in grams or millilitres; nothing leaves the field empty.
    pub value: Option<Decimal>,
    /// Told of every readable value.
    pub on_change: Callback<Decimal>,
    /// Told when the field is emptied.
    #[prop_or_default]
    pub on_clear: Option<Callback<()>>,
    /// What the label is of, where that is marked as in another language.
    #[prop_or_default]
    pub of: Html,
    /// Whether only readers of the screen get the label.
    #[prop_or_default]
    pub hide_label: bool,
    /// Name for tests.
    #[prop_or_default]
    pub data_test: AttrValue,
}

/// A number and its unit.
#[component]
pub fn UnitField(props: &UnitFieldProps) -> Html {
    let in_use = use_state(|| props.units[0]);
    let unit = unit_for(props.units, *in_use, props.value);
    let number = props.value.map(|value| unit.number_in(value));
    let names: Vec<AttrValue> = props
        .units
        .iter()
        .map(|unit| unit.symbol().into())
        .collect();
    let on_unit = {
        let (in_use, props) = (in_use.clone(), props.clone());
        // The number stays: who has typed 5 and then chooses pounds means 5 lb.
        Callback::from(move |index: usize| {
            let unit = props.units[index];
            in_use.set(unit);
            if let Some(number) = number {
                props.on_change.emit(unit.of(number));
            }
        })
    };
    let on_change = props.on_change.reform(move |number| unit.of(number));
    html! {
        <span class="unit-field">
            <NumberField id={&props.id} data_test={&props.data_test} label={&props.label}
                of={props.of.clone()} hide_label={props.hide_label} value={number} {on_change} on_clear={props.on_clear.clone()} />
            <Select id={format!("{}-unit", props.id)} label={crate::words::unit_of(&props.label)}
                of={props.of.clone()} hide_label={true} {names} chosen={props.units.iter().position(|one| *one == unit)}
                on_choose={on_unit} />
        </span>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_value_is_shown_in_the_unit_in_which_it_is_plain() {
        let &[gram, pound, ounce, _] = MASSES else {
            panic!("four units of mass")
        };
        let five_pounds = pound.of(Decimal::from(5));
        for (in_use, value, unit, number) in [
            (pound, Some(five_pounds), pound, "5"),
            (gram, Some(Decimal::from(250)), gram, "250"),
            (pound, Some(Decimal::from(250)), gram, "250"),
            (pound, Some(ounce.of(Decimal::from(6))), pound, "0.375"),
            (gram, Some(five_pounds), gram, "2267.96185"),
            (ounce, None, ounce, ""),
        ] {
            let shown = unit_for(MASSES, in_use, value);
            assert_eq!(shown, unit, "{value:?}");
            let printed = value.map(|value| shown.number_in(value).normalize().to_string());
            assert_eq!(printed.unwrap_or_default(), number);
        }
    }
}
