/**
 * Service worker: keeps the built page in the browser, so that it opens and solves without a network. Built files have
 * their content's hash in the name and are taken from the cache; the document comes from the network while there is one.
 */
const scope = self as unknown as ServiceWorkerGlobalScope;
const cacheName = "wakewright-files";
const fileList = "offline-files.json";

scope.addEventListener("install", () => void scope.skipWaiting());
scope.addEventListener("activate", (event) => event.waitUntil(scope.clients.claim()));
scope.addEventListener("message", (event) => event.waitUntil(refresh()));

scope.addEventListener("fetch", (event) => {
  const { request } = event;
  const isOwn = new URL(request.url).origin === scope.location.origin;
  if (request.method !== "GET" || !isOwn) return;
  if (request.mode === "navigate") event.respondWith(documentAnswer(request));
  else event.respondWith(fileAnswer(request));
});

async function documentAnswer(request: Request): Promise<Response> {
  try {
    return await fetch(request);
  } catch {
    const kept = await (await caches.open(cacheName)).match(scope.registration.scope, { ignoreVary: true });
    return kept ?? Response.error();
  }
}

async function fileAnswer(request: Request): Promise<Response> {
  // The files are the same for every origin, whatever a server says of it: module requests name theirs, the list's did not.
  const kept = await (await caches.open(cacheName)).match(request, { ignoreVary: true });
  return kept ?? fetch(request);
}

/** Brings the cache to the files of the present build: what is missing is fetched, what is no longer listed goes. */
async function refresh(): Promise<void> {
  try {
    const cache = await caches.open(cacheName);
    const root = scope.registration.scope;
    const listed: unknown = await (await fetch(new URL(fileList, root), { cache: "no-store" })).json();
    if (!Array.isArray(listed)) return;
    const wanted = new Set([root, ...listed.map((file) => new URL(String(file), root).href)]);
    const kept = await cache.keys();
    await Promise.all(kept.filter(({ url }) => !wanted.has(url)).map((request) => cache.delete(request)));
    const known = new Set(kept.map(({ url }) => url));
    for (const url of wanted) if (url === root || !known.has(url)) await cache.add(url);
  } catch {
    // No network or no room: what is kept stays as it is.
  }
}
