//! `sr28.provenance.bin`: data points, standard errors, codes, footnotes, scientific names.

use std::collections::BTreeMap;

use super::columns::{Reader, Writer};
use super::envelope::{self, Kind};
use super::{
    AssetError, CodeRow, FootnoteRow, MISSING, MeasureEvidence, NO_VALUE, ProvenanceAsset,
    ProvenanceColumn, Scaled,
};

/// Writes the provenance asset; the same input always gives the same bytes.
///
/// # Panics
/// If the input breaks the order or the shape that [`ProvenanceAsset`] describes, or a text holds
/// a NUL character.
pub fn encode_provenance(asset: &ProvenanceAsset) -> Vec<u8> {
    let mut w = Writer::default();
    let foods = asset.food_numbers.len();
    assert_eq!(asset.scientific_names.len(), foods, "a name for each food");
    w.count(foods);
    w.rising(asset.food_numbers.iter().copied());
    w.texts(asset.scientific_names.iter().map(String::as_str));
    write_measures(&mut w, &asset.measures);
    write_codes(&mut w, &asset.sources);
    write_codes(&mut w, &asset.derivations);
    write_columns(&mut w, &asset.columns, foods);
    write_footnotes(&mut w, &asset.footnotes, foods);
    envelope::seal(Kind::Provenance, &w.content)
}

/// Reads the provenance asset.
///
/// # Errors
/// [`AssetError`] says what is wrong with the file.
pub fn decode_provenance(file: &[u8]) -> Result<ProvenanceAsset, AssetError> {
    let mut r = Reader::new(envelope::open(Kind::Provenance, file)?);
    r.part = "foods";
    let foods = r.count()?;
    let food_numbers = r.rising(foods)?;
    let scientific_names = r.texts(foods)?;
    let measures = read_measures(&mut r)?;
    r.part = "source codes";
    let sources = read_codes(&mut r)?;
    r.part = "derivation codes";
    let derivations = read_codes(&mut r)?;
    let columns = read_columns(&mut r, foods, sources.len(), derivations.len())?;
    let footnotes = read_footnotes(&mut r, foods)?;
    r.end()?;
    Ok(ProvenanceAsset {
        food_numbers,
        scientific_names,
        measures,
        columns,
        sources,
        derivations,
        footnotes,
    })
}

fn write_measures(w: &mut Writer, measures: &[MeasureEvidence]) {
    let points = measures
        .iter()
        .map(|m| m.data_points.map_or(0, |n| u32::from(n) + 1));
    w.count(measures.len());
    w.column(points);
    w.decimals(
        &measures
            .iter()
            .map(|m| m.standard_deviation)
            .collect::<Vec<_>>(),
    );
}

fn read_measures(r: &mut Reader<'_>) -> Result<Vec<MeasureEvidence>, AssetError> {
    r.part = "measures";
    let count = r.count()?;
    let points: Vec<u16> = r.smalls(count)?;
    let deviations: Vec<Option<Scaled>> = r.decimals(count)?;
    Ok(points
        .into_iter()
        .zip(deviations)
        .map(|(points, standard_deviation)| MeasureEvidence {
            data_points: points.checked_sub(1),
            standard_deviation,
        })
        .collect())
}

fn write_codes(w: &mut Writer, codes: &[CodeRow]) {
    w.count(codes.len());
    w.texts(codes.iter().flat_map(|row| [&*row.code, &row.description]));
}

fn read_codes(r: &mut Reader<'_>) -> Result<Vec<CodeRow>, AssetError> {
    (0..r.count()?)
        .map(|_| {
            Ok(CodeRow {
                code: r.text()?.to_owned(),
                description: r.text()?.to_owned(),
            })
        })
        .collect()
}

/// Source and derivation go together far more often than not, so each pair that occurs is listed
/// once and every cell names a pair; 0 is a cell without value, of which nothing more is written.
fn write_columns(w: &mut Writer, columns: &[ProvenanceColumn], foods: usize) {
    let mut places = BTreeMap::new();
    let mut pairs = Vec::new();
    for pair in columns.iter().flat_map(cells_with_value) {
        places.entry(pair).or_insert_with(|| {
            pairs.push(pair);
            pairs.len() as u32
        });
    }
    w.count(pairs.len());
    w.bytes(
        pairs
            .iter()
            .flat_map(|&(source, derivation)| [source, derivation]),
    );
    w.count(columns.len());
    for column in columns {
        assert!(
            [
                column.sources.len(),
                column.derivations.len(),
                column.data_points.len(),
                column.standard_errors.len()
            ] == [foods; 4],
            "a cell for each food"
        );
        assert!(
            (0..foods).all(|i| column.sources[i] != 0 || is_empty(column, i)),
            "a cell without a source has no value, so nothing is known of it"
        );
        w.number(column.nutrient.into());
        w.byte(column.se_scale);
        let pair = |i: usize| places.get(&(column.sources[i], column.derivations[i]));
        w.column((0..foods).map(|i| pair(i).copied().unwrap_or(0)));
        let there: Vec<usize> = (0..foods).filter(|&i| column.sources[i] != 0).collect();
        w.column(there.iter().map(|&i| column.data_points[i].into()));
        let errors: Vec<i32> = there.iter().map(|&i| column.standard_errors[i]).collect();
        w.mantissas(&errors);
    }
}

