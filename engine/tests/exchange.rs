//! Recipes that go out as a table or as JSON-LD come back as they went, and
//! what cannot be read says so.

use engine::components::{BeansRole, Component, Mark, StatedCredit};
use engine::exchange::cells::{harmless, restored};
use engine::exchange::recipe_ld::Shared;
use engine::exchange::{About, Arrival, Incoming, bring_in, recipe_csv, recipe_ld};
use engine::foods::{FoodId, FoodTable};
use engine::recipe::{CookedAs, Correction, Recipe, RecipeId, RecipeLine, ServingSize};
use engine::units::{Grams, Millilitres, Servings};
use engine::yields::{AmountBasis, TreatmentId};
use proptest::prelude::*;
use rust_decimal::Decimal;
use std::sync::OnceLock;

/// Signs that tables, spreadsheets and line ends take for something else.
fn text() -> impl Strategy<Value = String> {
    let piece = prop_oneof![
        proptest::sample::select(vec![
            "=",
            "+",
            "-",
            "@",
            "\t",
            "\r",
            "\n",
            "\r\n",
            "'",
            "\"",
            ",",
            ";",
            "＝",
            " ",
            "é",
            "½",
            "\u{feff}",
            "#",
            "=1+1",
            "2 cups milk",
        ])
        .prop_map(str::to_owned),
        "[a-zA-Z0-9 ]{0,6}",
    ];
    proptest::collection::vec(piece, 0..6).prop_map(|pieces| pieces.concat())
}

fn number() -> impl Strategy<Value = Decimal> {
    (-1_000_000_i64..1_000_000, 0_u32..6).prop_map(|(digits, scale)| Decimal::new(digits, scale))
}

fn food() -> impl Strategy<Value = FoodId> {
    prop_oneof![
        (0_u32..100_000).prop_map(FoodId::Sr28),
        (0_u32..100).prop_map(FoodId::Own)
    ]
}

fn credit() -> impl Strategy<Value = StatedCredit> {
    let component = proptest::sample::select(Component::ALL.to_vec());
    let marks = proptest::sample::subsequence(
        vec![
            Mark::Juice,
            Mark::WholeGrainRich,
            Mark::FatFree,
            Mark::SubgroupOnly,
        ],
        0..4,
    );
    let line = text().prop_filter("a line", |line| !line.is_empty());
    (
        component,
        number(),
        marks,
        text(),
        proptest::option::of(line),
    )
        .prop_map(
            |(component, amount, marks, reason, stated_for)| StatedCredit {
                component,
                amount,
                marks,
                reason,
                stated_for,
            },
        )
}

fn correction() -> impl Strategy<Value = Correction> {
    let basis =
        proptest::sample::select(vec![AmountBasis::AsPurchased, AmountBasis::EdiblePortion]);
    let cooked = (food(), proptest::option::of(number())).prop_map(|(food, weight)| CookedAs {
        food,
        weight: weight.map(Grams::new),
    });
    let treatment = text().prop_filter("a name", |name| !name.is_empty());
    (
        proptest::option::of(food()),
        proptest::option::of(text().prop_filter("a name", |name| !name.is_empty())),
        proptest::option::of(number()),
        proptest::option::of(basis),
        proptest::option::of(cooked),
        proptest::collection::vec(treatment.prop_map(TreatmentId), 0..3),
        proptest::collection::vec(credit(), 0..3),
    )
        .prop_map(
            |(food, recipe, weight, basis, cooked, treatments, credits)| Correction {
                food,
                recipe: recipe.map(RecipeId),
                weight: weight.map(Grams::new),
                basis,
                cooked,
                treatments,
                credits,
            },
        )
}

fn serving_size() -> impl Strategy<Value = ServingSize> {
    prop_oneof![
        number().prop_map(|serving| ServingSize::Weight {
            serving: Grams::new(serving)
        }),
        (number(), number()).prop_map(|(serving, batch)| ServingSize::Volume {
            serving: Millilitres::new(serving),
            batch: Millilitres::new(batch)
        }),
        (number(), number()).prop_map(|(serving, batch)| ServingSize::Count { serving, batch }),
    ]
}

