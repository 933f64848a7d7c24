//! All foods as comparisons see them, made once.

use super::kinds::{Kinds, Within};
use super::moves::Moves;
use super::naming::KitchenNames;
use super::rank::{ALIKE, names_alike};
use super::words::{Form, Sorted, WordClasses, sort};
use crate::components::unit_weight;
use crate::foods::{Food, FoodId, FoodTable, NutrientId};
use crate::reference::Reference;
use crate::tables::TableError;
use nutrient_data::kitchen;
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;
use std::borrow::Cow;
use std::collections::BTreeMap;

/// What a food mainly consists of, grams in 100 g.
const BODY: [NutrientId; 4] = [
    NutrientId::WATER,
    NutrientId::PROTEIN,
    NutrientId::FAT,
    NutrientId::CARBOHYDRATE,
];

/// Food groups whose "raw" means dry: legumes, cereals, grains.
const GRAIN_GROUPS: [u16; 3] = [800, 1600, 2000];

/// A food as comparisons see it. Numbers are for ranking only.
#[derive(Debug, Clone)]
pub(super) struct Features {
    pub id: FoodId,
    pub group: u16,
    /// Its kind, by its place in the table.
    pub kind: Option<u16>,
    /// Words that tell which food it is, sorted, with what each is worth.
    pub name: Vec<(u32, u16)>,
    /// The first of them as it was written.
    pub head: Option<u32>,
    /// Those of them that make another thing of it, sorted.
    pub things: Vec<u32>,
    pub form: Form,
    /// Number of words that make it of little use.
    pub poor: u16,
    /// A brand's food.
    pub branded: bool,
    /// A food that the table of kitchen words names.
    pub staple: bool,
    /// Calories in 100 g.
    pub energy: Option<f64>,
    /// Water, protein, fat and carbohydrate in 100 g.
    pub body: [Option<f64>; 4],
    /// Grams in a cup.
    pub cup: Option<f64>,
}

/// Words of all descriptions with what each is worth.
#[derive(Debug, Clone, Default)]
struct Vocabulary(BTreeMap<String, (u32, u16)>);

/// The worth of a word that no food of the dataset has.
const RAREST: u16 = 14;

impl Vocabulary {
    /// A word is worth more the fewer foods have it: one and the whole part of
    /// the binary logarithm of all foods over its foods.
    fn learn(all: &[Sorted]) -> Self {
        let mut counts: BTreeMap<&str, u32> = BTreeMap::new();
        for name in all.iter().flat_map(|sorted| &sorted.name) {
            *counts.entry(name).or_default() += 1;
        }
        let foods = u32::try_from(all.len()).unwrap_or(u32::MAX);
        let worth = |count: u32| 1 + (foods / count).max(1).ilog2() as u16;
        Self(
            counts
                .into_iter()
                .zip(0..)
                .map(|((word, count), number)| (word.to_owned(), (number, worth(count))))
                .collect(),
        )
    }

    fn find(&self, word: &str) -> (u32, u16) {
        self.0.get(word).copied().unwrap_or((u32::MAX, RAREST))
    }
}

/// What swaps are looked up in: tables, and every food of the dataset. The
/// office's own foods are read when they are compared, so that the index stays
/// when they change.
#[derive(Debug, Clone)]
pub struct SwapIndex {
    pub(super) kinds: Kinds,
    pub(super) classes: WordClasses,
    pub(super) moves: Moves,
    pub(super) names: KitchenNames,
    vocabulary: Vocabulary,
    /// In the order of the dataset.
    foods: Vec<Features>,
    /// The places in it of the foods of each kind.
    of_kind: BTreeMap<u16, Vec<usize>>,
}

