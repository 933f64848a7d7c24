//! Words of the view of sources and files.

pub const TITLE: &str = "About this page, and files";
pub const LEAD: &str = "Gramwright reads recipes as they are written on a card, finds what each line weighs \
     and which food of the national tables it means, and adds up what a serving and a week of menus contain.";

pub const FILES_HEADING: &str = "Your book as a file";
pub const FILES: &str = "Recipes and weeks are stored in this browser only. Clearing the browser’s data \
     removes them, and another computer does not see them: browser storage is no backup. \
     Save the book as a file often, and keep the file where your office keeps its records.";
pub const OFFICE: &str = "Whose book this is";
pub const OPEN: &str = "Open a book file …";
pub const EMPTY: &str = "Start an empty book";
pub const DEMO: &str = "Open the example book";
pub const EMPTIED: &str =
    "An empty book lies open. The one before is not stored any more: Undo brings it back.";
pub const DEMO_OPENED: &str = "The example book lies open. Undo brings back the one before.";

/// Name of the file for an office's book.
pub fn file_name(office: &str) -> String {
    let plain: String = office
        .to_lowercase()
        .chars()
        .map(|c| if c.is_alphanumeric() { c } else { '-' })
        .collect();
    match plain.trim_matches('-') {
        "" => "recipe-book.json".to_owned(),
        plain => format!("{plain}-book.json"),
    }
}

/// A file has been opened.
pub fn opened(name: &str) -> String {
    format!("The book from “{name}” lies open. Undo brings back the one before.")
}

/// A file cannot be opened.
pub fn not_opened(name: &str, why: &str) -> String {
    format!("“{name}” was not opened, and nothing has changed. {why}.")
}

pub const IS_NOT_HEADING: &str = "What it is not";
pub const LIMITS: [&str; 4] = [
    "Federal programs: the Food and Nutrition Service evaluates nutrient analysis software before \
     schools rely on it (7 CFR 210.10(i)). This page has not been evaluated. It helps to plan; the \
     figures that a review needs come from the software and the review that the programs require.",
    "Diets: figures here do not replace the advice of a licensed dietitian or physician. For a medical \
     diet follow the written order of the person licensed to give it.",
    "Allergens: a recipe’s words cannot show what a product contains or has touched. Read the label of \
     every product, every time, and follow your own allergen procedure.",
    "Rules change, and States and districts add their own: the citation beside each limit says where it \
     was read and from when it holds. Where your State agency says otherwise, it is right.",
];

pub const DATA_HEADING: &str = "Where the figures come from";
pub const DATA: [&str; 2] = [
    "All food values are those of the USDA National Nutrient Database for Standard Reference, Release 28 \
     (SR28), per 100 g of edible food, exactly as published. It is in the public domain. It has no values \
     for added sugars, and where it has no value for a food, this page says so and never counts it as zero.",
    "SR28 describes foods on average. A product of one brand differs: where a label or a product \
     specification is at hand, trust it more.",
];
pub const CITATION: &str = "US Department of Agriculture, Agricultural Research Service, Nutrient Data \
     Laboratory. USDA National Nutrient Database for Standard Reference, Release 28. Version Current: \
     September 2015, slightly revised May 2016.";

pub const FIGURES_HEADING: &str = "How to read the figures";
pub const FIGURES: [(&str, &str); 5] = [
    (
        "≥ 310 mg",
        "At least this much: some of the food has no value, or an amount is not known.",
    ),
    (
        "known for 93 %",
        "The share of the food’s weight whose value is known. The rest is not zero, it is not known.",
    ),
    ("unknown", "Nothing is known, so nothing is printed."),
    (
        "met, missed, unknown",
        "A requirement is unknown when what is missing could decide it either way.",
    ),
    (
        "before → now",
        "The recipe as you last kept it, and as it stands now.",
    ),
];

pub const PRIVACY_HEADING: &str = "Nothing is sent anywhere";
pub const PRIVACY: [&str; 1] = [
    "Everything is computed in this browser, with or without a network. The page sends no recipe, no \
     figure and no count of visits to anyone.",
];
