//! Which view the address asks for. Addresses are fragments (`#/recipe/chili`),
//! so that the page needs no server that knows them.

use engine::foods::FoodId;
use engine::recipe::RecipeId;
use engine::week::{Date, WeekId};

/// A view of the page.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub enum Route {
    /// All recipes of the book.
    #[default]
    Recipes,
    /// One recipe's card.
    Recipe(RecipeId),
    /// One recipe's card, and what else could go in a line, by its index.
    Swaps(RecipeId, usize),
    /// The versions of a recipe.
    Versions(RecipeId),
    /// One recipe's Nutrition Facts panel.
    Facts(RecipeId),
    /// One recipe's page for families.
    RecipeForFamilies(RecipeId),
    /// All weeks of the book.
    Weeks,
    /// One week.
    Week(WeekId),
    /// One week's page for families.
    WeekForFamilies(WeekId),
    /// One week's printout for a review.
    Review(WeekId),
    /// A month at a glance; this one where none is named.
    Month(Option<Date>),
    /// A day of a week in the kitchens; the first there is where none is named.
    Kitchen(Option<WeekId>, Option<Date>),
    /// What to buy for a week or a day of it.
    Buying(Option<WeekId>, Option<Date>),
    /// The rules in force, today or on a date, and the office's own.
    Rules(Option<Date>),
    /// The office's own foods, and the search over all foods.
    Foods,
    /// One food: its values, and its form where it is the office's own.
    Food(FoodId),
    /// Where the data comes from, what the page is not, and files.
    About,
}

impl Route {
    /// Reads a fragment; anything unknown leads to the recipes.
    pub fn from_fragment(fragment: &str) -> Self {
        let path = fragment.trim_start_matches('#').trim_matches('/');
        let parts: Vec<&str> = path.split('/').collect();
        match parts[..] {
            ["recipe", id] => Self::Recipe(RecipeId(unescape(id))),
            ["recipe", id, "line", number] => {
                let id = RecipeId(unescape(id));
                // Addresses count lines as people do, from 1.
                match number
                    .parse::<usize>()
                    .ok()
                    .and_then(|line| line.checked_sub(1))
                {
                    Some(line) => Self::Swaps(id, line),
                    None => Self::Recipe(id),
                }
            }
            ["recipe", id, "versions"] => Self::Versions(RecipeId(unescape(id))),
            ["recipe", id, "facts"] => Self::Facts(RecipeId(unescape(id))),
            ["recipe", id, "families"] => Self::RecipeForFamilies(RecipeId(unescape(id))),
            ["weeks"] => Self::Weeks,
            ["week", id] => Self::Week(WeekId(unescape(id))),
            ["week", id, "families"] => Self::WeekForFamilies(WeekId(unescape(id))),
            ["week", id, "review"] => Self::Review(WeekId(unescape(id))),
            ["month"] => Self::Month(None),
            ["month", date] => Self::Month(date.parse().ok()),
            ["kitchen"] => Self::Kitchen(None, None),
            ["kitchen", id] => Self::Kitchen(Some(WeekId(unescape(id))), None),
            ["kitchen", id, date] => Self::Kitchen(Some(WeekId(unescape(id))), date.parse().ok()),
            ["buying"] => Self::Buying(None, None),
            ["buying", id] => Self::Buying(Some(WeekId(unescape(id))), None),
            ["buying", id, date] => Self::Buying(Some(WeekId(unescape(id))), date.parse().ok()),
            ["rules"] => Self::Rules(None),
            ["rules", date] => Self::Rules(date.parse().ok()),
            ["foods"] => Self::Foods,
            ["food", id] => unescape(id).parse().map_or(Self::Foods, Self::Food),
            ["about"] => Self::About,
            _ => Self::Recipes,
        }
    }

    /// The recipe whose card is shown, with or without a panel on it.
    pub fn card(&self) -> Option<&RecipeId> {
        match self {
            Self::Recipe(id) | Self::Swaps(id, _) => Some(id),
            _ => None,
        }
    }

