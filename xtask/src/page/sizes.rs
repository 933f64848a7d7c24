//! How big the built page is, as files and as a server would compress them.

use crate::console;
use anyhow::Result;
use std::path::Path;
use std::process::Command;

/// Node has both compressors built in; so they need not be compiled into the developer commands.
const REPORT: &str = r#"
const { readdirSync, readFileSync } = require("node:fs");
const { join } = require("node:path");
const { brotliCompressSync, gzipSync } = require("node:zlib");
const folder = process.argv[1];
const names = readdirSync(folder, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map((entry) => join(entry.parentPath ?? entry.path, entry.name).slice(folder.length + 1))
  .sort();
const total = [0, 0, 0];
const row = (name, sizes) =>
  console.log(name.padEnd(32), ...sizes.map((size) => String(size).padStart(10)));
row("bytes", ["plain", "gzip", "brotli"]);
for (const name of names) {
  const bytes = readFileSync(join(folder, name));
  const sizes = [bytes.length, gzipSync(bytes, { level: 9 }).length, brotliCompressSync(bytes).length];
  sizes.forEach((size, i) => (total[i] += size));
  row(name, sizes);
}
row("total", total);
"#;

/// Prints a table of the page's files with their sizes.
///
/// # Errors
/// When Node fails.
pub fn print(folder: &Path) -> Result<()> {
    console::run_openly(Command::new("node").arg("-e").arg(REPORT).arg(folder))
}
