//! The book as the text that is stored. Each recipe's text is kept for as long
//! as the recipe stays as it is: so storing a change in a book of thousands
//! writes one recipe, and copies the rest.

use crate::state::Contents;
use engine::book::{BOOK_VERSION, Book, RecipeLabel, Version};
use engine::calendar::Calendar;
use engine::own_foods::OwnFood;
use engine::production::Production;
use engine::recipe::{Recipe, RecipeId};
use engine::rules::{OwnRules, Switches};
use engine::week::Week;
use serde::Serialize;
use serde_json::value::{RawValue, to_raw_value};
use std::collections::{BTreeMap, BTreeSet};
use std::rc::Rc;

/// The texts of recipes as they were written last.
#[derive(Debug, Default)]
pub struct StoredText {
    recipes: BTreeMap<RecipeId, (Rc<Recipe>, Box<RawValue>)>,
}

/// The form of [`crate::state::Saved`].
#[derive(Serialize)]
struct SavedText<'a> {
    book: BookText<'a>,
    kept: Vec<&'a Recipe>,
}

/// The form of [`Book`].
#[derive(Serialize)]
#[serde(rename_all = "camelCase")]
struct BookText<'a> {
    version: u32,
    office: &'a str,
    recipes: Vec<&'a RawValue>,
    weeks: Vec<&'a Week>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    versions: Vec<&'a Version>,
    #[serde(skip_serializing_if = "<[RecipeLabel]>::is_empty")]
    labels: &'a [RecipeLabel],
    #[serde(skip_serializing_if = "<[OwnFood]>::is_empty")]
    own_foods: &'a [OwnFood],
    own_rules: &'a OwnRules,
    switches: &'a Switches,
    #[serde(skip_serializing_if = "Production::is_empty")]
    production: &'a Production,
    #[serde(skip_serializing_if = "Calendar::is_empty")]
    calendar: &'a Calendar,
}

impl StoredText {
    /// The text of a book with its kept recipes: that of
    /// [`crate::state::Saved`].
    ///
    /// # Errors
    /// When a part of it has no text, which none of a book's has.
    pub fn write(&mut self, contents: &Contents) -> serde_json::Result<String> {
        for recipe in contents.recipes.iter() {
            let known = self.recipes.get(&recipe.id);
            if !known.is_some_and(|(of, _)| Rc::ptr_eq(of, recipe)) {
                let written = (Rc::clone(recipe), to_raw_value(&**recipe)?);
                self.recipes.insert(recipe.id.clone(), written);
            }
        }
        if self.recipes.len() > contents.recipes.len() {
            let there: BTreeSet<&RecipeId> = contents.recipes.iter().map(|r| &r.id).collect();
            self.recipes.retain(|name, _| there.contains(name));
        }
        let recipes = contents.recipes.iter();
        let texts = recipes.filter_map(|recipe| Some(&*self.recipes.get(&recipe.id)?.1));
        let Book {
            version: _,
            office,
            recipes: _,
            weeks: _,
            versions: _,
            labels,
            own_foods,
            own_rules,
            switches,
            production,
            calendar,
        } = &*contents.rest;
        serde_json::to_string(&SavedText {
            book: BookText {
                version: BOOK_VERSION,
                office,
                recipes: texts.collect(),
                weeks: contents.weeks.iter().map(|week| &**week).collect(),
                versions: contents.versions.iter().map(|one| &**one).collect(),
                labels,
                own_foods,
                own_rules,
                switches,
                production,
                calendar,
            },
            kept: contents.kept.iter().map(|recipe| &**recipe).collect(),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::state::{Action, Desk, RecipeEdit, Saved};

    #[test]
    fn is_the_text_of_the_saved_book_after_every_change() {
        let mut desk = Desk::new(Saved::from(crate::saving::demo_book()));
        let mut text = StoredText::default();
        let [one, two] = [0, 5].map(|at| desk.contents.recipes[at].id.clone());
        let copy = (*desk.contents.recipes[3]).clone();
        let titled = |id: &RecipeId, title: &str| {
            Action::Recipe(id.clone(), RecipeEdit::Title(title.to_owned()))
        };
        let mut label = RecipeLabel::plain(two.clone());
        label.panel.dual = true;
        let changes = [
            titled(&one, "Another \"title\""),
            titled(&two, "Ñandú"),
            Action::AddRecipe(copy),
            Action::RemoveRecipe(one),
            Action::Office("Fernhill".to_owned()),
            Action::Label(label),
            Action::Switch("whole milk act".to_owned(), false),
            Action::Undo,
            Action::Undo,
            Action::Undo,
        ];
        for change in changes {
            desk = desk.reduce(change);
            let whole = serde_json::to_string(&desk.contents.saved()).expect("text");
            assert_eq!(text.write(&desk.contents).expect("text"), whole);
        }
    }
}
