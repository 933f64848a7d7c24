// Keeps the page's files, so that it works without a network.
//
// A version is all files of one build. It is fetched as a whole and every file is compared with the
// hash that the build noted; until that has succeeded the earlier version stays in use.

// Filled in by xtask/src/page/offline.rs: the version, and [name, SHA-256] of each file.
const VERSION = "";
const FILES = [];

// Other pages of the same server may keep things too: the prefix tells ours.
const PREFIX = `gramwright ${self.registration.scope} `;
const CACHE = PREFIX + VERSION;

async function hasHash(response, expected) {
  if (!response?.ok) return false;
  const digest = await crypto.subtle.digest("SHA-256", await response.clone().arrayBuffer());
  const bytes = Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, "0"));
  return bytes.join("") === expected;
}

/** A file of this version: from what is kept, else as the page just loaded it, else anew. */
async function fetchFile(name, hash) {
  const sources = [
    () => caches.match(name),
    () => fetch(name, { cache: "force-cache" }),
    () => fetch(name, { cache: "reload" }),
  ];
  for (const source of sources) {
    const response = await source();
    if (await hasHash(response, hash)) return response;
  }
  throw new Error(`${name} on the server is not the one of version ${VERSION}`);
}

async function keepVersion() {
  const cache = await caches.open(CACHE);
  const keep = async ([name, hash]) => cache.put(name, await fetchFile(name, hash));
  await Promise.all(FILES.map(keep));
}

async function dropOtherVersions() {
  const names = await caches.keys();
  const others = names.filter((name) => name.startsWith(PREFIX) && name !== CACHE);
  await Promise.all(others.map((name) => caches.delete(name)));
  await self.clients.claim();
}

async function answer(name, request) {
  const cache = await caches.open(CACHE);
  return (await cache.match(name)) ?? fetch(request);
}

async function takeOver(onlyIfAlone) {
  const pages = await self.clients.matchAll({ type: "window", includeUncontrolled: true });
  if (!onlyIfAlone || pages.length <= 1) await self.skipWaiting();
}

self.addEventListener("install", (event) => event.waitUntil(keepVersion()));

self.addEventListener("activate", (event) => event.waitUntil(dropOtherVersions()));

self.addEventListener("message", (event) => {
  if (event.data === "take over") event.waitUntil(takeOver(false));
  if (event.data === "take over if this is the only page") event.waitUntil(takeOver(true));
});

self.addEventListener("fetch", (event) => {
  const { method, url } = event.request;
  const scope = self.registration.scope;
  const address = url.split(/[?#]/)[0];
  if (method !== "GET" || !address.startsWith(scope)) return;
  event.respondWith(answer(address.slice(scope.length) || "index.html", event.request));
});
