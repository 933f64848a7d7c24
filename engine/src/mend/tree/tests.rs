//! The search beside all sets of a few columns.

use super::*;
use crate::mend::model::{Row, Sum};
use crate::mend::simplify::simplify;
use crate::mend::small::{choices, exclude, keeps, least, sum};
use proptest::prelude::*;

const COLUMNS: usize = 9;

/// Costs beyond one, in steps; demands, with what they are within of their
/// helper, if any; and changes that exclude each other, by bits.
type Drawn = (Vec<u8>, Vec<(Vec<i8>, i8, Option<i8>)>, Vec<u16>);

fn drawn() -> impl Strategy<Value = Drawn> {
    let demand = (
        prop::collection::vec(-2_i8..4, COLUMNS),
        1_i8..8,
        prop::option::of(0_i8..4),
    );
    (
        prop::collection::vec(4_u8..80, COLUMNS),
        prop::collection::vec(demand, 1..4),
        prop::collection::vec(any::<u16>(), 0..4),
    )
}

/// A helper is what is left of a demand within three of its least.
fn model((costs, demands, exclusions): &Drawn) -> Model {
    let mut model = choices(costs.iter().map(|cost| 1.0 + f64::from(*cost) / 4096.0));
    for group in exclusions {
        exclude(&mut model, u32::from(*group));
    }
    for (coefficients, least, within) in demands {
        let mut asked = sum(coefficients.iter().map(|number| f64::from(*number)));
        let mut limited = asked.clone();
        if let Some(within) = within {
            let helper = model.helper(String::new(), None);
            asked.add(helper, -1.0);
            limited.add(helper, -1.0);
            let most = f64::from(least + within);
            model.at_most(String::new(), Vec::new(), limited, most);
            let mut rest = Sum::default();
            rest.add(helper, 1.0);
            model.at_most(String::new(), Vec::new(), rest, 2.0);
        }
        model.at_least(String::new(), Vec::new(), asked, f64::from(*least));
    }
    model
}

/// The least of all sets that `passes`: what is left for a helper is found
/// by hand.
fn expected((costs, demands, exclusions): &Drawn, passes: impl Fn(&[f64]) -> bool) -> Option<f64> {
    let bare = model(&(costs.clone(), Vec::new(), exclusions.clone()));
    least(&bare, |choice| {
        let keeps_demand = |(coefficients, least, within): &(Vec<i8>, i8, Option<i8>)| {
            let terms = coefficients.iter().zip(choice);
            let sum: f64 = terms.map(|(by, value)| f64::from(*by) * value).sum();
            let least = f64::from(*least);
            let most = within.map_or(f64::INFINITY, |within| least + f64::from(within) + 2.0);
            sum >= least && sum <= most
        };
        bare.rows.iter().all(|row| keeps(row, choice))
            && demands.iter().all(keeps_demand)
            && passes(choice)
    })
}

/// A row that only one set of the columns breaks.
fn cut(chosen: &[usize]) -> Row {
    let by = |at: usize| if chosen.contains(&at) { -1.0 } else { 1.0 };
    Row {
        name: String::new(),
        lower: Some(1.0 - chosen.len() as f64),
        upper: None,
        terms: (0..COLUMNS).map(|at| (at, by(at))).collect(),
        of: Vec::new(),
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    /// The same as trying every set of changes, in pieces of one node, where
    /// some plans do not pass.
    #[test]
    fn the_least_is_that_of_all_sets(drawn in drawn(), refusing in 1_usize..5) {
        let passes = |chosen: &[usize]| chosen.iter().sum::<usize>() % refusing != 1;
        let model = model(&drawn);
        let mut tree = Tree::new(&model, &simplify(&model)).expect("choices and a helper");
        let found = loop {
            match tree.step(1) {
                Solved::Going { .. } => {}
                Solved::Proposed(chosen) if passes(&chosen.columns) => tree.accept(),
                Solved::Proposed(chosen) => tree.refuse(&[cut(&chosen.columns)]),
                Solved::Least(chosen) => break Some(chosen.objective),
                Solved::None => break None,
                Solved::GaveUp => panic!("gave up"),
            }
        };
        let expected = expected(&drawn, |choice| {
            let chosen: Vec<usize> = (0..COLUMNS).filter(|at| choice[*at] > 0.5).collect();
            passes(&chosen)
        });
        prop_assert_eq!(found, expected);
    }
}
