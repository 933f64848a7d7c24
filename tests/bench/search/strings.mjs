// The strings that are searched, and the queries with their labels, for all who search.
//
//   node strings.mjs REPOSITORY STRINGS.json
//
// A food's string holds its description, its common names, its maker, and the kitchen words that
// our own table gives to it: everybody searches the same words.

import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const [repository, target] = process.argv.slice(2);

/** The rows of a table as objects, by the names in its header. */
function table(path) {
  const cell = /("(?:[^"]|"")*"|[^,\n]*)(,|\n|$)/gy;
  const text = readFileSync(join(repository, path), "utf8").replaceAll("\r\n", "\n");
  const rows = [];
  let row = [];
  while (cell.lastIndex < text.length) {
    const [, raw, end] = cell.exec(text);
    row.push(raw.startsWith('"') ? raw.slice(1, -1).replaceAll('""', '"') : raw);
    if (end !== ",") {
      rows.push(row);
      row = [];
    }
  }
  const [header, ...body] = rows;
  return body.map((cells) => Object.fromEntries(header.map((name, at) => [name, cells[at] ?? ""])));
}

const kitchenWords = new Map();
for (const { kitchen, foods } of table("nutrient-data/kitchen/synonyms.csv")) {
  for (const food of foods.split(" ").filter(Boolean)) {
    kitchenWords.set(food, [...(kitchenWords.get(food) ?? []), kitchen]);
  }
}

const foods = table("nutrient-data/tables/sr28/foods.csv").map((food) => ({
  food: food.number,
  text: [food.description, food.common_names, food.manufacturer]
    .concat(kitchenWords.get(food.number) ?? [])
    .filter(Boolean)
    .join("; "),
}));

const queries = table("engine/tests/search_labels.csv")
  .filter(({ set }) => set === "typed")
  .map(({ query, kind, foods }) => ({ query, kind, foods: foods.split(" ") }));

writeFileSync(target, JSON.stringify({ foods, queries }));
console.log(`${foods.length} strings, ${queries.length} typed queries`);
