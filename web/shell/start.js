// Starts the program, then has the service worker keep the page for use without a network.

const NEWER = "newer-version";

/** What is said before the program speaks, and where it cannot. */
const WORDS = {
  en: {
    starting: "Starting Gramwright …",
    notStarted:
      "Gramwright could not start in this browser. Nothing saved is lost. Load the page again; " +
      "if that does not help, update the browser. What the browser said: ",
    newer: "A newer version of Gramwright is ready.",
    load: "Load the newer version",
  },
  es: {
    starting: "Iniciando Gramwright …",
    notStarted:
      "Gramwright no pudo iniciar en este navegador. No se ha perdido nada de lo guardado. Cargue la " +
      "página otra vez; si eso no ayuda, actualice el navegador. Lo que dijo el navegador: ",
    newer: "Hay una versión más nueva de Gramwright.",
    load: "Cargar la versión más nueva",
  },
};

/** The words in the document's language. */
function words() {
  return WORDS[document.documentElement.lang.slice(0, 2)] ?? WORDS.en;
}

/** Before the program does it: the language that was chosen here, or that the browser asks for. */
function speak() {
  let chosen = null;
  try {
    // The program keeps it as JSON, see web/src/language/choice.rs.
    chosen = JSON.parse(localStorage.getItem("gramwright.language"));
  } catch {
    // Nothing can be read here: the browser's own language will do.
  }
  const tag = (chosen ?? navigator.language).slice(0, 2).toLowerCase();
  document.documentElement.lang = tag in WORDS ? tag : "en";
  document.querySelector("#app p").textContent = words().starting;
}

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
  message.textContent = words().notStarted + error;
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
  notice.querySelector("span").textContent = words().newer;
  const button = notice.querySelector("button");
  button.textContent = words().load;
  button.onclick = load;
  notice.hidden = false;
}

speak();
try {
  await start();
} catch (error) {
  tellNotStarted(error);
  throw error;
} finally {
  await keepForOffline();
}