fn is_empty(column: &ProvenanceColumn, i: usize) -> bool {
    column.derivations[i] == 0
        && column.data_points[i] == NO_VALUE
        && column.standard_errors[i] == MISSING
}

fn cells_with_value(column: &ProvenanceColumn) -> impl Iterator<Item = (u8, u8)> + '_ {
    let pairs = column
        .sources
        .iter()
        .copied()
        .zip(column.derivations.iter().copied());
    pairs.filter(|&(source, _)| source != 0)
}

fn read_columns(
    r: &mut Reader<'_>,
    foods: usize,
    sources: usize,
    derivations: usize,
) -> Result<Vec<ProvenanceColumn>, AssetError> {
    r.part = "provenance of the values";
    let count = r.count()?;
    let mut pairs = vec![(0, 0)];
    for _ in 0..count {
        let (source, derivation) = (r.byte()?, r.byte()?);
        let known = usize::from(source) <= sources && usize::from(derivation) <= derivations;
        if source == 0 || !known {
            return r.malformed();
        }
        pairs.push((source, derivation));
    }
    (0..r.count()?)
        .map(|_| read_column(r, foods, &pairs))
        .collect()
}

fn read_column(
    r: &mut Reader<'_>,
    foods: usize,
    pairs: &[(u8, u8)],
) -> Result<ProvenanceColumn, AssetError> {
    let mut column = ProvenanceColumn {
        nutrient: r.small()?,
        se_scale: r.byte()?,
        data_points: vec![NO_VALUE; foods],
        standard_errors: vec![MISSING; foods],
        sources: vec![0; foods],
        derivations: vec![0; foods],
    };
    let mut there = Vec::with_capacity(foods);
    for (i, place) in r.column(foods)?.into_iter().enumerate() {
        let Some(&pair) = pairs.get(place as usize) else {
            return r.malformed();
        };
        (column.sources[i], column.derivations[i]) = pair;
        if place != 0 {
            there.push(i);
        }
    }
    let points: Vec<u16> = r.smalls(there.len())?;
    for (&i, points) in there.iter().zip(points) {
        column.data_points[i] = points;
    }
    let errors = r.mantissas(there.len())?;
    for (&i, error) in there.iter().zip(errors) {
        column.standard_errors[i] = error;
    }
    Ok(column)
}

fn write_footnotes(w: &mut Writer, footnotes: &[FootnoteRow], foods: usize) {
    assert!(
        footnotes.iter().all(|note| (note.food as usize) < foods),
        "every footnote belongs to a food"
    );
    w.count(footnotes.len());
    w.rising(footnotes.iter().map(|note| note.food));
    w.bytes(footnotes.iter().map(|note| note.seq));
    w.column(footnotes.iter().map(|note| note.subject.into()));
    w.column(
        footnotes
            .iter()
            .map(|note| note.nutrient.map_or(0, |n| u32::from(n) + 1)),
    );
    w.repeated_texts(&footnotes.iter().map(|note| &*note.text).collect::<Vec<_>>());
}

fn read_footnotes(r: &mut Reader<'_>, foods: usize) -> Result<Vec<FootnoteRow>, AssetError> {
    r.part = "footnotes";
    let count = r.count()?;
    let food = r.rising(count)?;
    if food.last().is_some_and(|&last| last as usize >= foods) {
        return r.malformed();
    }
    let seq = r.bytes(count)?;
    let subjects: Vec<u32> = r.smalls(count)?;
    let nutrients: Vec<u16> = r.smalls(count)?;
    let mut texts = r.repeated_texts(count)?.into_iter();
    (0..count)
        .map(|i| match char::from_u32(subjects[i]) {
            Some(subject) => Ok(FootnoteRow {
                food: food[i],
                seq: seq[i],
                subject,
                nutrient: nutrients[i].checked_sub(1),
                text: texts.next().unwrap_or_default(),
            }),
            None => r.malformed(),
        })
        .collect()
}
