//! Importing SR28: the text files of the release in, human-readable tables out.
//!
//! The digits and the words of the release go into the tables as they stand. Everything is read
//! and checked before the first table is written, and all problems are reported together.

mod error;
mod layout;
mod source;

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

pub use error::{ImportError, Problem};
use layout::{
    DERIV_CD, FD_GROUP, FOOD_DES, FOOTNOTE, NUT_DATA, NUTR_DEF, SRC_CD, SourceFile, WEIGHT,
};
use source::{KnownKeys, SourceRow, read_rows};

use crate::tables::{self, Table};

/// One finished table.
#[derive(Debug, PartialEq, Eq)]
pub struct TableFile {
    /// Path below the folder of tables, with `/` between folders.
    pub path: String,
    /// CSV in UTF-8, lines ended by line feeds.
    pub content: Vec<u8>,
}

/// Reads the release in `source` and makes the tables of the nutrients listed in
/// `kept_nutrients.csv` of the folder `tables`. Writes nothing.
///
/// # Errors
/// [`ImportError`]: unreadable files, damaged rows, wrong totals.
pub fn read_release(source: &Path, tables: &Path) -> Result<Vec<TableFile>, ImportError> {
    let kept = tables::read(
        tables,
        tables::KEPT_NUTRIENTS.path,
        tables::KEPT_NUTRIENTS.columns,
        |row| {
            Ok((
                row.text("number").to_owned(),
                row.text("tagname").to_owned(),
            ))
        },
    )
    .map_err(ImportError::Kept)?;
    make_tables(&Texts::read(source)?, &kept.into_iter().collect())
}

/// Writes the tables below the folder `tables`. Files of values from an earlier import are
/// removed first, so that none is left of a nutrient that is no longer kept.
///
/// # Errors
/// [`ImportError::Unwritable`] with the file that failed.
pub fn write_tables(files: &[TableFile], tables: &Path) -> Result<(), ImportError> {
    let unwritable = |path: &Path, reason| ImportError::Unwritable {
        path: path.to_owned(),
        reason,
    };
    let values = tables.join("sr28").join("values");
    if values.exists() {
        fs::remove_dir_all(&values).map_err(|reason| unwritable(&values, reason))?;
    }
    fs::create_dir_all(&values).map_err(|reason| unwritable(&values, reason))?;
    for file in files {
        let path = tables.join(&file.path);
        fs::write(&path, &file.content).map_err(|reason| unwritable(&path, reason))?;
    }
    Ok(())
}

/// Tagnames of the nutrients to keep, by number.
type Kept = BTreeMap<String, String>;

/// The text of the files of the release.
struct Texts {
    groups: String,
    foods: String,
    nutrients: String,
    sources: String,
    derivations: String,
    measures: String,
    footnotes: String,
    values: String,
}

impl Texts {
    fn read(folder: &Path) -> Result<Self, ImportError> {
        let text = |file: &SourceFile| {
            let path = folder.join(file.name);
            let bytes =
                fs::read(&path).map_err(|reason| ImportError::Unreadable { path, reason })?;
            // The release calls itself ASCII and holds a few letters and quotation marks of
            // Windows-1252, which agrees with Latin-1 in all letters.
            Ok(encoding_rs::WINDOWS_1252
                .decode_without_bom_handling(&bytes)
                .0
                .into_owned())
        };
        Ok(Self {
            groups: text(&FD_GROUP)?,
            foods: text(&FOOD_DES)?,
            nutrients: text(&NUTR_DEF)?,
            sources: text(&SRC_CD)?,
            derivations: text(&DERIV_CD)?,
            measures: text(&WEIGHT)?,
            footnotes: text(&FOOTNOTE)?,
            values: text(&NUT_DATA)?,
        })
    }
}

