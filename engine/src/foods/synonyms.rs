//! Kitchen words and the dataset's words for the same food.

use super::FoodId;
use std::fmt;
use word_search::words;

/// One row of the table: what a kitchen says, what the dataset says.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Synonym {
    /// The kitchen's words.
    pub kitchen: String,
    /// The dataset's words, empty if only foods are named.
    pub dataset: String,
    /// The foods that are meant, the first before the others.
    pub foods: Vec<FoodId>,
}

/// A row of a table that cannot be read.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SynonymError {
    /// Row in the file, the heading being 1.
    pub row: usize,
    /// What is wrong.
    pub problem: String,
}

impl fmt::Display for SynonymError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(
            out,
            "kitchen words, row {}: {}; a row is: kitchen words, dataset words, SR28 numbers, note",
            self.row, self.problem
        )
    }
}

impl std::error::Error for SynonymError {}

/// Reads the table `kitchen,words,foods,note`.
///
/// # Errors
/// When a row is not four fields, has no kitchen words, names neither words
/// nor foods, or holds a number that is none.
pub fn read(text: &str) -> Result<Vec<Synonym>, SynonymError> {
    let mut reader = csv::ReaderBuilder::new()
        .trim(csv::Trim::All)
        .from_reader(text.as_bytes());
    let mut rows = Vec::new();
    for (count, record) in reader.records().enumerate() {
        let row = count + 2;
        let wrong = |problem: String| SynonymError { row, problem };
        let record = record.map_err(|error| wrong(error.to_string()))?;
        let field = |column: usize| record.get(column).unwrap_or_default();
        let synonym = Synonym {
            kitchen: field(0).to_owned(),
            dataset: field(1).to_owned(),
            foods: field(2)
                .split_whitespace()
                .map(|number| {
                    let number = number.parse();
                    number.map(FoodId::Sr28).map_err(|_| {
                        wrong(format!(
                            "\"{}\" is not SR28 numbers between spaces",
                            field(2)
                        ))
                    })
                })
                .collect::<Result<_, _>>()?,
        };
        if words(&synonym.kitchen).is_empty() {
            return Err(wrong("there are no kitchen words".to_owned()));
        }
        if synonym.dataset.is_empty() && synonym.foods.is_empty() {
            return Err(wrong(format!(
                "\"{}\" has neither dataset words nor an SR28 number",
                synonym.kitchen
            )));
        }
        rows.push(synonym);
    }
    Ok(rows)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_rows() {
        let rows = read(
            "kitchen,words,foods,note\n\
             scallions,\"onions, spring or scallions\",11291,\n\
             evoo,\"oil, olive\",,any grade\n",
        )
        .unwrap();
        assert_eq!(rows[0].foods, [FoodId::Sr28(11291)]);
        assert_eq!(rows[0].kitchen, "scallions");
        assert_eq!(rows[1].dataset, "oil, olive");
        assert!(rows[1].foods.is_empty());
    }

    #[test]
    fn says_what_is_wrong_and_where() {
        let table = [
            (
                "kitchen,words,foods,note\nevoo,,,\n",
                2,
                "neither dataset words",
            ),
            (
                "kitchen,words,foods,note\na,b,,\nc,,1x,\n",
                3,
                "not SR28 numbers",
            ),
            ("kitchen,words,foods,note\n,b,,\n", 2, "no kitchen words"),
            ("kitchen,words,foods,note\na,b\n", 2, "record"),
        ];
        for (text, row, problem) in table {
            let error = read(text).unwrap_err();
            assert_eq!(error.row, row, "{text}");
            assert!(error.problem.contains(problem), "{}", error.problem);
        }
    }
}
