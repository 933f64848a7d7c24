//! Writes the models of generated weeks, with our own answers and times, for
//! another solver to compare (`rivals/least_change.py`).
//!
//! `week_models FOLDER [HOW_MANY]`
//!
//! Each file holds one model: `columns` with cost, bounds and whether only
//! whole numbers are meant, `rows` with bounds and terms (index of a column,
//! coefficient), to be minimised; and `ours`, with the least objective, or that
//! there is none, and the median seconds of five solves from scratch. It is the
//! model at the end of the search, with every cut that the engine's exact check
//! added, so its optimum is the answer that the page gives.

use engine::mend::{Answer, Ask, Model, Outcome, Search, Tools, solve};
use engine::swaps::SwapIndex;
use gramwright_tests::fixtures::reference;
use gramwright_tests::weeks::large;
use serde::Serialize;
use std::path::Path;
use std::time::{Duration, Instant};

const SOLVES: usize = 5;

/// A week whose search takes longer is left unfinished.
const PATIENCE: Duration = Duration::from_secs(60);

/// A model that takes longer to solve is solved once only.
const LONG: Duration = Duration::from_secs(3);

#[derive(Serialize)]
struct Ours {
    status: &'static str,
    objective: Option<f64>,
    seconds: f64,
    nodes: u64,
}

#[derive(Serialize)]
struct File<'m> {
    name: String,
    sense: &'static str,
    #[serde(flatten)]
    model: &'m Model,
    ours: Ours,
}

fn main() {
    let mut arguments = std::env::args().skip(1);
    let (Some(folder), how_many) = (arguments.next(), arguments.next()) else {
        eprintln!("name a folder for the models, and how many if not 30");
        std::process::exit(2);
    };
    let how_many = how_many.map_or(Ok(30), |number| number.parse::<usize>());
    let how_many = how_many.unwrap_or_else(|error| panic!("how many: {error}"));
    std::fs::create_dir_all(&folder).expect("a folder that can be made");
    let index = SwapIndex::build(reference()).expect("the committed tables");
    let mut written = 0;
    for seed in 0.. {
        if written == how_many {
            break;
        }
        written += usize::from(write(Path::new(&folder), &index, seed, written));
    }
}

/// Writes one week's model. False for a week that needs no mending.
fn write(folder: &Path, index: &SwapIndex, seed: u64, number: usize) -> bool {
    let made = large(seed);
    let tools = Tools {
        reference: &made.reference,
        index,
    };
    let mut search =
        Search::new(tools, &made.book, &made.week, Ask::default()).expect("a week to study");
    let begun = Instant::now();
    while search.outcome().is_none() && begun.elapsed() < PATIENCE {
        search.step(tools);
    }
    if search.outcome() == Some(&Outcome::NothingToMend) {
        return false;
    }
    let whole = begun.elapsed();
    let progress = search.progress();
    let model = search.model().expect("a search that chooses has its model");
    let name = format!("week-{number:02}");
    let ours = match search.outcome() {
        Some(_) => timed(model),
        None => Ours {
            status: "unfinished",
            objective: None,
            seconds: whole.as_secs_f64(),
            nodes: 0,
        },
    };
    println!(
        "{name}: seed {seed}, {} changes, {} rows, {} plans checked, {} refused, {:?} in {:.4} s, whole search {:.2} s, {}",
        progress.changes,
        model.rows.len(),
        progress.checked,
        progress.refused,
        ours.objective,
        ours.seconds,
        whole.as_secs_f64(),
        ended(search.outcome()),
    );
    let file = File {
        name: name.clone(),
        sense: "minimize",
        model,
        ours,
    };
    let text = serde_json::to_string(&file).expect("plain numbers");
    std::fs::write(folder.join(format!("{name}.json")), text).expect("a file that can be written");
    true
}

fn ended(outcome: Option<&Outcome>) -> String {
    match outcome {
        Some(Outcome::Mended { plan, proof }) => {
            format!("{} changes, {proof:?}", plan.changes.len())
        }
        Some(Outcome::Impossible { because, .. }) => {
            let words = because.iter().map(|one| one.requirement.words.as_str());
            format!("impossible: {}", words.collect::<Vec<_>>().join("; "))
        }
        other => format!("{other:?}, unfinished"),
    }
}

fn timed(model: &Model) -> Ours {
    let mut seconds = Vec::new();
    let mut answer = Answer {
        objective: None,
        infeasible: false,
        nodes: 0,
    };
    for _ in 0..SOLVES {
        let begun = Instant::now();
        answer = solve(model);
        seconds.push(begun.elapsed().as_secs_f64());
        if begun.elapsed() > LONG {
            break;
        }
    }
    seconds.sort_by(f64::total_cmp);
    let status = match (&answer.objective, answer.infeasible) {
        (Some(_), _) => "optimal",
        (None, true) => "infeasible",
        (None, false) => "gave up",
    };
    Ours {
        status,
        objective: answer.objective,
        seconds: seconds[seconds.len() / 2],
        nodes: answer.nodes,
    }
}
