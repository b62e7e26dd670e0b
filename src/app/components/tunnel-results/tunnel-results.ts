import { html, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { fileNameOf } from "../../../../shared/jobs/handoff/handoffFiles";
import { type BlockageMethod, blockageMethods, blockageMethodWords } from "../../../../shared/jobs/tunnel/blockage";
import type { SpeedDirection } from "../../../../shared/jobs/tunnel/predictedDrag";
import { tunnelCsv } from "../../../../shared/jobs/tunnel/tunnelCsv";
import type { TunnelPoint, TunnelResult } from "../../../../shared/jobs/tunnel/tunnelResult";
import { saveFile } from "../../files/saveFile";
import type { PlotFigure } from "../../plots/plotFigure";
import { lightPalette, type Palette } from "../../style/palette";
import { budgetFigure } from "../../tunnel/budgetFigure";
import { tunnelDragFigure } from "../../tunnel/tunnelDragFigure";
import { startTunnel, type TunnelInputs } from "../../tunnel/tunnelInputs";
import type { TunnelTask } from "../../tunnel/tunnelTask";
import { initialTask } from "../../view/taskState";
import "../plot/plot";
import { LightElement } from "../../view/lightElement";
import { type PlotPicture, pageWide, picturesDrawn, plotPictures } from "../report/plotPictures";

/** The reduced test: drag over Reynolds number with its uncertainty, the corrections side by side, and the budget. */
@customElement("ww-tunnel-results")
export class TunnelResults extends LightElement {
  @property({ attribute: false }) inputs: TunnelInputs = startTunnel;
  @property({ attribute: false }) solving: TunnelTask = initialTask;
  @property({ attribute: false }) palette: Palette = lightPalette;
  @state() private direction: SpeedDirection = "rising";
  @state() private pictures: readonly PlotPicture[] = [];

  private figures(result: TunnelResult, palette: Palette): PlotFigure[] {
    const drag = tunnelDragFigure(result, palette);
    const points = result.reduction?.points ?? [];
    return points.length === 0 ? [drag] : [drag, budgetFigure(points, this.direction, palette)];
  }

  /** Draws the plots for paper. */
  async preparePictures(): Promise<void> {
    const result = this.solving.last?.result;
    this.pictures = result === undefined ? [] : await plotPictures(this.figures(result, lightPalette), pageWide);
    await this.updateComplete;
    await picturesDrawn(this);
  }

  protected override render() {
    const solved = this.solving.last;
    if (solved === null)
      return html`<section class="view-section tunnel-section"><h2>Results</h2><p class="hint">Nothing is worked out yet.</p></section>`;
    const { result } = solved;
    const [drag, budget] = this.figures(result, this.palette);
    const isStale = solved.inputs.block !== this.inputs.block;
    const { reduction } = result;
    return html`<section class="view-section tunnel-section" aria-labelledby="tunnel-results-heading">
      <h2 id="tunnel-results-heading">Results</h2>
      ${isStale ? html`<p class="hint">These are the results of the inputs before the last change.</p>` : nothing}
      ${result.problems.length === 0 ? nothing : html`<ul class="error" role="alert">${result.problems.map((problem) => html`<li>${problem}</li>`)}</ul>`}
      ${result.cautions.map((caution) => html`<p class="caution">${caution}</p>`)}
      <div class="plots"><ww-plot id="plot-tunnel-drag" .figure=${drag}></ww-plot></div>
      ${reduction === null ? html`<p class="hint">No runs to reduce yet: the prediction alone is shown.</p>` : this.renderReduction(result, reduction)}
      ${
        budget === undefined
          ? nothing
          : html`<h3>Uncertainty budget</h3>
            <div class="line"><label for="budget-direction">Speed</label>
              <select id="budget-direction" @change=${(event: Event) => {
                this.direction = (event.target as HTMLSelectElement).value === "falling" ? "falling" : "rising";
              }}>
                <option value="rising" ?selected=${this.direction === "rising"}>rising</option>
                <option value="falling" ?selected=${this.direction === "falling"}>falling</option>
              </select></div>
            <div class="plots"><ww-plot id="plot-tunnel-budget" .figure=${budget}></ww-plot></div>
            ${reduction === null ? nothing : this.renderBudget(reduction.points)}`
      }
      <div class="pictures">${this.pictures.map(({ title, address, caption }) => html`<div><h3>${title}</h3><img src=${address} alt=${title} /><p>${caption}</p></div>`)}</div>
      ${result.notes.length === 0 ? nothing : html`<ul class="hint">${result.notes.map((note) => html`<li>${note}</li>`)}</ul>`}
    </section>`;
  }

  private renderReduction(result: TunnelResult, reduction: NonNullable<TunnelResult["reduction"]>) {
    const shown = blockageMethods.filter((method) => reduction.ranges[method].isInRange !== null);
    const by = (point: TunnelPoint, method: BlockageMethod) =>
      point.corrections.find((each) => each.method === method)?.dragCoefficient.toFixed(4) ?? "–";
    return html`<p>${reduction.zeroCount} zero readings (largest step ${short(reduction.largestZeroStepNewtons)} N), ${reduction.tareReadings} readings of the support, blockage ${short(100 * reduction.blockageRatio)} %, reported with ${blockageMethodWords[reduction.correction]}.</p>
      <div class="scroll" tabindex="0" role="region" aria-label="Reduced points">
        <table class="results" id="points-table">
          <thead><tr><th scope="col">Speed</th><th scope="col">U, m/s</th><th scope="col">Repeats</th><th scope="col">Re</th><th scope="col">Cd</th><th scope="col">± expanded</th><th scope="col">Degrees of freedom</th><th scope="col">Monte Carlo</th>${shown.map((method) => html`<th scope="col">Cd, ${blockageMethodWords[method]}</th>`)}<th scope="col">Predicted</th></tr></thead>
          <tbody>${reduction.points.map(
            (point) =>
              html`<tr><th scope="row">${point.direction}</th><td>${short(point.speedMetresPerSecond)}</td><td>${point.repeats}</td><td>${point.reynolds.toExponential(3)}</td><td>${point.dragCoefficient.toFixed(4)}</td><td>${point.firstOrder.expandedUncertainty.toFixed(4)}</td><td>${point.firstOrder.effectiveDegreesOfFreedom ?? "endless"}</td><td>${point.monteCarlo === null ? "–" : `${point.monteCarlo.low.toFixed(4)} to ${point.monteCarlo.high.toFixed(4)}`}</td>${shown.map((method) => html`<td>${by(point, method)}</td>`)}<td>${point.predictedDragCoefficient === null ? "–" : `${short(point.predictedDragCoefficient.expected)} (${short(point.predictedDragCoefficient.low)} to ${short(point.predictedDragCoefficient.high)})`}</td></tr>`,
          )}</tbody>
        </table>
      </div>
      <div class="line"><button type="button" @click=${() => saveFile(`${fileNameOf(this.inputs.title)}-reduced.csv`, "text/csv", tunnelCsv(result))}>Save the points as CSV</button></div>
      <ul class="hint">
        ${blockageMethods.map((method) => {
          const { isInRange, reason } = reduction.ranges[method];
          const words = isInRange === null ? "no meaning here" : isInRange ? "in its range" : "outside its range";
          return html`<li>${blockageMethodWords[method]}: ${words}: ${reason}.</li>`;
        })}
        ${reduction.notes.map((note) => html`<li>${note}</li>`)}
      </ul>`;
  }

  private renderBudget(points: readonly TunnelPoint[]) {
    const own = points.filter(({ direction }) => direction === this.direction);
    const parts = (own[0]?.firstOrder.parts ?? []).filter(({ key }) =>
      own.some(({ firstOrder }) => firstOrder.parts.some((part) => part.key === key && part.share > 0)),
    );
    return html`<div class="scroll" tabindex="0" role="region" aria-label="Shares of the uncertainty">
      <table class="results" id="budget-table">
        <thead><tr><th scope="col">Share of the variance, %</th>${own.map((point) => html`<th scope="col">${short(point.speedMetresPerSecond)} m/s</th>`)}</tr></thead>
        <tbody>
          ${parts.map(
            ({ key, name }) =>
              html`<tr><th scope="row">${key === "repeatability" ? "scatter of repeats" : name}</th>${own.map(({ firstOrder }) => html`<td>${(100 * (firstOrder.parts.find((part) => part.key === key)?.share ?? 0)).toFixed(1)}</td>`)}</tr>`,
          )}
          <tr><th scope="row">correlations</th>${own.map(({ firstOrder }) => html`<td>${(100 * firstOrder.correlationShare).toFixed(1)}</td>`)}</tr>
        </tbody>
      </table>
    </div>`;
  }
}

function short(value: number): string {
  return String(Number(value.toPrecision(3)));
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-tunnel-results": TunnelResults;
  }
}
