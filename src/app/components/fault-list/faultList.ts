import { html, nothing } from "lit";

const mostFaults = 12;

/** What is wrong with an input, as a list that says how many more there are; nothing without a fault. */
export function faultList(messages: readonly string[]) {
  if (messages.length === 0) return nothing;
  return html`<ul class="error">${messages.slice(0, mostFaults).map((one) => html`<li>${one}</li>`)}${messages.length > mostFaults ? html`<li>and ${messages.length - mostFaults} more</li>` : nothing}</ul>`;
}
