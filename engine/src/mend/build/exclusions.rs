//! Changes that exclude each other.

use super::super::candidate::Candidate;
use super::super::change::WeekChange;
use super::super::ground::Ground;
use crate::recipe::RecipeId;
use std::collections::BTreeMap;

/// Candidates by the name of a group.
type Groups = BTreeMap<String, Vec<usize>>;

/// Candidates of which a plan takes one at most: changes of one line; a portion
/// and the lines of the same recipe; another recipe for a choice, and changes
/// of either recipe; the same recipe twice in a meal; and all changes of
/// recipes that move in step with others.
pub(in crate::mend) fn exclusions(
    ground: &Ground,
    candidates: &[Candidate],
) -> Vec<(String, Vec<usize>)> {
    let of_recipe = by_recipe(candidates);
    let mut groups = Groups::new();
    for (recipe, lines) in &of_recipe {
        for (line, members) in lines {
            groups.insert(format!("one of {}, {line}", recipe.0), members.clone());
        }
    }
    for (at, candidate) in candidates.iter().enumerate() {
        join_choice(&mut groups, &of_recipe, at, candidate);
        if candidate.alone {
            part_from_family(&mut groups, ground, candidates, at);
        }
    }
    told_once(groups)
}

/// For each recipe, groups of its changes, any two of which exclude each other.
fn by_recipe(candidates: &[Candidate]) -> BTreeMap<&RecipeId, Groups> {
    let mut of_recipe: BTreeMap<&RecipeId, Groups> = BTreeMap::new();
    for (at, candidate) in candidates.iter().enumerate() {
        if let WeekChange::Line { recipe, line, .. } = &candidate.change {
            let lines = of_recipe.entry(recipe).or_default();
            lines.entry(format!("line {line}")).or_default().push(at);
        }
    }
    for (at, candidate) in candidates.iter().enumerate() {
        if let WeekChange::Portion { recipe, .. } = &candidate.change {
            let groups = of_recipe.entry(recipe).or_default();
            if groups.is_empty() {
                groups.insert("portion".to_owned(), Vec::new());
            }
            groups.values_mut().for_each(|group| group.push(at));
        }
    }
    of_recipe
}

/// Another recipe for a choice: once for its place, once in its meal, and not
/// with changes of either recipe.
fn join_choice(
    groups: &mut Groups,
    of_recipe: &BTreeMap<&RecipeId, Groups>,
    at: usize,
    candidate: &Candidate,
) {
    let WeekChange::Choice {
        place,
        was,
        becomes,
        ..
    } = &candidate.change
    else {
        return;
    };
    let mut join = |group: String, at: usize| groups.entry(group).or_default().push(at);
    let meal = format!("{}-{}", place.day, place.meal);
    let spot = format!("{meal}-{}-{}", place.offer, place.choice);
    join(format!("one for {spot}"), at);
    join(format!("{} once in {meal}", becomes.0), at);
    for recipe in [was, becomes] {
        for (line, members) in of_recipe.get(recipe).into_iter().flatten() {
            let group = format!("{spot} or {}, {line}, by {}", recipe.0, becomes.0);
            members.iter().for_each(|other| join(group.clone(), *other));
            join(group, at);
        }
    }
}

/// A change of a recipe that moves in step with others, and each change of one
/// of these.
fn part_from_family(groups: &mut Groups, ground: &Ground, candidates: &[Candidate], at: usize) {
    let own = candidates[at].change.recipe();
    let Some(family) = own.map(|own| ground.family(own)) else {
        return;
    };
    let related = |other: &Candidate| match &other.change {
        WeekChange::Choice { was, becomes, .. } => family.contains(was) || family.contains(becomes),
        change => change.recipe().is_some_and(|id| family.contains(id)),
    };
    for (with, other) in candidates.iter().enumerate() {
        if with != at && related(other) {
            let (low, high) = (at.min(with), at.max(with));
            groups.insert(format!("{low} or {high}"), vec![low, high]);
        }
    }
}

/// Groups of more than one, each set of members once.
fn told_once(groups: Groups) -> Vec<(String, Vec<usize>)> {
    let mut told: Vec<(String, Vec<usize>)> = Vec::new();
    for (name, mut members) in groups {
        members.sort_unstable();
        members.dedup();
        let is_new = told.iter().all(|(_, known)| *known != members);
        if members.len() > 1 && is_new {
            told.push((name, members));
        }
    }
    told
}
