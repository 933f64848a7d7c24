//! SQLite's full-text search on the strings and queries that all searches are given.
//!
//! `search_sqlite STRINGS.json TIMES.json`: see `search/measure.mjs`, which prints the comparison.

use anyhow::{Context, Result};
use rusqlite::{Connection, Statement, params};
use serde_json::{Map, Value, json};
use std::time::{Duration, Instant};
use std::{env, fs};

/// How many foods are shown.
const SHOWN: u32 = 5;

fn main() -> Result<()> {
    let mut files = env::args().skip(1);
    let strings = files.next().context("the file of strings")?;
    let times = files.next().context("the file to write")?;
    let strings: Value = serde_json::from_str(&fs::read_to_string(strings)?)?;
    let foods = list(&strings, "foods")?;
    let queries = list(&strings, "queries")?;

    let builds: Vec<(Duration, Connection)> = (0..5)
        .map(|_| {
            let start = Instant::now();
            let database = index(foods)?;
            Ok((start.elapsed(), database))
        })
        .collect::<Result<_>>()?;
    let mut build_times: Vec<Duration> = builds.iter().map(|(time, _)| *time).collect();
    build_times.sort();
    let mut search = builds[0]
        .1
        .prepare("SELECT food FROM foods WHERE text MATCH ?1 ORDER BY rank LIMIT ?2")?;

    let mut answers = Map::new();
    let mut key_strokes = Vec::new();
    for round in 0..2 {
        for query in queries {
            let query = query["query"].as_str().context("a query")?;
            for (end, letter) in query.char_indices() {
                let typed = &query[..end + letter.len_utf8()];
                let start = Instant::now();
                let found = answer(&mut search, typed)?;
                // The first round warms up.
                if round == 1 {
                    key_strokes.push(start.elapsed());
                }
                if typed == query {
                    answers.insert(query.to_owned(), json!(found));
                }
            }
        }
    }
    key_strokes.sort();
    let share = |percent: usize| milliseconds(key_strokes[(key_strokes.len() - 1) * percent / 100]);
    let report = json!({
        "name": "SQLite FTS5, native",
        "build": milliseconds(build_times[2]),
        "p50": share(50),
        "p99": share(99),
        "answers": answers,
    });
    fs::write(times, report.to_string())?;
    Ok(())
}

fn list<'a>(strings: &'a Value, name: &str) -> Result<&'a Vec<Value>> {
    strings[name]
        .as_array()
        .with_context(|| format!("no {name}"))
}

/// The best that it offers for beginnings and plurals: word stems, and an index of beginnings.
fn index(foods: &[Value]) -> Result<Connection> {
    let mut database = Connection::open_in_memory()?;
    database.execute_batch(
        "CREATE VIRTUAL TABLE foods USING fts5(\
           food UNINDEXED, text, tokenize = 'porter unicode61', prefix = '1 2 3')",
    )?;
    let writing = database.transaction()?;
    {
        let mut insert = writing.prepare("INSERT INTO foods VALUES (?1, ?2)")?;
        for food in foods {
            insert.execute(params![food["food"].as_str(), food["text"].as_str()])?;
        }
    }
    writing.execute("INSERT INTO foods (foods) VALUES ('optimize')", [])?;
    writing.commit()?;
    Ok(database)
}

/// All words, the last one perhaps half typed; if no food has them all, any of them.
fn answer(search: &mut Statement<'_>, typed: &str) -> Result<Vec<String>> {
    let words: Vec<String> = typed
        .split(|letter: char| !letter.is_alphanumeric())
        .filter(|word| !word.is_empty())
        .map(|word| format!("\"{word}\""))
        .collect();
    for joint in [" AND ", " OR "] {
        let mut asked = words.join(joint);
        if typed.ends_with(char::is_alphanumeric) {
            asked.push('*');
        }
        if asked.is_empty() {
            break;
        }
        let rows = search.query_map(params![asked, SHOWN], |row| row.get(0))?;
        let found: Vec<String> = rows.collect::<Result<_, _>>()?;
        if !found.is_empty() {
            return Ok(found);
        }
    }
    Ok(Vec::new())
}

fn milliseconds(time: Duration) -> f64 {
    time.as_secs_f64() * 1000.0
}
