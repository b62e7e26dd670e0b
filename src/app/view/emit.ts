declare global {
  /** The page's own events by name, and what each carries. Components and views add theirs where they are sent. */
  interface PageEvents {}
}

/** An event of the page as its listener gets it. */
export type PageEvent<Name extends keyof PageEvents> = CustomEvent<PageEvents[Name]>;

/** Sends an event that rises to the view around a component, also out of shadow roots. */
export function emit<Name extends keyof PageEvents>(
  from: EventTarget,
  name: Name,
  ...[detail]: PageEvents[Name] extends undefined ? [] : [PageEvents[Name]]
): void {
  from.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
}
