//! The district year in SQL, in memory: one wide row per food, recipe and
//! service, so that nothing is grouped by nutrient; keys and statements
//! prepared beforehand. It may compute in binary floats, which the engine must
//! not print from.

use crate::work::PlainYear;
use rusqlite::{Connection, Result, params, params_from_iter};
use std::fmt::Write;

/// The year in tables.
#[derive(Debug)]
pub struct SqlYear {
    connection: Connection,
    nutrients: usize,
    totals: String,
    averages: String,
    findings: String,
}

/// What the queries come to.
#[derive(Debug, Default, PartialEq)]
pub struct SqlFound {
    /// Averages as printed, service by service.
    pub printed: Vec<i64>,
    /// Whether each limit is kept, in the order of services and rules.
    pub holds: Vec<bool>,
}

/// `pattern` with `{}` replaced by each column's number, joined by commas.
fn each(count: usize, pattern: &str) -> String {
    let terms: Vec<String> = (0..count)
        .map(|at| pattern.replace("{}", &at.to_string()))
        .collect();
    terms.join(", ")
}

impl SqlYear {
    /// Puts the year into tables.
    ///
    /// # Errors
    /// Those of the database.
    pub fn new(year: &PlainYear) -> Result<Self> {
        let connection = Connection::open_in_memory()?;
        let n = year.nutrients;
        connection.execute_batch(&format!(
            "PRAGMA journal_mode = OFF; PRAGMA synchronous = OFF; PRAGMA temp_store = MEMORY;
            CREATE TABLE value (food INTEGER PRIMARY KEY, {values});
            CREATE TABLE line (recipe INTEGER, seq INTEGER, food INTEGER, grams REAL,
                PRIMARY KEY (recipe, seq)) WITHOUT ROWID;
            CREATE TABLE recipe (recipe INTEGER PRIMARY KEY, servings REAL, milk REAL);
            CREATE TABLE service (service INTEGER PRIMARY KEY, pattern INTEGER, meals REAL);
            CREATE TABLE choice (service INTEGER, seq INTEGER, recipe INTEGER, planned REAL,
                PRIMARY KEY (service, seq)) WITHOUT ROWID;
            CREATE TABLE rule (pattern INTEGER, rule INTEGER, subject INTEGER, milk_free INTEGER,
                is_share INTEGER, kcal REAL, bound TEXT, bar REAL,
                PRIMARY KEY (pattern, rule)) WITHOUT ROWID;
            CREATE TABLE total (recipe INTEGER PRIMARY KEY, {totals}, {losts});
            CREATE TABLE average (service INTEGER PRIMARY KEY, milk REAL, {totals}, {losts});",
            values = each(n, "v{} REAL"),
            totals = each(n, "t{} REAL"),
            losts = each(n, "m{} INTEGER"),
        ))?;
        fill(&connection, year)?;
        connection.execute_batch("ANALYZE")?;
        let mut subjects: Vec<usize> = year.rules.iter().map(|rule| rule.column).collect();
        subjects.sort_unstable();
        subjects.dedup();
        let mut amount = String::from("CASE subject");
        for column in subjects {
            write!(amount, " WHEN {column} THEN t{column}").expect("text");
        }
        amount.push_str(" END");
        Ok(Self {
            totals: format!(
                "INSERT INTO total SELECT recipe, {}, {} FROM line JOIN value USING (food)
                GROUP BY recipe",
                each(n, "total(grams * v{}) / 100"),
                each(n, "count(*) - count(v{})"),
            ),
            averages: format!(
                "INSERT INTO average SELECT service, total(planned * milk) / meals, {}, {}
                FROM service JOIN choice USING (service) JOIN recipe USING (recipe)
                    JOIN total USING (recipe)
                GROUP BY service",
                each(n, "total(planned / servings * t{}) / meals"),
                each(n, "sum(m{})"),
            ),
            findings: format!(
                "SELECT service, rule, figure, CASE bound WHEN 'at least' THEN figure >= bar
                        WHEN 'at most' THEN figure <= bar ELSE figure < bar END, missing
                FROM (SELECT service, rule, bound, bar, m{energy} AS missing,
                        CASE is_share WHEN 1 THEN amount * kcal * 100 / energy ELSE amount END
                            AS figure
                    FROM (SELECT service, rule, bound, bar, is_share, kcal, m{energy},
                            t{energy} AS energy, {amount} - milk_free * milk AS amount
                        FROM average JOIN service USING (service) JOIN rule USING (pattern)))
                ORDER BY service, rule",
                energy = year.energy,
            ),
            nutrients: n,
            connection,
        })
    }