fn recipe() -> impl Strategy<Value = Recipe> {
    let line =
        (text(), correction()).prop_map(|(text, correction)| RecipeLine { text, correction });
    (
        (text(), number(), text(), text()),
        proptest::option::of(serving_size()),
        proptest::option::of(number()),
        proptest::collection::vec(line, 0..4),
        proptest::sample::select(vec![BeansRole::Vegetable, BeansRole::MeatAlternate]),
    )
        .prop_map(
            |((title, servings, words, method), size, weight, lines, beans)| Recipe {
                id: RecipeId(String::new()),
                title,
                servings: Servings::new(servings),
                serving_words: words,
                serving_size: size,
                finished_weight: weight.map(Grams::new),
                lines,
                beans,
                method,
            },
        )
}

/// Recipes of a book: each has a name of its own.
fn recipes() -> impl Strategy<Value = Vec<Recipe>> {
    proptest::collection::vec((text(), recipe()), 1..4).prop_map(|recipes| {
        let named = recipes.into_iter().enumerate();
        named
            .map(|(index, (name, recipe))| Recipe {
                id: RecipeId(format!("{name}{index}")),
                ..recipe
            })
            .collect()
    })
}

fn foods() -> &'static FoodTable {
    static FOODS: OnceLock<FoodTable> = OnceLock::new();
    FOODS.get_or_init(|| {
        FoodTable::from_asset(&nutrient_data::asset::committed().0).expect("the committed tables")
    })
}

proptest! {
    #[test]
    fn a_harmless_cell_is_no_formula_and_comes_back(text in text()) {
        let cell = harmless(&text);
        // OWASP, "CSV Injection": a cell must not begin with one of these.
        prop_assert!(!cell.starts_with(['=', '+', '-', '@', '\t', '\r', '\n']), "{cell:?}");
        prop_assert_eq!(restored(&cell), text);
    }

    #[test]
    fn recipes_come_back_from_a_table(recipes in recipes()) {
        let table = recipe_csv::write(&recipes);
        let back = recipe_csv::read(&table).map_err(|error| TestCaseError::fail(format!("{error}\n{table}")))?;
        prop_assert_eq!(back.recipes, recipes);
    }

    /// No cell of the table, read by a plain reader, begins like a formula
    /// unless it is a number.
    #[test]
    fn no_cell_of_a_table_is_a_formula(recipes in recipes()) {
        let table = recipe_csv::write(&recipes);
        let mut reader = csv::ReaderBuilder::new().has_headers(false).from_reader(table.as_bytes());
        for record in reader.records() {
            for cell in &record.expect("a row") {
                let begins = cell.starts_with(['=', '+', '-', '@', '\t', '\r', '\n']);
                prop_assert!(!begins || cell.parse::<Decimal>().is_ok(), "{cell:?}");
            }
        }
    }

    /// JSON-LD has words for the card, not for what was set right on it.
    #[test]
    fn cards_come_back_from_json_ld(recipes in recipes()) {
        let cards: Vec<Recipe> = recipes
            .into_iter()
            .map(|recipe| Recipe {
                id: RecipeId(recipe.id.0.replace([':', '/'], "")),
                servings: Servings::new(recipe.servings.servings().abs() + Decimal::ONE),
                serving_size: None,
                finished_weight: None,
                beans: BeansRole::Vegetable,
                lines: recipe
                    .lines
                    .into_iter()
                    .map(|line| RecipeLine { text: line.text, ..RecipeLine::default() })
                    .collect(),
                ..recipe
            })
            .collect();
        let shared = cards.iter().map(|recipe| Shared { recipe, analysis: None });
        let text = recipe_ld::write(foods(), shared);
        let back = recipe_ld::read(&text).map_err(|error| TestCaseError::fail(error.to_string()))?;
        prop_assert_eq!(back.recipes, cards);
    }
}

