import { html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { MeasuredCorrection } from "../../../../shared/jobs/evidence/carriedCorrection";
import type { Problem } from "../../../../shared/result";
import type { LiveCurves } from "../../../../workers/solverApi";
import type { PositionMeasure } from "../../plots/surfacePosition";
import { cautions } from "../../reference/cautions";
import { type CaseRun, noCase } from "../../section/caseRun";
import type { Pin, Solved } from "../../section/solved";
import { lightPalette } from "../../style/palette";
import type { UnitPreferences } from "../../units/units";
import { boardDragCurve, boardPressure } from "../plot-board/boardFigures";
import { reportRows } from "./caseRows";
import { flowAddress } from "./flowAddress";
import { type PlotPicture, picturesDrawn, plotPictures } from "./plotPictures";
import { reportStyles } from "./report.styles";
import { reportInputs } from "./reportInputs";

/**
 * What the printed page has besides the drawing and the key figures: plots as pictures, inputs and cautions. Not to be
 * seen on the screen.
 */
@customElement("ww-report")
export class Report extends LitElement {
  static override styles = reportStyles;

  @property({ attribute: false }) solved: Solved | null = null;
  @property({ attribute: false }) curves: LiveCurves | null = null;
  @property({ attribute: false }) pins: readonly Pin[] = [];
  /** Why the design has no solution; null when all is well. */
  @property({ attribute: false }) problem: Problem | null = null;
  @property({ attribute: false }) run: CaseRun = noCase;
  @property({ attribute: false }) offset: MeasuredCorrection | null = null;
  @property() measure: PositionMeasure = "angle";
  @property({ attribute: false }) units: UnitPreferences = {};
  /** The flow picture as an address; empty until it is asked for. */
  @state() private flow = "";
  @state() private pictures: readonly PlotPicture[] = [];

  /** Draws the plots for paper. */
  async preparePictures(): Promise<void> {
    const figures = [
      boardPressure(this, this.measure, lightPalette),
      boardDragCurve(this, [], lightPalette, this.offset),
    ];
    this.flow = this.solved === null ? "" : flowAddress(this.solved, this.units);
    this.pictures = await plotPictures(figures.filter((figure) => figure !== null));
    await this.updateComplete;
    await picturesDrawn(this.renderRoot);
  }

  protected override render() {
    const { solved, problem } = this;
    if (solved === null) return nothing;
    return html`<p>${problem ? html`<b>Stale:</b> the design could not be solved (${problem.message}); figures are of the last one that could.` : nothing}</p>
      ${this.flow === "" ? nothing : html`<img class="flow" src=${this.flow} alt="The flow round the section" />`}
      <div class="plots">
        ${this.pictures.map(({ title, address, caption }) => html`<div><h2>${title}</h2><img src=${address} alt=${title} /><p>${caption}</p></div>`)}
      </div>
      ${this.renderCase()}
      <h2>Inputs</h2>
      <dl>${reportInputs(solved, this.units).map(([name, value]) => html`<dt>${name}</dt><dd>${value}</dd>`)}</dl>
      <h2>Cautions</h2>
      <ul>${cautions.map((caution) => html`<li>${caution}</li>`)}</ul>
      <p>Wakewright, printed ${new Date().toLocaleDateString()}.</p>`;
  }

  /** Results of the opened case, unless it is one condition only: the figures above say more of that. */
  private renderCase() {
    const { title, rows } = this.run;
    if (rows.length < 2) return nothing;
    const table = reportRows(rows);
    return html`<h2>Results of the opened case: ${title}</h2>
      <table>
        <thead><tr>${table.columns.map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>
        <tbody>${table.rows.map((cells) => html`<tr>${cells.map((cell) => html`<td>${cell}</td>`)}</tr>`)}</tbody>
      </table>
      ${table.more > 0 ? html`<p>and ${table.more} more; the command line prints all of them.</p>` : nothing}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-report": Report;
  }
}
