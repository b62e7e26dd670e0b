import { html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { puckCautions } from "../../../../shared/jobs/puck/body/playCautions";
import { puckDragFigure } from "../../plots/puckDragFigure";
import { puckMotionFigure } from "../../plots/puckMotionFigure";
import { demoPuck } from "../../puck/demoPuck";
import { attitudeRows, indexRows } from "../../puck/dragTexts";
import { figureRows, verdictTexts } from "../../puck/figureRows";
import { nothingKnown, type PuckAnswers } from "../../puck/puckAnswers";
import { sameParts, solveParts } from "../../puck/puckChanges";
import type { PuckInputs } from "../../puck/puckInputs";
import { puckReportInputs } from "../../puck/reportInputs";
import { shownPucks } from "../../puck/shownPucks";
import { lightPalette } from "../../style/palette";
import { quantityText, type UnitPreferences, unitChoices, unitFor } from "../../units/units";
import { type PlotPicture, picturesDrawn, plotPictures } from "../report/plotPictures";
import { reportStyles } from "../report/report.styles";

/** What the printed page of a puck has besides its drawing. Not to be seen on the screen. */
@customElement("ww-puck-report")
export class PuckReport extends LitElement {
  static override styles = reportStyles;

  @property({ attribute: false }) inputs: PuckInputs = demoPuck;
  /** What is known of the pucks. */
  @property({ attribute: false }) known: PuckAnswers = nothingKnown;
  @property({ attribute: false }) units: UnitPreferences = {};
  @state() private pictures: readonly PlotPicture[] = [];

  /** Draws the plots for paper. */
  async preparePictures(): Promise<void> {
    this.pictures = await plotPictures(this.figures());
    await this.updateComplete;
    await picturesDrawn(this.renderRoot);
  }

  private condition() {
    const rows = this.known.solved?.candidate.drag ?? [];
    const speeds = [...new Set(rows.map((row) => row.speedMetresPerSecond))];
    const [first] = rows;
    return first === undefined
      ? null
      : { speed: speeds[Math.floor(speeds.length / 2)], turbulencePercent: first.turbulencePercent };
  }

  private figures() {
    const condition = this.condition();
    if (condition === null) return [];
    const pucks = shownPucks(this.known);
    const { turbulencePercent } = condition;
    const speedUnit = unitFor("speed", this.units);
    const lengthUnit = unitChoices.length.find(({ key }) => key === "m")!;
    const [motion] = this.known.solved?.inputs.motions ?? [];
    return [
      puckDragFigure({ pucks, orientation: "flat", turbulencePercent, quantity: "area", speedUnit }, lightPalette),
      ...(motion === undefined
        ? []
        : [
            puckMotionFigure(
              {
                pucks,
                motion: motion.kind,
                name: motion.name,
                view: "speed",
                turbulencePercent,
                lengthUnit,
                speedUnit,
              },
              lightPalette,
            ),
          ]),
    ].filter(({ data }) => data.length > 0);
  }

  protected override render() {
    const { measured, problem, solved, solveProblem } = this.known;
    if (measured === null) return nothing;
    const fault = problem ?? solveProblem;
    const isOld = fault !== null || (solved !== null && !sameParts(solved.inputs, this.inputs, solveParts));
    const { spec } = measured.inputs.candidate;
    return html`${isOld ? html`<p><b>Stale:</b> not every result belongs to the puck as it is now. ${fault?.message}</p>` : nothing}
      <h2>Figures of ${spec.name} beside ${measured.inputs.baseline.spec.name}</h2>
      ${this.renderFigures()} ${this.renderDrag()}
      <div class="plots">
        ${this.pictures.map(({ title, address, caption }) => html`<div><h2>${title}</h2><img src=${address} alt=${title} /><p>${caption}</p></div>`)}
      </div>
      <h2>Inputs</h2>
      <dl>${puckReportInputs(measured, this.units).map(([name, value]) => html`<dt>${name}</dt><dd>${value}</dd>`)}</dl>
      <h2>Cautions</h2>
      <ul>${puckCautions(spec, measured.inputs.userMaterials).map((caution) => html`<li>${caution}</li>`)}</ul>
      <p>Wakewright, printed ${new Date().toLocaleDateString()}.</p>`;
  }

  /** Two columns of figures: candidate, baseline, change, and what the rules say. */
  private renderFigures() {
    const { measured, judged } = this.known;
    if (measured === null) return nothing;
    const rows = figureRows(measured.candidate, measured.baseline, judged?.judgement ?? null);
    const half = Math.ceil(rows.length / 2);
    return html`<div class="plots">
      ${[rows.slice(0, half), rows.slice(half)].map(
        (part) => html`<table>
          <tbody>${part.map(
            (row) => html`<tr>
              <th scope="row">${row.label}</th>
              <td>${row.candidate}</td>
              <td>${row.baseline}</td>
              <td>${row.change}</td>
              <td>${row.rule === null ? "" : verdictTexts[row.rule.verdict]}</td>
            </tr>`,
          )}</tbody>
        </table>`,
      )}
    </div>`;
  }

  private renderDrag() {
    const { solved } = this.known;
    const condition = this.condition();
    if (solved === null || condition === null) return nothing;
    const { speed, turbulencePercent } = condition;
    const rows = attitudeRows(solved.candidate, solved.baseline, turbulencePercent, speed);
    const [index] = indexRows([solved.candidate]);
    return html`<h2>
        Drag at ${quantityText(speed, "speed", this.units)}, turbulence ${Number(turbulencePercent.toPrecision(3))} %
      </h2>
      <table>
        <thead>
          <tr>${["Attitude", "Cd, expected (band)", "on the area", "drag area, cm² (band)", "drag, N (band)", "to baseline", "rests on"].map((head) => html`<th scope="col">${head}</th>`)}</tr>
        </thead>
        <tbody>
          ${rows.map((row) => html`<tr>${[row.attitude, row.coefficient, row.area, row.dragArea, row.force, row.change, row.applicability].map((cell) => html`<td>${cell}</td>`)}</tr>`)}
        </tbody>
      </table>
      ${index === undefined ? nothing : html`<p><b>Index:</b> ${index.sentence}</p>`}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-puck-report": PuckReport;
  }
}
