//! What kinds of words there are, and how much each counts.
//!
//! Weights are thousandths of a word that names a food. They are judgements,
//! tuned on the hand-labelled searches of `engine/tests/search_labels.csv`; no source.

use std::collections::BTreeMap;

/// What a word tells about a food.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// Says nothing ("of", "and").
    Joining,
    /// What a cook does or buys that seldom makes another entry ("diced").
    Handling,
    /// The form that is meant when nothing is said ("raw", "regular").
    Usual,
    /// A form that must be asked for ("canned", "cooked", "breaded").
    State {
        /// What an entry loses when the query does not ask for it.
        unasked: u16,
    },
    /// A heading of the dataset in front of the food's own name ("Spices,").
    Heading {
        /// What an entry loses when the query does not name it.
        unasked: u16,
    },
    /// The name of a food, a cut, a variety, a brand.
    Name,
}

/// Weight of a handling word in a query.
pub const HANDLING_WEIGHT: u32 = 120;
/// Weight of a word that asks for a state.
pub const STATE_WEIGHT: u32 = 800;
/// Weight of a word that asks for the usual form.
pub const USUAL_WEIGHT: u32 = 450;
/// Weight of a heading in a query.
pub const HEADING_WEIGHT: u32 = 500;

/// Words that say nothing.
const JOINING: &str = "\
    a an and any as at been by for from have in into may n of on or other previously than \
    the to type used with without";

/// Words for cuts, sizes and grades.
const HANDLING: &str = "\
    approximately beaten bite bulk bunch center chilled chopped chunk clove coarse coarsely \
    cold crumbled crushed cube cubed cut deveined diced fillet fine finely floret freshly \
    fully good grated halved head hot iodized julienned jumbo kosher large lean medium \
    melted minced optional organic packed peel peeled piece pitted quality quartered rinsed \
    seeded shredded sifted size sized slice sliced slivered small softened square stalk stem \
    stemmed stick strip style thawed thick thin thinly trimmed uncut warm washed wedge";

/// Words for the usual form, and fillers of descriptions.
const USUAL: &str = "\
    acting added all area average boneless bottle bottled broiler class commercial \
    commercially commodity composite cultured d domesticated double eat enriched flesh fluid \
    food fresh fryer grade grain gram household include kernel less long lunch mature meat \
    mixed ounce pack part per plain portion prepackaged purchased purpose raw ready \
    refrigerated regular retail ripe round school seed separable serve serving skin skinless \
    solid species standard table unheated unprepared unspecified usda variety vitamin whole \
    year";

/// Words for a state, and what an entry loses that has one unasked.
const STATES: &[(&str, u16)] = &[
    ("alone", 400),
    ("artificial", 300),
    ("baby", 250),
    ("baked", 350),
    ("batter", 400),
    ("bleached", 10),
    ("boiled", 400),
    ("braised", 400),
    ("breaded", 450),
    ("broiled", 400),
    ("calcium", 150),
    ("candied", 300),
    ("canned", 350),
    ("concentrate", 350),
    ("condensed", 150),
    ("cooked", 450),
    ("creamed", 200),
    ("crude", 100),
    ("decaffeinated", 300),
    ("dehydrated", 400),
    ("diet", 350),
    ("dietary", 300),
    ("diluted", 200),
    ("dough", 250),
    ("drained", 30),
    ("dried", 200),
    ("dry", 60),
    ("evaporated", 300),
    ("fat", 30),
    ("fortified", 120),
    ("freeze", 300),
    ("fried", 450),
    ("frozen", 300),
    ("glazed", 300),
    ("gluten", 350),
    ("grilled", 400),
    ("ground", 150),
    ("heated", 300),
    ("hydrogenated", 200),
    ("imitation", 500),
    ("imported", 350),
    ("industrial", 450),
    ("infant", 800),
    ("instant", 300),
    ("juice", 150),
    ("lessodium", 350),
    ("light", 250),
    ("liquid", 50),
    ("low", 250),
    ("lowfat", 200),
    ("lowsodium", 350),
    ("meatless", 500),
    ("microwaved", 400),
    ("mix", 300),
    ("nonfat", 250),
    ("oil", 200),
    ("only", 40),
    ("pan", 250),
    ("pasteurized", 60),
    ("pickled", 350),
    ("powder", 200),
    ("powdered", 200),
    ("precooked", 350),
    ("prepared", 150),
    ("puree", 250),
    ("reduced", 300),
    ("replacement", 400),
    ("roasted", 300),
    ("salted", 130),
    ("sauteed", 350),
    ("separated", 600),
    ("simmered", 400),
    ("smoked", 350),
    ("sodium", 150),
    ("sprouted", 450),
    ("steamed", 350),
    ("stewed", 350),
    ("stir", 300),
    ("substitute", 500),
    ("sugar", 200),
    ("sweetened", 200),
    ("syrup", 200),
    ("toasted", 350),
    ("unbaked", 60),
    ("unbleached", 20),
    ("undiluted", 100),
    ("unenriched", 120),
    ("unsalted", 12),
    ("unsweetened", 50),
    ("water", 80),
    ("white", 60),
    ("wholegrain", 150),
    ("wild", 250),
];

