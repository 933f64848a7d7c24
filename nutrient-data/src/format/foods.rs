//! `sr28.foods.bin`: foods, groups, nutrients, measures and values, each table by column.

use super::columns::{Reader, Writer};
use super::envelope::{self, Kind};
use super::expected;
use super::{
    AssetError, FoodRow, FoodsAsset, GroupRow, MeasureRow, NutrientRow, Scaled, ValueColumn,
};

/// Stands for an unknown percentage of refuse.
const NO_PERCENT: u8 = u8::MAX;

/// Writes the foods asset; the same input always gives the same bytes.
///
/// # Panics
/// If the input breaks the order or the shape that [`FoodsAsset`] describes, or a text holds a
/// NUL character.
pub fn encode_foods(asset: &FoodsAsset) -> Vec<u8> {
    let mut w = Writer::default();
    write_foods(&mut w, &asset.foods);
    write_groups(&mut w, &asset.groups);
    write_nutrients(&mut w, &asset.nutrients);
    write_measures(&mut w, &asset.measures, asset.foods.len());
    write_values(&mut w, asset);
    envelope::seal(Kind::Foods, &w.content)
}

/// Reads the foods asset.
///
/// # Errors
/// [`AssetError`] says what is wrong with the file.
pub fn decode_foods(file: &[u8]) -> Result<FoodsAsset, AssetError> {
    let mut r = Reader::new(envelope::open(Kind::Foods, file)?);
    let foods = read_foods(&mut r)?;
    let groups = read_groups(&mut r)?;
    let nutrients = read_nutrients(&mut r)?;
    let measures = read_measures(&mut r, foods.len())?;
    let values = read_values(&mut r, &nutrients, &foods)?;
    r.end()?;
    Ok(FoodsAsset {
        foods,
        groups,
        nutrients,
        measures,
        values,
    })
}

fn write_foods(w: &mut Writer, foods: &[FoodRow]) {
    let texts = |w: &mut Writer, text: fn(&FoodRow) -> &str| w.texts(foods.iter().map(text));
    let decimals = |w: &mut Writer, factor: fn(&FoodRow) -> Option<Scaled>| {
        w.decimals(&foods.iter().map(factor).collect::<Vec<_>>());
    };
    w.count(foods.len());
    w.rising(foods.iter().map(|food| food.number));
    w.column(foods.iter().map(|food| food.group.into()));
    texts(w, |food| &food.description);
    texts(w, |food| &food.common_names);
    texts(w, |food| &food.manufacturer);
    w.bytes(
        foods
            .iter()
            .map(|food| food.refuse_percent.unwrap_or(NO_PERCENT)),
    );
    texts(w, |food| &food.refuse_description);
    decimals(w, |food| food.nitrogen_factor);
    decimals(w, |food| food.protein_factor);
    decimals(w, |food| food.fat_factor);
    decimals(w, |food| food.carbohydrate_factor);
}

fn read_foods(r: &mut Reader<'_>) -> Result<Vec<FoodRow>, AssetError> {
    r.part = "foods";
    let count = r.count()?;
    let numbers = r.rising(count)?;
    let groups = r.smalls(count)?;
    let mut descriptions = r.texts(count)?.into_iter();
    let mut common_names = r.texts(count)?.into_iter();
    let mut manufacturers = r.texts(count)?.into_iter();
    let percents = r.bytes(count)?;
    let mut refuse_descriptions = r.texts(count)?.into_iter();
    let nitrogen = r.decimals(count)?;
    let protein = r.decimals(count)?;
    let fat = r.decimals(count)?;
    let carbohydrate = r.decimals(count)?;
    Ok((0..count)
        .map(|i| FoodRow {
            number: numbers[i],
            group: groups[i],
            description: descriptions.next().unwrap_or_default(),
            common_names: common_names.next().unwrap_or_default(),
            manufacturer: manufacturers.next().unwrap_or_default(),
            refuse_percent: (percents[i] != NO_PERCENT).then_some(percents[i]),
            refuse_description: refuse_descriptions.next().unwrap_or_default(),
            nitrogen_factor: nitrogen[i],
            protein_factor: protein[i],
            fat_factor: fat[i],
            carbohydrate_factor: carbohydrate[i],
        })
        .collect())
}

fn write_groups(w: &mut Writer, groups: &[GroupRow]) {
    w.count(groups.len());
    for group in groups {
        w.number(group.code.into());
        w.text(&group.name);
    }
}

