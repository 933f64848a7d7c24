// Types every query letter by letter into one search after the other, and prints the times and how
// often a labelled food is among the first five.
//
//   node measure.mjs STRINGS.json PAGE RIVALS [SQLITE.json]
//
// PAGE is the folder of the built page, whose program is measured as it is given to its users;
// RIVALS the folder with the libraries; SQLITE.json what the native program measured.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

const [stringsFile, page, rivals, sqliteFile] = process.argv.slice(2);
const { foods, queries } = JSON.parse(readFileSync(stringsFile, "utf8"));
const SHOWN = 5;

const load = (path) => import(pathToFileURL(join(rivals, "node_modules", path)).href);
const { default: flexsearch } = await load("flexsearch/dist/flexsearch.bundle.module.min.mjs");
const { default: MiniSearch } = await load("minisearch/dist/es/index.js");
const { default: uFuzzy } = await load("@leeoniya/ufuzzy/dist/uFuzzy.mjs");

const program = await import(pathToFileURL(join(page, "gramwright-web.js")).href);
await program.default({ module_or_path: readFileSync(join(page, "gramwright-web_bg.wasm")) });

const named = (rows) => rows.slice(0, SHOWN).map((row) => foods[row].food);

/** Each makes its index anew and answers with the numbers of at most five foods. */
const SEARCHES = {
  "ours, in the page's program": () => {
    const engine = new program.Engine(readFileSync(join(page, "data/sr28.foods.bin")));
    return (typed) => engine.searchFoods(typed, SHOWN).map((hit) => hit.food.replace("SR28:", ""));
  },
  "flexsearch, beginnings": () => {
    const index = new flexsearch.Index({ tokenize: "forward" });
    foods.forEach(({ text }, row) => index.add(row, text));
    return (typed) => named(index.search(typed, { limit: SHOWN, suggest: true }));
  },
  "flexsearch, beginnings by sound": () => {
    const encoder = flexsearch.Charset.LatinBalance;
    const index = new flexsearch.Index({ tokenize: "forward", encoder });
    foods.forEach(({ text }, row) => index.add(row, text));
    return (typed) => named(index.search(typed, { limit: SHOWN, suggest: true }));
  },
  minisearch: () => {
    const index = new MiniSearch({ fields: ["text"] });
    index.addAll(foods.map(({ text }, id) => ({ id, text })));
    const search = (typed, combineWith) =>
      index.search(typed, { prefix: true, fuzzy: 0.2, combineWith });
    return (typed) => {
      const all = search(typed, "AND");
      const found = all.length > 0 ? all : search(typed, "OR");
      return named(found.map((hit) => hit.id));
    };
  },
  uFuzzy: () => {
    const fuzzy = new uFuzzy({ intraMode: 1 });
    const texts = foods.map(({ text }) => text);
    return (typed) => {
      const [found, about, order] = fuzzy.search(texts, typed, 1);
      return named(order ? order.map((at) => about.idx[at]) : (found ?? []));
    };
  },
};

function percentile(sorted, share) {
  return sorted[Math.ceil((sorted.length - 1) * share)];
}

/** How often a labelled food is among the first five, by kind of query. */
function judge(answer) {
  const right = { all: 0 };
  for (const { query, kind, foods: labelled } of queries) {
    const found = answer(query).some((food) => labelled.includes(food));
    right[kind] = (right[kind] ?? 0) + found;
    right.all += found;
  }
  return right;
}

function measure(name, make) {
  const builds = [];
  let search;
  for (let round = 0; round < 5; round += 1) {
    const start = performance.now();
    search = make();
    builds.push(performance.now() - start);
  }
  const times = [];
  for (let round = 0; round < 2; round += 1) {
    times.length = 0; // The first round warms up.
    for (const { query } of queries) {
      for (let end = 1; end <= query.length; end += 1) {
        const typed = query.slice(0, end);
        const start = performance.now();
        search(typed);
        times.push(performance.now() - start);
      }
    }
  }
  builds.sort((a, b) => a - b);
  times.sort((a, b) => a - b);
  return { name, build: builds[2], p50: percentile(times, 0.5), p99: percentile(times, 0.99), right: judge(search) };
}

const measured = Object.entries(SEARCHES).map(([name, make]) => measure(name, make));
if (sqliteFile) {
  const sqlite = JSON.parse(readFileSync(sqliteFile, "utf8"));
  measured.push({ ...sqlite, right: judge((typed) => sqlite.answers[typed]) });
}

const kinds = [...new Set(queries.map(({ kind }) => kind))];
const total = (kind) => queries.filter((query) => query.kind === kind).length;
const heading = kinds.map((kind) => `${kind} of ${total(kind)}`);
const columns = ["build ms", "p50 ms", "p99 ms", `top five of ${queries.length}`, ...heading];
console.log(`| search | ${columns.join(" | ")} |`);
console.log(`|---|${"---|".repeat(columns.length)}`);
for (const { name, build, p50, p99, right } of measured) {
  const shares = kinds.map((kind) => right[kind] ?? 0);
  const cells = [build.toFixed(0), p50.toFixed(3), p99.toFixed(3), right.all, ...shares];
  console.log(`| ${name} | ${cells.join(" | ")} |`);
}
console.log("Our building time is that of the whole engine: foods, all tables and the search.");

const [ours, ...others] = measured;
const behind = others.filter(({ p99, right }) => p99 <= ours.p99 || right.all >= ours.right.all);
behind.forEach(({ name }) => console.log(`Not ahead of ${name} in both.`));
if (ours.p99 >= 1) console.log("Our p99 is not under 1 ms.");
