//! Changes of the named versions of one recipe.

use super::action::VersionEdit;
use super::contents::Contents;
use engine::book::Version;
use engine::recipe::RecipeId;
use std::rc::Rc;

/// Applies one change.
pub(super) fn apply(contents: &mut Contents, id: &RecipeId, edit: VersionEdit) {
    match edit {
        VersionEdit::Keep { name, on } => {
            let Some(recipe) = contents.recipe(id) else {
                return;
            };
            let version = Version {
                name: free_name(contents, id, &name),
                kept_on: on,
                recipe: (**recipe).clone(),
            };
            contents.versions.push(Rc::new(version));
        }
        VersionEdit::Remove(name) => contents.versions.retain(|version| !version.is(id, &name)),
        VersionEdit::GoBack(name) => {
            let mut versions = contents.versions.iter();
            let Some(version) = versions.find(|version| version.is(id, &name)) else {
                return;
            };
            let recipe = Rc::new(version.recipe.clone());
            contents.put_in_place(recipe);
        }
    }
}

/// The name itself, or with the first number behind it that makes it one of
/// its own.
fn free_name(contents: &Contents, id: &RecipeId, name: &str) -> String {
    let name = name.trim();
    let is_free = |name: &String| contents.versions_of(id).all(|other| other.name != *name);
    let numbered = (2..).map(|number| format!("{name} {number}"));
    std::iter::once(name.to_owned())
        .chain(numbered)
        .find(is_free)
        .unwrap_or_default()
}
