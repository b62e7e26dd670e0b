import { html, LitElement, nothing } from "lit";
import { customElement } from "lit/decorators.js";
import { changePuck, mostPuckPins, pinPuck, presentPuck, puckBench, unpinPuck } from "../../puck/puckBench";
import type { PuckMake } from "../../puck/puckInputs";
import { puckTableStyles } from "../../puck/puckTableStyles";
import { StoreController } from "../../store/storeController";
import { panelStyles } from "../../style/panelStyles";
import { controlStyles } from "../../style/sharedStyles";

/** Candidates kept for comparison, and which puck is the baseline. */
@customElement("ww-puck-pins")
export class PuckPins extends LitElement {
  static override styles = [controlStyles, panelStyles, puckTableStyles];

  private readonly bench = new StoreController(this, puckBench, (value) => value);

  /** Works on a kept puck; the present candidate is kept in its place, so that nothing is lost. */
  private workOn(id: number, make: PuckMake): void {
    const { candidate } = presentPuck();
    unpinPuck(id);
    pinPuck(candidate);
    changePuck({ candidate: make });
  }

  /** Measures everything against the candidate as it is now; the former baseline is kept among the pins. */
  private makeBaseline(): void {
    const { candidate, baseline } = presentPuck();
    const spec = { ...candidate.spec, name: `${candidate.spec.name}, changed` };
    changePuck({ baseline: candidate, candidate: { ...candidate, spec } });
    pinPuck(baseline);
  }

  protected override render() {
    const { pins, problem, history } = this.bench.value;
    const full = pins.length >= mostPuckPins;
    return html`<section aria-labelledby="heading">
      <div class="heading"><h2 id="heading">Compare pucks</h2></div>
      <div class="stack">
        <p class="hint">Baseline: <b>${history.present.baseline.spec.name}</b>. Pinned pucks are drawn in every plot of this view.</p>
        <div class="buttons">
          <button type="button" ?disabled=${problem !== null || full} @click=${() => pinPuck(history.present.candidate)}>Pin this puck</button>
          <button type="button" ?disabled=${problem !== null} @click=${this.makeBaseline}>Make it the baseline</button>
        </div>
        ${full ? html`<p class="hint">${mostPuckPins} pucks are pinned, the most that can be told apart. Remove one to pin another.</p>` : nothing}
        ${pins.map(
          ({ id, make, result }) => html`<div class="hint" data-pin=${id}>
            <b>${make.spec.name}</b>${result === null ? " (being solved)" : ""}
            <button type="button" class="is-quiet" @click=${() => this.workOn(id, make)}>Work on it<span class="unseen">, ${make.spec.name}</span></button>
            <button type="button" class="is-quiet" @click=${() => unpinPuck(id)}>Remove<span class="unseen"> ${make.spec.name}</span></button>
          </div>`,
        )}
      </div>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-puck-pins": PuckPins;
  }
}
