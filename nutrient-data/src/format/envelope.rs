//! The outer layer of every asset: mark, kind, version, length and checksum.
//!
//! | bytes | content |
//! |---|---|
//! | 0–7 | the mark `GWDATA` CR LF (a text conversion on the way breaks it) |
//! | 8 | kind: 1 foods, 2 provenance |
//! | 9–10 | format version, little endian |
//! | 11–14 | length of the content in bytes, little endian |
//! | 15–18 | CRC-32 of the content, little endian |
//! | 19– | content |

use super::AssetError;

/// The version that is written and the only one that is read. It goes up with every change to
/// the layout of the content.
pub const VERSION: u16 = 2;

const MARK: [u8; 8] = *b"GWDATA\r\n";
const HEADER: usize = 19;

/// Which of the two assets.
#[derive(Clone, Copy)]
pub(super) enum Kind {
    Foods = 1,
    Provenance = 2,
}

impl Kind {
    const fn name(self) -> &'static str {
        match self {
            Self::Foods => "foods",
            Self::Provenance => "provenance",
        }
    }
}

/// Puts the header before the content.
///
/// # Panics
/// If the content is longer than a `u32` counts.
pub(super) fn seal(kind: Kind, content: &[u8]) -> Vec<u8> {
    let length = u32::try_from(content.len()).expect("an asset is far below 4 GB");
    let mut file = Vec::with_capacity(HEADER + content.len());
    file.extend(MARK);
    file.push(kind as u8);
    file.extend(VERSION.to_le_bytes());
    file.extend(length.to_le_bytes());
    file.extend(crc32fast::hash(content).to_le_bytes());
    file.extend(content);
    file
}

/// Checks the header and gives the content.
pub(super) fn open(kind: Kind, file: &[u8]) -> Result<&[u8], AssetError> {
    let marked = file.len().min(MARK.len());
    if file[..marked] != MARK[..marked] {
        return Err(AssetError::NotAnAsset);
    }
    let Some((header, content)) = file.split_at_checked(HEADER) else {
        return Err(AssetError::Truncated {
            expected: HEADER as u64,
            found: file.len() as u64,
        });
    };
    let four = |at: usize| {
        u32::from_le_bytes([header[at], header[at + 1], header[at + 2], header[at + 3]])
    };
    if header[8] != kind as u8 {
        return Err(AssetError::WrongKind {
            expected: kind.name(),
            found: header[8],
        });
    }
    let version = u16::from_le_bytes([header[9], header[10]]);
    if version != VERSION {
        return Err(AssetError::WrongVersion {
            supported: VERSION,
            found: version,
        });
    }
    check_content(content, four(11), four(15))?;
    Ok(content)
}

fn check_content(content: &[u8], length: u32, checksum: u32) -> Result<(), AssetError> {
    let expected = HEADER as u64 + u64::from(length);
    let found = (HEADER + content.len()) as u64;
    if found < expected {
        return Err(AssetError::Truncated { expected, found });
    }
    if found > expected {
        return Err(AssetError::TooLong { expected, found });
    }
    let crc = crc32fast::hash(content);
    if crc != checksum {
        return Err(AssetError::Damaged {
            expected: checksum,
            found: crc,
        });
    }
    Ok(())
}
