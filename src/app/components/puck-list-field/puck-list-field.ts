import { html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { preferences } from "../../store/preferences";
import { StoreController } from "../../store/storeController";
import { controlStyles } from "../../style/sharedStyles";
import { type QuantityKind, unitFor } from "../../units/units";
import { puckListFieldStyles } from "./puck-list-field.styles";
import { listText, readList } from "./readList";

/** New values of a list, SI, rising. */
export type ListChange = CustomEvent<{ readonly values: readonly number[] }>;

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
  /** A problem of these numbers that came from elsewhere. */
  @property() problem = "";

  @state() private typedProblem = "";
  private readonly units = new StoreController(this, preferences, (value) => value.units);

  private enter(event: Event): void {
    const read = readList((event.target as HTMLInputElement).value, this.label, this.unit, this);
    this.typedProblem = read.ok ? "" : read.problem.message;
    if (!read.ok) return;
    this.dispatchEvent(
      new CustomEvent("list-change", { detail: { values: read.value }, bubbles: true, composed: true }),
    );
  }

  private get unit() {
    return unitFor(this.kind, this.units.value);
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
  interface HTMLElementTagNameMap {
    "ww-puck-list-field": PuckListField;
  }
}