/// Forms that schema.org allows (schema.org/Recipe, /HowToStep, /HowToSection,
/// /QuantitativeValue) and that writers use; values from memory.
#[test]
fn recipes_of_other_writers_are_read() {
    let single = r#"{"@context": "https://schema.org/", "@type": "Recipe", "name": "Oat squares",
        "recipeYield": "24", "recipeIngredient": ["4 cups oats", "1/2 cup honey"],
        "recipeInstructions": "Mix. Bake."}"#;
    let graph = r#"{"@context": "https://schema.org", "@graph": [
        {"@type": "WebPage", "name": "A page"},
        {"@type": ["Recipe", "NewsArticle"], "name": "Oat squares", "recipeYield": ["24", "24 squares"],
         "recipeIngredient": ["4 cups oats", "1/2 cup honey"],
         "recipeInstructions": [{"@type": "HowToStep", "text": "Mix."}, {"@type": "HowToStep", "text": "Bake."}]}]}"#;
    let list = r#"[{"@type": "BreadcrumbList"}, {"@type": "http://schema.org/Recipe", "name": {"@value": "Oat squares"},
        "yield": {"@type": "QuantitativeValue", "value": 24, "unitText": "servings"},
        "ingredients": "4 cups oats\n1/2 cup honey",
        "recipeInstructions": [{"@type": "HowToSection", "name": "Dough", "itemListElement":
            [{"@type": "HowToStep", "text": "Mix."}, {"@type": "HowToStep", "text": "Bake."}]}]}]"#;
    let page = r#"{"@type": "WebPage", "mainEntity": {"@type": "schema:Recipe", "name": "Oat squares",
        "identifier": "https://example.org/oat", "recipeYield": "Serves 24",
        "recipeIngredient": ["4 cups oats", "1/2 cup honey"], "recipeInstructions": ["Mix.", "Bake."]}}"#;
    for (text, method) in [
        (single, "Mix. Bake."),
        (graph, "Mix.\nBake."),
        (list, "Dough\nMix.\nBake."),
        (page, "Mix.\nBake."),
    ] {
        let Incoming { recipes, remarks } = recipe_ld::read(text).expect(text);
        let [recipe] = &recipes[..] else {
            panic!("one recipe: {text}");
        };
        assert_eq!(recipe.title, "Oat squares", "{text}");
        assert_eq!(recipe.servings, Servings::new(Decimal::from(24)), "{text}");
        let lines: Vec<&str> = recipe.lines.iter().map(|line| line.text.as_str()).collect();
        assert_eq!(lines, ["4 cups oats", "1/2 cup honey"], "{text}");
        assert_eq!(recipe.method, method);
        assert_eq!(recipe.id.0, "", "an address is no name");
        assert_eq!(remarks, [], "{text}");
    }
}

