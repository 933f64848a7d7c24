//! A state of 600 districts: the weekly averages by one SQL file on a columnar
//! engine that scales out, against the engine's, digit by digit.
//!
//! Run by `cargo xtask bench`, which has the Python that it needs.

use anyhow::{Context, Result, ensure};
use engine::exact::Digits;
use engine::reference::Reference;
use engine::year::Year;
use gramwright_bench::export::Tables;
use gramwright_bench::rival::PYTHON;
use gramwright_tests::district::{District, Size};
use rust_decimal::Decimal;
use std::collections::BTreeMap;
use std::path::Path;
use std::process::Command;
use std::{env, fs};

const DISTRICTS: u64 = 600;

/// Small enough that the whole state is computed in seconds.
const SIZE: Size = Size {
    recipes: 12,
    lines: 5,
    weeks: 1,
    imperfect: true,
};

/// District, week, meal, grade group, nutrient.
type Place = (String, String, String, String, u16);

/// The printed average and whether something is missing from it.
type Printed = (Decimal, bool);

#[test]
fn one_sql_file_prints_the_same_digits_for_a_whole_state() -> Result<()> {
    let reference = Reference::committed(&nutrient_data::asset::committed().0)?;
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("state");
    let mut tables = Tables::new(&reference);
    let mut expected = BTreeMap::new();
    for number in 0..DISTRICTS {
        let name = format!("district {number:03}");
        let district = District::draw(&reference, SIZE, number);
        tables.add(&reference, &name, &district.studies, &district.weeks);
        ours(&reference, &name, &district, &mut expected)?;
    }
    tables.write(&folder)?;
    let found = by_sql(&folder)?;
    let columns = reference.foods.nutrients().len();
    assert_eq!(
        expected.len(),
        600 * 6 * columns,
        "six services in each district"
    );
    let incomplete = expected.values().filter(|(_, missing)| *missing).count();
    assert!(
        0 < incomplete && incomplete < expected.len(),
        "{incomplete}"
    );
    for (place, printed) in &expected {
        assert_eq!(found.get(place), Some(printed), "{place:?}");
    }
    assert_eq!(found.len(), expected.len());
    Ok(())
}

fn ours(
    reference: &Reference,
    name: &str,
    district: &District,
    into: &mut BTreeMap<Place, Printed>,
) -> Result<()> {
    let mut year = Year::new(reference, &district.studies, &district.weeks)?;
    for brief in year.services() {
        for (column, nutrient) in reference.foods.nutrients().iter().enumerate() {
            let Digits(digits) = nutrient.decimals;
            let place = (
                name.to_owned(),
                brief.week.id.0.clone(),
                brief.service.kind.to_string(),
                brief.service.group.0.clone(),
                nutrient.id.0,
            );
            let printed = Decimal::new(brief.averages[column], digits);
            into.insert(place, (printed.normalize(), brief.missing[column]));
        }
    }
    Ok(())
}

fn by_sql(folder: &Path) -> Result<BTreeMap<Place, Printed>> {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    let python = env::var_os(PYTHON).with_context(|| format!("{PYTHON} is not set"))?;
    let result = folder.join("averages.csv");
    let status = Command::new(python)
        .arg(here.join("rivals/weekly_averages.py"))
        .args([folder, &here.join("sql/weekly_averages.sql"), &result])
        .status()?;
    ensure!(status.success(), "the query has failed");
    let text = fs::read_to_string(&result)?;
    let row = |line: &str| -> Result<(Place, Printed)> {
        let cells: Vec<&str> = line.split(',').collect();
        let [district, week, meal, group, nutrient, known, missing] = cells[..] else {
            anyhow::bail!("not seven cells: {line}");
        };
        let known: Decimal = known.parse()?;
        let place = (
            district.to_owned(),
            week.to_owned(),
            meal.to_owned(),
            group.to_owned(),
            nutrient.parse()?,
        );
        Ok((place, (known.normalize(), missing.parse::<u64>()? > 0)))
    };
    text.lines().map(row).collect()
}
