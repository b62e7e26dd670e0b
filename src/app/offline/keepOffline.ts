/** Lets the browser keep the built page for use without a network. Nothing is lost where it cannot. */
export async function keepOffline(): Promise<void> {
  if (!import.meta.env.PROD || !("serviceWorker" in navigator)) return;
  try {
    await navigator.serviceWorker.register("./offline.js", { type: "module" });
    const { active } = await navigator.serviceWorker.ready;
    active?.postMessage("refresh");
  } catch {
    // Blocked by the browser's settings: the page works as long as there is a network.
  }
}
