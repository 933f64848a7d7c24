// First load to first analysis, beside fetching and compiling the same bytes, in Chromium and by its
// own tracing.
//
//   node load.mjs PAGE [ROUNDS]
//
// PAGE is the folder of the built page. Every round is two browsers with empty profiles: one loads a
// page that only fetches every file of the first load and compiles the program; the other loads the
// page itself at a recipe, until the recipe's figures are painted.

import { createServer } from "node:http";
import { spawn } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { extname, join, normalize } from "node:path";

const [page, rounds = "7"] = process.argv.slice(2);

const BOOKS = {
  "a recipe's figures": ["index.html#/recipe/beef-and-bean-chili", "[data-test^='figure-']"],
  "the list of recipes": ["index.html", "[data-test='recipe-row']"],
};
const PROGRAM = "gramwright-web_bg.wasm";
const DATA = "data/sr28.foods.bin";
const TYPES = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".wasm": "application/wasm",
  ".svg": "image/svg+xml",
};

/** Fetches what the page fetches, and compiles the program; the title says when that is done. */
const FETCH_AND_COMPILE = `<!doctype html><title>going</title><script type="module">
const page = await (await fetch("index.html")).text();
const links = [...new DOMParser().parseFromString(page, "text/html").querySelectorAll("link[rel=stylesheet], script[src]")];
const files = links.map((link) => link.getAttribute("href") ?? link.getAttribute("src"));
const whole = async (file) => (await fetch(file)).arrayBuffer();
await Promise.all([
  WebAssembly.compileStreaming(fetch("${PROGRAM}")),
  ...["gramwright-web.js", "${DATA}", ...files].map(whole),
]);
document.title = "done " + performance.now();
</script>`;

