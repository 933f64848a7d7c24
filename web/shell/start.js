// Starts the program, then has the service worker keep the page for use without a network.

const NEWER = "newer-version";

/** Whether anything has been done on the page since it was loaded. */
let touched = false;
for (const kind of ["pointerdown", "keydown", "input"]) {
  addEventListener(kind, () => (touched = true), { capture: true, once: true });
}

async function start() {
  const { default: init } = await import("./gramwright-web.js");
  // Fetched by its address, so that the browser compiles it while it arrives.
  await init({ module_or_path: new URL("gramwright-web_bg.wasm", import.meta.url) });
  document.documentElement.dataset.started = "";
}

function tellNotStarted(error) {
  const message = document.createElement("p");
  message.setAttribute("role", "alert");
  message.textContent =
    "Gramwright could not start in this browser. Nothing saved is lost. Load the page again; " +
    "if that does not help, update the browser. What the browser said: " + error;
  document.getElementById("app").replaceChildren(message);
}

/**
 * Registers the service worker and brings newer versions in.
 *
 * A version never changes under the hands of its user: a page on which nothing has been done yet
 * loads the newer one by itself, any other page asks.
 */
async function keepForOffline() {
  const workers = navigator.serviceWorker;
  if (!workers) return;
  let kept = workers.controller !== null;
  workers.addEventListener("controllerchange", () => {
    // The first version taking over is the one already shown.
    if (kept) touched ? ask(() => location.reload()) : location.reload();
    kept = true;
  });
  const registration = await workers.register("worker.js", { updateViaCache: "none" });
  const offer = (worker) => {
    if (!registration.active) return;
    if (!touched) worker.postMessage("take over if this is the only page");
    ask(() => {
      touched = false;
      worker.postMessage("take over");
    });
  };
  if (registration.waiting) offer(registration.waiting);
  registration.addEventListener("updatefound", () => {
    const worker = registration.installing;
    worker.addEventListener("statechange", () => {
      if (worker.state === "installed") offer(worker);
    });
  });
  await workers.ready;
  document.documentElement.dataset.offline = "ready";
}

/** Shows that a newer version is there; `load` is what its button does. */
function ask(load) {
  const notice = document.getElementById(NEWER);
  notice.querySelector("button").onclick = load;
  notice.hidden = false;
}

try {
  await start();
} catch (error) {
  tellNotStarted(error);
  throw error;
} finally {
  await keepForOffline();
}