impl SwapIndex {
    /// Reads the tables that come with the engine, and the dataset's foods.
    ///
    /// # Errors
    /// When a table is damaged.
    pub fn build(reference: &Reference) -> Result<Self, TableError> {
        let kinds = Kinds::from_csv(kitchen::SWAP_KINDS)?;
        let mut index = Self {
            moves: Moves::from_csv(kitchen::MOVES, &kinds, &reference.treatments)?,
            classes: WordClasses::from_csv(kitchen::SWAP_WORDS)?,
            names: KitchenNames::from_csv(kitchen::SYNONYMS)?,
            kinds,
            vocabulary: Vocabulary::default(),
            foods: Vec::new(),
            of_kind: BTreeMap::new(),
        };
        let foods = reference.foods.foods();
        let sorted: Vec<Sorted> = foods.iter().map(|food| index.sorted(food)).collect();
        index.vocabulary = Vocabulary::learn(&sorted);
        index.foods = foods
            .iter()
            .zip(&sorted)
            .map(|(food, sorted)| index.features(&reference.foods, food, sorted))
            .collect();
        for (at, food) in index.foods.iter().enumerate() {
            if let Some(kind) = food.kind {
                index.of_kind.entry(kind).or_default().push(at);
            }
        }
        Ok(index)
    }

    /// A food with its features; nothing if the table has no such number.
    pub(super) fn of(&self, table: &FoodTable, id: FoodId) -> Option<Features> {
        let food = table.food(id)?;
        Some(self.features(table, food, &self.sorted(food)))
    }

    /// Every food, of the dataset and of the office's own, that is of a kind
    /// which may take the place of `kind`.
    pub(super) fn of_kinds_for<'i>(
        &'i self,
        table: &'i FoodTable,
        kind: u16,
    ) -> impl Iterator<Item = Cow<'i, Features>> {
        let suits = move |other: u16| other == kind || self.kinds.near(kind, other);
        let kinds = self.of_kind.iter().filter(move |(other, _)| suits(**other));
        let places = kinds.flat_map(|(_, places)| places);
        let own = table
            .own_foods()
            .filter(move |food| self.kinds.of(food).is_some_and(suits));
        places
            .map(move |at| Cow::Borrowed(&self.foods[*at]))
            .chain(own.map(move |food| Cow::Owned(self.features(table, food, &self.sorted(food)))))
    }

    /// True when `other` is of a kind that may take the place of `food`.
    pub(super) fn may_replace(&self, food: &Features, other: &Features) -> bool {
        let (Some(kind), Some(other_kind)) = (food.kind, other.kind) else {
            return false;
        };
        if kind != other_kind {
            return self.kinds.near(kind, other_kind);
        }
        match self.kinds.get(kind).within {
            Within::Kind => true,
            Within::Name => food.head == other.head,
            Within::Alike => names_alike(food, other) >= ALIKE,
        }
    }

    fn sorted(&self, food: &Food) -> Sorted {
        let grain = GRAIN_GROUPS.contains(&food.group.0);
        sort(&self.classes, &food.description, grain)
    }

    fn features(&self, table: &FoodTable, food: &Food, sorted: &Sorted) -> Features {
        let value = |nutrient| {
            let value = table.per_100_g(food.id, nutrient)?;
            value.to_f64()
        };
        let cup = unit_weight(table.measures(food.id), "cup", None)
            .filter(|weight| weight.units > Decimal::ZERO)
            .and_then(|weight| (weight.grams / weight.units).to_f64());
        let mut name: Vec<(u32, u16)> = sorted
            .name
            .iter()
            .map(|word| self.vocabulary.find(word))
            .collect();
        let mut things: Vec<u32> = sorted
            .things
            .iter()
            .map(|word| self.vocabulary.find(word).0)
            .collect();
        things.sort_unstable();
        let head = name.first().map(|(word, _)| *word);
        name.sort_unstable();
        Features {
            id: food.id,
            group: food.group.0,
            kind: self.kinds.of(food),
            name,
            head,
            things,
            form: sorted.form,
            poor: u16::try_from(sorted.poor).unwrap_or(u16::MAX),
            branded: !food.manufacturer.is_empty() || sorted.trade_names > 0,
            staple: self.names.is_staple(food.id),
            energy: value(NutrientId::ENERGY),
            body: BODY.map(value),
            cup,
        }
    }
}