fn read_groups(r: &mut Reader<'_>) -> Result<Vec<GroupRow>, AssetError> {
    r.part = "food groups";
    (0..r.count()?)
        .map(|_| {
            Ok(GroupRow {
                code: r.small()?,
                name: r.text()?.to_owned(),
            })
        })
        .collect()
}

fn write_nutrients(w: &mut Writer, nutrients: &[NutrientRow]) {
    w.count(nutrients.len());
    for nutrient in nutrients {
        w.number(nutrient.number.into());
        w.texts([&*nutrient.tagname, &nutrient.name, &nutrient.unit]);
        w.byte(nutrient.decimals);
        w.number(nutrient.order.into());
    }
}

fn read_nutrients(r: &mut Reader<'_>) -> Result<Vec<NutrientRow>, AssetError> {
    r.part = "nutrients";
    (0..r.count()?)
        .map(|_| {
            Ok(NutrientRow {
                number: r.small()?,
                tagname: r.text()?.to_owned(),
                name: r.text()?.to_owned(),
                unit: r.text()?.to_owned(),
                decimals: r.byte()?,
                order: r.small()?,
            })
        })
        .collect()
}

fn write_measures(w: &mut Writer, measures: &[MeasureRow], foods: usize) {
    assert!(
        measures.is_sorted_by_key(|m| (m.food, m.seq)),
        "measures are sorted by food and running number"
    );
    assert!(
        measures.iter().all(|m| (m.food as usize) < foods),
        "every measure belongs to a food"
    );
    w.count(measures.len());
    w.rising(measures.iter().map(|m| m.food));
    w.bytes(measures.iter().map(|m| m.seq));
    w.decimals(&measures.iter().map(|m| Some(m.amount)).collect::<Vec<_>>());
    w.repeated_texts(&measures.iter().map(|m| &*m.words).collect::<Vec<_>>());
    w.decimals(&measures.iter().map(|m| Some(m.grams)).collect::<Vec<_>>());
}

fn read_measures(r: &mut Reader<'_>, foods: usize) -> Result<Vec<MeasureRow>, AssetError> {
    r.part = "measures";
    let count = r.count()?;
    let food = r.rising(count)?;
    if food.last().is_some_and(|&last| last as usize >= foods) {
        return r.malformed();
    }
    let seq = r.bytes(count)?;
    let amounts = r.decimals(count)?;
    let mut words = r.repeated_texts(count)?.into_iter();
    let grams = r.decimals(count)?;
    (0..count)
        .map(|i| match (amounts[i], grams[i]) {
            (Some(amount), Some(grams)) => Ok(MeasureRow {
                food: food[i],
                seq: seq[i],
                amount,
                words: words.next().unwrap_or_default(),
                grams,
            }),
            _ => r.malformed(),
        })
        .collect()
}

fn write_values(w: &mut Writer, asset: &FoodsAsset) {
    assert!(
        asset
            .nutrients
            .iter()
            .map(|n| n.number)
            .eq(asset.values.iter().map(|c| c.nutrient)),
        "each nutrient has a column of values, in the same order"
    );
    for column in &asset.values {
        assert_eq!(
            column.mantissas.len(),
            asset.foods.len(),
            "a cell for each food"
        );
        let distances = expected::distances(column, &asset.values, &asset.foods);
        w.byte(column.scale);
        w.byte(distances.is_some().into());
        w.mantissas(distances.as_ref().unwrap_or(&column.mantissas));
    }
}

fn read_values(
    r: &mut Reader<'_>,
    nutrients: &[NutrientRow],
    foods: &[FoodRow],
) -> Result<Vec<ValueColumn>, AssetError> {
    r.part = "nutrient values";
    let mut columns = Vec::with_capacity(nutrients.len());
    let mut distances = Vec::new();
    for (place, nutrient) in nutrients.iter().enumerate() {
        let scale = r.byte()?;
        match r.byte()? {
            0 => {}
            1 => distances.push(place),
            _ => return r.malformed(),
        }
        columns.push(ValueColumn {
            nutrient: nutrient.number,
            scale,
            mantissas: r.mantissas(foods.len())?,
        });
    }
    match expected::resolve(&mut columns, &distances, foods) {
        Some(()) => Ok(columns),
        None => r.malformed(),
    }
}
