//! Damaged, cut, foreign and exchanged data files are told apart, and none of them panics.

use nutrient_data::format::{
    AssetError, FoodsAsset, GroupRow, ProvenanceAsset, VERSION, decode_foods, decode_provenance,
    encode_foods, encode_provenance,
};

/// Bytes before the content, as the format's description lays them out.
const HEADER: usize = 19;
const VERSION_AT: usize = 9;

fn foods_file() -> Vec<u8> {
    encode_foods(&FoodsAsset {
        foods: Vec::new(),
        groups: vec![GroupRow {
            code: 100,
            name: "Dairy and Egg Products".to_owned(),
        }],
        nutrients: Vec::new(),
        measures: Vec::new(),
        values: Vec::new(),
    })
}

fn provenance_file() -> Vec<u8> {
    encode_provenance(&ProvenanceAsset {
        food_numbers: Vec::new(),
        scientific_names: Vec::new(),
        measures: Vec::new(),
        columns: Vec::new(),
        sources: Vec::new(),
        derivations: Vec::new(),
        footnotes: Vec::new(),
    })
}

#[test]
fn every_cut_is_noticed() {
    let file = foods_file();
    for length in 0..file.len() {
        let error = decode_foods(&file[..length]).unwrap_err();
        assert!(
            matches!(error, AssetError::Truncated { .. }),
            "cut to {length}: {error:?}"
        );
    }
}

#[test]
fn every_changed_bit_is_noticed_and_named() {
    let file = foods_file();
    for (at, bit) in (0..file.len()).flat_map(|at| (0..8).map(move |bit| (at, bit))) {
        let mut changed = file.clone();
        changed[at] ^= 1 << bit;
        let error = decode_foods(&changed).unwrap_err();
        let named = match at {
            0..8 => matches!(error, AssetError::NotAnAsset),
            8 => matches!(error, AssetError::WrongKind { .. }),
            9..11 => matches!(error, AssetError::WrongVersion { .. }),
            11..15 => matches!(
                error,
                AssetError::Truncated { .. } | AssetError::TooLong { .. }
            ),
            _ => matches!(error, AssetError::Damaged { .. }),
        };
        assert!(named, "bit {bit} of byte {at}: {error:?}");
    }
}

#[test]
fn foreign_files_are_refused() {
    let foreign: [(&str, &[u8]); 4] = [
        ("a web page", b"<!doctype html><title>Not found</title>"),
        (
            "a compressed file (RFC 1952)",
            b"\x1f\x8b\x08\x00\x00\x00\x00\x00",
        ),
        ("a table", b"number,group,description\n"),
        (
            "the mark after a conversion of line ends",
            b"GWDATA\n\x01\x01\x00",
        ),
    ];
    for (what, bytes) in foreign {
        assert_eq!(decode_foods(bytes), Err(AssetError::NotAnAsset), "{what}");
    }
}

#[test]
fn exchanged_files_are_refused() {
    let expected = "provenance";
    let error = AssetError::WrongKind { expected, found: 1 };
    assert_eq!(decode_provenance(&foods_file()), Err(error));
    let expected = "foods";
    let error = AssetError::WrongKind { expected, found: 2 };
    assert_eq!(decode_foods(&provenance_file()), Err(error));
}

#[test]
fn another_version_is_refused_with_both_numbers() {
    let mut file = provenance_file();
    let later = VERSION + 1;
    file[VERSION_AT..VERSION_AT + 2].copy_from_slice(&later.to_le_bytes());
    let error = decode_provenance(&file).unwrap_err();
    let supported = VERSION;
    assert_eq!(
        error,
        AssetError::WrongVersion {
            supported,
            found: later
        }
    );
    let message = error.to_string();
    assert!(
        message.contains(&later.to_string()) && message.contains("reload"),
        "{message}"
    );
}

#[test]
fn an_added_byte_is_noticed() {
    let mut file = foods_file();
    let expected = file.len() as u64;
    file.push(0);
    let found = file.len() as u64;
    assert_eq!(
        decode_foods(&file),
        Err(AssetError::TooLong { expected, found })
    );
}

/// A right checksum over wrong content: every byte of the content is changed in turn, and the
/// decoder gives rows or [`AssetError::Malformed`], without panic.
#[test]
fn content_that_breaks_the_format_is_refused() {
    let file = foods_file();
    let mut refused = 0;
    for (at, value) in (HEADER..file.len()).flat_map(|at| [0, 1, 0x7f, 0xff].map(|v| (at, v))) {
        let mut changed = file.clone();
        changed[at] = value;
        let checksum = crc32fast::hash(&changed[HEADER..]);
        changed[HEADER - 4..HEADER].copy_from_slice(&checksum.to_le_bytes());
        match decode_foods(&changed) {
            Ok(_) => {}
            Err(AssetError::Malformed { .. }) => refused += 1,
            Err(other) => panic!("byte {at} set to {value}: {other:?}"),
        }
    }
    assert!(refused > 0);
}

/// Check value of CRC-32 for the digits 1 to 9, as published for ISO 3309 / ITU-T V.42.
#[test]
fn the_checksum_is_the_standard_one() {
    assert_eq!(crc32fast::hash(b"123456789"), 0xcbf4_3926);
}
