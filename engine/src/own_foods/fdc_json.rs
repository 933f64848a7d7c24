//! Foods from FoodData Central's JSON download.
//!
//! One food as it stands alone, a list of foods, or the download's object with
//! one list in it (`FoundationFoods`, `SRLegacyFoods`, `BrandedFoods` …). Values
//! are per 100 g there. Numbers are read as text, digit by digit.

use super::{ImportError, OwnFood, OwnMeasure, OwnSource, Stated};
use crate::foods::{Nutrient, NutrientId};
use crate::units::Grams;
use rust_decimal::Decimal;
use serde::Deserialize;
use serde_json::value::RawValue;
use std::collections::BTreeMap;

#[derive(Deserialize)]
#[serde(rename_all = "camelCase")]
struct FdcFood<'a> {
    fdc_id: u64,
    description: String,
    #[serde(default)]
    ingredients: String,
    #[serde(default, borrow)]
    food_nutrients: Vec<FdcValue<'a>>,
    #[serde(default, borrow)]
    food_portions: Vec<FdcPortion<'a>>,
}

#[derive(Deserialize)]
#[serde(rename_all = "camelCase")]
struct FdcValue<'a> {
    nutrient: Option<FdcNutrient>,
    #[serde(borrow)]
    amount: Option<&'a RawValue>,
}

#[derive(Deserialize)]
#[serde(rename_all = "camelCase")]
struct FdcNutrient {
    number: Option<String>,
    #[serde(default)]
    unit_name: String,
}

#[derive(Deserialize)]
#[serde(rename_all = "camelCase")]
struct FdcPortion<'a> {
    #[serde(borrow)]
    amount: Option<&'a RawValue>,
    #[serde(borrow)]
    gram_weight: Option<&'a RawValue>,
    #[serde(default)]
    modifier: String,
    #[serde(default)]
    portion_description: String,
    measure_unit: Option<FdcUnit>,
}

#[derive(Deserialize)]
struct FdcUnit {
    #[serde(default)]
    name: String,
}

/// Reads foods, numbering them from `first_number`.
///
/// # Errors
/// When the text is not JSON, holds no foods, or a food cannot be read.
pub fn from_fdc_json(
    text: &str,
    nutrients: &[Nutrient],
    first_number: u32,
) -> Result<Vec<OwnFood>, ImportError> {
    foods(text)?
        .into_iter()
        .zip(first_number..)
        .map(|(food, number)| own_food(food, nutrients, number))
        .collect()
}

fn foods(text: &str) -> Result<Vec<FdcFood<'_>>, ImportError> {
    let text = text.trim_start_matches('\u{feff}').trim_start();
    if text.starts_with('[') {
        return serde_json::from_str(text).map_err(|e| damaged(&e));
    }
    let fields: BTreeMap<String, &RawValue> =
        serde_json::from_str(text).map_err(|e| damaged(&e))?;
    if fields.contains_key("fdcId") {
        return serde_json::from_str(text)
            .map(|food| vec![food])
            .map_err(|e| damaged(&e));
    }
    match fields.iter().find(|(name, _)| name.ends_with("Foods")) {
        Some((_, list)) => serde_json::from_str(list.get()).map_err(|e| damaged(&e)),
        None => Err(ImportError::new(
            "the file",
            "there is neither a food (fdcId) nor a list of foods in it",
            "choose a JSON file as FoodData Central offers it for download",
        )),
    }
}

fn damaged(cause: &serde_json::Error) -> ImportError {
    ImportError::new(
        format!("line {}, column {}", cause.line(), cause.column()),
        cause.to_string(),
        "download the file again: it is damaged or in another form",
    )
}

fn own_food(
    food: FdcFood<'_>,
    nutrients: &[Nutrient],
    number: u32,
) -> Result<OwnFood, ImportError> {
    let place = format!("food {} ({})", food.fdc_id, food.description);
    let mut values = Vec::new();
    for value in &food.food_nutrients {
        values.extend(stated(value, nutrients, &place)?);
    }
    let mut measures = Vec::new();
    for portion in &food.food_portions {
        measures.extend(measure(portion, &place)?);
    }
    Ok(OwnFood {
        number,
        description: food.description,
        ingredients: food.ingredients,
        measures,
        source: OwnSource::Values {
            per: Grams::new(Decimal::ONE_HUNDRED),
            values,
            reference: format!("FoodData Central {}", food.fdc_id),
        },
    })
}

/// A value of a nutrient that the table lists, in the unit that it lists; all
/// others are left out.
fn stated(
    value: &FdcValue<'_>,
    nutrients: &[Nutrient],
    place: &str,
) -> Result<Option<Stated>, ImportError> {
    let (Some(nutrient), Some(amount)) = (&value.nutrient, number(value.amount, place)?) else {
        return Ok(None);
    };
    let id = nutrient
        .number
        .as_deref()
        .and_then(|number| number.parse().ok());
    let Some(known) = nutrients.iter().find(|known| Some(known.id.0) == id) else {
        return Ok(None);
    };
    if !same_unit(&known.unit, &nutrient.unit_name) {
        return Err(ImportError::new(
            format!("{place}, {}", known.name),
            format!("the unit is \"{}\", not {}", nutrient.unit_name, known.unit),
            "convert the value, or take it out of the file",
        ));
    }
    Ok(Some(Stated {
        nutrient: NutrientId(known.id.0),
        amount,
    }))
}

/// FoodData Central writes µg as "µg" or "UG" and kcal in either case.
pub(super) fn same_unit(ours: &str, theirs: &str) -> bool {
    let plain = |unit: &str| {
        unit.to_lowercase()
            .replace(['µ', 'μ'], "u")
            .replace("mcg", "ug")
    };
    plain(ours) == plain(theirs)
}

fn measure(portion: &FdcPortion<'_>, place: &str) -> Result<Option<OwnMeasure>, ImportError> {
    let Some(grams) = number(portion.gram_weight, place)?.filter(|g| *g > Decimal::ZERO) else {
        return Ok(None);
    };
    let unit = portion.measure_unit.as_ref().map_or("", |unit| &unit.name);
    let words = [unit, &portion.modifier, &portion.portion_description]
        .into_iter()
        .filter(|words| !words.is_empty() && *words != "undetermined")
        .collect::<Vec<_>>()
        .join(", ");
    Ok((!words.is_empty()).then_some(OwnMeasure {
        amount: number(portion.amount, place)?.unwrap_or(Decimal::ONE),
        words,
        grams: Grams::new(grams),
    }))
}

fn number(raw: Option<&RawValue>, place: &str) -> Result<Option<Decimal>, ImportError> {
    let Some(text) = raw.map(RawValue::get).filter(|text| *text != "null") else {
        return Ok(None);
    };
    let read = Decimal::from_str_exact(text).or_else(|_| Decimal::from_scientific(text));
    match read {
        Ok(number) if number >= Decimal::ZERO => Ok(Some(number)),
        _ => Err(ImportError::new(
            place,
            format!("{text} is not an amount"),
            "enter a number of zero or more",
        )),
    }
}
