//! The release's text files into tables, digit by digit.
//!
//! File formats: USDA National Nutrient Database for Standard Reference,
//! Release 28, Documentation and User Guide (September 2015), "File Formats":
//! fields split at carets, text between tildes.

use rusqlite::{Connection, Transaction, params};
use std::fs;
use std::path::Path;

/// Loads the values of `nutrients`, and all measures.
pub(super) fn release(connection: &mut Connection, folder: &Path, nutrients: &[u16]) {
    let transaction = connection.transaction().expect("a new database");
    load_nutrients(&transaction, folder, nutrients);
    load_values(&transaction, folder, nutrients);
    load_measures(&transaction, folder);
    transaction.commit().expect("the tables of the release");
}

fn load_nutrients(transaction: &Transaction<'_>, folder: &Path, nutrients: &[u16]) {
    let mut insert = prepare(transaction, "INSERT INTO nutrient VALUES (?, ?)");
    for fields in rows(&read(folder, "NUTR_DEF.txt")) {
        let number: u16 = whole(fields[0]);
        if nutrients.contains(&number) {
            let scale = 10_i64.pow(whole(fields[4]));
            insert.execute(params![number, scale]).expect("a nutrient");
        }
    }
}

fn load_values(transaction: &Transaction<'_>, folder: &Path, nutrients: &[u16]) {
    let mut insert = prepare(transaction, "INSERT INTO value VALUES (?, ?, ?)");
    let text = read(folder, "NUT_DATA.txt");
    for line in text.lines() {
        let mut fields = line.splitn(4, '^').map(|field| field.trim_matches('~'));
        let mut next = || fields.next().expect("a field of NUT_DATA.txt");
        let (food, nutrient, value) = (next(), next(), next());
        let nutrient: u16 = whole(nutrient);
        if nutrients.contains(&nutrient) {
            insert
                .execute(params![whole::<u32>(food), nutrient, scaled(value, 3)])
                .expect("a value");
        }
    }
}

fn load_measures(transaction: &Transaction<'_>, folder: &Path) {
    let mut insert = prepare(transaction, "INSERT INTO measure VALUES (?, ?, ?, ?, ?)");
    for fields in rows(&read(folder, "WEIGHT.txt")) {
        let [food, seq, amount, words, grams, ..] = fields[..] else {
            panic!("a row of WEIGHT.txt has five fields or more");
        };
        insert
            .execute(params![
                whole::<u32>(food),
                whole::<u32>(seq),
                scaled(amount, 3),
                words,
                scaled(grams, 2)
            ])
            .expect("a measure");
    }
}

fn prepare<'t>(transaction: &'t Transaction<'_>, statement: &str) -> rusqlite::Statement<'t> {
    transaction.prepare(statement).expect(statement)
}

/// Latin-1, in which every byte is a letter.
fn read(folder: &Path, name: &str) -> String {
    let path = folder.join(name);
    let bytes = fs::read(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
    bytes.into_iter().map(char::from).collect()
}

fn rows(text: &str) -> impl Iterator<Item = Vec<&str>> {
    text.lines().map(|line| {
        line.split('^')
            .map(|field| field.trim_matches('~'))
            .collect()
    })
}

fn whole<T: std::str::FromStr>(digits: &str) -> T {
    digits
        .parse()
        .unwrap_or_else(|_| panic!("\"{digits}\" where a whole number belongs"))
}

/// A decimal number as a whole number of its last place; "1.5" with two places
/// is 150.
fn scaled(digits: &str, places: usize) -> i64 {
    let (units, decimals) = digits.split_once('.').unwrap_or((digits, ""));
    assert!(
        decimals.len() <= places,
        "\"{digits}\" has more than {places} decimals"
    );
    whole(&format!("{units}{decimals:0<places$}"))
}
