//! What the engine's values are called, in the language that is spoken. The
//! engine's own texts are for its callers and for tests; the page words the
//! typed values here.

mod problems;

pub use problems::{
    analysis, claim, import, missing, panel, prepare, study, table, week, weigh, weigh_remedy,
};

use crate::format;
use crate::language::{FluentValue, Say, of_table, say};
use crate::words::standing;
use engine::allergens::Allergen;
use engine::components::{Component, Mark};
use engine::foods::Nutrient;
use engine::kitchen::SafetyStep;
use engine::rules::Bound;
use engine::units::{Quantity, Size, Unit};
use engine::week::MealKind;

/// A meal component.
pub fn component(component: Component) -> Say {
    match component {
        Component::Fruits => Say("named-fruits"),
        Component::Vegetables => Say("named-vegetables"),
        Component::DarkGreen => Say("named-dark-green"),
        Component::RedOrange => Say("named-red-orange"),
        Component::Beans => Say("named-beans"),
        Component::Starchy => Say("named-starchy"),
        Component::Other => Say("named-other-vegetables"),
        Component::Grains => Say("named-grains"),
        Component::MeatAlternates => Say("named-meat-alternates"),
        Component::Milk => Say("named-fluid-milk"),
    }
}

/// What week rules ask of a food.
pub fn mark(mark: Mark) -> Say {
    match mark {
        Mark::Juice => Say("named-juice"),
        Mark::Beverage => Say("named-beverage"),
        Mark::WholeGrainRich => Say("named-whole-grain-rich"),
        Mark::WholeGrainUnstated => Say("named-whole-grain-unstated"),
        Mark::Dough => Say("named-dough"),
        Mark::GrainDessert => Say("named-grain-dessert"),
        Mark::Cereal => Say("named-cereal"),
        Mark::Yogurt => Say("named-yogurt"),
        Mark::Flavored => Say("named-flavored"),
        Mark::Unflavored => Say("named-unflavored"),
        Mark::FatFree => Say("named-fat-free"),
        Mark::LowFat => Say("named-low-fat"),
        Mark::ReducedFat => Say("named-reduced-fat"),
        Mark::Whole => Say("named-whole-milk"),
        Mark::SubgroupOnly => Say("named-subgroup-only"),
    }
}

/// What messages about a temperature of the code take: the food, both scales,
/// how long, and where it stands.
pub fn safety_figures(step: &SafetyStep) -> [(&str, FluentValue<'_>); 6] {
    let duration = match step.duration.as_str() {
        "" => String::new(),
        duration => format!(", {}", of_table(duration)),
    };
    [
        ("what", of_table(&step.what).into()),
        ("fahrenheit", format::stated(step.fahrenheit).into()),
        ("celsius", format::stated(step.celsius).into()),
        ("duration", duration.into()),
        ("paragraph", step.paragraph.as_str().into()),
        ("status", standing::of(&step.status).into()),
    ]
}

/// A major allergen.
pub fn allergen(allergen: Allergen) -> Say {
    match allergen {
        Allergen::Milk => Say("named-allergen-milk"),
        Allergen::Egg => Say("named-allergen-egg"),
        Allergen::Fish => Say("named-allergen-fish"),
        Allergen::CrustaceanShellfish => Say("named-allergen-shellfish"),
        Allergen::TreeNuts => Say("named-allergen-tree-nuts"),
        Allergen::Wheat => Say("named-allergen-wheat"),
        Allergen::Peanuts => Say("named-allergen-peanuts"),
        Allergen::Soybeans => Say("named-allergen-soybeans"),
        Allergen::Sesame => Say("named-allergen-sesame"),
    }
}

/// A nutrient.
pub fn nutrient(nutrient: &Nutrient) -> String {
    of_table(&nutrient.name)
}

/// A meal, as within a sentence.
pub fn meal(kind: MealKind) -> Say {
    match kind {
        MealKind::Breakfast => Say("named-breakfast"),
        MealKind::Lunch => Say("named-lunch"),
        MealKind::Snack => Say("named-snack"),
        MealKind::Supper => Say("named-supper"),
    }
}

/// Grades or ages, by their name in the tables: "K-5", "ages 6-12".
pub fn group(name: &str) -> String {
    match name.strip_prefix("ages ") {
        Some(ages) => say("named-ages", &[("ages", ages.into())]),
        None => name.to_owned(),
    }
}

/// A limit with its side.
pub fn limit(bound: Bound, limit: &str) -> String {
    let key = match bound {
        Bound::AtLeast => "named-at-least",
        Bound::AtMost => "named-at-most",
        Bound::Below => "named-below",
    };
    say(key, &[("limit", limit.into())])
}

/// A size by which foods are counted.
pub fn size(size: Size) -> Say {
    match size {
        Size::Mini => Say("named-size-mini"),
        Size::ExtraSmall => Say("named-size-extra-small"),
        Size::Small => Say("named-size-small"),
        Size::Medium => Say("named-size-medium"),
        Size::Large => Say("named-size-large"),
        Size::ExtraLarge => Say("named-size-extra-large"),
        Size::Jumbo => Say("named-size-jumbo"),
    }
}

/// The message of a unit that has words of its own, in either number as the
/// tables write it. Symbols of the International System need none.
fn unit_key(unit: &str) -> Option<&'static str> {
    Some(match unit {
        "cup" | "cups" => "named-unit-cup",
        "pint" => "named-unit-pint",
        "quart" => "named-unit-quart",
        "gallon" => "named-unit-gallon",
        "tsp" => "named-unit-tsp",
        "tbsp" => "named-unit-tbsp",
        "oz eq" => "named-unit-oz-eq",
        "fl oz" => "named-unit-fl-oz",
        "IU" => "named-unit-iu",
        "option" | "options" => "named-unit-option",
        "component" | "components" => "named-unit-component",
        "subgroup" | "subgroups" => "named-unit-subgroup",
        "meal" | "meals" => "named-unit-meal",
        "day" | "days" => "named-unit-day",
        "other product" | "other products" => "named-unit-other-product",
        _ => return None,
    })
}

