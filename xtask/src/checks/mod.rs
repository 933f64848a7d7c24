//! `cargo xtask test`: every check, in stages; the first failed stage ends the run.

mod counts;
mod stage;

use crate::console::Steps;
use crate::tools::{self, pins};
use anyhow::{Result, bail};
use counts::Counts;
use stage::Stage;

/// Runs the stages named (all, when none is), passing `filter` on to the test runners.
///
/// The last line printed is the sum of what the runners counted; a stage that failed without a
/// failed test, as when something does not compile, counts as one failure.
///
/// # Errors
/// When a tool cannot be installed, a name is no stage's, or a stage has failed.
pub fn run(names: &[&str], filter: &[&str]) -> Result<()> {
    let stages = choose(names)?;
    let compiler = tools::set_up(&[&pins::NODE, &pins::AXE, &pins::BROWSER])?;
    let mut steps = Steps::new(stages.iter().copied().map(Stage::usual).collect());
    let mut sum = Counts::default();
    for stage in stages {
        let mut counts = Counts::default();
        let outcome = steps.run(stage.title(), |_| stage.run(compiler, filter, &mut counts));
        if outcome.is_err() && counts.failed == 0 {
            counts.failed = 1;
        }
        sum += counts;
        if let Err(error) = outcome {
            println!("error: {error:#}");
            println!("Stopped at the first stage that failed: {}", stage.title());
            println!("{sum}");
            std::process::exit(1);
        }
        stage.note_passed()?;
    }
    println!("{sum}");
    Ok(())
}

fn choose(names: &[&str]) -> Result<Vec<Stage>> {
    if let Some(unknown) = names
        .iter()
        .find(|name| Stage::ALL.iter().all(|stage| stage.name() != **name))
    {
        let known = Stage::ALL.map(Stage::name).join(", ");
        bail!("{unknown} is no stage of the checks; these are: {known}");
    }
    Ok(Stage::ALL
        .into_iter()
        .filter(|stage| names.is_empty() || names.contains(&stage.name()))
        .collect())
}
