//! Words about meal component credits.

use crate::language::{Say, of_table, say};
use crate::named;
use crate::views::recipe::phrases::sentence;
use crate::words::standing;
use engine::components::{CitedRule, Component, CouldAdd, Mark, Operation, PartCredit, Step};

pub const TITLE: Say = Say("credits-title");
pub const HINT: Say = Say("credits-hint");
pub const NOTHING_CREDITS: Say = Say("credits-nothing-credits");
pub const COMPONENT: Say = Say("credits-component");
pub const CREDITED: Say = Say("credits-credited");
pub const EXACT: Say = Say("credits-exact");
pub const COMPLETE: Say = Say("credits-complete");
pub const LINES: Say = Say("credits-lines");
pub const LINES_HINT: Say = Say("credits-lines-hint");
pub const NOTHING: Say = Say("credits-nothing");

pub const BEANS: Say = Say("credits-beans");
pub const BEANS_VEGETABLE: Say = Say("credits-beans-vegetable");
pub const BEANS_MEAT: Say = Say("credits-beans-meat");
pub const BEANS_HINT: Say = Say("credits-beans-hint");

pub const STATED_TITLE: Say = Say("credits-stated-title");
pub const TAKE_BACK: Say = Say("credits-take-back");
pub const STATE_IT: Say = Say("credits-state-it");
pub const STATE_HINT: Say = Say("credits-state-hint");
pub const TOWARD: Say = Say("credits-toward");
pub const PER_SERVING: Say = Say("credits-per-serving");
pub const MARKS: Say = Say("credits-marks");
pub const REASON: Say = Say("credits-reason");
pub const REASON_EXAMPLE: Say = Say("credits-reason-example");
pub const STATE: Say = Say("credits-state");
pub const NEEDS_AMOUNT: Say = Say("credits-needs-amount");
pub const NEEDS_REASON: Say = Say("credits-needs-reason");

pub const STILL_HOLDS: Say = Say("stated-still-holds");

/// A credit was stated when its line had another amount.
pub fn stated_for(line: &str) -> String {
    say("stated-for-other", &[("line", line.trim().into())])
}

/// A component; subgroups are vegetables of one kind.
pub fn component(component: Component) -> String {
    let name = named::component(component).to_string();
    match Component::SUBGROUPS.contains(&component) {
        true => say("credits-subgroup", &[("name", name.into())]),
        false => sentence(&name),
    }
}

/// An amount with its unit.
pub fn amount(figure: &str, unit: &str) -> String {
    named::counted(figure, unit)
}

/// Lines whose credit is not known could add to it.
pub fn at_least(amount: &str) -> String {
    say("credits-at-least", &[("amount", amount.into())])
}

/// Whether every line is taken into account.
pub fn complete(complete: bool) -> Say {
    match complete {
        true => Say("credits-all-lines"),
        false => Say("credits-not-all-lines"),
    }
}

/// Components of which nothing is known: all of them are not listed.
pub fn open(components: &[Component]) -> String {
    let name = |component: &Component| named::component(*component).to_string();
    let names: Vec<String> = components.iter().map(name).collect();
    match components.len() == Component::ALL.len() {
        true => Say("credits-open-all").to_string(),
        false => say("credits-open-some", &[("names", names.join(", ").into())]),
    }
}

/// Whether the flours of the recipe are whole grain-rich together.
pub fn dough(is_rich: bool) -> Say {
    match is_rich {
        true => Say("credits-dough-rich"),
        false => Say("credits-dough-not-rich"),
    }
}

/// What a line credits in one serving, with its marks.
pub fn part(figure: &str, part: &PartCredit) -> String {
    let amount = amount(figure, part.component.unit());
    of_component(&amount, part.component) + &in_brackets(&marks(&part.marks))
}

/// "2 oz eq grains".
fn of_component(amount: &str, component: Component) -> String {
    let name = named::component(component).to_string();
    say(
        "credits-of",
        &[("amount", amount.into()), ("name", name.into())],
    )
}

fn in_brackets(words: &str) -> String {
    match words {
        "" => String::new(),
        words => format!(" ({words})"),
    }
}

/// Marks one after another.
pub fn marks(marks: &[Mark]) -> String {
    let name = |mark: &Mark| named::mark(*mark).to_string();
    let marks: Vec<String> = marks.iter().map(name).collect();
    marks.join(", ")
}