/// Whether a figure takes the unit in the singular: "1", "0.5", "3/4".
fn is_one(figure: &str) -> bool {
    let is_part = figure.contains('/') && !figure.contains(' ');
    figure == "1" || figure.starts_with("0.") || is_part
}

fn in_number(unit: &str, one: bool) -> String {
    let number = if one { "one" } else { "other" };
    unit_key(unit).map_or_else(
        || unit.to_owned(),
        |key| say(key, &[("number", number.into())]),
    )
}

/// A unit by itself, in the singular.
pub fn unit(unit: &str) -> String {
    in_number(unit, true)
}

/// A figure with its unit: "1 option", "2 cups", "0.5 cup", "≥ 8 oz eq".
pub fn counted(figure: &str, unit: &str) -> String {
    format!("{figure} {}", in_number(unit, is_one(figure)))
}

/// An amount as it was read: "2 lb", "1/2 to 3/4 cups". Pieces and containers
/// keep the words of the line.
pub fn quantity(quantity: &Quantity) -> String {
    let low = quantity.low.to_string();
    let amount = match quantity.is_range() {
        true => say(
            "named-range",
            &[
                ("low", low.into()),
                ("high", quantity.high.to_string().into()),
            ],
        ),
        false => low,
    };
    let unit = |symbol: &str| in_number(symbol, !quantity.is_range() && is_one(&amount));
    let unit = match &quantity.unit {
        Unit::Mass(mass) => unit(mass.symbol()),
        Unit::Volume(volume) => unit(volume.symbol()),
        Unit::Count(count) => count.to_string(),
    };
    format!("{amount} {unit}").trim_end().to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::language::{Language, speak};

    #[test]
    fn units_agree_with_their_figures() {
        for (figure, unit, english, spanish) in [
            ("1", "options", "1 option", "1 opción"),
            ("0", "options", "0 options", "0 opciones"),
            ("2.5", "cup", "2.5 cups", "2.5 tazas"),
            ("0.5", "cup", "0.5 cup", "0.5 taza"),
            ("3/4", "cup", "3/4 cup", "3/4 taza"),
            ("1 1/4", "cup", "1 1/4 cups", "1 1/4 tazas"),
            ("≥ 8", "oz eq", "≥ 8 oz eq", "≥ 8 oz eq"),
            ("12", "mg", "12 mg", "12 mg"),
        ] {
            assert_eq!(counted(figure, unit), english);
            speak(Language::Spanish);
            assert_eq!(counted(figure, unit), spanish);
            speak(Language::English);
        }
    }

    #[test]
    fn amounts_take_their_units_in_number() {
        use engine::units::{Amount, VolumeUnit};
        let cups = |low: (u128, u128), high: (u128, u128)| Quantity {
            low: Amount::fraction(low.0, low.1).unwrap(),
            high: Amount::fraction(high.0, high.1).unwrap(),
            unit: Unit::Volume(VolumeUnit::Cup),
        };
        assert_eq!(quantity(&cups((2, 1), (2, 1))), "2 cups");
        assert_eq!(quantity(&cups((3, 4), (3, 4))), "3/4 cup");
        speak(Language::Spanish);
        assert_eq!(quantity(&cups((1, 1), (3, 2))), "1 a 1 1/2 tazas");
        speak(Language::English);
    }

    /// The engine's names are those that the tables and the JSON forms use; the
    /// English file says the same, so that a reader finds the row.
    #[test]
    fn english_names_are_the_engine_s() {
        for one in Component::ALL {
            assert_eq!(component(one).to_string(), one.to_string());
            for of in one.marks() {
                assert_eq!(mark(*of).to_string(), of.to_string());
            }
        }
        for one in engine::allergens::ALLERGENS {
            assert_eq!(allergen(one).to_string(), one.to_string());
        }
    }
}
