// The bare nutrient product in WebAssembly.
const { readFileSync } = require("node:fs");
const { join } = require("node:path");
const { createInterface } = require("node:readline");

const folder = process.argv[2];
const { Product } = require(join(process.env.GRAMWRIGHT_BENCH_WASM, "gramwright_bench_wasm.js"));
const numbers = (name, Kind) => {
  const bytes = readFileSync(join(folder, name));
  return new Kind(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength));
};
const size = JSON.parse(readFileSync(join(folder, "size.json"), "utf8"));
const foods = readFileSync(join(folder, "foods.bin"));
// The engine's first row is that of foods that are not known.
const rows = numbers("line_food.u32", Uint32Array).map((food) => food + 1);
const product = new Product(foods, rows, numbers("line_grams.f64", Float64Array), size.lines);

product.run(20);
console.log("ready");
createInterface({ input: process.stdin }).on("line", (line) => {
  const start = process.hrtime.bigint();
  product.run(Number(line));
  console.log(String(process.hrtime.bigint() - start));
});
