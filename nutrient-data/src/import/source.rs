//! Reading one file of the release: Latin-1 text, a row to a line, fields split at carets, text
//! between tildes.

use std::collections::{BTreeMap, BTreeSet};

use super::error::Problem;
use super::layout::{Field, Kind, SourceFile};
use crate::format::Scaled;

const FRESH_COPY: &str = "Unpack the release again; if the line is the same there, the folder \
                          holds another release or an edited copy";
const WHOLE_COPY: &str = "The file is cut short, edited, or of another release: unpack release 28 \
                          again";

/// One row: its line and its fields, without the tildes.
pub(super) struct SourceRow<'t> {
    pub line: usize,
    pub fields: Vec<&'t str>,
}

/// The keys of the files read so far, by file name, for the fields that refer to them.
pub(super) type KnownKeys<'t> = BTreeMap<&'static str, BTreeSet<&'t str>>;

/// Reads a file, keeps the rows that `wanted` picks, sorts them by key. Damaged rows, rows that
/// occur twice and a wrong number of rows are added to `problems`.
pub(super) fn read_rows<'t>(
    file: &'static SourceFile,
    text: &'t str,
    known: &KnownKeys<'t>,
    problems: &mut Vec<Problem>,
    wanted: impl Fn(&SourceRow<'t>) -> bool,
) -> Vec<SourceRow<'t>> {
    let mut rows = Vec::new();
    let mut count = 0;
    for (index, line) in text.lines().enumerate() {
        count += 1;
        match split_row(file, line, known) {
            Ok(fields) => rows.extend(
                Some(SourceRow {
                    line: index + 1,
                    fields,
                })
                .filter(&wanted),
            ),
            Err(what) => problems.push(Problem {
                file: file.name,
                line: Some(index + 1),
                what,
                remedy: FRESH_COPY,
            }),
        }
    }
    if let Some(expected) = file.rows
        && expected != count
    {
        problems.push(Problem {
            file: file.name,
            line: None,
            what: format!("{count} rows where release 28 has {expected}"),
            remedy: WHOLE_COPY,
        });
    }
    rows.sort_by_key(|row| key(file, row));
    report_twins(file, &rows, problems);
    rows
}

/// Key of a row in which numbers sort as numbers.
fn key<'t>(file: &SourceFile, row: &SourceRow<'t>) -> Vec<(Option<u32>, &'t str)> {
    let part = |&field: &usize| (row.fields[field].parse().ok(), row.fields[field]);
    file.key.iter().map(part).collect()
}

fn report_twins(file: &SourceFile, rows: &[SourceRow<'_>], problems: &mut Vec<Problem>) {
    for pair in rows.windows(2) {
        if key(file, &pair[0]) == key(file, &pair[1]) {
            problems.push(Problem {
                file: file.name,
                line: Some(pair[1].line),
                what: format!("the same key as in line {}", pair[0].line),
                remedy: FRESH_COPY,
            });
        }
    }
}

fn split_row<'t>(
    file: &SourceFile,
    line: &'t str,
    known: &KnownKeys<'t>,
) -> Result<Vec<&'t str>, String> {
    let raw: Vec<&str> = line.split('^').collect();
    if raw.len() != file.fields.len() {
        return Err(format!(
            "{} fields where {} belong",
            raw.len(),
            file.fields.len()
        ));
    }
    let fields = file.fields.iter().zip(raw);
    fields
        .map(|(field, raw)| {
            check(field, raw, known)
                .ok_or_else(|| format!("{} is {raw} where {} belongs", field.name, wants(field)))
        })
        .collect()
}

/// The text of a field, if it is what the field must hold.
fn check<'t>(field: &Field, raw: &'t str, known: &KnownKeys<'t>) -> Option<&'t str> {
    let bare = || raw.strip_prefix('~')?.strip_suffix('~');
    let knows =
        |file: &SourceFile, key: &&'t str| known.get(file.name).is_some_and(|k| k.contains(key));
    match field.kind {
        Kind::Any => Some(raw),
        Kind::Text => bare().filter(|text| !text.contains('~')),
        Kind::TextNumber => bare().filter(|text| text.parse::<u32>().is_ok()),
        Kind::Key(file) => bare().filter(|key| knows(file, key)),
        Kind::KeyOrNone(file) => bare().filter(|key| key.is_empty() || knows(file, key)),
        Kind::Number => Some(raw).filter(|text| text.is_empty() || Scaled::parse(text).is_some()),
        Kind::Value => Some(raw).filter(|text| Scaled::parse(text).is_some()),
    }
}

fn wants(field: &Field) -> String {
    match field.kind {
        Kind::Any => "anything".to_owned(),
        Kind::Text => "text between tildes".to_owned(),
        Kind::TextNumber => "a whole number between tildes".to_owned(),
        Kind::Key(file) => format!("a key of {} between tildes", file.name),
        Kind::KeyOrNone(file) => format!("a key of {} between tildes, or nothing", file.name),
        Kind::Number => "a decimal number, or nothing,".to_owned(),
        Kind::Value => "a decimal number".to_owned(),
    }
}
