//! The least and the most that one can take from an offer.

use super::super::model::{Model, Sum};

/// What a choice credits now, and by how much each candidate moves it.
pub(super) struct Moves {
    pub now: f64,
    pub movers: Vec<(usize, f64)>,
    /// Whether more than one line of the dish moves it.
    pub several: bool,
}

/// The least that `take` of these bring, by helpers: the largest of
/// `take × t − Σ short` with `short ≥ t − credit`.
pub(super) fn least(model: &mut Model, credits: Vec<Sum>, take: usize) -> Sum {
    let mut total = Sum::default();
    if take == 0 {
        return total;
    }
    if credits.iter().all(Sum::is_constant) {
        let mut amounts: Vec<f64> = credits.iter().map(|credit| credit.constant).collect();
        amounts.sort_by(f64::total_cmp);
        total.constant = amounts.into_iter().take(take).sum();
        return total;
    }
    let level = model.helper("level".to_owned(), None);
    total.add(level, take as f64);
    for credit in &credits {
        let mut gap = Sum::default();
        gap.add_times(1.0, credit);
        gap.add(level, -1.0);
        if take > 1 {
            let short = model.helper("short".to_owned(), None);
            gap.add(short, 1.0);
            total.add(short, -1.0);
        }
        model.at_least("least of an offer".to_owned(), Vec::new(), gap, 0.0);
    }
    total
}

/// The most that `take` of these bring, at most. With `m` the least of those
/// that are taken now, a choice that comes to credit `v` adds no more than
/// `max(0, v − max(now, m))`; where several changes of a dish add up, each adds
/// no more than its own rise.
pub(super) fn most(
    moves: Vec<Moves>,
    take: usize,
    slack: f64,
    is_of_line: impl Fn(usize) -> bool,
) -> Sum {
    let mut amounts: Vec<f64> = moves.iter().map(|choice| choice.now).collect();
    amounts.sort_by(|a, b| b.total_cmp(a));
    amounts.truncate(take);
    let mut total = Sum::of(amounts.iter().sum());
    let least_taken = amounts.last().copied().unwrap_or(0.0);
    for choice in moves {
        for (at, rise) in choice.movers {
            let adds = if choice.several && is_of_line(at) {
                (rise + slack).max(0.0)
            } else {
                (choice.now + rise - choice.now.max(least_taken)).max(0.0)
            };
            total.add(at, adds);
        }
    }
    total
}

#[cfg(test)]
mod tests {
    use super::super::credits::SLACK;
    use super::*;
    use crate::mend::model::Column;
    use crate::mend::solve::solve;

    /// Every combination of three choices that credit one of three amounts.
    fn credits() -> impl Iterator<Item = [f64; 3]> {
        const AMOUNTS: [f64; 3] = [0.0, 0.5, 0.75];
        AMOUNTS.into_iter().flat_map(|a| {
            let pairs = AMOUNTS.into_iter().flat_map(|b| AMOUNTS.map(|c| (b, c)));
            pairs.map(move |(b, c)| [a, b, c])
        })
    }

    /// By the definition: sorted and added up.
    fn taken(mut amounts: Vec<f64>, take: usize, most: bool) -> f64 {
        amounts.sort_by(f64::total_cmp);
        if most {
            amounts.reverse();
        }
        amounts.into_iter().take(take).sum()
    }

    /// The helpers let the sum be as large as the least, and no larger.
    #[test]
    fn the_least_is_exact() {
        for (now, take) in credits().flat_map(|now| [(now, 1), (now, 2)]) {
            let mut model = Model::default();
            model.columns.push(Column {
                name: "change".to_owned(),
                cost: 1.0,
                lower: 0.0,
                upper: Some(1.0),
                integer: true,
            });
            // The change brings the first choice to one cup.
            let mut sums: Vec<Sum> = now.into_iter().map(Sum::of).collect();
            sums[0].add(0, 1.0 - now[0]);
            let before = taken(now.to_vec(), take, false);
            let after = taken(vec![1.0, now[1], now[2]], take, false);
            let sum = least(&mut model, sums, take);
            for (limit, changes) in [
                (before, Some(0.0)),
                (after, Some(f64::from(after > before))),
            ] {
                let mut asked = model.clone();
                asked.at_least(String::new(), Vec::new(), sum.clone(), limit);
                let answer = solve(&asked).objective;
                assert_eq!(
                    answer.map(f64::round),
                    changes,
                    "{now:?} take {take}: {limit}"
                );
            }
            let mut asked = model.clone();
            asked.at_least(String::new(), Vec::new(), sum.clone(), after + 0.01);
            assert!(solve(&asked).infeasible, "{now:?} take {take}");
        }
    }

    /// Whatever choices come to credit, their most is not more than is allowed.
    #[test]
    fn the_most_is_never_too_small() {
        for (now, then) in credits().flat_map(|now| credits().map(move |then| (now, then))) {
            for take in [1, 2] {
                let moves = (0..3).map(|at| Moves {
                    now: now[at],
                    movers: vec![(at, then[at] - now[at])],
                    several: false,
                });
                let sum = most(moves.collect(), take, SLACK, |_| false);
                for bits in 0_u32..8 {
                    let chosen = |at: usize| bits & (1 << at) != 0;
                    let amounts = (0..3).map(|at| if chosen(at) { then[at] } else { now[at] });
                    let truly = taken(amounts.collect(), take, true);
                    let allowed = sum.at(|column| f64::from(chosen(column)));
                    assert!(
                        truly <= allowed + 1e-9,
                        "{now:?} {then:?} {bits} take {take}"
                    );
                }
            }
        }
    }
}
