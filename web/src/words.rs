//! The page's words that belong to no single view. Each view keeps its own in
//! a module of this name beside it.

use crate::book_file::BookFileError;
use crate::language::{Say, say};
use crate::storage::SaveProblem;

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

/// While the tables are fetched.
pub const OPENING: &str = "Opening the food tables …";
/// Heading of the failure panel.
pub const NOT_OPENED: &str = "The food tables could not be opened";
/// Tries again.
pub const TRY_AGAIN: &str = "Try again";
/// What a failure means for the user's work.
pub const NOTHING_LOST: &str = "Nothing you have written is lost: it is stored apart from the food tables. \
     Without them no recipe can be read. Check the connection and try again; \
     if it fails again, load the page anew.";

/// The server's answer when the tables are not there.
pub fn not_served(status: u16, text: &str) -> String {
    format!("the server answered {status} {text} instead of the tables")
}

/// The short form of what the page is not.
pub const IS_NOT: &str = "For planning only. Not software that the Food and Nutrition Service has \
     evaluated (7 CFR 210.10(i)), and no substitute for the review that federal programs require, or for \
     the advice of a licensed dietitian or physician.";
/// Where the footer leads.
pub const MORE: &str = "What it is and is not";
/// The short citation of the data.
pub const DATA: &str =
    "Food values: USDA National Nutrient Database for Standard Reference, Release 28.";

/// All changes are stored.
pub const SAVED: &str = "Saved in this browser";
/// Changes wait to be stored.
pub const SAVING: &str = "Saving …";
/// The demo book has not been touched.
pub const DEMO: &str = "Example book, not saved yet";
/// Changes are not stored.
pub const NOT_SAVED: &str = "Not saved";

/// Why a book is not stored and what to do.
pub fn save_problem(problem: SaveProblem) -> &'static str {
    match problem {
        SaveProblem::Refused => {
            "This browser lets the page store nothing (a private window, or storage is blocked). \
             Your changes live only until the page is closed: save the book as a file."
        }
        SaveProblem::Full => {
            "The browser’s storage has no room left, so the latest changes are not stored. \
             Save the book as a file, or free room by removing recipes."
        }
        SaveProblem::ChangedElsewhere => {
            "Another tab has stored a change of the book. So that neither is lost, nothing more is \
             stored from here until you choose."
        }
        SaveProblem::HoldsUnreadable => {
            "The stored book could not be read and is left as it is, so nothing is stored from here \
             until you choose."
        }
    }
}

/// The stored text is no book.
pub fn unreadable(why: &BookFileError) -> String {
    format!(
        "The book stored in this browser cannot be read ({why}). It is left as it is; the example \
         book is shown meanwhile."
    )
}

/// Saves the unreadable text as a file.
pub const SAVE_UNREADABLE: &str = "Save its text as a file";
/// Makes room for a new book.
pub const PUT_ASIDE: &str = "Put it aside and go on";
/// Saves the book as a file.
pub const SAVE_FILE: &str = "Save the book as a file";
/// Takes the other tab's book.
pub const TAKE_OTHER: &str = "Show the other tab’s book";
/// Keeps this tab's book.
pub const KEEP_THIS: &str = "Keep this tab’s book";
/// Heading of messages.
pub const NOTICES: &str = "Messages";

/// A number that cannot be read.
pub fn no_number(text: &str) -> String {
    format!("“{text}” is not a number: write digits, as in 250 or 2.5")
}

/// Label of the choice of a unit beside a field.
pub fn unit_of(label: &str) -> String {
    format!("Unit of: {label}")
}

/// A number that is too small.
pub fn below(text: &str, least: &str) -> String {
    format!("{text} is too little: write {least} or more")
}

/// Something was taken out of the book.
pub fn taken_out(title: &str) -> String {
    say("frame-taken-out", &[("title", title.into())])
}

/// Nothing is known of a figure.
pub const UNKNOWN: &str = "unknown";
/// The name of something without a title.
pub const UNTITLED: &str = "Untitled";

/// A title, or a stand-in for an empty one.
pub fn title_or_untitled(title: &str) -> &str {
    if title.trim().is_empty() {
        UNTITLED
    } else {
        title
    }
}

/// Words of verdicts.
pub mod verdict {
    /// The requirement is kept.
    pub const MET: &str = "met";
    /// It is not kept.
    pub const MISSED: &str = "missed";
    /// It cannot be told.
    pub const UNKNOWN: &str = "unknown";
}

/// Words of how sure a rule's figure is.
pub mod standing {
    /// The status of a figure that was read in its source.
    pub const VERIFIED: &str = "verified";

    /// Whether a figure was written down without its source at hand.
    pub fn is_from_memory(status: &str) -> bool {
        status.starts_with("from memory")
    }

    /// A status in a few words; an office's own is given as it stands.
    pub fn of(status: &str) -> &str {
        match status {
            VERIFIED => "read in its source",
            "verified from a secondary copy" => "read in a copy, not in the rule itself",
            "derived" => "worked out from other figures of the rule",
            "from memory" => "from memory: check it before relying on it",
            "from memory, low confidence" => {
                "from memory and not sure: check it before relying on it"
            }
            other => other,
        }
    }
}

/// Words of the search fields.
pub mod picker {
    /// How many answers there are, for those who cannot see the list.
    pub fn answers(count: usize) -> String {
        match count {
            0 => "nothing found".to_owned(),
            1 => "1 found; the arrow keys choose".to_owned(),
            _ => format!("{count} found; the arrow keys choose"),
        }
    }
}

/// A recipe of the week has no figures.
pub fn not_analysed(date: &str, title: &str) -> String {
    format!("{date}: “{title}” has no figures yet: open its card and mend what it reports")
}

/// Some of the book's own foods and limits cannot be used.
pub const LEFT_OUT: &str = "Kept in the book, but not in use until it is mended:";

/// Tables of limits that an office can write itself.
pub mod own_table {
    use crate::state::OwnTable;

    /// A table's name.
    pub fn name(table: OwnTable) -> &'static str {
        match table {
            OwnTable::DietarySpecifications => "Own limits on the average meal",
            OwnTable::MealPatterns => "Own amounts of components",
            OwnTable::WeekRules => "Own shares, options and product limits",
        }
    }
}

/// Title of the document while something of the book is shown.
pub fn document_title(shown: &str, page: &str) -> String {
    format!("{shown} – {page}")
}
