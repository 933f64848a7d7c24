//! The book's recipes by name and by title, kept up to date change by change.

use engine::book::{Shelf, plain_title};
use engine::recipe::{Recipe, RecipeId};
use std::collections::{BTreeMap, BTreeSet};
use std::rc::Rc;

/// The recipes of a book that can be looked up at once, however many they are.
#[derive(Debug, Default)]
pub struct IndexedShelf {
    recipes: Rc<Vec<Rc<Recipe>>>,
    names: BTreeMap<RecipeId, usize>,
    /// Places in the book by title; of two recipes with one title lines mean
    /// the first.
    titles: BTreeMap<String, BTreeSet<usize>>,
}

/// What a change of the book may have changed for recipes that name others.
#[derive(Debug, Default, PartialEq, Eq)]
pub struct Touched {
    /// Recipes that are new, gone or written otherwise.
    pub names: BTreeSet<RecipeId>,
    /// Titles that lead to another recipe than before, or to none.
    pub titles: BTreeSet<String>,
}

impl IndexedShelf {
    /// A recipe by its name in the book, to be shared.
    pub fn shared(&self, name: &RecipeId) -> Option<&Rc<Recipe>> {
        self.names.get(name).map(|at| &self.recipes[*at])
    }

    /// Takes over the book's recipes as they stand now and tells what that
    /// touches. Costs next to nothing where they are the same, and one look at
    /// each recipe's place where some are written otherwise.
    pub fn follow(&mut self, recipes: &Rc<Vec<Rc<Recipe>>>) -> Touched {
        if Rc::ptr_eq(&self.recipes, recipes) {
            return Touched::default();
        }
        let before = std::mem::replace(&mut self.recipes, Rc::clone(recipes));
        let in_place = before.len() == recipes.len()
            && before
                .iter()
                .zip(recipes.iter())
                .all(|(old, new)| Rc::ptr_eq(old, new) || old.id == new.id);
        if in_place {
            self.rewrite(&before)
        } else {
            self.rebuild(&before)
        }
    }

    /// The same recipes in the same places; some are written otherwise.
    fn rewrite(&mut self, before: &[Rc<Recipe>]) -> Touched {
        let mut touched = Touched::default();
        for (at, (old, new)) in before.iter().zip(self.recipes.iter()).enumerate() {
            if Rc::ptr_eq(old, new) || old == new {
                continue;
            }
            touched.names.insert(new.id.clone());
            if old.title == new.title {
                continue;
            }
            let (was, is) = (plain_title(&old.title), plain_title(&new.title));
            if let Some(places) = self.titles.get_mut(&was) {
                places.remove(&at);
            }
            self.titles.entry(is.clone()).or_default().insert(at);
            touched.titles.extend([was, is]);
        }
        touched
    }

    fn rebuild(&mut self, before: &[Rc<Recipe>]) -> Touched {
        let mut touched = Touched::default();
        let mut touch = |recipe: &Recipe| {
            touched.titles.insert(plain_title(&recipe.title));
            touched.names.insert(recipe.id.clone());
        };
        let old: BTreeMap<&RecipeId, &Rc<Recipe>> = before.iter().map(|r| (&r.id, r)).collect();
        let new: BTreeMap<&RecipeId, &Rc<Recipe>> =
            self.recipes.iter().map(|r| (&r.id, r)).collect();
        for (name, recipe) in &old {
            if new.get(name) != Some(recipe) {
                touch(recipe);
            }
        }
        for (name, recipe) in &new {
            if old.get(name) != Some(recipe) {
                touch(recipe);
            }
        }
        self.names.clear();
        self.titles.clear();
        for (at, recipe) in self.recipes.iter().enumerate() {
            self.names.entry(recipe.id.clone()).or_insert(at);
            let places = self.titles.entry(plain_title(&recipe.title)).or_default();
            places.insert(at);
        }
        touched
    }
}

impl Shelf for IndexedShelf {
    fn by_name(&self, name: &RecipeId) -> Option<&Recipe> {
        self.shared(name).map(Rc::as_ref)
    }

    fn by_title(&self, plain: &str) -> Option<&Recipe> {
        let first = self.titles.get(plain)?.first()?;
        Some(&self.recipes[*first])
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use engine::book::Book;

    fn recipe(name: &str, title: &str) -> Rc<Recipe> {
        let text = format!(r#"{{"id":"{name}","title":"{title}","servings":"1","lines":[]}}"#);
        Rc::new(serde_json::from_str(&text).expect("a recipe"))
    }

    /// Every step against a book that is looked through from its start.
    #[test]
    fn finds_what_the_book_finds() {
        let steps: [&[(&str, &str)]; 7] = [
            &[("a", "White sauce"), ("b", "Rice"), ("c", "white  SAUCE!")],
            &[("a", "Brown sauce"), ("b", "Rice"), ("c", "white  SAUCE!")],
            &[("a", "White sauce"), ("b", "Rice"), ("c", "white  SAUCE!")],
            &[("b", "Rice"), ("c", "white  SAUCE!")],
            &[("b", "Rice"), ("c", "white  SAUCE!"), ("d", "")],
            &[("b", ""), ("c", "Rice"), ("d", "Rice")],
            &[],
        ];
        let mut shelf = IndexedShelf::default();
        for step in steps {
            let recipes: Vec<_> = step
                .iter()
                .map(|(name, title)| recipe(name, title))
                .collect();
            let mut book = Book::empty("Quillhaven");
            book.recipes = recipes.iter().map(|one| (**one).clone()).collect();
            shelf.follow(&Rc::new(recipes));
            for title in ["white sauce", "brown sauce", "rice", "soup"] {
                assert_eq!(shelf.by_title(title), book.by_title(title), "{title}");
            }
            for name in ["a", "b", "c", "d"] {
                let name = RecipeId(name.into());
                assert_eq!(shelf.by_name(&name), book.by_name(&name), "{name:?}");
            }
        }
    }

    #[test]
    fn tells_what_a_change_touches() {
        let (rice, sauce) = (recipe("rice", "Rice"), recipe("sauce", "White sauce"));
        let mut shelf = IndexedShelf::default();
        shelf.follow(&Rc::new(vec![rice.clone(), sauce]));
        let same = shelf.follow(&Rc::new(vec![rice.clone(), recipe("sauce", "White sauce")]));
        assert_eq!(same, Touched::default(), "written again, but not otherwise");
        let renamed = shelf.follow(&Rc::new(vec![rice, recipe("sauce", "Gravy")]));
        let titles = ["gravy", "white sauce"].map(String::from);
        assert_eq!(renamed.names, BTreeSet::from([RecipeId("sauce".into())]));
        assert_eq!(renamed.titles, BTreeSet::from(titles));
    }
}
