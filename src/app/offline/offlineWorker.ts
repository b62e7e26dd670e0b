/**
 * Service worker: keeps the built page in the browser, so that it opens and solves without a network. What is shown is
 * always one build whole: the network's, or the last that was kept.
 */
import { buildOf, fileListName } from "./fileList";
import { KeptBuilds, patienceMilliseconds } from "./keptBuilds";
import type { OfflineNews } from "./offlineNews";

const scope = self as unknown as ServiceWorkerGlobalScope;
const root = scope.registration.scope;
const builds = new KeptBuilds(root);

scope.addEventListener("install", () => void scope.skipWaiting());
scope.addEventListener("activate", (event) => event.waitUntil(scope.clients.claim()));
scope.addEventListener("message", (event) => event.waitUntil(refresh()));

scope.addEventListener("fetch", (event) => {
  const { request } = event;
  const { origin, pathname, href } = new URL(request.url);
  if (request.method !== "GET" || origin !== scope.location.origin) return;
  if (request.mode === "navigate") {
    const { pathname: home } = new URL(root);
    if (pathname === home || pathname === `${home}index.html`) event.respondWith(documentAnswer(event));
  } else if (href !== new URL(fileListName, root).href) {
    event.respondWith(fileAnswer(request));
  }
});

/** The network's document as long as its build can be had whole in time, else the one that is kept. */
async function documentAnswer(event: FetchEvent): Promise<Response> {
  const kept = await keptDocument();
  const fresh = fetch(event.request);
  if (kept === null) return fresh;
  const answer = freshAnswer(event, fresh).catch(() => kept.document);
  return Promise.race([answer, pause().then(() => kept.document)]);

  async function freshAnswer(event: FetchEvent, fresh: Promise<Response>): Promise<Response> {
    const response = await fresh;
    // Where the server sends the browser elsewhere, it goes there by itself.
    if (response.type === "opaqueredirect") return response;
    if (!response.ok) return kept!.document;
    const build = buildOf(await response.clone().text());
    if (build === null || build === kept!.build) return response;
    const updating = refresh();
    event.waitUntil(updating);
    return (await updating) === build ? response : kept!.document;
  }
}

async function keptDocument(): Promise<{ readonly build: string; readonly document: Response } | null> {
  try {
    const [build, document] = [await builds.current(), await builds.document()];
    return build === null || document === null ? null : { build, document };
  } catch {
    // The browser's storage cannot be read: as if nothing were kept.
    return null;
  }
}

async function fileAnswer(request: Request): Promise<Response> {
  const kept = await builds.file(request).catch(() => null);
  return kept ?? fetch(request);
}

/** @returns the build that is kept now; null when it could not be brought up to date */
async function refresh(): Promise<string | null> {
  try {
    const { build, isNew } = await builds.update();
    if (isNew) {
      const news: OfflineNews = { newBuild: build };
      for (const client of await scope.clients.matchAll()) client.postMessage(news);
    }
    return build;
  } catch {
    // No network, a file that is not what was promised, or no room: what is kept stays as it is.
    return null;
  }
}

function pause(): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve, patienceMilliseconds);
  });
}