/// Headings of the dataset that are not the food's own name.
const HEADINGS: &[(&str, u16)] = &[
    ("alcoholic", 400),
    ("alaska", 500),
    ("apache", 700),
    ("babyfood", 1600),
    ("beverage", 150),
    ("candy", 150),
    ("cereal", 250),
    ("crustacean", 30),
    ("dessert", 200),
    ("fast", 500),
    ("fish", 60),
    ("hopi", 700),
    ("indian", 400),
    ("leavening", 30),
    ("agent", 30),
    ("mollusk", 30),
    ("native", 500),
    ("navajo", 700),
    ("nut", 30),
    ("restaurant", 900),
    ("seasoning", 150),
    ("shoshone", 700),
    ("snack", 150),
    ("spice", 60),
];

/// The kinds of all words that are not names.
#[derive(Debug)]
pub struct Lexicon {
    kinds: BTreeMap<&'static str, Kind>,
}

impl Default for Lexicon {
    fn default() -> Self {
        let plain =
            |list: &'static str, kind| list.split_whitespace().map(move |word| (word, kind));
        let states = STATES.iter();
        let headings = HEADINGS.iter();
        Self {
            kinds: plain(JOINING, Kind::Joining)
                .chain(plain(HANDLING, Kind::Handling))
                .chain(plain(USUAL, Kind::Usual))
                .chain(states.map(|(word, unasked)| (*word, Kind::State { unasked: *unasked })))
                .chain(headings.map(|(word, unasked)| (*word, Kind::Heading { unasked: *unasked })))
                .collect(),
        }
    }
}

impl Lexicon {
    /// What kind of word a singular, folded word is.
    pub fn kind(&self, word: &str) -> Kind {
        self.kinds.get(word).copied().unwrap_or(Kind::Name)
    }
}

/// Words of the dataset that answer a state word of a query, and how well.
const ANSWERS: &[(&str, &[(&str, u16)])] = &[
    (
        "cooked",
        &[
            ("boiled", 950),
            ("roasted", 950),
            ("simmered", 900),
            ("stewed", 900),
            ("baked", 850),
            ("steamed", 850),
            ("braised", 850),
            ("broiled", 850),
            ("heated", 850),
            ("grilled", 800),
            ("microwaved", 700),
            ("fried", 600),
        ],
    ),
    (
        "raw",
        &[
            ("fresh", 850),
            ("unprepared", 800),
            ("unheated", 750),
            ("dry", 600),
        ],
    ),
    ("fresh", &[("raw", 980)]),
    (
        "dry",
        &[
            ("dried", 950),
            ("raw", 850),
            ("dehydrated", 700),
            ("powder", 600),
        ],
    ),
    ("dried", &[("dry", 900), ("dehydrated", 800), ("raw", 500)]),
    ("dehydrated", &[("dried", 900), ("dry", 700)]),
    ("powdered", &[("powder", 1000), ("dry", 900)]),
    ("powder", &[("powdered", 1000), ("dry", 800)]),
    ("lowsodium", &[("lessodium", 900), ("unsalted", 850)]),
    ("lessodium", &[("lowsodium", 950), ("unsalted", 700)]),
    ("unsalted", &[("lowsodium", 600)]),
    ("low", &[("reduced", 800)]),
    ("reduced", &[("low", 800)]),
    ("lowfat", &[("reduced", 600)]),
    ("nonfat", &[("skim", 1000)]),
    ("skim", &[("nonfat", 1000)]),
    ("light", &[("reduced", 500), ("lowfat", 500)]),
    ("boiled", &[("simmered", 900), ("stewed", 600)]),
    ("fried", &[("cooked", 300)]),
    ("smoked", &[("smoke", 900)]),
    ("roast", &[("roasted", 900)]),
    ("grilled", &[("broiled", 900), ("cooked", 500)]),
    ("wholegrain", &[("whole", 600)]),
];

/// Words that answer `word` besides itself.
pub fn answers(word: &str) -> &'static [(&'static str, u16)] {
    ANSWERS
        .iter()
        .find(|(asked, _)| *asked == word)
        .map_or(&[], |(_, answers)| answers)
}

/// Ways of cooking; an entry that names one says "cooked" only in passing.
pub fn is_way_of_cooking(word: &str) -> bool {
    let (_, ways) = ANSWERS[0];
    ways.iter().any(|(way, _)| *way == word)
}

/// Words after which a description names what else is in or on the food.
pub fn opens_clause(word: &str) -> bool {
    matches!(
        word,
        "with"
            | "without"
            | "made"
            | "include"
            | "includes"
            | "prepared"
            | "from"
            | "in"
            | "containing"
            | "contain"
            | "using"
            | "principal"
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plural::singular;

    /// Words are looked up in singular form, so the lists must hold that form;
    /// and no word may stand in two lists.
    #[test]
    fn lists_are_consistent() {
        let lists = [JOINING, HANDLING, USUAL].into_iter();
        let mut all: Vec<&str> = lists.flat_map(str::split_whitespace).collect();
        all.extend(STATES.iter().chain(HEADINGS).map(|(word, _)| *word));
        for word in &all {
            assert!(singular(word) == *word, "{word}");
        }
        assert_eq!(
            Lexicon::default().kinds.len(),
            all.len(),
            "a word stands in two lists"
        );
    }
}
