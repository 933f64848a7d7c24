//! Collects the foods asset from its tables.

use std::path::Path;

use super::{FoodPlaces, Rising, food_place};
use crate::format::{
    FoodRow, FoodsAsset, GroupRow, MISSING, MeasureRow, NutrientRow, Scaled, ValueColumn,
};
use crate::tables::{self, Row, TableError};

pub(super) fn collect(folder: &Path) -> Result<FoodsAsset, TableError> {
    let groups = read_groups(folder)?;
    let foods = read_foods(folder, &groups)?;
    let places = places(&foods);
    let measured = read_nutrients(folder, &tables::NUTRIENTS)?;
    let added = read_nutrients(folder, &tables::ADDED_NUTRIENTS)?;
    let mut columns = Vec::new();
    for nutrient in measured {
        let values = read_values(folder, &nutrient, &places)?;
        columns.push((nutrient, values));
    }
    for nutrient in added {
        let values = ValueColumn {
            nutrient: nutrient.number,
            scale: nutrient.decimals,
            mantissas: vec![MISSING; foods.len()],
        };
        columns.push((nutrient, values));
    }
    columns.sort_by_key(|(nutrient, _)| nutrient.number);
    let (nutrients, values) = columns.into_iter().unzip();
    Ok(FoodsAsset {
        measures: read_measures(folder, &places)?,
        foods,
        groups,
        nutrients,
        values,
    })
}

pub(super) fn places(foods: &[FoodRow]) -> FoodPlaces {
    foods.iter().map(|food| food.number).zip(0..).collect()
}

fn read_groups(folder: &Path) -> Result<Vec<GroupRow>, TableError> {
    let mut rising = Rising(None);
    let table = tables::GROUPS;
    tables::read(folder, table.path, table.columns, |row| {
        let code = row.whole("code")?;
        rising.check(code, row, "code")?;
        Ok(GroupRow {
            code,
            name: row.text("name").to_owned(),
        })
    })
}

fn read_foods(folder: &Path, groups: &[GroupRow]) -> Result<Vec<FoodRow>, TableError> {
    let mut rising = Rising(None);
    let table = tables::FOODS;
    tables::read(folder, table.path, table.columns, |row| {
        let food = FoodRow {
            number: row.whole("number")?,
            group: row.whole("group")?,
            description: row.text("description").to_owned(),
            common_names: row.text("common_names").to_owned(),
            manufacturer: row.text("manufacturer").to_owned(),
            refuse_percent: refuse(row)?,
            refuse_description: row.text("refuse_description").to_owned(),
            nitrogen_factor: row.decimal_or_none("nitrogen_factor")?,
            protein_factor: row.decimal_or_none("protein_factor")?,
            fat_factor: row.decimal_or_none("fat_factor")?,
            carbohydrate_factor: row.decimal_or_none("carbohydrate_factor")?,
        };
        rising.check(food.number, row, "number")?;
        if !groups.iter().any(|group| group.code == food.group) {
            return Err(row.wrong("group", "a code of groups.csv"));
        }
        Ok(food)
    })
}

fn refuse(row: &Row<'_>) -> Result<Option<u8>, TableError> {
    let percent = row.whole_or_none("refuse_percent")?;
    if percent.is_some_and(|percent| percent > 100) {
        return Err(row.wrong("refuse_percent", "a percentage up to 100"));
    }
    Ok(percent)
}

fn read_nutrients(
    folder: &Path,
    table: &'static tables::Table,
) -> Result<Vec<NutrientRow>, TableError> {
    tables::read(folder, table.path, table.columns, |row| {
        Ok(NutrientRow {
            number: row.whole("number")?,
            tagname: row.text("tagname").to_owned(),
            name: row.text("name").to_owned(),
            unit: row.text("unit").to_owned(),
            decimals: row.whole("decimals")?,
            order: row.whole("order")?,
        })
    })
}

fn read_measures(folder: &Path, places: &FoodPlaces) -> Result<Vec<MeasureRow>, TableError> {
    let mut rising = Rising(None);
    let table = tables::MEASURES;
    tables::read(folder, table.path, table.columns, |row| {
        let measure = MeasureRow {
            food: food_place(places, row)?,
            seq: row.whole("seq")?,
            amount: above_zero(row, "amount")?,
            words: row.text("measure").to_owned(),
            grams: above_zero(row, "grams")?,
        };
        rising.check((measure.food, measure.seq), row, "seq")?;
        Ok(measure)
    })
}

fn above_zero(row: &Row<'_>, column: &'static str) -> Result<Scaled, TableError> {
    let number = row.decimal(column)?;
    if number.mantissa <= 0 {
        return Err(row.wrong(column, "a number above zero"));
    }
    Ok(number)
}

fn read_values(
    folder: &Path,
    nutrient: &NutrientRow,
    places: &FoodPlaces,
) -> Result<ValueColumn, TableError> {
    let path = tables::values_path(&nutrient.number.to_string(), &nutrient.tagname);
    let mut rising = Rising(None);
    let mut mantissas = vec![MISSING; places.len()];
    tables::read(folder, &path, tables::VALUE_COLUMNS, |row| {
        let place = food_place(places, row)?;
        rising.check(place, row, "food")?;
        let value = row.decimal("value")?;
        if value.scale != nutrient.decimals {
            return Err(row.wrong(
                "value",
                "a number with the decimals that nutrients.csv states",
            ));
        }
        mantissas[place as usize] = value.mantissa;
        Ok(())
    })?;
    Ok(ValueColumn {
        nutrient: nutrient.number,
        scale: nutrient.decimals,
        mantissas,
    })
}
