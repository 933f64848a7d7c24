//! Adding up what the test runners report.

use std::fmt;
use std::ops::AddAssign;

/// How many tests ended how.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Counts {
    /// Tests that passed.
    pub passed: u64,
    /// Tests that failed.
    pub failed: u64,
    /// Tests that were not run because they are marked so.
    pub skipped: u64,
}

impl Counts {
    /// Reads a runner's closing line, such as
    /// `test result: ok. 5 passed; 0 failed; 1 ignored; 0 measured; 0 filtered out; …`.
    #[must_use]
    pub fn from_line(line: &str) -> Option<Self> {
        let (_, report) = line.split_once("test result: ")?;
        let count = |what: &str| {
            report.split([';', '.']).find_map(|part| {
                let (number, word) = part.trim().split_once(' ')?;
                (word == what).then(|| number.parse().ok())?
            })
        };
        Some(Self {
            passed: count("passed")?,
            failed: count("failed")?,
            skipped: count("ignored")?,
        })
    }
}

impl AddAssign for Counts {
    fn add_assign(&mut self, other: Self) {
        self.passed += other.passed;
        self.failed += other.failed;
        self.skipped += other.skipped;
    }
}

impl fmt::Display for Counts {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} passed, {} failed", self.passed, self.failed)?;
        if self.skipped > 0 {
            write!(f, ", {} skipped", self.skipped)?;
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_closing_lines() {
        let cases = [
            (
                "test result: ok. 5 passed; 0 failed; 1 ignored; 0 measured; 2 filtered out; finished in 0.02s",
                Some((5, 0, 1)),
            ),
            (
                "test result: FAILED. 11 passed; 3 failed; 0 ignored; 0 measured; 0 filtered out; finished in 1.50s",
                Some((11, 3, 0)),
            ),
            ("test counts::tests::reads_closing_lines ... ok", None),
        ];
        for (line, expected) in cases {
            let read = Counts::from_line(line).map(|c| (c.passed, c.failed, c.skipped));
            assert_eq!(read, expected, "{line}");
        }
    }

    #[test]
    fn is_printed_as_one_plain_line() {
        let mut sum = Counts::default();
        sum += Counts {
            passed: 7,
            failed: 1,
            skipped: 0,
        };
        assert_eq!(sum.to_string(), "7 passed, 1 failed");
        sum.skipped = 2;
        assert_eq!(sum.to_string(), "7 passed, 1 failed, 2 skipped");
    }
}
