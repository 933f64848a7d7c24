//! What leads from one state of the book to another: only what differs is
//! held, so that steps without number are cheap to keep and to store.

use super::contents::Contents;
use engine::book::{Book, Version};
use engine::recipe::Recipe;
use engine::week::Week;
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::rc::Rc;

/// The way from one state to another.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Step {
    #[serde(default, skip_serializing_if = "Option::is_none")]
    recipes: Option<Splice<Recipe>>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    weeks: Option<Splice<Week>>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    kept: Option<Splice<Recipe>>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    versions: Option<Splice<Version>>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    rest: Option<Shared<Book>>,
}

impl Step {
    /// The way between two states.
    pub fn between(from: &Contents, to: &Contents) -> Self {
        let rest = (from.rest != to.rest).then(|| Shared(Rc::clone(&to.rest)));
        Self {
            recipes: Splice::between(&from.recipes, &to.recipes),
            weeks: Splice::between(&from.weeks, &to.weeks),
            kept: Splice::between(&from.kept, &to.kept),
            versions: Splice::between(&from.versions, &to.versions),
            rest,
        }
    }

    /// The state that it leads to; nothing where it begins elsewhere.
    pub fn from(&self, state: &Contents) -> Option<Contents> {
        Some(Contents {
            recipes: match &self.recipes {
                Some(splice) => Rc::new(spliced(&state.recipes, Some(splice))?),
                None => Rc::clone(&state.recipes),
            },
            weeks: spliced(&state.weeks, self.weeks.as_ref())?,
            kept: spliced(&state.kept, self.kept.as_ref())?,
            versions: spliced(&state.versions, self.versions.as_ref())?,
            rest: match &self.rest {
                Some(rest) => Rc::clone(&rest.0),
                None => Rc::clone(&state.rest),
            },
        })
    }
}

/// A list changed in one place: from `at` on, `gone` entries go and others
/// come.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
struct Splice<T> {
    at: usize,
    gone: usize,
    come: Vec<Shared<T>>,
}

impl<T: PartialEq> Splice<T> {
    /// Nothing where the lists are the same.
    fn between(from: &[Rc<T>], to: &[Rc<T>]) -> Option<Self> {
        let same = |(a, b): &(&Rc<T>, &Rc<T>)| Rc::ptr_eq(a, b) || a == b;
        let at = from.iter().zip(to).take_while(same).count();
        let (from, to) = (&from[at..], &to[at..]);
        let backwards = from.iter().rev().zip(to.iter().rev());
        let end = backwards.take_while(same).count();
        let come = &to[..to.len() - end];
        let gone = from.len() - end;
        (gone > 0 || !come.is_empty()).then(|| Self {
            at,
            gone,
            come: come.iter().map(Rc::clone).map(Shared).collect(),
        })
    }
}

/// The list with its change; nothing where the change does not fit.
fn spliced<T>(list: &[Rc<T>], splice: Option<&Splice<T>>) -> Option<Vec<Rc<T>>> {
    let Some(Splice { at, gone, come }) = splice else {
        return Some(list.to_vec());
    };
    let end = at.checked_add(*gone).filter(|end| *end <= list.len())?;
    let mut new = list.to_vec();
    new.splice(*at..end, come.iter().map(|one| Rc::clone(&one.0)));
    Some(new)
}

/// Something that states share. It is stored as what it is.
#[derive(Debug, PartialEq, Eq)]
struct Shared<T>(Rc<T>);

impl<T> Clone for Shared<T> {
    fn clone(&self) -> Self {
        Self(Rc::clone(&self.0))
    }
}

impl<T: Serialize> Serialize for Shared<T> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.0.serialize(serializer)
    }
}

impl<'de, T: Deserialize<'de>> Deserialize<'de> for Shared<T> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        T::deserialize(deserializer).map(|value| Self(Rc::new(value)))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_list_is_changed_in_one_place() {
        for (from, to, (at, gone, come)) in [
            ("abc", "abxc", (2, 0, "x")),
            ("abc", "ac", (1, 1, "")),
            ("abc", "axc", (1, 1, "x")),
            ("aa", "aaa", (2, 0, "a")),
            ("", "ab", (0, 0, "ab")),
            ("abc", "cba", (0, 3, "cba")),
        ] {
            let list = |text: &str| text.chars().map(Rc::new).collect::<Vec<_>>();
            let (from, to) = (list(from), list(to));
            let splice = Splice::between(&from, &to).expect("a change");
            let came: String = splice.come.iter().map(|one| *one.0).collect();
            assert_eq!((splice.at, splice.gone, came.as_str()), (at, gone, come));
            assert_eq!(spliced(&from, Some(&splice)), Some(to));
            assert_eq!(Splice::between(&from, &from), None);
        }
        let beyond = Splice {
            at: 2,
            gone: 2,
            come: vec![],
        };
        assert_eq!(spliced(&[Rc::new(1), Rc::new(2)], Some(&beyond)), None);
    }
}
