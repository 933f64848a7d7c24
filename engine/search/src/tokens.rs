//! Text cut into comparable words.
//!
//! The same cutting is done to descriptions, to kitchen words and to what is
//! typed, so that "Low-Fat", "low fat" and "lowfat" are one word, and so that
//! an accent that a keyboard lacks does not matter.

/// Longest word that is compared; longer ones are cut, since no description
/// has any.
const LONGEST_WORD: usize = 24;

/// Most words of one query that are looked at.
pub const MOST_WORDS: usize = 24;

/// A word as it was written, folded to plain lower case, and where it stood.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Word {
    /// Lower case without accents or apostrophes.
    pub text: String,
    /// How many commas or semicolons outside brackets came before it.
    pub segment: u16,
    /// Inside round brackets.
    pub bracketed: bool,
    /// Written in capitals only, three letters or more: a trade name.
    pub capitals: bool,
    /// Nothing followed it, not even a space: it may be half typed.
    pub unfinished: bool,
}

/// Word groups that mean one thing, and the words that stand for them.
/// In the order of first words; longer groups come first where they share one.
const GROUPS: &[(&[&str], &[&str])] = &[
    (&["chile"], &["chili"]),
    (&["chiles"], &["chili"]),
    (&["chilli"], &["chili"]),
    (&["commercially", "prepared"], &["commercial"]),
    (&["fat", "free"], &["nonfat"]),
    (&["fatfree"], &["nonfat"]),
    (&["less", "sodium"], &["lessodium"]),
    (&["lite"], &["light"]),
    (&["low", "fat"], &["lowfat"]),
    (&["low", "salt"], &["lowsodium"]),
    (&["low", "sodium"], &["lowsodium"]),
    (&["lower", "sodium"], &["lessodium"]),
    (&["no", "added", "salt"], &["unsalted"]),
    (&["no", "salt", "added"], &["unsalted"]),
    (&["no", "salt"], &["unsalted"]),
    (&["non", "fat"], &["nonfat"]),
    (&["portabella"], &["portobello"]),
    (&["portabello"], &["portobello"]),
    (&["portobella"], &["portobello"]),
    (&["reduced", "salt"], &["lessodium"]),
    (&["reduced", "sodium"], &["lessodium"]),
    (&["salt", "not", "added"], &["unsalted"]),
    (&["salt", "added"], &["salted"]),
    (&["salt", "free"], &["unsalted"]),
    (&["separable", "fat"], &["separated", "fat"]),
    (&["skin", "only"], &["skin", "alone"]),
    (&["uncooked"], &["raw"]),
    (&["whole", "grain"], &["wholegrain"]),
    (&["whole", "wheat"], &["wholegrain", "wheat"]),
    (&["wholewheat"], &["wholegrain", "wheat"]),
    (&["with", "added", "salt"], &["salted"]),
    (&["with", "salt", "added"], &["salted"]),
    (&["with", "salt"], &["salted"]),
    (&["without", "added", "salt"], &["unsalted"]),
    (&["without", "salt", "added"], &["unsalted"]),
    (&["without", "salt"], &["unsalted"]),
    (&["yoghurt"], &["yogurt"]),
];

/// A letter in its plain form; nothing for letters that have none.
fn plain(letter: char) -> Option<&'static str> {
    Some(match letter {
        'à' | 'á' | 'â' | 'ã' | 'ä' | 'å' | 'ā' => "a",
        'ç' | 'ć' | 'č' => "c",
        'è' | 'é' | 'ê' | 'ë' | 'ē' => "e",
        'ì' | 'í' | 'î' | 'ï' | 'ī' => "i",
        'ñ' | 'ń' => "n",
        'ò' | 'ó' | 'ô' | 'õ' | 'ö' | 'ø' | 'ō' => "o",
        'ù' | 'ú' | 'û' | 'ü' | 'ū' => "u",
        'ý' | 'ÿ' => "y",
        'œ' => "oe",
        'æ' => "ae",
        'ß' => "ss",
        _ => return None,
    })
}

/// Cuts text into words in the order written, groups put together.
pub fn words(text: &str) -> Vec<Word> {
    let mut cutter = Cutter::default();
    let mut letters = text.chars().peekable();
    while let Some(letter) = letters.next() {
        let decimal_point =
            letter == '.' && cutter.in_number() && letters.peek().is_some_and(char::is_ascii_digit);
        cutter.take(letter, decimal_point);
    }
    let mut found = cutter.finish();
    // A last word with nothing after it may go on when the next key is hit.
    let open = text.chars().next_back().is_some_and(char::is_alphanumeric);
    if let Some(last) = found.last_mut() {
        last.unfinished = open;
    }
    grouped(found)
}

#[derive(Default)]
struct Cutter {
    found: Vec<Word>,
    text: String,
    letters: u16,
    small_letters: u16,
    segment: u16,
    depth: u16,
}

impl Cutter {
    fn in_number(&self) -> bool {
        self.text.ends_with(|last: char| last.is_ascii_digit())
    }

