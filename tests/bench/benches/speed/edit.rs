//! One line edited, and all findings that it touches, in books of three sizes.

use criterion::Criterion;
use engine::units::Grams;
use engine::year::Year;
use gramwright_tests::district::{District, Size};
use rust_decimal::Decimal;
use std::hint::black_box;

pub fn run(criterion: &mut Criterion) {
    for (name, times) in [
        ("1 district", 1),
        ("10 districts", 10),
        ("100 districts", 100),
    ] {
        let size = Size {
            recipes: Size::YEAR.recipes * times,
            weeks: Size::YEAR.weeks * times,
            ..Size::YEAR
        };
        let district = District::draw(crate::reference(), size, crate::SEED);
        let mut year = Year::new(crate::reference(), &district.studies, &district.weeks)
            .expect("a whole year");
        let mut group = criterion.benchmark_group("edit");
        let mut edits = 0_usize;
        group.bench_function(name, |bencher| {
            bencher.iter(|| {
                // Another recipe each time, so that none is at hand already.
                edits += 1;
                let recipe = (edits * 7919) % size.recipes;
                let grams = Grams::new(Decimal::new(100 + (edits % 1000) as i64, 2));
                black_box(year.reweigh(recipe, edits % size.lines, grams).len())
            });
        });
        group.finish();
        let mut group = criterion.benchmark_group("recompute");
        group.sample_size(10);
        group.bench_function(name, |bencher| {
            bencher.iter(|| {
                year.recompute();
                black_box(year.len())
            });
        });
        group.finish();
    }
}
