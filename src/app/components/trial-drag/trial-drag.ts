import { html, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { pText } from "../../../../shared/jobs/trial/numberWords";
import type { TrialResult } from "../../../../shared/jobs/trial/trialResult";
import { lightPalette, type Palette } from "../../style/palette";
import { enterDrag } from "../../trial/dragEntry";
import { dragFigure } from "../../trial/dragFigure";
import { puckViewDragMeaning, type puckViewDrags, withDrags } from "../../trial/puckViewDrags";
import { newTrial, type TrialInputs } from "../../trial/trialInputs";
import { emit } from "../../view/emit";
import { LightElement } from "../../view/lightElement";
import "../plot/plot";

/** Whether the order of drags goes with the order of liking, and how little so few pucks can show. Sends `trial-change`. */
@customElement("ww-trial-drag")
export class TrialDrag extends LightElement {
  @property({ attribute: false }) inputs: TrialInputs = newTrial;
  @property({ attribute: false }) result: TrialResult | null = null;
  /** Drags of the puck view by the puck's name, as they are when they are asked for. */
  @property({ attribute: false }) puckDrags: () => ReturnType<typeof puckViewDrags> = () => new Map();
  @property({ attribute: false }) palette: Palette = lightPalette;
  @state() private refused: Readonly<Record<number, { readonly text: string; readonly message: string }>> = {};
  @state() private news = "";

  private takeDrags(inputs: TrialInputs): void {
    const drags = this.puckDrags();
    const { pucks, found } = withDrags(inputs.pucks, drags);
    if (found.length === 0) {
      const names = [...drags.keys()].map((name) => `"${name}"`).join(", ");
      this.news =
        names === ""
          ? "The puck view has not solved any puck yet; look at it first."
          : `No puck of the trial has the name of one in the puck view, which has ${names}.`;
      return;
    }
    this.refused = {};
    this.news = `Taken: ${found.join("; ")}.`;
    emit(this, "trial-change", { pucks, dragMeaning: puckViewDragMeaning });
  }

  protected override render() {
    const inputs = this.inputs;
    if (!inputs.isUnblinded) {
      return html`<section class="view-section trial-section" aria-labelledby="trial-drag-heading"><h2 id="trial-drag-heading">Drag against liking</h2>
        <p>Drags would tell which code is which puck: they are shown once the trial is unblinded.</p></section>`;
    }
    return html`<section class="view-section trial-section" aria-labelledby="trial-drag-heading">
      <h2 id="trial-drag-heading">Drag against liking</h2>
      <div class="screen">
        <table class="is-form"><tbody>${inputs.pucks.map((puck) => this.renderDrag(puck))}</tbody></table>
        <div class="row"><label for="drag-meaning">What they are of</label>
          <input id="drag-meaning" type="text" maxlength="200" .value=${inputs.dragMeaning} placeholder="for instance drag edge-on at 3 m/s, N" @change=${(event: Event) => emit(this, "trial-change", { dragMeaning: (event.target as HTMLInputElement).value.trim() })} /></div>
      </div>
      <div class="line"><button type="button" @click=${() => this.takeDrags(inputs)}>Take drags from the puck view</button></div>
      ${this.news === "" ? nothing : html`<p class="hint" role="status">${this.news}</p>`}
      ${this.renderAnswer()}
    </section>`;
  }

  private renderDrag({ id, code, name, drag }: TrialInputs["pucks"][number]) {
    const refusal = this.refused[id];
    return html`<tr><th scope="row"><label for="drag-${id}"><span class="code">${code}</span> ${name}</label></th>
      <td class="short"><input id="drag-${id}" type="text" inputmode="decimal" autocomplete="off" .value=${refusal?.text ?? (drag === null ? "" : String(drag))} aria-invalid=${refusal !== undefined}
        @change=${(event: Event) => {
          const text = (event.target as HTMLInputElement).value;
          const { [id]: _old, ...others } = this.refused;
          const entry = enterDrag(this.inputs, id, text);
          this.refused = entry.ok ? others : { ...others, [id]: { text, message: entry.message } };
          if (entry.ok) emit(this, "trial-change", entry.change);
        }} />${refusal === undefined ? nothing : html`<span class="error" role="alert">${refusal.message}</span>`}</td></tr>`;
  }

  private renderAnswer() {
    const { result } = this;
    const preference = result?.dragPreference ?? null;
    if (result === null || preference === null) return html`<p class="hint">Give the drags of three pucks or more.</p>`;
    const { spearman, kendall, sentences, pucks } = preference;
    return html`<div class="verdict">${sentences.map((one) => html`<p>${one}</p>`)}</div>
      ${
        spearman === null || kendall === null
          ? nothing
          : html`<p>Spearman's rho ${spearman.coefficient.toFixed(3)}, p ${pText(spearman.pValue)}; Kendall's tau-b ${kendall.coefficient.toFixed(3)}, p ${pText(kendall.pValue)}; two-sided, ${spearman.method === "exact" ? `over all ${spearman.orders} orders` : `by ${spearman.orders} permutations`}.</p>`
      }
      ${pucks.length === 0 ? nothing : html`<ww-plot id="plot-trial-drag" .figure=${dragFigure(result, preference, this.palette)}></ww-plot>`}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-trial-drag": TrialDrag;
  }
}
