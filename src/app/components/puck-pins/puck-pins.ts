import { demoPuck } from "../../puck/demoPuck";
import { mostPuckPins, nothingKnown, type PuckAnswers } from "../../puck/puckAnswers";
import type { PuckInputs } from "../../puck/puckInputs";
import { emit } from "../../view/emit";
import "../../puck/puckEvents";
import { html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import { puckTableStyles } from "../../puck/puckTableStyles";
import { panelStyles } from "../../style/panelStyles";
import { controlStyles } from "../../style/sharedStyles";
import { tableStyles } from "../../style/tableStyles";

/** Candidates kept for comparison, and which puck is the baseline. Sends `puck-pin`, `-unpin`, `-swap`, `-baseline`. */
@customElement("ww-puck-pins")
export class PuckPins extends LitElement {
  static override styles = [controlStyles, panelStyles, tableStyles, puckTableStyles];

  @property({ attribute: false }) inputs: PuckInputs = demoPuck;
  /** What is known of the pucks. */
  @property({ attribute: false }) known: PuckAnswers = nothingKnown;

  protected override render() {
    const { pins, problem } = this.known;
    const full = pins.length >= mostPuckPins;
    return html`<section aria-labelledby="heading">
      <div class="heading"><h2 id="heading">Compare pucks</h2></div>
      <div class="stack">
        <p class="hint">Baseline: <b>${this.inputs.baseline.spec.name}</b>. Pinned pucks are drawn in every plot of this view.</p>
        <div class="buttons">
          <button type="button" ?disabled=${problem !== null || full} @click=${() => emit(this, "puck-pin", this.inputs.candidate)}>Pin this puck</button>
          <button type="button" ?disabled=${problem !== null} @click=${() => emit(this, "puck-baseline")}>Make it the baseline</button>
        </div>
        ${full ? html`<p class="hint">${mostPuckPins} pucks are pinned, the most that can be told apart. Remove one to pin another.</p>` : nothing}
        ${pins.map(
          ({ id, make, result }) => html`<div class="hint" data-pin=${id}>
            <b>${make.spec.name}</b>${result === null ? " (being solved)" : ""}
            <button type="button" class="is-quiet" @click=${() => emit(this, "puck-swap", id)}>Work on it<span class="unseen">, ${make.spec.name}</span></button>
            <button type="button" class="is-quiet" @click=${() => emit(this, "puck-unpin", id)}>Remove<span class="unseen"> ${make.spec.name}</span></button>
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
