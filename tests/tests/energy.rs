//! The dataset's energy recomputed from its own factors.
//!
//! Source: USDA National Nutrient Database for Standard Reference, Release 28,
//! Documentation and User Guide (September 2015), "Energy" and "Food
//! Description File": energy is the sum of protein, fat, carbohydrate by
//! difference and alcohol, each multiplied by the food's factor after
//! A. L. Merrill and B. K. Watt, Energy Value of Foods, Basis and Derivation,
//! Agriculture Handbook No. 74 (USDA, revised 1973); 6.93 kcal per gram of
//! alcohol. Foods without factors (brand names, among others) were calculated
//! otherwise and are left out here.
//!
//! Values come through the engine's table of foods, so that a value in the
//! wrong row or column shows here.

use engine::foods::{FoodId, NutrientId};
use gramwright_tests::fixtures::foods;
use nutrient_data::asset;
use nutrient_data::format::{FoodRow, Scaled, decode_foods};
use rust_decimal::Decimal;

/// Energy of alcohol, kcal per gram.
const ALCOHOL_FACTOR: Decimal = Decimal::from_parts(693, 0, 0, false, 2);
/// Agreement that the rounding of the published figure to whole kcal allows.
const TOLERANCE: Decimal = Decimal::ONE;
/// Foods of the release that have all three factors.
const FOODS_WITH_FACTORS: usize = 4565;
/// So many of them must agree.
const FEWEST_AGREEING: usize = 4430;
/// The others, each by name.
const EXCEPTIONS: &str = include_str!("../data/energy_exceptions.csv");

/// A food's energy, kcal per 100 g.
struct Energy {
    number: u32,
    description: String,
    published: Decimal,
    computed: Decimal,
}

impl Energy {
    /// Nothing for a food without factors. A food without an alcohol value
    /// gets no alcohol term: the release then used none either, and no such
    /// food is an alcoholic drink.
    fn of(food: &FoodRow) -> Option<Self> {
        let value = |nutrient| foods().per_100_g(FoodId::Sr28(food.number), nutrient);
        let needed = |nutrient| {
            value(nutrient).unwrap_or_else(|| panic!("{:05} lacks {nutrient:?}", food.number))
        };
        let main_terms = factor(food.protein_factor)? * needed(NutrientId::PROTEIN)
            + factor(food.fat_factor)? * needed(NutrientId::FAT)
            + factor(food.carbohydrate_factor)? * needed(NutrientId::CARBOHYDRATE);
        let alcohol = value(NutrientId::ALCOHOL).map(|grams| ALCOHOL_FACTOR * grams);
        Some(Self {
            number: food.number,
            description: food.description.clone(),
            published: needed(NutrientId::ENERGY),
            computed: alcohol.into_iter().fold(main_terms, |sum, term| sum + term),
        })
    }

    fn difference(&self) -> Decimal {
        self.published - self.computed
    }

    fn agrees(&self) -> bool {
        self.difference().abs() <= TOLERANCE
    }
}

fn factor(scaled: Option<Scaled>) -> Option<Decimal> {
    scaled.map(|factor| Decimal::new(factor.mantissa.into(), factor.scale.into()))
}

fn energies() -> Vec<Energy> {
    let decoded = decode_foods(&asset::committed().0).expect("the asset of the committed tables");
    decoded.foods.iter().filter_map(Energy::of).collect()
}

fn exceptions_table(energies: &[Energy]) -> String {
    let mut writer = csv::Writer::from_writer(Vec::new());
    let heading = [
        "number",
        "description",
        "published",
        "computed",
        "difference",
    ];
    writer.write_record(heading).unwrap();
    for energy in energies.iter().filter(|energy| !energy.agrees()) {
        let row = [
            format!("{:05}", energy.number),
            energy.description.clone(),
            energy.published.normalize().to_string(),
            energy.computed.normalize().to_string(),
            energy.difference().normalize().to_string(),
        ];
        writer.write_record(row).unwrap();
    }
    String::from_utf8(writer.into_inner().unwrap()).unwrap()
}

#[test]
fn published_energy_follows_from_the_published_factors() {
    let energies = energies();
    assert_eq!(energies.len(), FOODS_WITH_FACTORS);
    let agreeing = energies.iter().filter(|energy| energy.agrees()).count();
    assert!(
        agreeing >= FEWEST_AGREEING,
        "only {agreeing} of {FOODS_WITH_FACTORS} agree within {TOLERANCE} kcal"
    );
}

#[test]
fn each_exception_is_known_by_name() {
    let found = exceptions_table(&energies());
    for (line, (found, known)) in found.lines().zip(EXCEPTIONS.lines()).enumerate() {
        assert_eq!(found, known, "energy_exceptions.csv line {}", line + 1);
    }
    assert_eq!(found, EXCEPTIONS, "one list is longer than the other");
}