/// A line of which it is not known what it credits.
pub fn unknown(could_add: CouldAdd) -> String {
    match could_add {
        CouldAdd::Anything => Say("credits-unknown").to_string(),
        CouldAdd::Only(component) => {
            let name = named::component(component).to_string();
            say("credits-unknown-only", &[("name", name.into())])
        }
    }
}

/// With what the arithmetic begins.
pub fn edible_weight(grams: &str) -> String {
    say("credits-edible-weight", &[("grams", grams.into())])
}

/// A step, with its number as printed.
pub fn step(step: &Step, by: &str) -> String {
    let sign = match step.operation {
        Operation::Times => "×",
        Operation::DividedBy => "÷",
    };
    let by = match step.unit.as_str() {
        "" => by.to_owned(),
        unit => named::counted(by, unit),
    };
    format!("{sign} {by}: {}", step_words(&step.words))
}

/// A step that divides by the weight of a group of grain products says so in
/// words of the engine's, around words of the table.
fn step_words(words: &str) -> String {
    let group = words.strip_prefix("1 oz eq of group ");
    match group.and_then(|rest| rest.split_once(": ")) {
        Some((group, foods)) => say(
            "credits-of-group",
            &[("group", group.into()), ("foods", of_table(foods).into())],
        ),
        None => of_table(words),
    }
}

/// What the steps lead to.
pub fn result(whole: &str, servings: &str, serving: &str) -> String {
    say(
        "credits-result",
        &[
            ("whole", whole.into()),
            ("servings", servings.into()),
            ("serving", serving.into()),
        ],
    )
}

/// The rule in words, or why nothing is credited.
pub fn reason(reason: &str) -> String {
    sentence(&of_table(reason))
}

/// Where the rule stands and how sure it is.
pub fn rule(rule: &CitedRule) -> String {
    let paragraph = match rule.paragraph.as_str() {
        "" => String::new(),
        paragraph => format!("{paragraph}; "),
    };
    say(
        "credits-rule",
        &[
            ("id", rule.id.as_str().into()),
            ("paragraph", paragraph.into()),
            ("source", rule.source.as_str().into()),
            ("status", standing::of(&rule.status).into()),
        ],
    )
}

/// What the office states for a line.
pub fn stated(reason: &str) -> String {
    say("credits-stated", &[("reason", reason.into())])
}

/// A credit that the office states: amount, component, marks, reason.
pub fn stated_credit(figure: &str, component: Component, marks: &[Mark], reason: &str) -> String {
    let amount = amount(figure, component.unit());
    let credit = of_component(&amount, component) + &in_brackets(&self::marks(marks));
    say(
        "credits-stated-credit",
        &[("credit", credit.into()), ("reason", reason.into())],
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn subgroups_stand_under_the_vegetables() {
        for (of, words) in [
            (Component::Vegetables, "Vegetables"),
            (Component::RedOrange, "of these red and orange vegetables"),
            (Component::Milk, "Fluid milk"),
        ] {
            assert_eq!(component(of), words);
        }
    }

    #[test]
    fn what_is_open_is_named() {
        let some = [Component::Grains, Component::Milk];
        assert!(open(&some).contains("toward grains, fluid milk:"));
        assert!(open(&Component::ALL).contains("toward any component:"));
    }

    #[test]
    fn a_step_names_its_number_and_where_it_comes_from() {
        for (operation, unit, words) in [
            (Operation::DividedBy, "g", "÷ 28.35 g: 1 oz"),
            (Operation::Times, "", "× 28.35: 1 oz"),
        ] {
            let one = Step {
                operation,
                by: "28.35".parse().unwrap(),
                unit: unit.into(),
                words: "1 oz".into(),
            };
            assert_eq!(step(&one, "28.35"), words);
        }
    }

    #[test]
    fn what_is_stated_carries_its_marks_and_its_reason() {
        let two = |marks: &[Mark]| stated_credit("2", Component::Grains, marks, "CN label 1");
        assert_eq!(two(&[]), "2 oz eq grains in one serving: CN label 1");
        assert_eq!(
            two(&[Mark::WholeGrainRich]),
            "2 oz eq grains (whole grain-rich) in one serving: CN label 1"
        );
    }
}
