import { html, nothing, type PropertyValues } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { type CorrelationRemark, correlationFaults } from "../../../../shared/jobs/tunnel/correlationFaults";
import { correlationNotes } from "../../../../shared/jobs/tunnel/correlationNotes";
import { statedKeys, statedName } from "../../../../shared/jobs/tunnel/statedUncertainties";
import type { TunnelBlockDocument } from "../../../../shared/jobs/tunnel/tunnelBlockDocument";
import { uncertaintyDefaults } from "../../../../shared/jobs/tunnel/uncertaintyDefaults";
import {
  addCorrelation,
  correlationsOf,
  enterCoefficient,
  enterPart,
  removeCorrelation,
} from "../../tunnel/correlationEdits";
import type { FieldEntry } from "../../tunnel/tunnelFields";
import { startTunnel } from "../../tunnel/tunnelInputs";
import type { TunnelTask } from "../../tunnel/tunnelTask";
import { emit } from "../../view/emit";
import { LightElement } from "../../view/lightElement";
import { initialTask } from "../../view/taskState";

const placeWords = ["Part", "Goes with"] as const;

/** Which stated parts of the uncertainty vary together, and how much. What is not allowed stays in its field with the reason. */
@customElement("ww-tunnel-correlations")
export class TunnelCorrelations extends LightElement {
  @property({ attribute: false }) block: TunnelBlockDocument = startTunnel.block;
  @property({ attribute: false }) solving: TunnelTask = initialTask;
  /** Coefficients that were refused, by the places of their correlations. */
  @state() private refused: Readonly<Record<number, { readonly text: string; readonly message: string }>> = {};
  @state() private problem = "";
  /** What is to have the focus once the changed block is drawn. */
  private focusNext: (() => HTMLElement | null | undefined) | null = null;

  private take(entry: FieldEntry): boolean {
    this.problem = entry.ok ? "" : entry.message;
    if (entry.ok) emit(this, "tunnel-block", entry.block);
    return entry.ok;
  }

  private addOne(): void {
    this.focusNext = () => [...this.querySelectorAll(".correlation")].at(-1)?.querySelector("select");
    if (!this.take(addCorrelation(this.block))) this.focusNext = null;
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (!changed.has("block")) return;
    this.focusNext?.()?.focus();
    this.focusNext = null;
  }

  private removeOne(index: number): void {
    if (!this.take(removeCorrelation(this.block, index))) return;
    this.refused = Object.fromEntries(
      Object.entries(this.refused).flatMap(([key, refusal]) => {
        const place = Number(key);
        return place === index ? [] : [[place > index ? place - 1 : place, refusal]];
      }),
    );
    // The button that was pressed will be gone; the keyboard goes on from the one that adds.
    this.focusNext = () => this.querySelector<HTMLButtonElement>("button.is-adding");
  }

  private type(index: number, text: string): void {
    const { [index]: _old, ...others } = this.refused;
    const entry = enterCoefficient(this.block, index, text);
    this.refused = entry.ok ? others : { ...others, [index]: { text, message: entry.message } };
    if (entry.ok) emit(this, "tunnel-block", entry.block);
  }

  /** Inputs of the budgets of the present runs; null while they are being worked out. */
  private inputKeys(): ReadonlySet<string> | null {
    const solved = this.solving.last;
    const points = solved?.result.reduction?.points ?? [];
    if (solved?.inputs.block !== this.block || points.length === 0) return null;
    return new Set(points.flatMap(({ firstOrder }) => firstOrder.parts.map(({ key }) => key)));
  }

  protected override render() {
    const block = this.block;
    const list = correlationsOf(block);
    const faults = correlationFaults(list);
    const { stated = {}, samples = uncertaintyDefaults.samples } = block.uncertainty ?? {};
    const notes = correlationNotes(list, stated, samples, this.inputKeys());
    return html`<h3>Correlations</h3>
      <p class="hint">Parts with a cause in common, such as two instruments of one calibration, vary together. Without a correlation parts are independent.</p>
      ${list.map(({ between, coefficient }, index) => {
        const refusal = this.refused[index];
        return html`<div class="correlation" role="group" aria-label="Correlation ${index + 1}">
          ${placeWords.map((words, place) => this.renderPart(index, place === 0 ? 0 : 1, words, between[place]))}
          <div class="row"><label for="correlation-${index}">Coefficient, -1 to 1</label>
            <span class="pair"><input id="correlation-${index}" type="text" inputmode="text" autocomplete="off" aria-invalid=${refusal !== undefined}
              .value=${refusal?.text ?? String(coefficient)} @change=${(event: Event) => this.type(index, (event.target as HTMLInputElement).value)} />
            <button type="button" class="is-quiet" aria-label="Remove correlation ${index + 1}" @click=${() => this.removeOne(index)}>Remove</button></span></div>
          ${refusal === undefined ? nothing : html`<p class="error" role="alert">${refusal.message}</p>`}
          ${remarks(faults, index).map((message) => html`<p class="error" role="alert">Correlation ${index + 1}: ${message}.</p>`)}
          ${remarks(notes, index).map((message) => html`<p class="hint">${message}.</p>`)}
        </div>`;
      })}
      ${remarks(faults, null).map((message) => html`<p class="error" role="alert">These correlations are impossible: ${message}. The results are those before.</p>`)}
      ${remarks(notes, null).map((message) => html`<p class="hint">With these correlations: ${message}.</p>`)}
      ${this.problem === "" ? nothing : html`<p class="error" role="alert">${this.problem}</p>`}
      <div class="line"><button type="button" class="is-adding" @click=${this.addOne}>Add a correlation</button></div>`;
  }

  private renderPart(index: number, place: 0 | 1, words: string, chosen: string) {
    const id = `correlation-${index}-${place}`;
    return html`<div class="row is-tall"><label for=${id}>${words}</label>
      <select id=${id} @change=${(event: Event) => this.take(enterPart(this.block, index, place, (event.target as HTMLSelectElement).value))}>
        ${statedKeys.map((key) => html`<option value=${key} .selected=${key === chosen}>${statedName(key)}</option>`)}
      </select></div>`;
  }
}

function remarks(all: readonly CorrelationRemark[], index: number | null): string[] {
  return all.flatMap((each) => (each.index === index ? [each.message] : []));
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-tunnel-correlations": TunnelCorrelations;
  }
}
