//! The bare nutrient product: grams of all recipes' lines times values.

use criterion::Criterion;
use engine::year::{LANE, RowWeight, ValueRows};
use gramwright_bench::rival::Rival;
use std::hint::black_box;

pub fn run(criterion: &mut Criterion) {
    let reference = crate::reference();
    let mut values = ValueRows::new(&reference.foods);
    let recipes: Vec<Vec<RowWeight>> = crate::district()
        .studies
        .iter()
        .map(|(_, study)| {
            let lines = study.parts.iter().zip(&crate::plain().line_grams);
            lines
                .map(|(part, _)| RowWeight {
                    row: values.row_of(&reference.foods, part),
                    grams: rust_decimal::prelude::ToPrimitive::to_f64(
                        &part.weight.expect("a weight").grams(),
                    )
                    .expect("a float"),
                })
                .collect()
        })
        .collect();
    let lanes = values.lanes();
    let mut sums = vec![[0.0; LANE]; recipes.len() * lanes];
    let mut missing = vec![0; recipes.len() * lanes];
    let mut scipy = Rival::python("product.py", crate::folder()).expect("scipy");
    let wasm = Rival::node("product.cjs", crate::folder());
    let mut group = criterion.benchmark_group("product");
    group.bench_function("ours", |bencher| {
        bencher.iter(|| {
            for (at, lines) in recipes.iter().enumerate() {
                let place = at * lanes..(at + 1) * lanes;
                let missing = &mut missing[place.clone()];
                values.add_up(lines, &mut sums[place], missing);
            }
            black_box(sums[0][0])
        });
    });
    group.bench_function("scipy", |bencher| {
        bencher.iter_custom(|times| scipy.time(times).expect("a time"));
    });
    match wasm {
        Ok(mut wasm) => {
            group.bench_function("wasm", |bencher| {
                bencher.iter_custom(|times| wasm.time(times).expect("a time"));
            });
        }
        Err(problem) => println!("not measured in WebAssembly: {problem:#}"),
    }
    group.finish();
}