#[test]
fn what_is_not_taken_over_is_told() {
    for (yield_, about) in [
        ("", About::NoServings),
        (
            r#""recipeYield": "1 loaf","#,
            About::YieldInWords("1 loaf".into()),
        ),
        (
            r#""recipeYield": "4 to 6 servings","#,
            About::YieldInWords("4 to 6 servings".into()),
        ),
        (r#""recipeYield": "0","#, About::YieldInWords("0".into())),
        (
            r#""recipeYield": 4, "nutrition": {"@type": "NutritionInformation", "calories": "90 calories"},"#,
            About::NutritionLeft,
        ),
    ] {
        let text = format!(
            r#"{{"@type": "Recipe", "name": "Loaf", {yield_} "recipeIngredient": ["1 lb flour"]}}"#
        );
        let incoming = recipe_ld::read(&text).expect("a recipe");
        let remarks: Vec<&About> = incoming
            .remarks
            .iter()
            .map(|remark| &remark.about)
            .collect();
        assert_eq!(remarks, [&about], "{text}");
        if !matches!(about, About::NutritionLeft) {
            assert_eq!(incoming.recipes[0].servings, Servings::ZERO, "no guess");
        }
    }
}

#[test]
fn a_table_of_two_columns_will_do() {
    let text =
        "Title,Ingredient,Notes\nSoup,2 lb beans,from the store\n,1 gal water,\nRice,3 lb rice,\n";
    let incoming = recipe_csv::read(text).expect("two recipes");
    let lines = |index: usize| -> Vec<&str> {
        let lines = &incoming.recipes[index].lines;
        lines.iter().map(|line| line.text.as_str()).collect()
    };
    assert_eq!(incoming.recipes[0].title, "Soup");
    assert_eq!(lines(0), ["2 lb beans", "1 gal water"]);
    assert_eq!(lines(1), ["3 lb rice"]);
    assert_eq!(incoming.remarks.len(), 2, "neither states its servings");
}

#[test]
fn what_cannot_be_read_is_told_with_its_place() {
    for (text, told) in [
        ("", "there is no column \"title\""),
        ("name,what\nSoup,beans\n", "there is no column \"title\""),
        ("title\nSoup\n", "there is no column \"ingredient\""),
        ("title,ingredient\n", "there is no recipe in it"),
        (
            "title,ingredient\n,2 lb beans\n",
            "line 2, title: the row belongs to no recipe",
        ),
        (
            "title,ingredient,servings\nSoup,\"2 lb beans,\nor peas\",10\nRice,3 lb rice,many\n",
            "line 4, servings: \"many\" is not a number",
        ),
        (
            "title,ingredient\nSoup,2 lb beans,more\n",
            "line 2: the row has another number of cells",
        ),
        (
            "title,ingredient,beans as\nSoup,2 lb beans,fruit\n",
            "line 2, beans as: \"fruit\" is not known here: write one of \"vegetable\"",
        ),
        (
            "title,ingredient,food\nSoup,2 lb beans,1001\n",
            "line 2, food: \"1001\" is not known here: write one of SR28:01001",
        ),
        (
            "title,ingredient,credit toward,credit reason\nSoup,2 lb beans,fruits,label\n",
            "line 2, credit amount: \"credit amount\" is missing",
        ),
    ] {
        let error = recipe_csv::read(text).expect_err(text).to_string();
        assert!(error.starts_with(told), "{text}\n{error}");
    }
    for (text, told) in [
        ("{", "line 1: the text is no complete JSON"),
        ("{\"@type\": \"WebPage\"}", "there is no recipe in it"),
    ] {
        let error = recipe_ld::read(text).expect_err(text).to_string();
        assert!(error.starts_with(told), "{text}\n{error}");
    }
}

fn named(id: &str, title: &str, names: &[&str]) -> Recipe {
    Recipe {
        id: RecipeId(id.into()),
        title: title.into(),
        servings: Servings::new(Decimal::TEN),
        serving_words: String::new(),
        serving_size: None,
        finished_weight: None,
        lines: names
            .iter()
            .map(|name| RecipeLine {
                text: "1 batch".into(),
                correction: Correction {
                    recipe: Some(RecipeId((*name).into())),
                    ..Correction::default()
                },
            })
            .collect(),
        beans: BeansRole::Vegetable,
        method: String::new(),
    }
}

#[test]
fn recipes_find_a_free_name_and_keep_what_they_name() {
    let present = [named("sauce", "Sauce", &[]), named("rice", "Rice", &[])];
    let incoming = vec![
        named("rice", "Rice", &[]),
        named("sauce", "Hot sauce", &[]),
        named("plate", "Plate", &["sauce", "rice", "elsewhere"]),
        named("", "Roll", &[]),
    ];
    let arriving = bring_in(present.iter(), incoming, |title, taken| {
        let name = title.to_lowercase().replace(' ', "-");
        assert!(!taken.contains(&name));
        name
    });
    let found: Vec<(&str, Arrival)> = arriving
        .iter()
        .map(|one| (one.recipe.id.0.as_str(), one.arrival))
        .collect();
    assert_eq!(
        found,
        [
            ("rice", Arrival::Present),
            ("hot-sauce", Arrival::Beside),
            ("plate", Arrival::New),
            ("roll", Arrival::New),
        ]
    );
    let names: Vec<&str> = arriving[2]
        .recipe
        .lines
        .iter()
        .filter_map(|line| line.correction.recipe.as_ref().map(|id| id.0.as_str()))
        .collect();
    assert_eq!(names, ["hot-sauce", "rice", "elsewhere"]);
}
