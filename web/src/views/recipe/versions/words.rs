//! Words about versions of a recipe.

use crate::language::{Say, say};
use engine::allergens::Presence;
use engine::week::Date;

pub const LEAD: Say = Say("versions-lead");
pub const NONE: Say = Say("versions-none");
pub const KEPT: Say = Say("versions-kept");
pub const NAME: Say = Say("versions-name");
pub const NAME_EXAMPLE: Say = Say("versions-name-example");
pub const NEEDS_NAME: Say = Say("versions-needs-name");
pub const KEEP_IT: Say = Say("versions-keep-it");
pub const GO_BACK: Say = Say("versions-go-back");
pub const REMOVE: Say = Say("versions-remove");
pub const PRINT: Say = Say("versions-print");
pub const WAY: Say = Say("versions-way");

pub const SIDE_BY_SIDE: Say = Say("versions-side-by-side");
pub const LEFT: Say = Say("versions-left");
pub const RIGHT: Say = Say("versions-right");
pub const AS_IT_STANDS: Say = Say("versions-as-it-stands");
pub const AS_LAST_KEPT: Say = Say("versions-as-last-kept");

pub const LINES: Say = Say("versions-lines");
pub const WEIGHT: Say = Say("versions-weight");
pub const DIFFERS: Say = Say("versions-differs");
pub const FIGURES: Say = Say("versions-figures");
pub const NUTRIENT: Say = Say("versions-nutrient");
pub const CHANGE: Say = Say("versions-change");
pub const UNKNOWN: Say = Say("versions-unknown");
pub const CREDITS: Say = Say("versions-credits");
pub const COMPONENT: Say = Say("versions-component");
pub const NOTHING: Say = Say("versions-nothing");
pub const NO_CREDITS: Say = Say("versions-no-credits");
pub const ALLERGENS: Say = Say("versions-allergens");
pub const ALLERGEN: Say = Say("versions-allergen");
pub const NO_ALLERGENS: Say = Say("versions-no-allergens");

/// The view's name for one recipe.
pub fn title_of(title: &str) -> String {
    say("versions-title-of", &[("title", title.into())])
}

/// Leads back to the card.
pub fn back_to(title: &str) -> String {
    say("versions-back-to", &[("title", title.into())])
}

/// A version among the forms of a card.
pub fn version(name: &str) -> String {
    say("versions-version", &[("name", name.into())])
}

/// A version was kept.
pub fn kept(name: &str) -> String {
    say("versions-was-kept", &[("name", name.into())])
}

/// The day on which a version was kept.
pub fn kept_on(day: Date) -> String {
    say(
        "versions-kept-on",
        &[("day", crate::format::date(day).into())],
    )
}

/// The card is again as a version was.
pub fn gone_back(name: &str) -> String {
    say("versions-gone-back", &[("name", name.into())])
}

/// What words say of an allergen.
pub fn presence(presence: Presence) -> String {
    let key = match presence {
        Presence::Contains => "versions-contains",
        Presence::MayBePresent => "versions-may-contain",
        Presence::Unknown => "versions-not-named",
    };
    Say(key).to_string()
}
