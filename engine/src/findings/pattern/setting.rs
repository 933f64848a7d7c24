//! The meals of one service in one week, and what their choices credit.

use super::{PatternCarrier, PatternTables};
use crate::components::{Component, Mark, RecipeCredits};
use crate::exact::Bounds;
use crate::recipe::RecipeId;
use crate::rules::{Kind, Subject};
use crate::units::Servings;
use crate::week::{
    Choice, Counted, CreditedRecipe, Date, Meal, Service, Week, WeekError, counted, credits_of,
};
use std::cell::RefCell;
use std::collections::BTreeMap;

/// Everything that a check of one service looks at.
pub(crate) struct Setting<'a> {
    pub(super) tables: PatternTables<'a>,
    week: &'a Week,
    service: &'a Service,
    meals: Vec<(Date, &'a Meal)>,
    days: Vec<Date>,
    recipes: BTreeMap<&'a RecipeId, Served<'a>>,
    /// Vegetables may stand in for fruits.
    vegetables_for_fruits: bool,
}

/// A recipe's credits with what a serving of it credits to the service's group:
/// every requirement asks for that again.
struct Served<'a> {
    credits: &'a RecipeCredits,
    /// In the order of the components.
    amounts: Vec<Bounds>,
    marked: RefCell<BTreeMap<(Component, Mark), Bounds>>,
}

impl<'a> Served<'a> {
    fn new(tables: &PatternTables<'_>, service: &Service, credits: &'a RecipeCredits) -> Self {
        let amount =
            |component| credits.amount(tables.definitions, component, Some(&service.group));
        Self {
            credits,
            amounts: Component::ALL.into_iter().map(amount).collect(),
            marked: RefCell::default(),
        }
    }

    fn amount(&self, component: Component) -> Bounds {
        self.amounts[component as usize]
    }

    fn marked(&self, setting: &Setting<'_>, component: Component, mark: Mark) -> Bounds {
        let mut known = self.marked.borrow_mut();
        *known.entry((component, mark)).or_insert_with(|| {
            let group = Some(&setting.service.group);
            let definitions = setting.tables.definitions;
            self.credits.marked(definitions, component, mark, group)
        })
    }
}

