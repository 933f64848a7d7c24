//! What the developer sees while they wait: each step's name, its usual time, and what is left.

use anyhow::{Context, Result, bail};
use std::fs::{self, File};
use std::io::{self, IsTerminal, Write};
use std::path::Path;
use std::process::{Command, ExitStatus, Stdio};
use std::thread;
use std::time::{Duration, Instant};

/// How many closing lines of a failed command's log are shown.
const TAIL: usize = 40;

/// A duration in words: `45 s`, `2 min 05 s`.
#[must_use]
pub fn words(duration: Duration) -> String {
    let seconds = duration.as_secs();
    if seconds < 60 {
        format!("{seconds} s")
    } else {
        format!("{} min {:02} s", seconds / 60, seconds % 60)
    }
}

/// Counts the steps of a command down.
#[derive(Debug)]
pub struct Steps {
    done: usize,
    usual: Vec<Duration>,
}

impl Steps {
    /// The usual time of every step to come, in order.
    #[must_use]
    pub fn new(usual: Vec<Duration>) -> Self {
        Self { done: 0, usual }
    }

    /// Announces the next step, runs it, and says how long it took and what is left.
    ///
    /// # Errors
    /// The step's own.
    pub fn run<T>(&mut self, name: &str, step: impl FnOnce(Duration) -> Result<T>) -> Result<T> {
        let usual = self.usual.get(self.done).copied().unwrap_or_default();
        let (number, all) = (self.done + 1, self.usual.len());
        println!("[{number}/{all}] {name}: usually {}", words(usual));
        let started = Instant::now();
        let outcome = step(usual).with_context(|| format!("{name} failed"))?;
        self.done = number;
        println!(
            "[{number}/{all}] {name}: done in {}{}",
            words(started.elapsed()),
            self.left()
        );
        Ok(outcome)
    }

    fn left(&self) -> String {
        let to_come = self.usual.get(self.done..).unwrap_or_default();
        match to_come.len() {
            0 => String::new(),
            steps => format!("; {steps} more, about {}", words(to_come.iter().sum())),
        }
    }
}

/// Runs a command whose output goes to `log`, showing the time passed while it runs.
///
/// # Errors
/// When it cannot start, or fails: then with the end of its log.
pub fn run_quietly(command: &mut Command, log: &Path, usual: Duration) -> Result<()> {
    if let Some(folder) = log.parent() {
        fs::create_dir_all(folder)?;
    }
    let output = File::create(log).with_context(|| format!("cannot write {}", log.display()))?;
    command.stdout(output.try_clone()?).stderr(output);
    let status = wait_with_clock(command, usual)?;
    if !status.success() {
        let text = fs::read_to_string(log).unwrap_or_default();
        let lines: Vec<&str> = text.lines().collect();
        let tail = lines[lines.len().saturating_sub(TAIL)..].join("\n");
        bail!(
            "{command:?} ended with {status}. Its whole output is in {}; the end of it:\n{tail}",
            log.display()
        );
    }
    Ok(())
}

fn wait_with_clock(command: &mut Command, usual: Duration) -> Result<ExitStatus> {
    let mut child = command
        .stdin(Stdio::null())
        .spawn()
        .with_context(|| format!("cannot start {command:?}"))?;
    let started = Instant::now();
    let on_terminal = io::stdout().is_terminal();
    // A terminal's line is overwritten every second; a log gets a line now and then.
    let beat = Duration::from_secs(if on_terminal { 1 } else { 20 });
    let mut next = beat;
    loop {
        if let Some(status) = child.try_wait()? {
            if on_terminal {
                print!("\r\x1b[K");
                io::stdout().flush()?;
            }
            return Ok(status);
        }
        thread::sleep(Duration::from_millis(100));
        let passed = started.elapsed();
        if passed >= next {
            next = passed + beat;
            let line = format!("    {} of about {}", words(passed), words(usual));
            if on_terminal {
                print!("\r\x1b[K{line}");
                io::stdout().flush()?;
            } else {
                println!("{line}");
            }
        }
    }
}

/// Runs a command that talks to the developer itself.
///
/// # Errors
/// When it cannot start, or fails.
pub fn run_openly(command: &mut Command) -> Result<()> {
    let status = command
        .status()
        .with_context(|| format!("cannot start {command:?}"))?;
    if !status.success() {
        bail!("{command:?} ended with {status}");
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn tells_durations_in_words() {
        assert_eq!(words(Duration::from_secs(45)), "45 s");
        assert_eq!(words(Duration::from_secs(125)), "2 min 05 s");
    }

    #[test]
    fn a_failed_command_shows_the_end_of_its_output() {
        let log = std::env::temp_dir().join(format!("xtask-{}.log", std::process::id()));
        let mut command = Command::new("sh");
        command.args(["-c", "echo no such crate; exit 3"]);
        let failure = run_quietly(&mut command, &log, Duration::ZERO).expect_err("exit 3");
        drop(fs::remove_file(&log));
        assert!(format!("{failure:#}").ends_with("no such crate"));
    }
}
