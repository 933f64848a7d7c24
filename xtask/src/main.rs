//! Developer commands: `cargo xtask serve`, `test`, `build`, `bench`.
//!
//! Each installs what it lacks into `target/tools` first, and says what it is doing.

mod bench;
mod checks;
mod console;
mod page;
mod project;
mod serve;
mod tools;

use anyhow::{Context, Result, bail};
use page::Page;
use std::env;
use std::process::ExitCode;

const USAGE: &str = "\
cargo xtask serve [--port N]   build the page and show it (port 8080, or the next free one)
cargo xtask test [STAGE …] [-- FILTER …]
                               run every check, or the stages named: format, lint, native,
                               wasm, journeys; FILTER chooses tests by their names
cargo xtask build              build the page as its users get it, into dist/, with its sizes
cargo xtask bench [PART …] [-- FILTER …]
                               measure beside general-purpose engines, or the parts named:
                               speed, weeks, state, search, page; FILTER chooses those of
                               speed by their names";

fn main() -> ExitCode {
    let arguments: Vec<String> = env::args().skip(1).collect();
    let arguments: Vec<&str> = arguments.iter().map(String::as_str).collect();
    match run(&arguments) {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("error: {error:#}");
            ExitCode::FAILURE
        }
    }
}

fn run(arguments: &[&str]) -> Result<()> {
    match arguments {
        ["serve"] => serve::run(serve::USUAL_PORT),
        ["serve", "--port", port] => serve::run(
            port.parse()
                .with_context(|| format!("{port} is no port number"))?,
        ),
        ["test", rest @ ..] => {
            let (stages, filter) = with_filter(rest);
            checks::run(stages, filter)
        }
        ["bench", rest @ ..] => {
            let (parts, filter) = with_filter(rest);
            bench::run(parts, filter)
        }
        ["build"] => build(),
        _ => bail!("these are the commands:\n{USAGE}"),
    }
}

/// What stands before and after `--`.
fn with_filter<'a, 'w>(words: &'a [&'w str]) -> (&'a [&'w str], &'a [&'w str]) {
    let end = words.iter().position(|word| *word == "--");
    let (before, after) = words.split_at(end.unwrap_or(words.len()));
    (before, after.get(1..).unwrap_or_default())
}

/// `cargo xtask build`.
fn build() -> Result<()> {
    let compiler = tools::set_up(&[&tools::pins::NODE, &tools::pins::BINARYEN])?;
    println!(
        "Building the optimised page: usually {}",
        console::words(Page::Optimised.usual())
    );
    let folder = page::build(Page::Optimised, compiler)?;
    println!("The page is in {}", folder.display());
    page::sizes::print(&folder)
}
