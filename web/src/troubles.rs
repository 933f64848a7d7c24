//! What is wrong with a text from a file, in the language of the page.

use crate::language::say;
use engine::exchange::{About, Problem, Remark, Trouble};

/// What is wrong, where, and how to mend it: a sentence without its stop.
pub fn told(problem: &Problem) -> String {
    let what = of(&problem.trouble);
    let line = problem.place.line.map(|line| line.to_string());
    match (line, problem.place.part.as_str()) {
        (None, "") => what,
        (None, part) => say(
            "trouble-in-part",
            &[("part", part.into()), ("what", what.into())],
        ),
        (Some(line), "") => say(
            "trouble-in-line",
            &[("line", line.into()), ("what", what.into())],
        ),
        (Some(line), part) => say(
            "trouble-in-line-and-part",
            &[
                ("line", line.into()),
                ("part", part.into()),
                ("what", what.into()),
            ],
        ),
    }
}

fn of(trouble: &Trouble) -> String {
    let with = |key: &str, name: &str, text: &str| say(key, &[(name, text.to_owned().into())]);
    match trouble {
        Trouble::NotJson => say("trouble-not-json", &[]),
        Trouble::CutOff => say("trouble-cut-off", &[]),
        Trouble::NoBook => say("trouble-no-book", &[]),
        Trouble::RecipesOnly => say("trouble-recipes-only", &[]),
        Trouble::Newer(version) => with("trouble-newer", "version", &version.to_string()),
        Trouble::Missing(name) => with("trouble-missing", "name", name),
        Trouble::Twice(name) => with("trouble-twice", "name", name),
        Trouble::Unfit(found) => with("trouble-unfit", "found", found),
        Trouble::UnknownWord { word, known } => say(
            "trouble-unknown-word",
            &[
                ("word", word.clone().into()),
                ("known", known.clone().into()),
            ],
        ),
        Trouble::SameName(name) => with("trouble-same-name", "name", name),
        Trouble::NoRecipes => say("trouble-no-recipes", &[]),
        Trouble::NoColumn(name) => with("trouble-no-column", "name", name),
        Trouble::RaggedRow => say("trouble-ragged-row", &[]),
        Trouble::NoNumber(text) => with("trouble-no-number", "text", text),
        Trouble::RowWithoutRecipe => say("trouble-row-without-recipe", &[]),
    }
}

/// What of a recipe was not taken over.
pub fn remark(remark: &Remark) -> String {
    let title = || ("title", remark.title.clone().into());
    match &remark.about {
        About::NoServings => say("trouble-no-servings", &[title()]),
        About::YieldInWords(words) => say(
            "trouble-yield-in-words",
            &[title(), ("words", words.clone().into())],
        ),
        About::NutritionLeft => say("trouble-nutrition-left", &[title()]),
        About::NoLines => say("trouble-no-lines", &[title()]),
    }
}
