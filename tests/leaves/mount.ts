import type { LitElement } from "lit";
import { onTestFinished } from "vitest";

/** Puts a component on the page with properties, and takes it away after the test. */
export async function mount<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  properties: Partial<HTMLElementTagNameMap[Tag]> = {},
): Promise<HTMLElementTagNameMap[Tag]> {
  const element = document.createElement(tag);
  Object.assign(element, properties);
  document.body.append(element);
  onTestFinished(() => element.remove());
  await drawn(element);
  return element;
}

/** Waits until a component has drawn what it was given, and what stands inside it as well. */
export async function drawn(element: Element): Promise<void> {
  const lit = element as Partial<LitElement> & Element;
  await lit.updateComplete;
  for (const inner of (element.shadowRoot ?? element).querySelectorAll("*")) {
    if (inner.localName.startsWith("ww-")) await drawn(inner);
  }
}

/** All that a component sends under a name from now on. */
export function heard<Name extends keyof PageEvents>(from: Element, name: Name): PageEvents[Name][] {
  const details: PageEvents[Name][] = [];
  from.addEventListener(name, (event) => details.push((event as CustomEvent<PageEvents[Name]>).detail));
  return details;
}

/** What a component says, as it is read. */
export function words(element: Element): string {
  return ((element.shadowRoot ?? element).textContent ?? "").replace(/\s+/g, " ").trim();
}

/** Elements inside a component, through shadow roots. */
export function inside<Found extends Element = HTMLElement>(element: Element, selector: string): Found[] {
  const root = element.shadowRoot ?? element;
  const nested = [...root.querySelectorAll("*")].filter(({ shadowRoot }) => shadowRoot !== null);
  return [...root.querySelectorAll<Found>(selector), ...nested.flatMap((one) => inside<Found>(one, selector))];
}

/** The same, when there must be exactly one. */
export function one<Found extends Element = HTMLElement>(element: Element, selector: string): Found {
  const found = inside<Found>(element, selector);
  if (found.length !== 1) throw new Error(`${found.length} elements match ${selector}, not one`);
  return found[0];
}
