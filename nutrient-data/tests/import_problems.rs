//! What importing says about releases that are not whole. The small releases here are written
//! for the test, so that the totals are always wrong as well.

use std::fs;
use std::path::{Path, PathBuf};

use nutrient_data::import::{ImportError, Problem, read_release};
use nutrient_data::tables::committed_folder;

/// A folder of its own for each test, with one good row in every file.
fn small_release(test: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(test);
    fs::create_dir_all(&folder).unwrap();
    let files = [
        ("FD_GROUP.txt", "~0100~^~Dairy and Egg Products~\r\n"),
        (
            "FOOD_DES.txt",
            "~01001~^~0100~^~Butter, salted~^~BUTTER,WITH SALT~^~~^~~^~Y~^~~^0^~~^6.38^4.27^8.79^3.87\r\n",
        ),
        ("NUTR_DEF.txt", "~203~^~g~^~PROCNT~^~Protein~^~2~^~600~\r\n"),
        (
            "SRC_CD.txt",
            "~1~^~Analytical or derived from analytical~\r\n",
        ),
        ("DERIV_CD.txt", "~A~^~Analytical data~\r\n"),
        ("WEIGHT.txt", "~01001~^1^1^~tbsp~^14.2^^\r\n"),
        ("FOOTNOTE.txt", "~01001~^~01~^~N~^~203~^~A note.~\r\n"),
        (
            "NUT_DATA.txt",
            "~01001~^~203~^0.85^16^0.074^~1~^~A~^~~^~~^^^^^^^~~^11/1976^\r\n",
        ),
    ];
    for (name, text) in files {
        fs::write(folder.join(name), text).unwrap();
    }
    folder
}

/// The problems of a release, without those about totals and about nutrients that are not there.
fn problems_with_lines(folder: &Path) -> Vec<Problem> {
    let problems = problems(folder).into_iter();
    problems.filter(|problem| problem.line.is_some()).collect()
}

fn problems(folder: &Path) -> Vec<Problem> {
    match read_release(folder, &committed_folder()) {
        Err(ImportError::Problems(problems)) => problems,
        other => panic!("a small release cannot be imported: {other:?}"),
    }
}

#[test]
fn wrong_totals_are_told_with_the_published_ones() {
    let folder = small_release("totals");
    let told: Vec<String> = problems(&folder).iter().map(Problem::to_string).collect();
    // Totals: SR28 documentation, September 2015.
    for total in ["8789", "15438", "679045"] {
        assert!(
            told.iter()
                .any(|line| line.contains(&format!("has {total}"))),
            "{told:?}"
        );
    }
    assert_eq!(problems_with_lines(&folder), []);
}

#[test]
fn damaged_rows_are_told_with_file_line_and_remedy() {
    let second_value = |row: &str| {
        format!("~01001~^~203~^0.85^16^0.074^~1~^~A~^~~^~~^^^^^^^~~^11/1976^\r\n{row}\r\n")
    };
    let cases = [
        (
            "torn",
            "NUT_DATA.txt",
            second_value("~01001~^~204~^81.11"),
            2,
            "3 fields where 18 belong",
        ),
        (
            "tilde",
            "FD_GROUP.txt",
            "~0100~^~Dairy and Egg Products~\r\n~0200~^~Spices\r\n".to_owned(),
            2,
            "FdGrp_Desc is ~Spices where text between tildes belongs",
        ),
        (
            "digits",
            "WEIGHT.txt",
            "~01001~^1^1^~tbsp~^14,2^^\r\n".to_owned(),
            1,
            "Gm_Wgt is 14,2 where a decimal number belongs",
        ),
        (
            "food",
            "WEIGHT.txt",
            "~01001~^1^1^~tbsp~^14.2^^\r\n~99999~^1^1^~cup~^227^^\r\n".to_owned(),
            2,
            "NDB_No is ~99999~ where a key of FOOD_DES.txt between tildes belongs",
        ),
        (
            "twice",
            "WEIGHT.txt",
            "~01001~^1^1^~tbsp~^14.2^^\r\n~01001~^1^1^~cup~^227^^\r\n".to_owned(),
            2,
            "the same key as in line 1",
        ),
    ];
    for (name, file, text, line, what) in cases {
        let folder = small_release(name);
        fs::write(folder.join(file), text).unwrap();
        let told = problems_with_lines(&folder);
        assert_eq!(told.len(), 1, "{name}: {told:?}");
        let place = (told[0].file, told[0].line, &*told[0].what);
        assert_eq!(place, (file, Some(line), what), "{name}");
        assert!(
            told[0].to_string().contains("Unpack the release again"),
            "{name}"
        );
    }
}

#[test]
fn a_missing_file_is_named() {
    let folder = small_release("missing");
    fs::remove_file(folder.join("WEIGHT.txt")).unwrap();
    let error = read_release(&folder, &committed_folder()).unwrap_err();
    let told = error.to_string();
    assert!(
        told.contains("WEIGHT.txt cannot be read") && told.contains("folder"),
        "{told}"
    );
}