fn make_tables(texts: &Texts, kept: &Kept) -> Result<Vec<TableFile>, ImportError> {
    let mut problems = Vec::new();
    let mut known = KnownKeys::new();
    let mut files = Vec::new();
    let whole: [(&'static SourceFile, &str, &Table); 6] = [
        (&FD_GROUP, &texts.groups, &tables::GROUPS),
        (&FOOD_DES, &texts.foods, &tables::FOODS),
        (&SRC_CD, &texts.sources, &tables::SOURCE_CODES),
        (&DERIV_CD, &texts.derivations, &tables::DERIVATION_CODES),
        (&WEIGHT, &texts.measures, &tables::MEASURES),
        (&FOOTNOTE, &texts.footnotes, &tables::FOOTNOTES),
    ];
    let nutrients = read_rows(&NUTR_DEF, &texts.nutrients, &known, &mut problems, |_| true);
    known.insert(NUTR_DEF.name, first_fields(&nutrients));
    for (file, text, table) in whole {
        let rows = read_rows(file, text, &known, &mut problems, |_| true);
        if file.key == [0] {
            known.insert(file.name, first_fields(&rows));
        }
        files.push(table_file(
            table.path.to_owned(),
            table.columns,
            file,
            &rows,
        ));
    }
    let nutrients: Vec<_> = nutrients
        .into_iter()
        .filter(|row| kept.contains_key(row.fields[0]))
        .collect();
    report_unknown(kept, &nutrients, &mut problems);
    let table = tables::NUTRIENTS;
    files.push(table_file(
        table.path.to_owned(),
        table.columns,
        &NUTR_DEF,
        &nutrients,
    ));
    let values = read_rows(&NUT_DATA, &texts.values, &known, &mut problems, |row| {
        kept.contains_key(row.fields[1])
    });
    files.extend(value_files(&nutrients, values));
    if problems.is_empty() {
        Ok(files)
    } else {
        Err(ImportError::Problems(problems))
    }
}

fn first_fields<'t>(rows: &[SourceRow<'t>]) -> BTreeSet<&'t str> {
    rows.iter().map(|row| row.fields[0]).collect()
}

/// Every nutrient to be kept must be one of the release, under the tagname that the list gives.
fn report_unknown(kept: &Kept, nutrients: &[SourceRow<'_>], problems: &mut Vec<Problem>) {
    let field = field_of(&NUTR_DEF, "tagname");
    for (number, tagname) in kept {
        let same = |row: &SourceRow<'_>| row.fields[0] == number && row.fields[field] == tagname;
        if !nutrients.iter().any(same) {
            problems.push(Problem {
                file: NUTR_DEF.name,
                line: None,
                what: format!("nutrient {number} with the tagname {tagname} is not there"),
                remedy: "Correct its line in kept_nutrients.csv, or take it out",
            });
        }
    }
}

/// One file of values for each nutrient.
fn value_files(nutrients: &[SourceRow<'_>], values: Vec<SourceRow<'_>>) -> Vec<TableFile> {
    let tagname = field_of(&NUTR_DEF, "tagname");
    nutrients
        .iter()
        .map(|nutrient| {
            let number = nutrient.fields[0];
            let of_nutrient = values.iter().filter(|row| row.fields[1] == number);
            let path = tables::values_path(number, nutrient.fields[tagname]);
            table_file(path, tables::VALUE_COLUMNS, &NUT_DATA, of_nutrient)
        })
        .collect()
}

fn field_of(file: &SourceFile, column: &str) -> usize {
    let place = file
        .fields
        .iter()
        .position(|field| field.column == Some(column));
    place.expect("each column of a table is a field of its file")
}

fn table_file<'r, 't: 'r>(
    path: String,
    columns: &[&str],
    file: &SourceFile,
    rows: impl IntoIterator<Item = &'r SourceRow<'t>>,
) -> TableFile {
    let fields: Vec<usize> = columns
        .iter()
        .map(|column| field_of(file, column))
        .collect();
    let mut writer = csv::Writer::from_writer(Vec::new());
    let in_memory =
        "writing to memory does not fail, and every row has as many cells as the heading";
    writer.write_record(columns).expect(in_memory);
    for row in rows {
        let cells = fields.iter().map(|&field| row.fields[field]);
        writer.write_record(cells).expect(in_memory);
    }
    TableFile {
        path,
        content: writer.into_inner().expect(in_memory),
    }
}