    /// Computes the whole year and reads what is printed.
    ///
    /// # Errors
    /// Those of the database.
    pub fn recompute(&self, digits: &[u32]) -> Result<SqlFound> {
        let run = |statement: &str| self.connection.prepare_cached(statement)?.execute([]);
        run("DELETE FROM total")?;
        run("DELETE FROM average")?;
        run(&self.totals)?;
        run(&self.averages)?;
        let mut found = SqlFound::default();
        let printed: Vec<String> = digits
            .iter()
            .enumerate()
            .map(|(at, digits)| format!("CAST(t{at} * 1e{digits} + 0.5 AS INTEGER), m{at}"))
            .collect();
        let query = format!(
            "SELECT {} FROM average ORDER BY service",
            printed.join(", ")
        );
        let mut statement = self.connection.prepare_cached(&query)?;
        let mut rows = statement.query([])?;
        while let Some(row) = rows.next()? {
            for column in 0..self.nutrients {
                found.printed.push(row.get(2 * column)?);
            }
        }
        let mut statement = self.connection.prepare_cached(&self.findings)?;
        let mut rows = statement.query([])?;
        while let Some(row) = rows.next()? {
            found.holds.push(row.get(3)?);
        }
        Ok(found)
    }
}

fn fill(connection: &Connection, year: &PlainYear) -> Result<()> {
    connection.execute_batch("BEGIN")?;
    let marks = vec!["?"; year.nutrients + 1].join(", ");
    let mut insert = connection.prepare(&format!("INSERT INTO value VALUES ({marks})"))?;
    for (food, values) in year.values.chunks(year.nutrients).enumerate() {
        let values = values
            .iter()
            .map(|value| (!value.is_nan()).then_some(*value));
        insert.execute(params_from_iter(
            [Some(food as f64)].into_iter().chain(values),
        ))?;
    }
    let mut insert = connection.prepare("INSERT INTO line VALUES (?, ?, ?, ?)")?;
    for (at, (food, grams)) in year.line_food.iter().zip(&year.line_grams).enumerate() {
        insert.execute(params![(at / year.lines) as i64, at as i64, food, grams])?;
    }
    let mut insert = connection.prepare("INSERT INTO recipe VALUES (?, ?, ?)")?;
    for (at, (servings, milk)) in year.servings.iter().zip(&year.milk).enumerate() {
        insert.execute(params![at as i64, servings, milk])?;
    }
    let mut insert = connection.prepare("INSERT INTO service VALUES (?, ?, ?)")?;
    for (at, (pattern, meals)) in year
        .service_pattern
        .iter()
        .zip(&year.service_meals)
        .enumerate()
    {
        insert.execute(params![at as i64, pattern, meals])?;
    }
    let mut insert = connection.prepare("INSERT INTO choice VALUES (?, ?, ?, ?)")?;
    for (at, service) in year.choice_service.iter().enumerate() {
        insert.execute(params![
            service,
            at as i64,
            year.choice_recipe[at],
            year.choice_planned[at]
        ])?;
    }
    let mut insert = connection.prepare("INSERT INTO rule VALUES (?, ?, ?, ?, ?, ?, ?, ?)")?;
    for rule in &year.rules {
        insert.execute(params![
            rule.pattern,
            rule.rule,
            rule.column as i64,
            rule.milk_free,
            rule.is_share,
            rule.kcal,
            rule.bound,
            rule.limit
        ])?;
    }
    connection.execute_batch("COMMIT")
}