impl<'a> Setting<'a> {
    /// Nothing when the week does not serve the service.
    ///
    /// # Errors
    /// When a choice names a recipe without credits, or a meal is planned for
    /// no one.
    pub fn new(
        tables: &PatternTables<'a>,
        week: &'a Week,
        service: &'a Service,
        recipes: &'a [CreditedRecipe<'a>],
    ) -> Result<Option<Self>, WeekError> {
        let mut served = BTreeMap::new();
        for (date, meal) in week
            .days
            .iter()
            .flat_map(|day| day.meals.iter().map(|meal| (day.date, meal)))
            .filter(|(_, meal)| meal.group == service.group)
        {
            if meal.planned_meals <= Servings::ZERO {
                return Err(WeekError::NoMeals {
                    date,
                    kind: meal.kind,
                    group: meal.group.clone(),
                });
            }
            for choice in meal.choices() {
                let recipe = || choice.recipe.clone();
                if choice.planned < Servings::ZERO {
                    let recipe = recipe();
                    return Err(WeekError::NegativeServings { date, recipe });
                }
                let Some(credits) = credits_of(recipes, choice) else {
                    let recipe = recipe();
                    return Err(WeekError::UnknownRecipe { date, recipe });
                };
                served
                    .entry(&choice.recipe)
                    .or_insert_with(|| Served::new(tables, service, credits));
            }
        }
        let meals: Vec<(Date, &Meal)> = week.meals_of(service).collect();
        let mut days: Vec<Date> = meals.iter().map(|(date, _)| *date).collect();
        days.sort();
        days.dedup();
        let Some(first) = days.first() else {
            return Ok(None);
        };
        let for_fruits = tables
            .rules
            .of_kind(Kind::VegetablesForFruits, service, *first);
        Ok(Some(Self {
            vegetables_for_fruits: for_fruits.count() > 0,
            tables: *tables,
            week,
            service,
            meals,
            days,
            recipes: served,
        }))
    }

    /// Knows recipes as well that the week does not serve, for choices that it
    /// could have.
    pub fn knowing(mut self, recipes: &'a [CreditedRecipe<'a>]) -> Self {
        for (id, credits) in recipes {
            let served = || Served::new(&self.tables, self.service, credits);
            self.recipes.entry(*id).or_insert_with(served);
        }
        self
    }

    pub fn service(&self) -> &'a Service {
        self.service
    }

    pub fn days(&self) -> &[Date] {
        &self.days
    }

    pub fn first_day(&self) -> Date {
        self.days[0]
    }

    /// The meals of the service, on one day or on all.
    pub fn meals(&self, date: Option<Date>) -> impl Iterator<Item = (Date, &'a Meal)> {
        self.meals
            .iter()
            .copied()
            .filter(move |(day, _)| date.is_none_or(|date| *day == date))
    }

    /// The meals that the week serves to the same group on a day, of any kind.
    pub fn all_meals(&self, date: Date) -> impl Iterator<Item = &'a Meal> {
        self.week
            .days
            .iter()
            .filter(move |day| day.date == date)
            .flat_map(|day| &day.meals)
            .filter(|meal| meal.group == self.service.group)
    }

    /// The choices offered in a meal with the credits of their recipes.
    pub fn offered<'m>(
        &'m self,
        meal: &'m Meal,
    ) -> impl Iterator<Item = (&'m Choice, &'a RecipeCredits)> {
        meal.offers
            .iter()
            .flat_map(|offer| offer.planned_choices())
            .filter_map(|choice| Some((choice, self.recipes.get(&choice.recipe)?.credits)))
    }

    /// What a serving of a choice credits toward a subject.
    pub fn amount(&self, choice: &Choice, subject: Subject) -> Bounds {
        let Some(served) = self.recipes.get(&choice.recipe) else {
            return Bounds::at_least(rust_decimal::Decimal::ZERO);
        };
        let of = |component| served.amount(component);
        match subject {
            Subject::Of(Component::Fruits) if self.vegetables_for_fruits => {
                of(Component::Fruits) + of(Component::Vegetables)
            }
            Subject::Of(component) => of(component),
            Subject::GrainsOrMeats => of(Component::Grains) + of(Component::MeatAlternates),
            // What is left of all vegetables when each subgroup has its part.
            Subject::AdditionalVegetables => Component::SUBGROUPS
                .into_iter()
                .map(|subgroup| self.as_vegetable(choice, subgroup))
                .fold(of(Component::Vegetables), Bounds::without),
        }
    }

    /// What a serving credits toward a component on its own, also where
    /// vegetables may stand in for fruits.
    pub fn alone(&self, choice: &Choice, component: Component) -> Bounds {
        match component {
            Component::Fruits if self.vegetables_for_fruits => self
                .amount(choice, Subject::Of(Component::Fruits))
                .without(self.amount(choice, Subject::Of(Component::Vegetables))),
            _ => self.amount(choice, Subject::Of(component)),
        }
    }

    /// What a serving credits toward a subgroup as a vegetable: beans served as
    /// a meat alternate do not.
    pub fn as_vegetable(&self, choice: &Choice, subgroup: Component) -> Bounds {
        self.amount(choice, Subject::Of(subgroup))
            .without(self.marked(choice, subgroup, Mark::SubgroupOnly))
    }

    /// What of a serving's credit bears a mark.
    pub fn marked(&self, choice: &Choice, component: Component, mark: Mark) -> Bounds {
        let Some(served) = self.recipes.get(&choice.recipe) else {
            return Bounds::at_least(rust_decimal::Decimal::ZERO);
        };
        let of = |component| served.marked(self, component, mark);
        match component {
            Component::Fruits if self.vegetables_for_fruits => {
                of(Component::Fruits) + of(Component::Vegetables)
            }
            component => of(component),
        }
    }

    /// Counts one day. Where a service has several meals on a day, the least or
    /// the most of them counts.
    pub fn day(&self, date: Date, how: Counted, amount: impl Fn(&Choice) -> Bounds) -> Bounds {
        let meals: Vec<&Meal> = self.meals(Some(date)).map(|(_, meal)| meal).collect();
        let planned: Servings = meals.iter().map(|meal| meal.planned_meals).sum();
        let each = meals.iter().map(|meal| {
            let counted = counted(meal, how, &amount);
            match how {
                Counted::Average => {
                    counted.times(meal.planned_meals.servings() / planned.servings())
                }
                _ => counted,
            }
        });
        match how {
            Counted::Smallest => each.reduce(Bounds::min),
            Counted::Largest => each.reduce(Bounds::max),
            Counted::Offered | Counted::Average => each.reduce(|a, b| a + b),
        }
        .unwrap_or(Bounds::ZERO)
    }

    /// Adds up the days of the week.
    pub fn week(&self, how: Counted, amount: impl Fn(&Choice) -> Bounds) -> Bounds {
        self.days
            .iter()
            .map(|date| self.day(*date, how, &amount))
            .sum()
    }

    /// The choices that bring something, or may.
    pub fn carriers(
        &self,
        date: Option<Date>,
        amount: impl Fn(&Choice) -> Bounds,
    ) -> Vec<PatternCarrier> {
        self.meals(date)
            .flat_map(|(date, meal)| {
                self.offered(meal)
                    .map(|(choice, _)| PatternCarrier {
                        date,
                        recipe: choice.recipe.clone(),
                        amount: amount(choice),
                    })
                    .collect::<Vec<_>>()
            })
            .filter(|carrier| carrier.amount != Bounds::ZERO)
            .collect()
    }
}
