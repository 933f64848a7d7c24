//! The developers' map names only what exists.

use std::path::Path;

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
        .parent()
        .expect("the workspace around this package")
}

/// Words between back quotes that look like a path of the tree.
fn paths(text: &str) -> Vec<&str> {
    text.split('`')
        .skip(1)
        .step_by(2)
        .filter(|word| !word.contains([' ', '\n', ':', '(']))
        .filter(|word| word.contains('/') || word.contains('.'))
        .collect()
}

#[test]
fn every_path_of_the_map_exists() {
    for page in ["DEVELOPERS.md", "README.md"] {
        let text = std::fs::read_to_string(root().join(page)).expect(page);
        let named = paths(&text);
        assert!(
            page != "DEVELOPERS.md" || named.len() > 40,
            "{page} names too little"
        );
        for path in named {
            // Made by building, or by a first run.
            if path.starts_with("target/") {
                continue;
            }
            assert!(
                root().join(path).exists(),
                "{page} names `{path}`, which is not there"
            );
        }
    }
}
