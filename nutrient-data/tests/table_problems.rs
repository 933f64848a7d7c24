//! What building the data files says about tables that were edited by mistake.

use std::fs;
use std::path::Path;

use nutrient_data::asset::build;

#[test]
fn faults_are_told_with_file_place_and_remedy() {
    // The groups are the first table that is read, so no other is needed.
    let cases = [
        (
            "heading",
            "code,title\n0100,Dairy and Egg Products\n",
            "line 1: the heading is \"code,title\" where \"code,name\" belongs",
        ),
        (
            "number",
            "code,name\n0100,Dairy and Egg Products\n02OO,Spices and Herbs\n",
            "line 3, column code: \"02OO\" where a whole number",
        ),
        (
            "order",
            "code,name\n0200,Spices and Herbs\n0100,Dairy and Egg Products\n",
            "line 3, column code: \"0100\" where something that comes after the line before",
        ),
        ("cells", "code,name\n0100\n", "line: 2"),
    ];
    for (name, text, told) in cases {
        let folder = Path::new(env!("CARGO_TARGET_TMPDIR"))
            .join("tables")
            .join(name);
        fs::create_dir_all(folder.join("sr28")).unwrap();
        fs::write(folder.join("sr28/groups.csv"), text).unwrap();
        let message = build(&folder).unwrap_err().to_string();
        assert!(message.contains(told), "{name}: {message}");
        assert!(message.contains("groups.csv"), "{name}: {message}");
        assert!(
            message.contains("estore") || message.contains("Correct"),
            "{name}: {message}"
        );
    }
}

#[test]
fn a_missing_table_is_named() {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("no tables");
    let message = build(&folder).unwrap_err().to_string();
    assert!(message.contains("groups.csv cannot be read"), "{message}");
}
