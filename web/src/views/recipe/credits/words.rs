//! Words about meal component credits.

use crate::views::recipe::phrases::sentence;
use engine::components::{CitedRule, Component, CouldAdd, Mark, Operation, PartCredit, Step};

pub const TITLE: &str = "Meal components in one serving";
pub const HINT: &str = "Amounts of the whole recipe are added up exactly and rounded down once, last. For grades K to \
     12: the smallest amounts that count differ for younger children.";
pub const NOTHING_CREDITS: &str = "No line credits toward a meal component.";
pub const COMPONENT: &str = "Component";
pub const CREDITED: &str = "credits";
pub const EXACT: &str = "before rounding";
pub const COMPLETE: &str = "known for";
pub const LINES: &str = "Line by line: how the credits come about";
pub const LINES_HINT: &str =
    "Open a line for its arithmetic, the rule behind it, and to state another credit.";
pub const NOTHING: &str = "nothing";

pub const BEANS: &str = "Beans, peas and lentils are served as";
pub const BEANS_VEGETABLE: &str = "a vegetable";
pub const BEANS_MEAT: &str = "a meat alternate";
pub const BEANS_HINT: &str = "One dish cannot count them as both.";

pub const STATED_TITLE: &str = "Stated by the office, in place of the rules";
pub const TAKE_BACK: &str = "Take it back";
pub const STATE_IT: &str = "State another credit for this line";
pub const STATE_HINT: &str = "From the CN label or the maker’s product formulation statement, which is kept for the \
     review. It stands for the whole line, in place of what the rules say. Amounts are for one serving of \
     the recipe: look at it again when the line or the servings change.";
pub const TOWARD: &str = "Toward";
pub const PER_SERVING: &str = "In one serving";
pub const MARKS: &str = "What week rules ask of it:";
pub const REASON: &str = "Why";
pub const REASON_EXAMPLE: &str = "CN label 012345";
pub const STATE: &str = "State this credit";
pub const NEEDS_AMOUNT: &str = "Enter how much one serving credits, in numbers; 0 for nothing.";
pub const NEEDS_REASON: &str = "Say why: which label or statement gives this credit?";

/// A component; subgroups are vegetables of one kind.
pub fn component(component: Component) -> String {
    let name = component.to_string();
    match Component::SUBGROUPS.contains(&component) {
        true => format!("of these {name}"),
        false => sentence(&name),
    }
}

/// An amount with its unit.
pub fn amount(figure: &str, unit: &str) -> String {
    format!("{figure} {unit}")
}

/// Lines whose credit is not known could add to it.
pub fn at_least(amount: &str) -> String {
    format!("at least {amount}")
}

/// Whether every line is taken into account.
pub fn complete(complete: bool) -> &'static str {
    match complete {
        true => "all lines",
        false => "not all lines",
    }
}

/// Components of which nothing is known: all of them are not listed.
pub fn open(components: &[Component]) -> String {
    let names: Vec<String> = components.iter().map(Component::to_string).collect();
    let toward = match components.len() == Component::ALL.len() {
        true => "any component".to_owned(),
        false => names.join(", "),
    };
    format!("Not known whether it credits toward {toward}: see the lines whose credit is unknown.")
}

/// Whether the flours of the recipe are whole grain-rich together.
pub fn dough(is_rich: bool) -> &'static str {
    match is_rich {
        true => "The flours and meals of the recipe are whole grain-rich, taken together.",
        false => "The flours and meals of the recipe are not whole grain-rich, taken together.",
    }
}

/// What a line credits in one serving, with its marks.
pub fn part(figure: &str, part: &PartCredit) -> String {
    let amount = amount(figure, part.component.unit());
    let of = part.component;
    match marks(&part.marks) {
        marks if marks.is_empty() => format!("{amount} {of}"),
        marks => format!("{amount} {of} ({marks})"),
    }
}

/// Marks one after another.
pub fn marks(marks: &[Mark]) -> String {
    let marks: Vec<String> = marks.iter().map(Mark::to_string).collect();
    marks.join(", ")
}

/// A line of which it is not known what it credits.
pub fn unknown(could_add: CouldAdd) -> String {
    match could_add {
        CouldAdd::Anything => "unknown: could add to any component".to_owned(),
        CouldAdd::Only(component) => format!("unknown: could add to {component}"),
    }
}

/// With what the arithmetic begins.
pub fn edible_weight(grams: &str) -> String {
    format!("{grams} g, the edible weight of the line")
}

/// A step, with its number as printed.
pub fn step(step: &Step, by: &str) -> String {
    let sign = match step.operation {
        Operation::Times => "×",
        Operation::DividedBy => "÷",
    };
    let by = match step.unit.as_str() {
        "" => by.to_owned(),
        unit => format!("{by} {unit}"),
    };
    format!("{sign} {by}: {}", step.words)
}

/// What the steps lead to.
pub fn result(whole: &str, servings: &str, serving: &str) -> String {
    format!("= {whole} in the whole recipe, ÷ {servings} servings = {serving}")
}

/// The rule in words, or why nothing is credited.
pub fn reason(reason: &str) -> String {
    sentence(reason)
}

/// Where the rule stands and how sure it is.
pub fn rule(rule: &CitedRule) -> String {
    let paragraph = match rule.paragraph.as_str() {
        "" => String::new(),
        paragraph => format!("{paragraph}; "),
    };
    format!(
        "Rule “{}”: {paragraph}{} ({})",
        rule.id, rule.source, rule.status
    )
}

/// What the office states for a line.
pub fn stated(reason: &str) -> String {
    format!("Stated by the office: {reason}")
}

/// A credit that the office states: amount, component, marks, reason.
pub fn stated_credit(figure: &str, component: Component, marks: &[Mark], reason: &str) -> String {
    let amount = amount(figure, component.unit());
    let marks = match self::marks(marks) {
        marks if marks.is_empty() => marks,
        marks => format!(" ({marks})"),
    };
    format!("{amount} {component}{marks} in one serving: {reason}")
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
