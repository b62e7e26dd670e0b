import { html, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { PuckDragRow } from "../../../../shared/jobs/puck/puckResult";
import { attitudeTexts, type PuckDragQuantity, puckDragFigure, puckDragQuantities } from "../../plots/puckDragFigure";
import { demoPuck } from "../../puck/demoPuck";
import { attitudeRows, indexRows } from "../../puck/dragTexts";
import { nothingKnown, type PuckAnswers } from "../../puck/puckAnswers";
import { sameParts, solveParts } from "../../puck/puckChanges";
import type { PuckInputs } from "../../puck/puckInputs";
import { shownPucks } from "../../puck/shownPucks";
import { lightPalette, type Palette } from "../../style/palette";
import { quantityText, type UnitPreferences, unitFor } from "../../units/units";
import "../info-mark/info-mark";
import { LightElement } from "../../view/lightElement";
import "../plot/plot";

/** Drag in every attitude with its band and area, the weighted index, and drag over speed. In the light DOM for its plot. */
@customElement("ww-puck-drag")
export class PuckDragElement extends LightElement {
  @property({ attribute: false }) inputs: PuckInputs = demoPuck;
  /** What is known of the pucks. */
  @property({ attribute: false }) known: PuckAnswers = nothingKnown;
  @property({ attribute: false }) units: UnitPreferences = {};
  @property({ attribute: false }) palette: Palette = lightPalette;
  @state() private speed: number | null = null;
  @state() private turbulence: number | null = null;
  @state() private orientation: PuckDragRow["orientation"] = "upright";
  @state() private quantity: PuckDragQuantity = "area";

  protected override render() {
    const { solved, solveProblem, solving, problem } = this.known;
    const isStale = solved !== null && !sameParts(solved.inputs, this.inputs, solveParts);
    const fault = problem ?? solveProblem;
    return html`<section class="view-section puck-section" aria-labelledby="puck-drag-heading">
      <div class="head"><h2 id="puck-drag-heading">Drag</h2><span class="marks"><ww-info-mark topic="endRelief"></ww-info-mark><ww-info-mark topic="faceOn"></ww-info-mark></span></div>
      <p class="state" role="status">
        ${
          solved === null
            ? fault
              ? html`<b>No result:</b> ${fault.message}`
              : "Solving plan and profile sections ..."
            : isStale
              ? fault
                ? html`<b>Stale:</b> drag and motion belong to the last puck that could be solved. ${fault.message}`
                : "Solving the changed puck ..."
              : solving
                ? "Solving the pinned pucks ..."
                : nothing
        }
      </p>
      ${solved === null ? nothing : html`<div class="body ${isStale && fault ? "is-stale" : ""}">${this.renderResults()}</div>`}
    </section>`;
  }

  private renderResults() {
    const { solved } = this.known;
    if (solved === null) return nothing;
    const { candidate, baseline } = solved;
    const unique = (values: readonly number[]) => [...new Set(values)];
    const speeds = unique(candidate.drag.map((row) => row.speedMetresPerSecond));
    const turbulences = unique(candidate.drag.map((row) => row.turbulencePercent));
    const speed = speeds.find((one) => one === this.speed) ?? speeds[Math.floor(speeds.length / 2)];
    const turbulence = turbulences.find((one) => one === this.turbulence) ?? turbulences[0];
    const units = this.units;
    return html`<div class="choices">
        <label>At the speed <select @change=${(event: Event) => {
          this.speed = Number((event.target as HTMLSelectElement).value);
        }}>
          ${speeds.map((one) => html`<option value=${one} ?selected=${one === speed}>${quantityText(one, "speed", units)}</option>`)}
        </select></label>
        <label>Turbulence <select @change=${(event: Event) => {
          this.turbulence = Number((event.target as HTMLSelectElement).value);
        }}>
          ${turbulences.map((one) => html`<option value=${one} ?selected=${one === turbulence}>${Number(one.toPrecision(4))} %</option>`)}
        </select></label>
      </div>
      <div class="scroll" tabindex="0" role="region" aria-label="Drag of ${candidate.name} in every attitude">
        <table class="results">
          <thead>
            <tr>
              <th scope="col">Attitude</th>
              <th scope="col">Cd, expected (band)</th>
              <th scope="col">on the area</th>
              <th scope="col">drag area, cm²</th>
              <th scope="col">drag, N</th>
              <th scope="col">to baseline</th>
              <th scope="col">rests on</th>
            </tr>
          </thead>
          <tbody>
            ${attitudeRows(candidate, baseline, turbulence, speed).map(
              (row) => html`<tr data-orientation=${row.orientation}>
                <th scope="row">${row.attitude}</th>
                <td>${row.coefficient}</td>
                <td>${row.area}</td>
                <td>${row.dragArea}</td>
                <td>${row.force}</td>
                <td>${row.change}</td>
                <td><small>${row.applicability}</small></td>
              </tr>`,
            )}
          </tbody>
        </table>
      </div>
      <ul class="notes">${candidate.notes.map((note) => html`<li>${note}</li>`)}</ul>
      ${this.renderIndex()}
      ${this.renderPlot(turbulence)}`;
  }

  private renderIndex() {
    const rows = indexRows(shownPucks(this.known));
    const [first] = rows;
    if (first === undefined) return nothing;
    return html`<h3>Weighted index against the baseline</h3>
      <p class="verdict" data-verdict=${first.verdict}>${first.sentence}</p>
      <div class="scroll" tabindex="0" role="region" aria-label="Weighted drag index">
        <table class="results">
          <thead>
            <tr>
              <th scope="col">Puck</th>
              <th scope="col">expected</th>
              <th scope="col">band, errors independent</th>
              <th scope="col">band, errors shared</th>
              <th scope="col">verdict</th>
            </tr>
          </thead>
          <tbody>
            ${rows.map(
              (row) => html`<tr>
                <th scope="row">${row.name}</th>
                <td>${row.expected}</td>
                <td>${row.independent}</td>
                <td>${row.shared}</td>
                <td><small>${row.sentence}</small></td>
              </tr>`,
            )}
          </tbody>
        </table>
      </div>
      <p class="hint">Mean of the drag ratios over shares of play, speeds and turbulences; below 0 is less drag than the baseline.</p>`;
  }

  private renderPlot(turbulencePercent: number) {
    const pucks = shownPucks(this.known);
    const figure = puckDragFigure(
      {
        pucks,
        orientation: this.orientation,
        turbulencePercent,
        quantity: this.quantity,
        speedUnit: unitFor("speed", this.units),
      },
      this.palette,
    );
    return html`<div class="choices">
        <label>Plot the attitude <select @change=${(event: Event) => {
          this.orientation = (event.target as HTMLSelectElement).value as PuckDragRow["orientation"];
        }}>
          ${Object.entries(attitudeTexts)
            .filter(([key]) => pucks.some(({ drag }) => drag.some(({ orientation }) => orientation === key)))
            .map(([key, label]) => html`<option value=${key} ?selected=${key === this.orientation}>${label}</option>`)}
        </select></label>
        <label>as <select @change=${(event: Event) => {
          this.quantity = (event.target as HTMLSelectElement).value as PuckDragQuantity;
        }}>
          ${Object.entries(puckDragQuantities).map(([key, { label }]) => html`<option value=${key} ?selected=${key === this.quantity}>${label}</option>`)}
        </select></label>
      </div>
      <ww-plot id="plot-puck-drag" .figure=${figure}></ww-plot>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-puck-drag": PuckDragElement;
  }
}
