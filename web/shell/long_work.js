// Does long work beside the page: the same program, in a thread of its own, so that the page goes
// on painting. web/src/worker.rs is the other end.
//
// In:  {"kind": "mend", book, week, ask}, and {"kind": "stop"} while that goes on.
// Out: {"kind": "progress", progress}, then {"kind": "outcome", outcome, progress}; or
//      {"kind": "problem", message}. All as JSON text.
import init, { Engine } from "./gramwright-web.js";

/** Milliseconds of work after which messages are let in and progress is told. */
const PIECE = 60;

let opening;
let stopped = false;

const tell = (message) => postMessage(JSON.stringify(message));

async function bytes(address) {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status} ${answer.statusText}`);
  return new Uint8Array(await answer.arrayBuffer());
}

async function open() {
  await init({ module_or_path: new URL("gramwright-web_bg.wasm", import.meta.url) });
  const engine = new Engine(await bytes("data/sr28.foods.bin"));
  engine.loadProvenance(await bytes("data/sr28.provenance.bin"));
  return engine;
}

const breath = () => new Promise((go) => setTimeout(go));

async function mend({ book, week, ask }) {
  stopped = false;
  opening ??= open();
  const engine = await opening;
  const mending = engine.mending(book, week, ask);
  try {
    let progress = mending.progress();
    while (progress.doing !== "done") {
      const until = performance.now() + PIECE;
      while (progress.doing !== "done" && performance.now() < until) progress = mending.step();
      tell({ kind: "progress", progress });
      await breath();
      if (stopped) progress = mending.stop();
    }
    tell({ kind: "outcome", outcome: mending.outcome(), progress });
  } finally {
    mending.free();
  }
}

self.onmessage = async ({ data }) => {
  const message = JSON.parse(data);
  if (message.kind === "stop") {
    stopped = true;
    return;
  }
  try {
    await mend(message);
  } catch (error) {
    opening = undefined;
    tell({ kind: "problem", message: error?.message ?? String(error) });
  }
};
