//! What a person has set right about a line follows the line when the text
//! around it changes, and leaves it when it has become another line.
//!
//! A choice of food, and how it is prepared, belongs to the line's food words:
//! "5 cups flour" may become "6 cups flour" and keeps it, "5 cups rye flour"
//! does not. A weight belongs to the whole line. What leaves a line is put
//! aside and comes back when the words do: a slip of the finger costs nothing.

use engine::components::StatedCredit;
use engine::recipe::{CookedAs, Correction, Recipe, RecipeId, RecipeLine, read_line};

/// How many corrections are remembered.
const MOST_ASIDE: usize = 200;

/// A correction that lost its line.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Aside {
    recipe: RecipeId,
    line: RecipeLine,
}

/// What names the food in a line.
fn words(text: &str) -> String {
    read_line(text).food_words.to_lowercase()
}

/// What of a line's correction holds where it states another amount of the same
/// food. A stated credit is kept, with the line that it was stated for.
fn for_other_amount(line: &RecipeLine, text: &str) -> Correction {
    let correction = &line.correction;
    let stated = |credit: &StatedCredit| {
        let first = credit.stated_for.as_deref().unwrap_or(&line.text);
        StatedCredit {
            stated_for: (!same_amount(first, text)).then(|| first.to_owned()),
            ..credit.clone()
        }
    };
    Correction {
        weight: None,
        cooked: correction.cooked.as_ref().map(|cooked| CookedAs {
            weight: None,
            ..cooked.clone()
        }),
        credits: correction.credits.iter().map(stated).collect(),
        ..correction.clone()
    }
}

fn same_amount(one: &str, other: &str) -> bool {
    read_line(one).amount == read_line(other).amount
}

fn is_corrected(line: &RecipeLine) -> bool {
    line.correction != Correction::default()
}

/// Gives `recipe` the lines of `text`.
pub(super) fn rewrite(recipe: &mut Recipe, text: &str, aside: &mut Vec<Aside>) {
    let mut old: Vec<Option<RecipeLine>> = std::mem::take(&mut recipe.lines)
        .into_iter()
        .map(Some)
        .collect();
    let texts: Vec<&str> = if text.is_empty() {
        Vec::new()
    } else {
        text.split('\n').collect()
    };
    let mut new: Vec<Option<RecipeLine>> = vec![None; texts.len()];
    take_unmoved(&mut old, &mut new, &texts);
    take_moved(&mut old, &mut new, &texts);
    take_reworded(&mut old, &mut new, &texts);

    for line in old.into_iter().flatten() {
        put_aside(aside, &recipe.id, line);
    }
    recipe.lines = new
        .into_iter()
        .zip(texts)
        .map(|(found, text)| found.unwrap_or_else(|| remembered(aside, &recipe.id, text)))
        .collect();
}

/// Puts other lines in place of one; what was set right about that is put
/// aside.
pub(super) fn swap(
    recipe: &mut Recipe,
    line: usize,
    lines: Vec<RecipeLine>,
    aside: &mut Vec<Aside>,
) {
    if line < recipe.lines.len() {
        let gone: Vec<RecipeLine> = recipe.lines.splice(line..=line, lines).collect();
        for line in gone {
            put_aside(aside, &recipe.id, line);
        }
    }
}

/// Lines before and after the place where something changed.
fn take_unmoved(old: &mut [Option<RecipeLine>], new: &mut [Option<RecipeLine>], texts: &[&str]) {
    let same =
        |line: &Option<RecipeLine>, text: &str| line.as_ref().is_some_and(|line| line.text == text);
    for (index, text) in texts.iter().enumerate() {
        if index >= old.len() || !same(&old[index], text) {
            break;
        }
        new[index] = old[index].take();
    }
    for back in 1..=texts.len().min(old.len()) {
        let (from, to) = (old.len() - back, texts.len() - back);
        if new[to].is_some() || !same(&old[from], texts[to]) {
            break;
        }
        new[to] = old[from].take();
    }
}

/// Lines that stand elsewhere, word for word.
fn take_moved(old: &mut [Option<RecipeLine>], new: &mut [Option<RecipeLine>], texts: &[&str]) {
    for (place, text) in new.iter_mut().zip(texts) {
        if place.is_none() {
            *place = old
                .iter_mut()
                .find(|line| line.as_ref().is_some_and(|line| line.text == *text))
                .and_then(Option::take);
        }
    }
}

/// Lines of the same food with another amount: the food stays chosen.
fn take_reworded(old: &mut [Option<RecipeLine>], new: &mut [Option<RecipeLine>], texts: &[&str]) {
    for (place, text) in new.iter_mut().zip(texts) {
        if place.is_some() {
            continue;
        }
        let wanted = words(text);
        let found = old
            .iter()
            .flatten()
            .find(|line| is_corrected(line) && !wanted.is_empty() && words(&line.text) == wanted);
        // The old line is not used up: its weight may still be put aside.
        *place = found.map(|line| RecipeLine {
            text: (*text).to_owned(),
            correction: for_other_amount(line, text),
        });
    }
}

fn put_aside(aside: &mut Vec<Aside>, recipe: &RecipeId, line: RecipeLine) {
    if !is_corrected(&line) {
        return;
    }
    aside.retain(|other| other.recipe != *recipe || other.line.text != line.text);
    aside.push(Aside {
        recipe: recipe.clone(),
        line,
    });
    if aside.len() > MOST_ASIDE {
        aside.remove(0);
    }
}

/// A new line, with the correction that its words had before.
fn remembered(aside: &[Aside], recipe: &RecipeId, text: &str) -> RecipeLine {
    let mine = |other: &&Aside| other.recipe == *recipe;
    let whole = aside
        .iter()
        .rev()
        .filter(mine)
        .find(|other| other.line.text == text);
    let correction = match whole {
        Some(found) => found.line.correction.clone(),
        None => {
            let wanted = words(text);
            aside
                .iter()
                .rev()
                .filter(mine)
                .find(|other| !wanted.is_empty() && words(&other.line.text) == wanted)
                .map(|found| for_other_amount(&found.line, text))
                .unwrap_or_default()
        }
    };
    RecipeLine {
        text: text.to_owned(),
        correction,
    }
}
