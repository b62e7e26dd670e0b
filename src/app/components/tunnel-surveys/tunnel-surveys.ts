import { html, LitElement, nothing } from "lit";
import { customElement } from "lit/decorators.js";
import type { TunnelResult } from "../../../../shared/jobs/tunnel/tunnelResult";
import { wakeMethodWords } from "../../../../shared/jobs/tunnel/wakeSurvey";
import { readWakeTable } from "../../../../shared/jobs/tunnel/wakeTable";
import { pageState } from "../../store/pageState";
import { StoreController } from "../../store/storeController";
import { darkPalette, lightPalette } from "../../style/palette";
import { tapFigure, wakeFigure } from "../../tunnel/surveyFigures";
import { tunnelBench } from "../../tunnel/tunnelBench";
import { tapFields, wakeFields } from "../../tunnel/tunnelFields";
import "../plot/plot";
import "../tunnel-fields/tunnel-fields";
import "../tunnel-table/tunnel-table";

/** A traverse across the wake and pressure taps of a section, with their drag and the predicted pressures. */
@customElement("ww-tunnel-surveys")
export class TunnelSurveys extends LitElement {
  private readonly block = new StoreController(this, tunnelBench, (value) => value.history.present.block);
  private readonly solved = new StoreController(this, tunnelBench, (value) => value.solved);
  private readonly isDark = new StoreController(this, pageState, (value) => value.isDark);

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override render() {
    const { model, wakeSurvey, pressureTaps } = this.block.value;
    const result = this.solved.value?.result ?? null;
    const isStale = result !== null && this.solved.value?.inputs.block !== this.block.value;
    return html`<section class="view-section tunnel-section" aria-labelledby="tunnel-surveys-heading">
      <h2 id="tunnel-surveys-heading">Wake and pressure surveys</h2>
      ${
        model.section === undefined
          ? html`<p class="hint">Surveys belong to a section that spans the tunnel; the model is a puck.</p>`
          : html`${isStale ? html`<p class="hint">Drags are those of the inputs before the last change.</p>` : nothing}
            <h3>Wake traverse</h3>
            <ww-tunnel-table of="wakeSurvey"></ww-tunnel-table>
            ${wakeSurvey === undefined ? nothing : html`<ww-tunnel-fields .fields=${wakeFields}></ww-tunnel-fields>`}
            ${this.renderWake(result)}
            <h3>Pressure taps</h3>
            <ww-tunnel-table of="pressureTaps"></ww-tunnel-table>
            ${pressureTaps === undefined ? nothing : html`<ww-tunnel-fields .fields=${tapFields}></ww-tunnel-fields>`}
            ${this.renderTaps(result)}`
      }
    </section>`;
  }

  private renderWake(result: TunnelResult | null) {
    const { wakeSurvey } = this.block.value;
    if (wakeSurvey === undefined || typeof wakeSurvey.data === "string") return nothing;
    const read = readWakeTable(wakeSurvey.data, wakeSurvey.columns ?? {}, wakeSurvey.decimalMark ?? null);
    if (read.problems.length > 0 || read.traverse.position.length === 0) return nothing;
    const traverse = { ...read.traverse, dynamicPressure: wakeSurvey.dynamicPressurePascals };
    const found = result?.wakeSurvey ?? null;
    return html`<div class="plots"><ww-plot id="plot-wake" .figure=${wakeFigure(traverse, this.palette)}></ww-plot></div>
      ${
        found === null
          ? nothing
          : html`<table class="results" id="wake-table">
              <thead><tr><th scope="col">Drag from the wake, per span on the width</th><th scope="col">Cd</th><th scope="col">± expanded</th></tr></thead>
              <tbody>${found.drags.map(({ method, dragCoefficient, uncertainty }) => html`<tr><th scope="row">${wakeMethodWords[method]}</th><td>${dragCoefficient.toFixed(4)}</td><td>${uncertainty.expandedUncertainty.toFixed(4)}</td></tr>`)}</tbody>
            </table>
            ${found.notes.map((note) => html`<p class="hint">${note}</p>`)}`
      }`;
  }

  private renderTaps(result: TunnelResult | null) {
    const found = result?.pressureTaps ?? null;
    if (found === null || this.block.value.pressureTaps === undefined) return nothing;
    const { pressureDrag: drag } = found;
    return html`<div class="plots"><ww-plot id="plot-taps" .figure=${tapFigure(found, this.palette)}></ww-plot></div>
      <p id="taps-drag">Drag of the pressures: <b>${drag.value.toFixed(4)} ± ${drag.expandedUncertainty.toFixed(4)}</b>; predicted ${found.predictedDrag?.toFixed(4) ?? "–"}, read at the same taps ${found.predictedDragAtTaps?.toFixed(4) ?? "–"}. Residual: mean ${found.meanResidual?.toFixed(3) ?? "–"}, root mean square ${found.rootMeanSquareResidual?.toFixed(3) ?? "–"}.</p>
      ${found.notes.map((note) => html`<p class="hint">${note}</p>`)}`;
  }

  private get palette() {
    return this.isDark.value ? darkPalette : lightPalette;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-tunnel-surveys": TunnelSurveys;
  }
}
