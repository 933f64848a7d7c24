//! What a kitchen can do besides taking another food.

use super::kinds::{Kinds, stands};
use crate::foods::FoodId;
use crate::tables::{self, List, Row, TableError};
use crate::yields::{TreatmentId, Treatments};
use rust_decimal::Decimal;
use serde::Deserialize;

/// What a move does to the line.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "camelCase")]
enum How {
    /// A share of the amount stays.
    Less,
    /// A share of the amount stays, another food takes the rest.
    Half,
    /// Something drains, rinses or fries away.
    Treatment,
    /// The food goes, seasonings take its place.
    LeaveOut,
}

#[derive(Deserialize)]
struct MoveRow {
    id: String,
    words: String,
    note: String,
    change: How,
    keeps: Option<Decimal>,
    treatment: Option<TreatmentId>,
    season: List<String>,
    kinds: List<String>,
    has: List<String>,
    lacks: List<String>,
    effect: String,
    source: String,
    status: String,
}

/// What a move does to the line, with its numbers.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Doing {
    /// This share of the amount stays.
    Less(Decimal),
    /// This share stays, another food takes the rest.
    Half(Decimal),
    /// This treatment is applied.
    Treatment(TreatmentId),
    /// Each of these takes its share of the amount.
    LeaveOut(Vec<(FoodId, Decimal)>),
}

/// One row of the table.
#[derive(Debug, Clone)]
pub(super) struct Move {
    pub id: String,
    pub words: String,
    /// What the line says of it.
    pub note: String,
    pub doing: Doing,
    /// Kinds of food; every kind where none is named.
    kinds: Vec<String>,
    has: Vec<String>,
    lacks: Vec<String>,
    pub effect: String,
    pub source: String,
    pub status: String,
}

impl Move {
    /// The treatment that it applies, if it does.
    pub fn treatment(&self) -> Option<&TreatmentId> {
        match &self.doing {
            Doing::Treatment(id) => Some(id),
            _ => None,
        }
    }

    /// True when it can be done with a food of a kind. `description` is the
    /// food's, in small letters.
    pub fn suits(&self, kind: Option<&str>, description: &str) -> bool {
        let says = |words: &String| stands(description, words);
        let kind_suits = self.kinds.is_empty()
            || kind.is_some_and(|kind| self.kinds.iter().any(|own| own == kind));
        kind_suits
            && (self.has.is_empty() || self.has.iter().any(says))
            && !self.lacks.iter().any(says)
    }
}

/// The table of moves.
#[derive(Debug, Clone)]
pub(super) struct Moves(pub Vec<Move>);

impl Moves {
    /// Reads the table.
    ///
    /// # Errors
    /// When a row lacks the number that its change asks for, or names a kind or
    /// a treatment that its table does not have.
    pub fn from_csv(
        text: &str,
        kinds: &Kinds,
        treatments: &Treatments,
    ) -> Result<Self, TableError> {
        const TABLE: &str = "moves";
        let rows: Vec<Row<MoveRow>> = tables::read(TABLE, text)?;
        rows.into_iter()
            .map(|Row { line, row }| {
                read(row, kinds, treatments).map_err(|problem| TableError {
                    table: TABLE.to_owned(),
                    line,
                    problem,
                })
            })
            .collect::<Result<_, _>>()
            .map(Self)
    }

    /// The moves that suit a food, in table order.
    pub fn suiting<'a>(
        &'a self,
        kind: Option<&'a str>,
        description: &'a str,
    ) -> impl Iterator<Item = &'a Move> {
        self.0
            .iter()
            .filter(move |one| one.suits(kind, description))
    }

    /// True for a treatment that a move applies.
    pub fn apply(&self, treatment: &TreatmentId) -> bool {
        self.0
            .iter()
            .any(|one| one.doing == Doing::Treatment(treatment.clone()))
    }

    /// The share that stays when another food takes the rest, with its row.
    pub fn half(&self) -> Option<(&Move, Decimal)> {
        self.0.iter().find_map(|one| match one.doing {
            Doing::Half(share) => Some((one, share)),
            _ => None,
        })
    }
}

fn read(row: MoveRow, kinds: &Kinds, treatments: &Treatments) -> Result<Move, String> {
    if let Some(unknown) = row.kinds.iter().find(|kind| !kinds.knows(kind)) {
        return Err(format!(
            "\"{unknown}\" is no kind of the table swap_kinds: add it or correct the name"
        ));
    }
    let share = || match row.keeps {
        Some(share) if share > Decimal::ZERO && share < Decimal::ONE => Ok(share),
        _ => Err("keeps must be a share above 0 and below 1".to_owned()),
    };
    let doing = match row.change {
        How::Less => Doing::Less(share()?),
        How::Half => Doing::Half(share()?),
        How::Treatment => {
            let known = row
                .treatment
                .filter(|id| treatments.of(id).next().is_some());
            Doing::Treatment(known.ok_or("treatment must be one of the table treatments")?)
        }
        How::LeaveOut => Doing::LeaveOut(
            row.season
                .iter()
                .map(|entry| seasoning(entry))
                .collect::<Result<_, _>>()?,
        ),
    };
    Ok(Move {
        id: row.id,
        words: row.words,
        note: row.note,
        doing,
        kinds: row.kinds.0,
        has: row.has.0,
        lacks: row.lacks.0,
        effect: row.effect,
        source: row.source,
        status: row.status,
    })
}

/// "02020=0.5" is half of it garlic powder.
fn seasoning(entry: &str) -> Result<(FoodId, Decimal), String> {
    let wrong =
        || format!("\"{entry}\" is no seasoning: write its SR28 number and share, as in 02020=0.5");
    let (number, share) = entry.split_once('=').ok_or_else(wrong)?;
    let number = number.parse().map_err(|_| wrong())?;
    let share = share.parse().map_err(|_| wrong())?;
    Ok((FoodId::Sr28(number), share))
}

#[cfg(test)]
mod tests {
    use super::Moves;
    use crate::swaps::kinds::Kinds;
    use crate::yields::Treatments;
    use nutrient_data::kitchen::{SWAP_KINDS, TREATMENTS};

    const HEAD: &str =
        "id,words,note,change,keeps,treatment,season,kinds,has,lacks,effect,source,status\n";

    #[test]
    fn bad_rows_are_refused() {
        let kinds = Kinds::from_csv(SWAP_KINDS).expect("the committed table");
        let treatments = Treatments::from_csv(TREATMENTS).expect("the committed table");
        let read = |row: &str| Moves::from_csv(&format!("{HEAD}{row}"), &kinds, &treatments);
        assert!(read("a,w,,less,0.5,,,salt,,,e,s,v\n").is_ok());
        for (row, word) in [
            ("a,w,,less,,,,salt,,,e,s,v\n", "share"),
            ("a,w,,less,1,,,salt,,,e,s,v\n", "share"),
            ("a,w,,less,0.5,,,stone,,,e,s,v\n", "stone"),
            ("a,w,,treatment,,soaked,,salt,,,e,s,v\n", "treatment"),
            ("a,w,,leaveOut,,,2020,salt,,,e,s,v\n", "02020=0.5"),
            ("a,w,,burn,,,,salt,,,e,s,v\n", "burn"),
        ] {
            let error = read(row).unwrap_err();
            assert_eq!(error.line, 2, "{error}");
            assert!(error.to_string().contains(word), "{error}");
        }
    }
}
