import { html, LitElement, nothing } from "lit";
import { customElement, state } from "lit/decorators.js";
import { puckCautions } from "../../../../shared/jobs/puck/playCautions";
import { puckDragFigure } from "../../plots/puckDragFigure";
import { puckMotionFigure } from "../../plots/puckMotionFigure";
import { attitudeRows, indexRows } from "../../puck/dragTexts";
import { figureRows, verdictTexts } from "../../puck/figureRows";
import { puckBench } from "../../puck/puckBench";
import { sameParts, solveParts } from "../../puck/puckChanges";
import { puckReportInputs } from "../../puck/reportInputs";
import { shownPucks } from "../../puck/shownPucks";
import { preferences } from "../../store/preferences";
import { StoreController } from "../../store/storeController";
import { lightPalette } from "../../style/palette";
import { quantityText, unitChoices, unitFor } from "../../units/units";
import { type PlotPicture, picturesDrawn, plotPictures } from "../report/plotPictures";
import { reportStyles } from "../report/report.styles";

/** What the printed page of a puck has besides its drawing. Not to be seen on the screen. */
@customElement("ww-puck-report")
export class PuckReport extends LitElement {
  static override styles = reportStyles;

  private readonly bench = new StoreController(this, puckBench, (value) => value);
  private readonly units = new StoreController(this, preferences, (value) => value.units);
  @state() private pictures: readonly PlotPicture[] = [];

  /** Draws the plots for paper, then opens the browser's print dialog. */
  async print(): Promise<void> {
    this.pictures = await plotPictures(this.figures());
    await this.updateComplete;
    await picturesDrawn(this.renderRoot);
    window.print();
  }

  private condition() {
    const rows = this.bench.value.solved?.candidate.drag ?? [];
    const speeds = [...new Set(rows.map((row) => row.speedMetresPerSecond))];
    const [first] = rows;
    return first === undefined
      ? null
      : { speed: speeds[Math.floor(speeds.length / 2)], turbulencePercent: first.turbulencePercent };
  }

  private figures() {
    const condition = this.condition();
    if (condition === null) return [];
    const pucks = shownPucks(this.bench.value);
    const { turbulencePercent } = condition;
    const speedUnit = unitFor("speed", this.units.value);
    const lengthUnit = unitChoices.length.find(({ key }) => key === "m")!;
    const [motion] = this.bench.value.solved?.inputs.motions ?? [];
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
    const { measured, problem, solved, solveProblem, history } = this.bench.value;
    if (measured === null) return nothing;
    const fault = problem ?? solveProblem;
    const isOld = fault !== null || (solved !== null && !sameParts(solved.inputs, history.present, solveParts));
    const { spec } = measured.inputs.candidate;
    return html`${isOld ? html`<p><b>Stale:</b> not every result belongs to the puck as it is now. ${fault?.message}</p>` : nothing}
      <h2>Figures of ${spec.name} beside ${measured.inputs.baseline.spec.name}</h2>
      ${this.renderFigures()} ${this.renderDrag()}
      <div class="plots">
        ${this.pictures.map(({ title, address, caption }) => html`<div><h2>${title}</h2><img src=${address} alt=${title} /><p>${caption}</p></div>`)}
      </div>
      <h2>Inputs</h2>
      <dl>${puckReportInputs(measured, this.units.value).map(([name, value]) => html`<dt>${name}</dt><dd>${value}</dd>`)}</dl>
      <h2>Cautions</h2>
      <ul>${puckCautions(spec, measured.inputs.userMaterials).map((caution) => html`<li>${caution}</li>`)}</ul>
      <p>Wakewright, printed ${new Date().toLocaleDateString()}.</p>`;
  }

  /** Two columns of figures: candidate, baseline, change, and what the rules say. */
  private renderFigures() {
    const { measured, judged } = this.bench.value;
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
    const { solved } = this.bench.value;
    const condition = this.condition();
    if (solved === null || condition === null) return nothing;
    const { speed, turbulencePercent } = condition;
    const rows = attitudeRows(solved.candidate, solved.baseline, turbulencePercent, speed);
    const [index] = indexRows([solved.candidate]);
    return html`<h2>
        Drag at ${quantityText(speed, "speed", this.units.value)}, turbulence ${Number(turbulencePercent.toPrecision(3))} %
      </h2>
      <table>
        <thead>
          <tr>${["Attitude", "Cd, best (band)", "on the area", "drag area, cm² (band)", "drag, N (band)", "to baseline", "rests on"].map((head) => html`<th scope="col">${head}</th>`)}</tr>
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
