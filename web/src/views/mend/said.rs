//! A change in words, whether it still fits the book, and what of it is to be
//! locked once it is made.

use super::words;
use crate::format;
use crate::language::of_table;
use crate::named;
use crate::state::Contents;
use crate::views::week::words as week_words;
use crate::words::title_or_untitled;
use engine::exact::{Bounds, Digits};
use engine::mend::{Lock, Requirement, WeekChange};
use engine::recipe::{RecipeId, RecipeLine};
use engine::week::Week;

/// A change in words.
pub fn change(contents: &Contents, week: &Week, change: &WeekChange) -> String {
    let title = |id: &RecipeId| -> String {
        let recipe = contents.recipe(id);
        recipe.map_or_else(|| id.0.clone(), |recipe| title_or_untitled(&recipe.title))
    };
    match change {
        WeekChange::Line {
            recipe, was, lines, ..
        } => words::swap(&title(recipe), was.text.trim(), &texts(lines)),
        WeekChange::Portion {
            recipe,
            was,
            becomes,
            ..
        } => words::portion(
            &title(recipe),
            &was.words,
            &becomes.words,
            &format::stated(becomes.servings.servings()),
        ),
        WeekChange::Choice {
            place,
            date,
            was,
            becomes,
        } => {
            let meal = week
                .days
                .get(place.day)
                .and_then(|day| day.meals.get(place.meal));
            let service = meal.map(|meal| week_words::service(meal.kind, &meal.group.0));
            let part = meal.and_then(|meal| meal.offers.get(place.offer));
            let part = part.map_or("", |part| part.title.as_str());
            let part = format!("{}, {part}", service.unwrap_or_default());
            words::choice(&week_words::day(*date), &part, &title(was), &title(becomes))
        }
    }
}

fn texts(lines: &[RecipeLine]) -> String {
    let texts: Vec<&str> = lines.iter().map(|line| line.text.trim()).collect();
    texts.join("; ")
}

/// Whether a change can be made in the book as it stands.
pub fn fits(contents: &Contents, week: &Week, change: &WeekChange) -> bool {
    match change.recipe() {
        Some(id) => contents
            .recipe(id)
            .is_some_and(|recipe| change.in_recipe(recipe).is_some()),
        None => change.in_week(week).is_some(),
    }
}

/// What a change that was made keeps from being changed again.
pub fn made_locks(contents: &Contents, week: &Week, change: &WeekChange) -> Vec<Lock> {
    match change {
        WeekChange::Line { recipe, lines, .. } => {
            let kept = contents.recipe(recipe);
            let kept = kept.map_or(&[][..], |recipe| &recipe.lines);
            let own = kept
                .iter()
                .enumerate()
                .filter(|(_, line)| lines.contains(line));
            own.map(|(line, _)| Lock::Line {
                recipe: recipe.clone(),
                line,
            })
            .collect()
        }
        WeekChange::Portion {
            recipe, becomes, ..
        } => {
            let kept = contents.recipe(recipe);
            let made = kept.is_some_and(|kept| kept.servings == becomes.servings);
            let lock = Lock::Recipe {
                recipe: recipe.clone(),
            };
            made.then_some(lock).into_iter().collect()
        }
        WeekChange::Choice { place, becomes, .. } => {
            let made = place
                .of(week)
                .is_some_and(|choice| choice.recipe == *becomes);
            let lock = Lock::Choice { place: *place };
            made.then_some(lock).into_iter().collect()
        }
    }
}

/// What is asked, of whom, on which day.
pub fn requirement(asked: &Requirement) -> String {
    let service = week_words::service(asked.service.kind, &asked.service.group.0);
    match asked.date {
        Some(date) => format!(
            "{service}, {}: {}",
            week_words::day(date),
            of_table(&asked.words)
        ),
        None => format!("{service}: {}", of_table(&asked.words)),
    }
}

/// A limit with its side and unit.
pub fn limit(asked: &Requirement) -> String {
    let limit = format::group(asked.limit);
    week_words::limit(asked.bound, &named::counted(&limit, &asked.unit))
}

/// A figure, with as many decimals as tell.
pub fn figure(figure: Option<Bounds>, digits: Digits) -> String {
    match figure {
        None => words::UNKNOWN.to_string(),
        Some(figure) if figure.is_exact() => format::number(figure.low, digits),
        Some(figure) => format!("≥ {}", format::number(figure.low, digits)),
    }
}
