import { html, nothing } from "lit";
import type { Problem } from "../../../../shared/result";

const mostFaults = 12;

/** What is wrong with an input, as a list that says how many more there are; nothing without a fault. */
export function faultList(messages: readonly string[], role: "alert" | null = null) {
  if (messages.length === 0) return nothing;
  return html`<ul class="error" role=${role ?? nothing}>${messages.slice(0, mostFaults).map((one) => html`<li>${one}</li>`)}${messages.length > mostFaults ? html`<li>and ${messages.length - mostFaults} more</li>` : nothing}</ul>`;
}

/** The same for problems, told at once. */
export function problemList(problems: readonly Problem[]) {
  return faultList(
    problems.map(({ message }) => message),
    "alert",
  );
}