    fn take(&mut self, letter: char, decimal_point: bool) {
        if letter.is_alphanumeric() || decimal_point {
            self.letters += u16::from(letter.is_alphabetic());
            self.small_letters += u16::from(letter.is_lowercase());
            if self.text.len() < LONGEST_WORD {
                self.push_folded(letter);
            }
            return;
        }
        // Apostrophes and combining accents belong to the word they stand in.
        if matches!(letter, '\'' | '’' | '\u{300}'..='\u{36f}') {
            return;
        }
        self.end_word();
        match letter {
            '(' => self.depth += 1,
            ')' => self.depth = self.depth.saturating_sub(1),
            ',' | ';' if self.depth == 0 => self.segment += 1,
            '&' => {
                self.text.push_str("and");
                self.end_word();
            }
            _ => {}
        }
    }

    fn push_folded(&mut self, letter: char) {
        if letter.is_ascii() {
            self.text.push(letter.to_ascii_lowercase());
            return;
        }
        for small in letter.to_lowercase() {
            match plain(small) {
                Some(letters) => self.text.push_str(letters),
                None => self.text.push(small),
            }
        }
    }

    fn end_word(&mut self) {
        let text = std::mem::take(&mut self.text);
        let capitals = self.letters >= 3 && self.small_letters == 0;
        (self.letters, self.small_letters) = (0, 0);
        if !text.is_empty() {
            self.found.push(Word {
                text,
                segment: self.segment,
                bracketed: self.depth > 0,
                capitals,
                unfinished: false,
            });
        }
    }

    fn finish(mut self) -> Vec<Word> {
        self.end_word();
        self.found
    }
}

/// For each first letter, one bit for each length of a word that begins a
/// group: nearly no other word passes.
const BEGINNINGS: [u32; 26] = {
    let mut lengths = [0; 26];
    let mut at = 0;
    while at < GROUPS.len() {
        let first = GROUPS[at].0[0].as_bytes();
        lengths[(first[0] - b'a') as usize] |= 1 << first.len();
        at += 1;
    }
    lengths
};

/// Whether a group may begin with this word.
fn may_begin_group(word: &str) -> bool {
    let letter = word.as_bytes()[0].wrapping_sub(b'a');
    let lengths = BEGINNINGS.get(usize::from(letter)).copied().unwrap_or(0);
    word.len() < 32 && lengths & (1 << word.len()) != 0
}

/// The group that the words begin with.
fn group(words: &[Word]) -> Option<(usize, &'static [&'static str])> {
    let first = words.first()?;
    if !may_begin_group(&first.text) {
        return None;
    }
    let letter = first.text.as_bytes()[0];
    let letter_of = |pattern: &[&str]| pattern[0].as_bytes()[0];
    let from = GROUPS.partition_point(|(pattern, _)| letter_of(pattern) < letter);
    GROUPS[from..]
        .iter()
        .take_while(|(pattern, _)| letter_of(pattern) == letter)
        .find(|(pattern, _)| {
            let mut pairs = pattern.iter().zip(words);
            pattern.len() <= words.len() && pairs.all(|(wanted, word)| word.text == *wanted)
        })
        .map(|(pattern, stands_for)| (pattern.len(), *stands_for))
}

/// Replaces the word groups that mean one thing.
fn grouped(words: Vec<Word>) -> Vec<Word> {
    if !(0..words.len()).any(|at| group(&words[at..]).is_some()) {
        return words;
    }
    let mut out = Vec::with_capacity(words.len());
    let mut rest = words.as_slice();
    while let Some(first) = rest.first() {
        let (length, stands_for) = group(rest).unwrap_or((1, &[]));
        let last = &rest[length - 1];
        if stands_for.is_empty() {
            out.push(first.clone());
        }
        out.extend(stands_for.iter().map(|text| Word {
            text: (*text).to_owned(),
            unfinished: last.unfinished,
            ..first.clone()
        }));
        rest = &rest[length..];
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Common practice, no source: how our own words are cut.
    #[test]
    fn cuts_and_folds() {
        let table = [
            ("Jalapeño", "jalapeno"),
            ("crème fraîche", "creme fraiche"),
            ("2% milk", "2 milk"),
            ("3.25% milkfat", "3.25 milkfat"),
            ("80/20", "80 20"),
            ("half & half", "half and half"),
            ("Low-Fat, no salt added", "lowfat unsalted"),
            ("baker's yeast.", "bakers yeast"),
            ("whole-wheat", "wholegrain wheat"),
            ("", ""),
        ];
        for (text, expected) in table {
            let cut: Vec<String> = words(text).into_iter().map(|word| word.text).collect();
            assert_eq!(cut.join(" "), expected, "{text}");
        }
    }

    #[test]
    fn groups_are_in_order() {
        let mut pairs = GROUPS.windows(2);
        assert!(pairs.all(|pair| {
            let (first, second) = (pair[0].0, pair[1].0);
            first[0] < second[0] || (first[0] == second[0] && first.len() >= second.len())
        }));
    }

    #[test]
    fn keeps_where_a_word_stood() {
        let cut = words("Peas, edible (all, sorts), OCEAN SPRAY");
        let segments: Vec<u16> = cut.iter().map(|word| word.segment).collect();
        assert_eq!(segments, [0, 1, 1, 1, 2, 2]);
        assert!(cut[2].bracketed && cut[3].bracketed && !cut[4].bracketed);
        assert!(cut[4].capitals && !cut[0].capitals);
        assert!(cut[5].unfinished);
    }
}
