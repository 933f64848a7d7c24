//! The full recompute of a district year.

use criterion::Criterion;
use engine::year::Year;
use gramwright_bench::rival::Rival;
use gramwright_bench::sqlite::{SqlFound, SqlYear};
use std::collections::BTreeMap;
use std::fs;
use std::hint::black_box;

pub fn run(criterion: &mut Criterion) {
    let mut year = Year::new(
        crate::reference(),
        &crate::district().studies,
        &crate::district().weeks,
    )
    .expect("a whole year");
    let sql = SqlYear::new(crate::plain()).expect("tables");
    let digits = &crate::plain().digits;
    let mut polars = Rival::python("year.py", crate::folder()).expect("polars");
    let expected = printed(&mut year);
    compare("sqlite", &expected, &sql.recompute(digits).expect("rows"));
    compare("polars", &expected, &of_files());
    println!("polars works {}", polars.answer());
    exact_once();
    let mut group = criterion.benchmark_group("year");
    group.bench_function("ours", |bencher| {
        bencher.iter(|| {
            year.recompute();
            black_box(year.len())
        });
    });
    group.bench_function("sqlite", |bencher| {
        bencher.iter(|| sql.recompute(digits).expect("rows"));
    });
    group.bench_function("polars", |bencher| {
        bencher.iter_custom(|times| polars.time(times).expect("a time"));
    });
    group.finish();
}

/// How long the same takes week by week on the exact path, for the record.
fn exact_once() {
    let (reference, district) = (crate::reference(), crate::district());
    let start = std::time::Instant::now();
    for week in &district.weeks {
        let served = week.recipes();
        let studies: Vec<_> = served
            .iter()
            .filter_map(|name| {
                let at = district
                    .studies
                    .binary_search_by_key(&name, |(id, _)| id)
                    .ok()?;
                Some((name.clone(), &district.studies[at].1))
            })
            .collect();
        black_box(reference.study_week_with(week, &studies).expect("a week"));
    }
    println!(
        "exact path, meal pattern and carriers included: {:?}",
        start.elapsed()
    );
}

fn printed(year: &mut Year<'_>) -> SqlFound {
    let mut found = SqlFound::default();
    for brief in year.services() {
        found.printed.extend(brief.averages);
        for finding in brief.findings {
            // What is incomplete is not judged by the rivals: they tell whether
            // the known figure keeps the limit.
            let holds = match finding.verdict {
                engine::findings::Verdict::Met => Some(true),
                engine::findings::Verdict::Missed => Some(false),
                engine::findings::Verdict::Unknown => None,
            };
            found.holds.push(holds.unwrap_or(true));
        }
    }
    found
}

fn of_files() -> SqlFound {
    let read = |name| fs::read(crate::folder().join(name)).expect("a rival's findings");
    let bytes = read("polars_printed.i64");
    let whole = bytes
        .chunks_exact(8)
        .map(|bytes| i64::from_le_bytes(bytes.try_into().expect("eight")));
    SqlFound {
        printed: whole.collect(),
        holds: read("polars_holds.u8")
            .into_iter()
            .map(|byte| byte == 1)
            .collect(),
    }
}

/// The rivals do the same work: nearly every digit is the same. Not all, for
/// they compute in floats and round what they have.
fn compare(rival: &str, ours: &SqlFound, theirs: &SqlFound) {
    assert_eq!(ours.printed.len(), theirs.printed.len(), "{rival}");
    assert_eq!(ours.holds.len(), theirs.holds.len(), "{rival}");
    let mut apart: BTreeMap<i64, usize> = BTreeMap::new();
    for (ours, theirs) in ours.printed.iter().zip(&theirs.printed) {
        *apart.entry((ours - theirs).abs()).or_default() += 1;
    }
    println!("{rival}: printed averages by distance from ours: {apart:?}");
    assert!(
        apart.keys().all(|distance| *distance <= 1),
        "{rival} does other work"
    );
    assert!(
        apart[&0] * 1000 > ours.printed.len() * 999,
        "{rival} does other work"
    );
}
