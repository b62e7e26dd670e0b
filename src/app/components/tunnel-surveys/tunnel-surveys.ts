import { html, LitElement, nothing } from "lit";
import { customElement, state } from "lit/decorators.js";
import { mostTableBytes, readCsvTable } from "../../../../shared/tunnel/csvTable";
import { tableProblemText } from "../../../../shared/tunnel/dataTable";
import type { TunnelResult } from "../../../../shared/tunnel/tunnelResult";
import { wakeMethodWords } from "../../../../shared/tunnel/wakeSurvey";
import { readWakeTable } from "../../../../shared/tunnel/wakeTable";
import { pageState } from "../../store/pageState";
import { StoreController } from "../../store/storeController";
import { darkPalette, lightPalette } from "../../style/palette";
import { tableInCase } from "../../tunnel/openTunnelCase";
import { tapFigure, wakeFigure } from "../../tunnel/surveyFigures";
import { changeBlock, tunnelBench } from "../../tunnel/tunnelBench";
import { tapFields, wakeFields } from "../../tunnel/tunnelFields";
import "../plot/plot";
import "../tunnel-fields/tunnel-fields";

type SurveyKey = "wakeSurvey" | "pressureTaps";

const surveyWords: Readonly<Record<SurveyKey, readonly [string, string]>> = {
  wakeSurvey: [
    "Wake traverse",
    "Columns positionMetres, totalPressurePascals, staticPressurePascals (over the stream's static pressure).",
  ],
  pressureTaps: [
    "Pressure taps",
    "Columns tap, angleDegrees (or xMetres, yMetres), pressureCoefficient (or pressurePascals).",
  ],
};

/** What a table's own file does not say, until the person does. */
const startDynamicPressure = 100;
const startReynolds = 1e5;

/** A traverse across the wake and pressure taps of a section, with their drag and the predicted pressures. */
@customElement("ww-tunnel-surveys")
export class TunnelSurveys extends LitElement {
  private readonly block = new StoreController(this, tunnelBench, (value) => value.history.present.block);
  private readonly result = new StoreController(this, tunnelBench, (value) => value.solved?.result ?? null);
  private readonly isDark = new StoreController(this, pageState, (value) => value.isDark);
  @state() private problems: Readonly<Partial<Record<SurveyKey, string>>> = {};

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  private async choose(key: SurveyKey, event: Event): Promise<void> {
    const input = event.target as HTMLInputElement;
    const file = input.files?.[0];
    input.value = "";
    if (file === undefined) return;
    const refuse = (message: string) => {
      this.problems = { ...this.problems, [key]: `${file.name}: ${message}` };
    };
    if (file.size > mostTableBytes) return refuse(`has more than ${mostTableBytes / 1e6} MB`);
    try {
      const table = readCsvTable(new TextDecoder("utf-8", { fatal: true }).decode(await file.arrayBuffer()));
      if (!table.ok) return refuse(table.problem.message);
      const data = tableInCase(table.value);
      const { wakeSurvey, pressureTaps } = this.block.value;
      if (key === "wakeSurvey") {
        changeBlock({ wakeSurvey: { dynamicPressurePascals: startDynamicPressure, ...wakeSurvey, data } });
      } else {
        changeBlock({ pressureTaps: { reynoldsNumber: startReynolds, ...pressureTaps, data } });
      }
      this.problems = { ...this.problems, [key]: undefined };
    } catch {
      refuse("is not UTF-8 text; save it as CSV in UTF-8");
    }
  }

  protected override render() {
    const { model } = this.block.value;
    return html`<section class="view-section tunnel-section" aria-labelledby="tunnel-surveys-heading">
      <h2 id="tunnel-surveys-heading">Wake and pressure surveys</h2>
      ${
        model.section === undefined
          ? html`<p class="hint">Surveys belong to a section that spans the tunnel; the model is a puck.</p>`
          : html`${this.renderInput("wakeSurvey", wakeFields)}${this.renderWake(this.result.value)}
            ${this.renderInput("pressureTaps", tapFields)}${this.renderTaps(this.result.value)}`
      }
    </section>`;
  }

  private renderInput(key: SurveyKey, fields: typeof wakeFields) {
    const [words, columns] = surveyWords[key];
    const isThere = this.block.value[key] !== undefined;
    return html`<h3>${words}</h3>
      <p class="hint">${columns}</p>
      <div class="line">
        <label class="file"><input class="unseen" type="file" accept=".csv,.txt,.tsv,text/csv" @change=${(event: Event) => this.choose(key, event)} /><span>Choose a CSV file: ${words.toLowerCase()} ...</span></label>
        ${isThere ? html`<button type="button" class="is-quiet" @click=${() => changeBlock({ [key]: undefined })}>Take it away</button>` : nothing}
      </div>
      ${this.problems[key] === undefined ? nothing : html`<p class="error" role="alert">${this.problems[key]}</p>`}
      ${isThere ? html`<ww-tunnel-fields .fields=${fields}></ww-tunnel-fields>` : nothing}`;
  }

  private renderWake(result: TunnelResult | null) {
    const { wakeSurvey } = this.block.value;
    if (wakeSurvey === undefined || typeof wakeSurvey.data === "string") return nothing;
    const read = readWakeTable(wakeSurvey.data, wakeSurvey.columns ?? {}, wakeSurvey.decimalMark ?? null);
    if (read.problems.length > 0) {
      return html`<ul class="error" role="alert">${read.problems.slice(0, 8).map((one) => html`<li>${tableProblemText(one)}</li>`)}</ul>`;
    }
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
      <p>Drag of the pressures: <b>${drag.value.toFixed(4)} ± ${drag.expandedUncertainty.toFixed(4)}</b>; predicted ${found.predictedDrag?.toFixed(4) ?? "–"}, read at the same taps ${found.predictedDragAtTaps?.toFixed(4) ?? "–"}. Residual: mean ${found.meanResidual?.toFixed(3) ?? "–"}, root mean square ${found.rootMeanSquareResidual?.toFixed(3) ?? "–"}.</p>
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
