//! The page's words that belong to no single view. Each view keeps its own in
//! a module of this name beside it.

use crate::language::{Say, say};
use crate::storage::SaveProblem;
use engine::exchange::Problem;

/// The page's name.
pub const NAME: &str = "Gramwright";
/// Leads keyboard users past the header.
pub const SKIP: Say = Say("frame-skip");
/// Label of the list of views.
pub const VIEWS: Say = Say("frame-views");
/// The view of all recipes.
pub const RECIPES: Say = Say("frame-recipes");
/// The view of all weeks.
pub const WEEKS: Say = Say("frame-weeks");
/// The view of foods.
pub const FOODS: Say = Say("frame-foods");
/// The view of rules.
pub const RULES: Say = Say("frame-rules");
/// The view of sources and files.
pub const ABOUT: Say = Say("frame-about");
/// Takes a step back.
pub const UNDO: Say = Say("frame-undo");
/// Does a step again.
pub const REDO: Say = Say("frame-redo");
/// Closes a panel or a message.
pub const CLOSE: Say = Say("frame-close");

/// Label of the choice of a language.
pub const LANGUAGE: Say = Say("frame-language");

/// While the tables are fetched.
pub const OPENING: Say = Say("frame-opening");
/// Heading of the failure panel.
pub const NOT_OPENED: Say = Say("frame-not-opened");
/// Tries again.
pub const TRY_AGAIN: Say = Say("frame-try-again");
/// What a failure means for the user's work.
pub const NOTHING_LOST: Say = Say("frame-nothing-lost");

/// The server's answer when the tables are not there.
pub fn not_served(status: u16, text: &str) -> String {
    let status = status.to_string();
    say(
        "frame-not-served",
        &[("status", status.into()), ("text", text.into())],
    )
}

/// The short form of what the page is not.
pub const IS_NOT: Say = Say("frame-is-not");
/// Where the footer leads.
pub const MORE: Say = Say("frame-more");
/// The short citation of the data.
pub const DATA: Say = Say("frame-data");

/// All changes are stored.
pub const SAVED: Say = Say("frame-saved");
/// Changes wait to be stored.
pub const SAVING: Say = Say("frame-saving");
/// The demo book has not been touched.
pub const DEMO: Say = Say("frame-demo");
/// Changes are not stored.
pub const NOT_SAVED: Say = Say("frame-not-saved");

/// Why a book is not stored and what to do.
pub fn save_problem(problem: SaveProblem) -> Say {
    match problem {
        SaveProblem::Refused => Say("frame-save-refused"),
        SaveProblem::Full => Say("frame-save-full"),
        SaveProblem::ChangedElsewhere => Say("frame-save-changed-elsewhere"),
        SaveProblem::HoldsUnreadable => Say("frame-save-holds-unreadable"),
    }
}

/// The stored text is no book.
pub fn unreadable(why: &Problem) -> String {
    say(
        "frame-unreadable",
        &[("why", crate::troubles::told(why).into())],
    )
}

/// Saves the unreadable text as a file.
pub const SAVE_UNREADABLE: Say = Say("frame-save-unreadable");
/// Makes room for a new book.
pub const PUT_ASIDE: Say = Say("frame-put-aside");
/// Saves the book as a file.
pub const SAVE_FILE: Say = Say("frame-save-file");
/// Takes the other tab's book.
pub const TAKE_OTHER: Say = Say("frame-take-other");
/// Keeps this tab's book.
pub const KEEP_THIS: Say = Say("frame-keep-this");
/// Heading of messages.
pub const NOTICES: Say = Say("frame-notices");

/// A number that cannot be read.
pub fn no_number(text: &str) -> String {
    say("frame-no-number", &[("text", text.into())])
}

/// Label of the choice of a unit beside a field.
pub fn unit_of(label: &str) -> String {
    say("frame-unit-of", &[("label", label.into())])
}

/// A number that is too small.
pub fn below(text: &str, least: &str) -> String {
    say(
        "frame-below",
        &[("text", text.into()), ("least", least.into())],
    )
}

/// Something was taken out of the book.
pub fn taken_out(title: &str) -> String {
    say("frame-taken-out", &[("title", title.into())])
}

/// Not all steps of the visits before are there.
pub fn history_cut(cut: usize, left: usize) -> String {
    say(
        "frame-history-cut",
        &[("cut", cut.into()), ("left", left.into())],
    )
}

/// Nothing is known of a figure.
pub const UNKNOWN: Say = Say("frame-unknown");

/// A title, or a stand-in for an empty one.
pub fn title_or_untitled(title: &str) -> String {
    if title.trim().is_empty() {
        Say("frame-untitled").to_string()
    } else {
        title.to_owned()
    }
}

/// Words of verdicts.
pub mod verdict {
    use crate::language::Say;

    /// The requirement is kept.
    pub const MET: Say = Say("frame-met");
    /// It is not kept.
    pub const MISSED: Say = Say("frame-missed");
    /// It cannot be told.
    pub const UNKNOWN: Say = Say("frame-not-known");
}

/// Words of how sure a rule's figure is.
pub mod standing {
    use crate::language::Say;

    /// The status of a figure that was read in its source.
    pub const VERIFIED: &str = "verified";

    /// Whether a figure was written down without its source at hand.
    pub fn is_from_memory(status: &str) -> bool {
        status.starts_with("from memory")
    }

    /// A status in a few words; an office's own is given as it stands.
    pub fn of(status: &str) -> String {
        let known = match status {
            VERIFIED => Say("frame-standing-verified"),
            "verified from a secondary copy" => Say("frame-standing-copy"),
            "derived" => Say("frame-standing-derived"),
            "from memory" => Say("frame-standing-memory"),
            "from memory, low confidence" => Say("frame-standing-not-sure"),
            other => return other.to_owned(),
        };
        known.to_string()
    }
}

/// Words of the search fields.
pub mod picker {
    use crate::language::say;

    /// How many answers there are, for those who cannot see the list.
    pub fn answers(count: usize) -> String {
        say("frame-answers", &[("count", count.into())])
    }
}

/// A recipe of the week has no figures.
pub fn not_analysed(date: &str, title: &str) -> String {
    say(
        "frame-not-analysed",
        &[("date", date.into()), ("title", title.into())],
    )
}

/// Some of the book's own foods and limits cannot be used.
pub const LEFT_OUT: Say = Say("frame-left-out");

/// Tables of limits that an office can write itself.
pub mod own_table {
    use crate::language::Say;
    use crate::state::OwnTable;

    /// A table's name.
    pub fn name(table: OwnTable) -> Say {
        match table {
            OwnTable::DietarySpecifications => Say("frame-own-dietary"),
            OwnTable::MealPatterns => Say("frame-own-patterns"),
            OwnTable::WeekRules => Say("frame-own-week-rules"),
        }
    }
}

/// Title of the document while something of the book is shown.
pub fn document_title(shown: &str, page: &str) -> String {
    format!("{shown} – {page}")
}
