/** What a tab tells the others that it has kept. */
export type KeptNews =
  | { readonly kind: "saved" | "removed"; readonly fileName: string }
  | { readonly kind: "text"; readonly name: string };

/** One for the tab: it hears what others say, not what it says itself. */
const channel = typeof BroadcastChannel === "undefined" ? null : new BroadcastChannel("wakewright-kept");

/** Lets the other tabs know. */
export function tellOtherTabs(news: KeptNews): void {
  channel?.postMessage(news);
}

/** Calls back whenever another tab has kept something. */
export function followOtherTabs(heard: (news: KeptNews) => void): void {
  channel?.addEventListener("message", ({ data }: MessageEvent<KeptNews>) => heard(data));
}
