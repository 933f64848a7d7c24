# The page's frame: header, footer, messages, and words that many views use.

frame-skip = Skip to the page’s content
frame-views = Views
frame-recipes = Recipes
frame-weeks = Weeks
frame-foods = Foods
frame-rules = Rules
frame-about = About & files
frame-undo = Undo
frame-redo = Redo
frame-close = Close
frame-language = Language
frame-taken-out = “{ $title }” was taken out of the book.

frame-opening = Opening the food tables …
frame-not-opened = The food tables could not be opened
frame-try-again = Try again
frame-nothing-lost = Nothing you have written is lost: it is stored apart from the food tables. Without them no recipe can be read. Check the connection and try again; if it fails again, load the page anew.
frame-not-served = the server answered { $status } { $text } instead of the tables

frame-is-not = For planning only. Not software that the Food and Nutrition Service has evaluated (7 CFR 210.10(i)), and no substitute for the review that federal programs require, or for the advice of a licensed dietitian or physician.
frame-more = What it is and is not
frame-data = Food values: USDA National Nutrient Database for Standard Reference, Release 28.

frame-saved = Saved in this browser
frame-saving = Saving …
frame-demo = Example book, not saved yet
frame-not-saved = Not saved
frame-save-refused = This browser lets the page store nothing (a private window, or storage is blocked). Your changes live only until the page is closed: save the book as a file.
frame-save-full = The browser’s storage has no room left, so the latest changes are not stored. Save the book as a file, or free room by removing recipes.
frame-save-changed-elsewhere = Another tab has stored a change of the book. So that neither is lost, nothing more is stored from here until you choose.
frame-save-holds-unreadable = The stored book could not be read and is left as it is, so nothing is stored from here until you choose.
frame-unreadable = The book stored in this browser cannot be read ({ $why }). It is left as it is; the example book is shown meanwhile.
frame-save-unreadable = Save its text as a file
frame-put-aside = Put it aside and go on
frame-save-file = Save the book as a file
frame-take-other = Show the other tab’s book
frame-keep-this = Keep this tab’s book
frame-notices = Messages

frame-no-number = “{ $text }” is not a number: write digits, as in 250 or 2.5
frame-unit-of = Unit of: { $label }
frame-below = { $text } is too little: write { $least } or more
frame-unknown = unknown
frame-untitled = Untitled
frame-met = met
frame-missed = missed
frame-not-known = unknown
frame-standing-verified = read in its source
frame-standing-copy = read in a copy, not in the rule itself
frame-standing-derived = worked out from other figures of the rule
frame-standing-memory = from memory: check it before relying on it
frame-standing-not-sure = from memory and not sure: check it before relying on it
frame-answers =
    { $count ->
        [0] nothing found
        [one] 1 found; the arrow keys choose
       *[other] { $count } found; the arrow keys choose
    }
frame-not-analysed = { $date }: “{ $title }” has no figures yet: open its card and mend what it reports
frame-left-out = Kept in the book, but not in use until it is mended:
frame-own-dietary = Own limits on the average meal
frame-own-patterns = Own amounts of components
frame-own-week-rules = Own shares, options and product limits
frame-history-cut = The { $cut } oldest steps did not fit into this browser’s storage when the page was last closed. Undo goes back { $left } steps from here.