const server = createServer((request, answer) => {
  const path = normalize(decodeURIComponent(request.url.split(/[?#]/)[0]));
  const send = (type, body) => {
    answer.writeHead(200, { "content-type": type ?? "application/octet-stream" });
    answer.end(body);
  };
  if (path === "/fetch-and-compile") return send(TYPES[".html"], FETCH_AND_COMPILE);
  try {
    const file = path === "/" ? "index.html" : path;
    send(TYPES[extname(file)], readFileSync(join(page, file)));
  } catch {
    answer.writeHead(404).end();
  }
});
await new Promise((listening) => server.listen(0, "127.0.0.1", listening));
const origin = `http://127.0.0.1:${server.address().port}`;

/** A browser of its own, spoken to over two pipes. */
class Browser {
  constructor() {
    this.profile = mkdtempSync(join(tmpdir(), "gramwright-load-"));
    const options = ["--headless=new", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage"];
    options.push("--disable-background-networking", "--disable-component-update", "--no-first-run");
    options.push("--disable-quic", "--disable-sync", "--remote-debugging-pipe");
    options.push("--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1");
    options.push(`--user-data-dir=${this.profile}`, "about:blank");
    const stdio = ["ignore", "ignore", "ignore", "pipe", "pipe"];
    this.process = spawn("chromium", options, { stdio });
    this.waiting = new Map();
    this.listeners = new Map();
    this.last = 0;
    let rest = "";
    this.process.stdio[4].setEncoding("utf8");
    this.process.stdio[4].on("data", (text) => {
      const messages = (rest + text).split("\0");
      rest = messages.pop();
      messages.map((message) => JSON.parse(message)).forEach((message) => this.take(message));
    });
  }

  take({ id, result, error, method, params }) {
    if (id === undefined) return this.listeners.get(method)?.(params);
    const { resolve, reject } = this.waiting.get(id);
    error ? reject(new Error(error.message)) : resolve(result);
  }

  call(method, params = {}, sessionId = this.session) {
    const id = (this.last += 1);
    this.process.stdio[3].write(JSON.stringify({ id, method, params, sessionId: sessionId ?? undefined }) + "\0");
    return new Promise((resolve, reject) => this.waiting.set(id, { resolve, reject }));
  }

  async openTab() {
    const { targetId } = await this.call("Target.createTarget", { url: "about:blank" }, null);
    const attached = { targetId, flatten: true };
    ({ sessionId: this.session } = await this.call("Target.attachToTarget", attached, null));
  }

  async value(expression) {
    const asked = { expression, awaitPromise: true, returnByValue: true };
    const { result, exceptionDetails } = await this.call("Runtime.evaluate", asked);
    if (exceptionDetails) throw new Error(exceptionDetails.exception?.description);
    return result.value;
  }

  async close() {
    const ended = new Promise((resolve) => this.process.once("exit", resolve));
    await this.call("Browser.close", {}, null).catch(() => {});
    await ended;
    rmSync(this.profile, { recursive: true, force: true, maxRetries: 5 });
  }
}

async function inBrowser(work) {
  const browser = new Browser();
  try {
    await browser.openTab();
    return await work(browser);
  } finally {
    await browser.close();
  }
}

/** Milliseconds from the start of the navigation until everything is there and compiled. */
function fetchAndCompile() {
  return inBrowser(async (browser) => {
    await browser.call("Page.enable");
    await browser.call("Page.navigate", { url: `${origin}/fetch-and-compile` });
    return await browser.value(`new Promise((done) => {
      const look = () => document.title.startsWith("done")
        ? done(Number(document.title.slice(5))) : setTimeout(look, 5);
      look();
    })`);
  });
}

/** The same until `selector` is painted, with where the time went and the memory taken. */
function firstAnalysis(address, selector) {
  return inBrowser(async (browser) => {
    const events = [];
    const traced = new Promise((complete) => {
      browser.listeners.set("Tracing.dataCollected", ({ value }) => events.push(...value));
      browser.listeners.set("Tracing.tracingComplete", complete);
    });
    await browser.call("Page.enable");
    await browser.call("Page.addScriptToEvaluateOnNewDocument", {
      source: `window.painted = new Promise((done) => {
        const look = () => document.querySelector(${JSON.stringify(selector)})
          ? requestAnimationFrame(() => setTimeout(() => done(performance.now())))
          : requestAnimationFrame(look);
        look();
      });`,
    });
    await browser.call("Tracing.start", {
      traceConfig: { includedCategories: ["devtools.timeline", "v8", "v8.wasm", "blink.resource", "loading"] },
    }, browser.session);
    await browser.call("Page.navigate", { url: `${origin}/${address}` });
    const painted = await browser.value("window.painted");
    const { usedSize, embedderHeapUsedSize = 0, backingStorageSize = 0 } =
      await browser.call("Runtime.getHeapUsage");
    const memory = (usedSize + embedderHeapUsedSize + backingStorageSize) / 2 ** 20;
    const resident = await residentMemory(browser);
    await browser.call("Tracing.end");
    await traced;
    return { painted, memory, resident, spent: timeSpent(events) };
  });
}

/** Megabytes that the page's own process holds. */
async function residentMemory(browser) {
  const { processInfo } = await browser.call("SystemInfo.getProcessInfo", {}, null);
  const sizes = processInfo
    .filter(({ type }) => type === "renderer")
    .map(({ id }) => /VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${id}/status`, "utf8"))[1] / 1024);
  return Math.max(...sizes);
}

/** Milliseconds by kind of work on the page's main thread, without the work within that work. */
function timeSpent(events) {
  const mains = events
    .filter(({ name, args }) => name === "thread_name" && args.name === "CrRendererMain")
    .map(({ pid, tid }) => `${pid}/${tid}`);
  const spent = new Map();
  const open = new Map();
  const whole = events.filter(({ ph, pid, tid }) => ph === "X" && mains.includes(`${pid}/${tid}`));
  whole.sort((a, b) => a.ts - b.ts || b.dur - a.dur);
  for (const { name, ts, dur = 0, pid, tid } of whole) {
    const stack = open.get(`${pid}/${tid}`) ?? [];
    open.set(`${pid}/${tid}`, stack);
    while (stack.length > 0 && stack.at(-1).end <= ts) stack.pop();
    const within = stack.at(-1);
    if (within) spent.set(within.name, spent.get(within.name) - dur / 1000);
    spent.set(name, (spent.get(name) ?? 0) + dur / 1000);
    stack.push({ name, end: ts + dur });
  }
  return spent;
}

function median(numbers) {
  const sorted = [...numbers].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)];
}

const ROUNDS = Number(rounds);
console.log(`Medians of ${ROUNDS} browsers each, empty profiles, files from this machine`);
const floors = [];
const loads = new Map(Object.keys(BOOKS).map((name) => [name, []]));
for (let round = 0; round < ROUNDS; round += 1) {
  floors.push(await fetchAndCompile());
  for (const [name, [address, selector]] of Object.entries(BOOKS)) {
    loads.get(name).push(await firstAnalysis(address, selector));
  }
}
server.close();

const floor = median(floors);
console.log(`fetch and compile the same bytes: ${floor.toFixed(0)} ms`);
for (const [name, found] of loads) {
  const painted = median(found.map((load) => load.painted));
  const of = (what) => median(found.map((load) => load[what])).toFixed(0);
  console.log(`${name}: ${painted.toFixed(0)} ms, ${(painted / floor).toFixed(2)} times that; ` +
    `${of("memory")} MB of script memory, ${of("resident")} MB of the page's process`);
  const names = [...new Set(found.flatMap((load) => [...load.spent.keys()]))];
  const rows = names.map((work) => [work, median(found.map((load) => load.spent.get(work) ?? 0))]);
  rows.sort((a, b) => b[1] - a[1]);
  rows.filter(([, time]) => time >= 3).slice(0, 8)
    .forEach(([work, time]) => console.log(`  ${time.toFixed(0).padStart(5)} ms  ${work}`));
}