    /// The fragment that leads here.
    pub fn fragment(&self) -> String {
        match self {
            Self::Recipes => "#/recipes".to_owned(),
            Self::Recipe(id) => format!("#/recipe/{}", escape(&id.0)),
            Self::Swaps(id, line) => format!("#/recipe/{}/line/{}", escape(&id.0), line + 1),
            Self::Versions(id) => format!("#/recipe/{}/versions", escape(&id.0)),
            Self::Facts(id) => format!("#/recipe/{}/facts", escape(&id.0)),
            Self::RecipeForFamilies(id) => format!("#/recipe/{}/families", escape(&id.0)),
            Self::Weeks => "#/weeks".to_owned(),
            Self::Week(id) => format!("#/week/{}", escape(&id.0)),
            Self::WeekForFamilies(id) => format!("#/week/{}/families", escape(&id.0)),
            Self::Review(id) => format!("#/week/{}/review", escape(&id.0)),
            Self::Month(None) => "#/month".to_owned(),
            Self::Month(Some(date)) => format!("#/month/{date}"),
            Self::Kitchen(week, date) => of_week("kitchen", week.as_ref(), *date),
            Self::Buying(week, date) => of_week("buying", week.as_ref(), *date),
            Self::Rules(None) => "#/rules".to_owned(),
            Self::Rules(Some(date)) => format!("#/rules/{date}"),
            Self::Foods => "#/foods".to_owned(),
            Self::Food(id) => format!("#/food/{}", escape(&id.to_string())),
            Self::About => "#/about".to_owned(),
        }
    }
}

/// A view of a week or of one of its days.
fn of_week(view: &str, week: Option<&WeekId>, date: Option<Date>) -> String {
    match (week, date) {
        (None, _) => format!("#/{view}"),
        (Some(week), None) => format!("#/{view}/{}", escape(&week.0)),
        (Some(week), Some(date)) => format!("#/{view}/{}/{date}", escape(&week.0)),
    }
}

/// Percent-encodes all bytes that are not unreserved (RFC 3986, 2.3).
fn escape(text: &str) -> String {
    let mut escaped = String::new();
    for byte in text.bytes() {
        if byte.is_ascii_alphanumeric() || b"-._~".contains(&byte) {
            escaped.push(char::from(byte));
        } else {
            escaped.push_str(&format!("%{byte:02X}"));
        }
    }
    escaped
}

fn unescape(text: &str) -> String {
    let mut bytes = Vec::new();
    let mut rest = text.as_bytes();
    while let [first, tail @ ..] = rest {
        let hex = || std::str::from_utf8(tail.get(..2)?).ok();
        let byte = hex().and_then(|hex| u8::from_str_radix(hex, 16).ok());
        match (first, byte) {
            (b'%', Some(byte)) => {
                bytes.push(byte);
                rest = &tail[2..];
            }
            _ => {
                bytes.push(*first);
                rest = tail;
            }
        }
    }
    String::from_utf8_lossy(&bytes).into_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn addresses_lead_back_to_their_view() {
        for id in ["chili", "crème brûlée/2", "100 %", "a%2Fb"] {
            for route in [
                Route::Recipe(RecipeId(id.into())),
                Route::Facts(RecipeId(id.into())),
                Route::Swaps(RecipeId(id.into()), 0),
                Route::Versions(RecipeId(id.into())),
                Route::RecipeForFamilies(RecipeId(id.into())),
                Route::Week(WeekId(id.into())),
                Route::WeekForFamilies(WeekId(id.into())),
                Route::Review(WeekId(id.into())),
                Route::Kitchen(Some(WeekId(id.into())), None),
                Route::Buying(Some(WeekId(id.into())), "2026-11-30".parse().ok()),
            ] {
                assert_eq!(Route::from_fragment(&route.fragment()), route);
            }
        }
        for route in [
            Route::Recipes,
            Route::Weeks,
            Route::Month(None),
            Route::Month("2026-12-01".parse().ok()),
            Route::Kitchen(None, None),
            Route::Buying(None, None),
            Route::Rules(None),
            Route::Rules("2026-11-30".parse().ok()),
            Route::Foods,
            Route::Food(FoodId::Own(7)),
            Route::Food(FoodId::Sr28(1001)),
            Route::About,
        ] {
            assert_eq!(Route::from_fragment(&route.fragment()), route);
        }
    }

    #[test]
    fn unknown_addresses_lead_to_the_recipes() {
        for fragment in ["", "#", "#/", "#/no/such/view", "#/recipe/a/b"] {
            assert_eq!(Route::from_fragment(fragment), Route::Recipes, "{fragment}");
        }
    }
}
