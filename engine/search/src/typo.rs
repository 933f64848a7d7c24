//! How many slips of the finger lie between two words.

/// Slips forgiven in a word of `length` letters: none in short words, where
/// one slip makes another word; two in long ones.
pub fn slips_forgiven(length: usize) -> usize {
    match length {
        0..=3 => 0,
        4..=6 => 1,
        _ => 2,
    }
}

/// The letters that occur in a word, one bit each; digits share the last bits.
pub fn letter_set(word: &[u8]) -> u32 {
    word.iter().fold(0, |set, letter| {
        set | 1
            << match letter {
                b'a'..=b'z' => letter - b'a',
                b'0'..=b'9' => 26 + (letter - b'0') % 6,
                _ => 31,
            }
    })
}

/// Longest word that is compared, in bytes.
const LONGEST: usize = 32;

/// Slips (letter added, left out, changed, or two neighbours swapped) that
/// turn `typed` into `word`, or nothing if there are more than `most`.
///
/// With `unfinished`, `typed` may also be the beginning of `word`: the letters
/// still to come are not counted.
pub fn slips(typed: &[u8], word: &[u8], most: usize, unfinished: bool) -> Option<usize> {
    let word = &word[..word.len().min(LONGEST)];
    if typed.len() > word.len() + most || (!unfinished && word.len() > typed.len() + most) {
        return None;
    }
    let width = word.len() + 1;
    let mut before = [0u8; LONGEST + 1];
    let mut above = [0u8; LONGEST + 1];
    let mut row = [0u8; LONGEST + 1];
    for (column, cell) in above[..width].iter_mut().enumerate() {
        *cell = column as u8;
    }
    for (line, letter) in typed.iter().enumerate() {
        row[0] = line as u8 + 1;
        let mut best = row[0];
        for column in 1..width {
            let same = word[column - 1] == *letter;
            let mut cell = (above[column - 1] + u8::from(!same))
                .min(above[column] + 1)
                .min(row[column - 1] + 1);
            let swapped = line > 0
                && column > 1
                && word[column - 2] == *letter
                && word[column - 1] == typed[line - 1];
            if swapped {
                cell = cell.min(before[column - 2] + 1);
            }
            row[column] = cell;
            best = best.min(cell);
        }
        if usize::from(best) > most {
            return None;
        }
        (before, above, row) = (above, row, before);
    }
    let end = if unfinished {
        above[..width].iter().copied().min().unwrap_or(u8::MAX)
    } else {
        above[width - 1]
    };
    (usize::from(end) <= most).then_some(usize::from(end))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Optimal string alignment, by hand.
    #[test]
    fn counts_slips() {
        let table = [
            ("tomato", "tomato", false, Some(0)),
            ("brocolli", "broccoli", false, Some(2)),
            ("gorund", "ground", false, Some(1)),
            ("chedder", "cheddar", false, Some(1)),
            ("zuchini", "zucchini", false, Some(1)),
            ("broclo", "broccoli", true, Some(1)),
            ("apple", "banana", false, None),
            ("salt", "salts", false, Some(1)),
            ("", "ab", false, Some(2)),
        ];
        for (typed, word, unfinished, expected) in table {
            assert_eq!(
                slips(typed.as_bytes(), word.as_bytes(), 2, unfinished),
                expected,
                "{typed}/{word}"
            );
        }
    }
}
