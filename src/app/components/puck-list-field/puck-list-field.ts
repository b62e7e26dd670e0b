import { html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { controlStyles } from "../../style/sharedStyles";
import { type QuantityKind, type UnitPreferences, unitFor } from "../../units/units";
import { emit, type PageEvent } from "../../view/emit";
import { puckListFieldStyles } from "./puck-list-field.styles";
import { listText, readList } from "./readList";

/** New values of a list, SI, rising. */
export type ListChange = PageEvent<"list-change">;

/** Several numbers of one quantity in one field. Sends `list-change` when a person has entered allowed ones. */
@customElement("ww-puck-list-field")
export class PuckListField extends LitElement {
  static override styles = [controlStyles, puckListFieldStyles];

  @property() label = "";
  @property() kind: QuantityKind = "number";
  @property({ attribute: false }) values: readonly number[] = [];
  @property({ type: Number }) lowest = 0;
  @property({ type: Number }) highest = 1;
  @property({ type: Boolean, attribute: "above-lowest" }) aboveLowest = false;
  @property({ type: Number }) fewest = 1;
  @property({ type: Number }) most = 20;
  @property() hint = "";
  /** Units that the person has chosen. */
  @property({ attribute: false }) units: UnitPreferences = {};
  /** A problem of these numbers that came from elsewhere. */
  @property() problem = "";

  @state() private typedProblem = "";

  private enter(event: Event): void {
    const read = readList((event.target as HTMLInputElement).value, this.label, this.unit, this);
    this.typedProblem = read.ok ? "" : read.problem.message;
    if (!read.ok) return;
    emit(this, "list-change", { values: read.value });
  }

  private get unit() {
    return unitFor(this.kind, this.units);
  }

  protected override render() {
    const message = this.typedProblem || this.problem;
    return html`<label for="list">${this.label}, ${this.unit.symbol || "–"}</label>
      <input
        id="list"
        type="text"
        autocomplete="off"
        .value=${listText(this.values, this.unit)}
        aria-invalid=${message ? "true" : "false"}
        aria-describedby="message"
        @change=${this.enter}
      />
      <p id="message" class=${message ? "error" : "hint"} role=${message ? "alert" : nothing}>${message || this.hint}</p>`;
  }
}

declare global {
  interface PageEvents {
    "list-change": { readonly values: readonly number[] };
  }
  interface HTMLElementTagNameMap {
    "ww-puck-list-field": PuckListField;
  }
}
