//! Which line of one form stands beside which line of the other.

/// A row of the comparison: the index of a line on either side.
pub type Row = (Option<usize>, Option<usize>);

/// Lines that are the same stand side by side, in their order; of what lies
/// between them, the first goes beside the first.
pub fn align(left: &[&str], right: &[&str]) -> Vec<Row> {
    let mut rows = Vec::new();
    let (mut l, mut r) = (0, 0);
    for (at_left, at_right) in common(left, right) {
        pair(&mut rows, l..at_left, r..at_right);
        rows.push((Some(at_left), Some(at_right)));
        (l, r) = (at_left + 1, at_right + 1);
    }
    pair(&mut rows, l..left.len(), r..right.len());
    rows
}

fn pair(rows: &mut Vec<Row>, left: std::ops::Range<usize>, right: std::ops::Range<usize>) {
    let (mut left, mut right) = (left, right);
    loop {
        match (left.next(), right.next()) {
            (None, None) => return,
            row => rows.push(row),
        }
    }
}

/// The longest list of lines that both have, in the order of both.
fn common(left: &[&str], right: &[&str]) -> Vec<(usize, usize)> {
    // longest[l][r]: of the lines from l and from r on.
    let mut longest = vec![vec![0_usize; right.len() + 1]; left.len() + 1];
    for l in (0..left.len()).rev() {
        for r in (0..right.len()).rev() {
            longest[l][r] = match left[l] == right[r] {
                true => longest[l + 1][r + 1] + 1,
                false => longest[l + 1][r].max(longest[l][r + 1]),
            };
        }
    }
    let mut found = Vec::new();
    let (mut l, mut r) = (0, 0);
    while l < left.len() && r < right.len() {
        if left[l] == right[r] {
            found.push((l, r));
            (l, r) = (l + 1, r + 1);
        } else if longest[l + 1][r] >= longest[l][r + 1] {
            l += 1;
        } else {
            r += 1;
        }
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_same_stands_beside_the_same() {
        for (left, right, rows) in [
            ("abc", "abc", "aa bb cc"),
            ("abc", "axc", "aa bx cc"),
            ("abc", "ac", "aa b. cc"),
            ("ac", "abbc", "aa .b .b cc"),
            ("ab", "", "a. b."),
            ("aab", "xab", "ax aa bb"),
            ("abcd", "bxd", "a. bb cx dd"),
        ] {
            let split = |text: &'static str| -> Vec<&str> {
                text.split("").filter(|part| !part.is_empty()).collect()
            };
            let (left, right) = (split(left), split(right));
            let shown: Vec<String> = align(&left, &right)
                .into_iter()
                .map(|(l, r)| {
                    let l = l.map_or(".", |at| left[at]);
                    let r = r.map_or(".", |at| right[at]);
                    format!("{l}{r}")
                })
                .collect();
            assert_eq!(shown.join(" "), rows);
        }
    }
}
