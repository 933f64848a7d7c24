//! What can be wrong with the bytes of an asset.

use std::fmt;

/// Why an asset could not be decoded. Each message says what is wrong and what to do.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum AssetError {
    /// The bytes do not begin with the asset mark: another kind of file, or an error page.
    NotAnAsset,
    /// An asset, but the other one of the two.
    WrongKind {
        /// The asset that was asked for.
        expected: &'static str,
        /// The kind byte that the file carries.
        found: u8,
    },
    /// Written in another version of the format.
    WrongVersion {
        /// The version that this program reads.
        supported: u16,
        /// The version that the file carries.
        found: u16,
    },
    /// The file ends before its own length says.
    Truncated {
        /// Bytes that the file should have.
        expected: u64,
        /// Bytes that it has.
        found: u64,
    },
    /// The file is longer than its own length says.
    TooLong {
        /// Bytes that the file should have.
        expected: u64,
        /// Bytes that it has.
        found: u64,
    },
    /// The content does not agree with its checksum.
    Damaged {
        /// The CRC-32 that the file carries.
        expected: u32,
        /// The CRC-32 of its content.
        found: u32,
    },
    /// The checksum agrees, yet the content does not follow the format.
    Malformed {
        /// The part of the asset that could not be read.
        part: &'static str,
    },
}

impl fmt::Display for AssetError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NotAnAsset => write!(
                f,
                "This is not a nutrient data file: it does not begin with the data file's mark. \
                 Load sr28.foods.bin and sr28.provenance.bin as they were built; a web server may \
                 have answered with another page."
            ),
            Self::WrongKind { expected, found } => write!(
                f,
                "This data file is of kind {found}, but the {expected} data file was expected. \
                 The two data files may have been exchanged: load each under its own name."
            ),
            Self::WrongVersion { supported, found } => write!(
                f,
                "This data file is in format version {found}, but this program reads version \
                 {supported}. Program and data come from different releases: reload the page, or \
                 install both from one release."
            ),
            Self::Truncated { expected, found } => write!(
                f,
                "The data file is cut short: {found} of {expected} bytes are there. Load it again."
            ),
            Self::TooLong { expected, found } => write!(
                f,
                "The data file has {found} bytes where {expected} belong. Something was added to \
                 it: load it again."
            ),
            Self::Damaged { expected, found } => write!(
                f,
                "The data file is damaged: its checksum is {found:08x} instead of {expected:08x}. \
                 Load it again; no figure of it was used."
            ),
            Self::Malformed { part } => write!(
                f,
                "The data file is whole, but its {part} cannot be read. It was written by a faulty \
                 program: build the data files again from the tables."
            ),
        }
    }
}

impl std::error::Error for AssetError {}
