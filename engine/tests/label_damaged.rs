//! Damaged tables: each is refused with the place and a way to mend it.

use engine::claims::{ClaimTables, ClaimTexts};
use engine::label::{LabelTables, LabelTexts};
use engine::tables::TableError;

/// The committed text with one part replaced, which must be there.
fn damaged(text: &str, part: &str, by: &str) -> String {
    assert!(text.contains(part), "\"{part}\" is not in the table");
    text.replacen(part, by, 1)
}

#[test]
fn label_tables() {
    let whole = LabelTexts::committed();
    let read = |table: &str, part: &str, by: &str| -> TableError {
        let text = |name: &str, text: &str| match name == table {
            true => damaged(text, part, by),
            false => text.to_owned(),
        };
        let (rounding, daily_values, nutrients, statements, layout) = (
            text("rounding", whole.rounding),
            text("daily values", whole.daily_values),
            text("nutrients", whole.nutrients),
            text("statements", whole.statements),
            text("layout", whole.layout),
        );
        LabelTables::new(&LabelTexts {
            rounding: &rounding,
            daily_values: &daily_values,
            nutrients: &nutrients,
            statements: &statements,
            layout: &layout,
        })
        .expect_err(part)
    };
    for (table, part, by, line, words) in [
        // A gap, an overlap, a beginning above zero, a closed end.
        (
            "rounding",
            "208,5,,,50,,5,",
            "208,6,,,50,,5,",
            3,
            "where the one before it ends",
        ),
        (
            "rounding",
            "208,,50,,,,10,",
            "208,50,,,,,10,",
            4,
            "where the one before it ends",
        ),
        (
            "rounding",
            "208,0,,5,,0,,",
            "208,1,,5,,0,,",
            2,
            "begin at zero",
        ),
        (
            "rounding",
            "208,,50,,,,10,",
            "208,,50,99,,,10,",
            0,
            "upper edge open",
        ),
        (
            "rounding",
            "208,5,,,50,,5,",
            "208,5,4,,50,,5,",
            3,
            "keep one of its two columns",
        ),
        (
            "rounding",
            "208,5,,,50,,5,",
            "208,5,,,50,9,5,",
            3,
            "either prints or step",
        ),
        (
            "rounding",
            "208,5,,,50,,5,",
            "208,5,,,50,,0,",
            3,
            "either prints or step",
        ),
        (
            "rounding",
            "208,5,,,50,,5,",
            "208,,,,50,,5,",
            3,
            "no lower edge",
        ),
        (
            "rounding",
            "208,5,,,50,,5,",
            "calories,5,,,50,,5,",
            3,
            "is not a figure",
        ),
        ("rounding", "328,0,,,,,0.1,", "999,0,,,,,0.1,", 0, "328"),
        (
            "daily values",
            "204,4 and over,DRV,78,g",
            "204,4 and over,DRV,0,g",
            2,
            "above zero",
        ),
        (
            "daily values",
            "204,4 and over,DRV,78,g",
            "606,4 and over,DRV,78,g",
            3,
            "as line 2",
        ),
        (
            "daily values",
            "204,4 and over,DRV,78,g",
            "204,5 and over,DRV,78,g",
            2,
            "unknown word",
        ),
        (
            "daily values",
            "303,4 and over,RDI,18,mg",
            "303,4 and over,RDI,18,g",
            17,
            "use one unit",
        ),
        (
            "nutrients",
            "main,0,yes,always,always,shown",
            "main,0,bold,always,always,shown",
            3,
            "neither yes nor no",
        ),
        (
            "nutrients",
            "2,amount,601,2",
            "2,amount,601,",
            8,
            "or neither",
        ),
        (
            "nutrients",
            "Calories {},Calories {},energy",
            "Calories {},Calories {},main",
            0,
            "0 rows of energy",
        ),
        ("statements", "exempt,", "excused,", 0, "\"exempt\""),
        (
            "layout",
            "any,box,ink,1,",
            "any,box,rule,1,",
            4,
            "line 2 says",
        ),
        ("layout", "simplified,", "any,", 0, "simplified"),
    ] {
        let error = read(table, part, by);
        assert_eq!(error.line, line, "{error}");
        assert!(error.to_string().contains(words), "{error}");
    }
}

#[test]
fn figures_and_wordings_that_nothing_uses() {
    let whole = LabelTexts::committed();
    let citation = "2016-07-26,p,s,from memory";
    let rounding = format!("{}221,0,,,,,1,{citation},alcohol\n", whole.rounding);
    let error = LabelTables::new(&LabelTexts {
        rounding: &rounding,
        ..whole
    })
    .unwrap_err();
    assert!(error.to_string().contains("rounds 221"), "{error}");
    let statements = format!("{}motto,,Eat well.,{citation}\n", whole.statements);
    let error = LabelTables::new(&LabelTexts {
        statements: &statements,
        ..whole
    })
    .unwrap_err();
    assert!(error.to_string().contains("\"motto\""), "{error}");
}

#[test]
fn claim_tables() {
    let whole = ClaimTexts::committed();
    for (table, part, by, line, words) in [
        (
            "claims",
            "per reference amount,,,,below,5,mg",
            "per reference amount,,,,below,,mg",
            2,
            "fill bound, limit and unit",
        ),
        (
            "claims",
            "per weight,50,30",
            "per weight,,30",
            7,
            "grams above zero",
        ),
        (
            "claims",
            "share of energy,,,9",
            "share of energy,,,",
            24,
            "kcal_per_gram",
        ),
        (
            "claims",
            "low sodium,1994",
            "no sodium,1994",
            14,
            "no sodium",
        ),
        (
            "claims",
            "sodium free,individual,",
            "sodium free,snack,",
            2,
            "no kind of food",
        ),
        (
            "claims",
            "per reference amount,",
            "always,",
            2,
            "look at something",
        ),
        (
            "disclosure",
            "cholesterol free;low",
            "cholesterol low;low",
            26,
            "no claim is called",
        ),
        (
            "disclosure",
            "individual,204,per serving",
            "individual,,per serving",
            3,
            "names none",
        ),
        (
            "disclosure",
            "at most,13,g",
            "at most,13,",
            2,
            "fill bound, limit and unit",
        ),
    ] {
        let text = |name: &str, text: &str| match name == table {
            true => damaged(text, part, by),
            false => text.to_owned(),
        };
        let (claims, disclosure) = (
            text("claims", whole.claims),
            text("disclosure", whole.disclosure),
        );
        let error = ClaimTables::new(&ClaimTexts {
            claims: &claims,
            disclosure: &disclosure,
        })
        .expect_err(part);
        assert_eq!(error.line, line, "{error}");
        assert!(error.to_string().contains(words), "{error}");
    }
}
