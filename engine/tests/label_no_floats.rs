//! Nothing that is printed or compared with a limit passes through a binary
//! float: the modules on that way do not even name one. The compiler's lint
//! `clippy::float_arithmetic`, denied in the same modules, sees arithmetic on
//! floats that are named elsewhere.

use std::fs;
use std::path::{Path, PathBuf};

const EXACT_MODULES: [&str; 4] = ["analysis", "claims", "exact", "label"];

fn sources(folder: &Path) -> Vec<PathBuf> {
    let mut files = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        match path.is_dir() {
            true => files.extend(sources(&path)),
            false => files.push(path),
        }
    }
    files
}

/// A number with a decimal point that is not text is a float literal.
fn names_a_float(line: &str) -> bool {
    let code = line.split("//").next().unwrap_or_default();
    let outside_quotes: String = code.split('"').step_by(2).collect();
    let literal = outside_quotes
        .as_bytes()
        .windows(3)
        .any(|three| three[0].is_ascii_digit() && three[1] == b'.' && three[2].is_ascii_digit());
    literal
        || ["f32", "f64"]
            .iter()
            .any(|float| outside_quotes.contains(float))
}

#[test]
fn exact_modules_name_no_float() {
    for module in EXACT_MODULES {
        let folder = Path::new(env!("CARGO_MANIFEST_DIR"))
            .join("src")
            .join(module);
        let files = sources(&folder);
        assert!(!files.is_empty(), "{module} has moved: mend this test");
        let mut denies = false;
        for file in files {
            let text = fs::read_to_string(&file).unwrap();
            denies |= text.contains("#![deny(clippy::float_arithmetic)]");
            for (index, line) in text.lines().enumerate() {
                assert!(
                    !names_a_float(line),
                    "{}:{}: {line}",
                    file.display(),
                    index + 1
                );
            }
        }
        assert!(denies, "{module} does not deny clippy::float_arithmetic");
    }
}

#[test]
fn the_search_finds_floats() {
    for line in ["let x: f64 = y;", "x.to_f64()", "x * 0.5", "f32::MAX"] {
        assert!(names_a_float(line), "{line}");
    }
    for line in [
        "dec(\"0.5\")",
        "/// 0.5 g, not an f64",
        "row.0.value",
        "0..500",
    ] {
        assert!(!names_a_float(line), "{line}");
    }
}
