import { tell } from "../store/notices";
import type { OfflineNews } from "./offlineNews";

/** Lets the browser keep the built page for use without a network. Nothing is lost where it cannot. */
export async function keepOffline(): Promise<void> {
  if (!import.meta.env.PROD || !("serviceWorker" in navigator)) return;
  try {
    navigator.serviceWorker.addEventListener("message", ({ data }: MessageEvent<OfflineNews>) => {
      if (!isOwnBuild(data.newBuild)) tell("news", "A newer version of this page is ready: reload to work with it.");
    });
    await navigator.serviceWorker.register("./offline.js", { type: "module" });
    const { active } = await navigator.serviceWorker.ready;
    active?.postMessage("refresh");
  } catch {
    // Blocked by the browser's settings: the page works as long as there is a network.
  }
}

/** The document names the build that it is of. */
function isOwnBuild(build: string): boolean {
  return document.head.querySelector(`meta[content="${build}"]`) !== null;
}
