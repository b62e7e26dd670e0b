import { html, LitElement } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { DesignTrip } from "../../../../shared/case/design";
import { panelStyles } from "../../style/panelStyles";
import { controlStyles } from "../../style/sharedStyles";
import type { UnitPreferences } from "../../units/units";
import { emit } from "../../view/emit";
import type { QuantityChange } from "../quantity-field/quantity-field";
import "../quantity-field/quantity-field";
import "../info-mark/info-mark";

const mostTrips = 8;

/** Wires, steps and ridges that force transition. Sends `section-change`. */
@customElement("ww-trip-panel")
export class TripPanel extends LitElement {
  static override styles = [controlStyles, panelStyles];

  @property({ attribute: false }) trips: readonly DesignTrip[] = [];
  /** Of the solved section, m. */
  @property({ type: Number }) perimeter = 0.2;
  @property({ attribute: false }) units: UnitPreferences = {};

  private add(side: DesignTrip["side"]): void {
    const arc = Number((0.12 * this.perimeter).toPrecision(3));
    emit(this, "section-change", { trips: [...this.trips, { side, arc, height: 0.0003 }] });
  }

  private change(index: number, change: Partial<DesignTrip>): void {
    emit(this, "section-change", { trips: this.trips.map((trip, i) => (i === index ? { ...trip, ...change } : trip)) });
  }

  protected override render() {
    const { trips } = this;
    const half = this.perimeter / 2;
    return html`<section aria-labelledby="heading">
      <div class="heading"><h2 id="heading">Trips</h2><ww-info-mark topic="transition"></ww-info-mark></div>
      <div class="stack">
        ${trips.map(
          (trip, i) => html`<ww-quantity-field .units=${this.units}
              label=${`Trip ${i + 1}, ${trip.side}: arc from the nose`}
              kind="length"
              .value=${trip.arc}
              .lowest=${0}
              .highest=${half}
              above-lowest
              @quantity-change=${(event: QuantityChange) => this.change(i, { arc: event.detail.value })}
            ></ww-quantity-field>
            <ww-quantity-field .units=${this.units}
              label=${`Trip ${i + 1}, ${trip.side}: height`}
              kind="length"
              .value=${trip.height}
              .lowest=${0}
              .highest=${0.1}
              above-lowest
              @quantity-change=${(event: QuantityChange) => this.change(i, { height: event.detail.value })}
            ></ww-quantity-field>
            <div class="buttons">
              <button type="button" @click=${() => emit(this, "section-change", { trips: trips.filter((_, k) => k !== i) })}>Remove trip ${i + 1}</button>
            </div>`,
        )}
        ${trips.length === 0 ? html`<p class="hint">None: transition is natural, by roughness or in the shear layer.</p>` : ""}
        <div class="buttons">
          <button type="button" ?disabled=${trips.length >= mostTrips} @click=${() => this.add("upper")}>Add on the upper side</button>
          <button type="button" ?disabled=${trips.length >= mostTrips} @click=${() => this.add("lower")}>Add on the lower side</button>
        </div>
      </div>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-trip-panel": TripPanel;
  }
}
