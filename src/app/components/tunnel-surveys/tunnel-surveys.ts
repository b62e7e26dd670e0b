import { html, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { TunnelBlockDocument } from "../../../../shared/jobs/tunnel/tunnelBlockDocument";
import type { TunnelResult } from "../../../../shared/jobs/tunnel/tunnelResult";
import { wakeMethodWords } from "../../../../shared/jobs/tunnel/wakeSurvey";
import { readWakeTable } from "../../../../shared/jobs/tunnel/wakeTable";
import { lightPalette, type Palette } from "../../style/palette";
import { tapFigure, wakeFigure } from "../../tunnel/surveyFigures";
import type { TableDrafts } from "../../tunnel/tableEdits";
import { tapFields, wakeFields } from "../../tunnel/tunnelFields";
import { startTunnel } from "../../tunnel/tunnelInputs";
import type { TunnelTask } from "../../tunnel/tunnelTask";
import { initialTask } from "../../view/taskState";
import "../plot/plot";
import "../tunnel-fields/tunnel-fields";
import { emit } from "../../view/emit";
import { LightElement } from "../../view/lightElement";
import "../tunnel-table/tunnel-table";

/** A traverse across the wake and pressure taps of a section, with their drag and the predicted pressures. */
@customElement("ww-tunnel-surveys")
export class TunnelSurveys extends LightElement {
  @property({ attribute: false }) block: TunnelBlockDocument = startTunnel.block;
  @property({ attribute: false }) drafts: TableDrafts = {};
  @property({ attribute: false }) solving: TunnelTask = initialTask;
  @property({ attribute: false }) palette: Palette = lightPalette;

  protected override render() {
    const { model, wakeSurvey, pressureTaps } = this.block;
    const result = this.solving.last?.result ?? null;
    const isStale = result !== null && this.solving.last?.inputs.block !== this.block;
    return html`<section class="view-section tunnel-section" aria-labelledby="tunnel-surveys-heading">
      <h2 id="tunnel-surveys-heading">Wake and pressure surveys</h2>
      ${
        model.section === undefined
          ? html`<p class="hint">Surveys belong to a section that spans the tunnel; the model is a puck.</p>`
          : html`${isStale ? html`<p class="hint">Drags are those of the inputs before the last change.</p>` : nothing}
            <h3>Wake traverse</h3>
            <ww-tunnel-table of="wakeSurvey" .block=${this.block} .drafts=${this.drafts}></ww-tunnel-table>
            ${wakeSurvey === undefined ? nothing : html`<ww-tunnel-fields .block=${this.block} .fields=${wakeFields}></ww-tunnel-fields>`}
            ${this.renderWake(result)}
            <h3>Pressure taps</h3>
            <ww-tunnel-table of="pressureTaps" .block=${this.block} .drafts=${this.drafts}></ww-tunnel-table>
            ${
              pressureTaps === undefined
                ? nothing
                : html`<ww-tunnel-fields .block=${this.block} .fields=${tapFields}></ww-tunnel-fields>
              <label class="line"><input type="checkbox" id="taps-mirrored" .checked=${pressureTaps.isMirrored === true} @change=${(
                event: Event,
              ) =>
                emit(this, "tunnel-table-change", {
                  of: "pressureTaps",
                  change: { isMirrored: (event.target as HTMLInputElement).checked || undefined },
                })} /> The taps stand on one half; the other half has the same pressures</label>`
            }
            ${this.renderTaps(result)}`
      }
    </section>`;
  }

  private renderWake(result: TunnelResult | null) {
    const { wakeSurvey } = this.block;
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
    if (found === null || this.block.pressureTaps === undefined) return nothing;
    const { pressureDrag: drag } = found;
    return html`<div class="plots"><ww-plot id="plot-taps" .figure=${tapFigure(found, this.palette)}></ww-plot></div>
      <p id="taps-drag">Drag of the pressures: <b>${drag.value.toFixed(4)}${found.isCovered ? ` ± ${drag.expandedUncertainty.toFixed(4)}` : ""}</b>; predicted ${found.predictedDrag?.toFixed(4) ?? "–"}, read at the same taps ${found.predictedDragAtTaps?.toFixed(4) ?? "–"}. Residual: mean ${found.meanResidual?.toFixed(3) ?? "–"}, root mean square ${found.rootMeanSquareResidual?.toFixed(3) ?? "–"}.</p>
      ${found.notes.map((note) => html`<p class="hint">${note}</p>`)}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-tunnel-surveys": TunnelSurveys;
  }
}
