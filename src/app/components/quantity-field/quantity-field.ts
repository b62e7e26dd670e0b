import { html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { controlStyles } from "../../style/sharedStyles";
import { fieldText, type QuantityKind, type UnitPreferences, unitChoices, unitFor } from "../../units/units";
import { emit, type PageEvent } from "../../view/emit";
import { quantityFieldStyles } from "./quantity-field.styles";
import { readQuantity } from "./readQuantity";

/** A field's new value, SI. */
export type QuantityChange = PageEvent<"quantity-change">;

/**
 * A number with its unit at the field. Sends `quantity-change` with the SI value when a person enters an allowed one;
 * otherwise says beside the field what is allowed. A value set by code sends nothing. Sends `quantity-leave` when the
 * person leaves it, and `unit-change` for another unit.
 */
@customElement("ww-quantity-field")
export class QuantityField extends LitElement {
  static override styles = [controlStyles, quantityFieldStyles];

  @property() label = "";
  @property() kind: QuantityKind = "number";
  /** SI; temperatures in degrees Celsius, percentages as fractions, angles in radians. */
  @property({ type: Number }) value = 0;
  @property({ type: Number }) lowest: number | undefined;
  @property({ type: Number }) highest: number | undefined;
  /** The lowest value itself is not allowed. */
  @property({ type: Boolean, attribute: "above-lowest" }) aboveLowest = false;
  /** A problem of this quantity that came from elsewhere, for instance from the solver. */
  @property() problem = "";
  @property() hint = "";
  /** Units that the person has chosen. */
  @property({ attribute: false }) units: UnitPreferences = {};

  @state() private typed: string | null = null;
  @state() private typedProblem = "";

  private get unit() {
    return unitFor(this.kind, this.units);
  }

  private enter(text: string): void {
    this.typed = text;
    const read = readQuantity(text, this.label, this.unit, this);
    this.typedProblem = read.ok ? "" : read.problem.message;
    if (!read.ok) return;
    emit(this, "quantity-change", { value: read.value });
  }

  /** Arrow keys step by about a hundredth of the value, ten times as much with Shift. */
  private step(event: KeyboardEvent): void {
    const direction = event.key === "ArrowUp" ? 1 : event.key === "ArrowDown" ? -1 : 0;
    if (direction === 0) return;
    event.preventDefault();
    const { unit } = this;
    const shown = unit.fromSi(this.value);
    const size = 10 ** Math.floor(Math.log10(Math.max(Math.abs(shown), 1e-9)) - 1);
    const step = (shown === 0 ? 0.1 : size) * (event.shiftKey ? 10 : 1);
    const next = Math.round((shown + direction * step) / step) * step;
    this.enter(String(Number(next.toPrecision(8))));
  }

  private leave(): void {
    emit(this, "quantity-leave");
    if (this.typedProblem === "") this.typed = null;
  }

  protected override render() {
    const { unit } = this;
    const message = this.typedProblem || this.problem;
    const choices = unitChoices[this.kind];
    return html`<div class="line">
        <label for="number">${this.label}</label>
        <input
          id="number"
          type="text"
          inputmode="decimal"
          autocomplete="off"
          .value=${this.typed ?? fieldText(this.value, unit)}
          aria-invalid=${message ? "true" : "false"}
          aria-describedby="message"
          @input=${(event: InputEvent) => this.enter((event.target as HTMLInputElement).value)}
          @keydown=${this.step}
          @change=${this.leave}
          @blur=${this.leave}
        />
        ${
          choices.length > 1
            ? html`<select
              aria-label=${`Unit of ${this.label}`}
              @change=${(event: Event) => {
                this.typed = null;
                this.typedProblem = "";
                emit(this, "unit-change", { kind: this.kind, unit: (event.target as HTMLSelectElement).value });
              }}
            >
              ${choices.map((choice) => html`<option value=${choice.key} ?selected=${choice.key === unit.key}>${choice.symbol}</option>`)}
            </select>`
            : html`<span class="unit">${unit.symbol}</span>`
        }
      </div>
      <p id="message" class=${message ? "error" : "hint"} role=${message ? "alert" : nothing}>${message || this.hint}</p>`;
  }
}

declare global {
  interface PageEvents {
    "quantity-change": { readonly value: number };
    /** A field is left or its text confirmed. */
    "quantity-leave": undefined;
    "unit-change": { readonly kind: QuantityKind; readonly unit: string };
  }
  interface HTMLElementTagNameMap {
    "ww-quantity-field": QuantityField;
  }
}
