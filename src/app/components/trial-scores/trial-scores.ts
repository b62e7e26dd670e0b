import { html, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { chosenTable } from "../../files/chosenTable";
import { badCells } from "../../trial/scoreErrors";
import { readImport } from "../../trial/scoreImport";
import { planOf, sessionOrder } from "../../trial/trialBlock";
import { type ActivityInputs, cellKey, newTrial, type TrialInputs } from "../../trial/trialInputs";
import { emit } from "../../view/emit";
import { LightElement } from "../../view/lightElement";
import { faultList } from "../fault-list/faultList";
import { moveInGrid } from "./moveInGrid";

/** The scores as a grid in the order of play, typed by keyboard or imported; what is wrong stands beside its cell. Sends `trial-score`, `trial-activity`, `trial-import`, `trial-change`. */
@customElement("ww-trial-scores")
export class TrialScores extends LightElement {
  @property({ attribute: false }) inputs: TrialInputs = newTrial;
  /** Id of the chosen activity; null for the first. */
  @property({ type: Number }) activity: number | null = null;
  /** The table that is being imported. */
  @property({ attribute: false }) importText = "";
  @state() private repeat = 1;
  @state() private fileProblem = "";

  private async chooseFile(event: Event): Promise<void> {
    const chosen = await chosenTable(event);
    if (chosen === null) return;
    this.fileProblem = chosen.ok ? "" : chosen.problem.message;
    if (chosen.ok) emit(this, "trial-import", chosen.value.text);
  }

  protected override render() {
    const inputs = this.inputs;
    const activity = inputs.activities.find(({ id }) => id === this.activity) ?? inputs.activities[0];
    const repeat = Math.min(this.repeat, inputs.repeats);
    const bad = badCells(inputs);
    const typed = Object.values(inputs.cells).filter((cell) => cell.typed !== "").length;
    const { players, pucks, activities, repeats } = inputs;
    return html`<section class="view-section trial-section" aria-labelledby="trial-scores-heading">
      <h2 id="trial-scores-heading">Scores</h2>
      <div class="line" role="group" aria-label="Activity">
        ${activities.map((one) => html`<button type="button" aria-pressed=${one === activity} @click=${() => emit(this, "trial-activity", one.id)}>${one.name}</button>`)}
      </div>
      ${
        repeats > 1
          ? html`<div class="line" role="group" aria-label="Time">${Array.from(
              { length: repeats },
              (_, i) =>
                html`<button type="button" aria-pressed=${repeat === i + 1} @click=${() => {
                  this.repeat = i + 1;
                }}>time ${i + 1}</button>`,
            )}</div>`
          : nothing
      }
      <p role="status">${typed} of ${players.length * pucks.length * activities.length * repeats} scores${bad.size === 0 ? "." : html`; <strong class="error">${bad.size} of them cannot be read and are left out of the ranking.</strong>`}</p>
      ${this.renderGrid(inputs, activity, repeat, bad)}
      <p class="hint">In the order of play. Enter and the arrows up and down go from cell to cell; an empty cell is a missing score.</p>
      ${this.renderImport(inputs)}
    </section>`;
  }

  private renderGrid(inputs: TrialInputs, activity: ActivityInputs, repeat: number, bad: ReadonlyMap<string, string>) {
    const plan = planOf(inputs);
    const place = inputs.activities.indexOf(activity);
    return html`<div class="scroll" role="region" aria-label="Scores at ${activity.name}" tabindex="0"><table class="is-grid" @keydown=${moveInGrid}>
      <thead><tr><th scope="col">player</th>${inputs.pucks.map((_, i) => html`<th scope="col">place ${i + 1}</th>`)}</tr></thead>
      <tbody>${inputs.players.map(
        ({ id, name }, player) =>
          html`<tr><th scope="row">${name}</th>${sessionOrder(inputs, plan, player, place, repeat).map((puck) => {
            const key = cellKey({ activity: activity.id, repeat, player: id, puck: inputs.pucks[puck].id });
            const cell = inputs.cells[key];
            const error = bad.get(key);
            return html`<td><span class="grid-cell"><span class="code">${inputs.pucks[puck].code}</span>
            <input type="text" inputmode="decimal" autocomplete="off" data-cell=${key}
              aria-label="${name}, ${activity.name}, ${inputs.pucks[puck].code}" title=${cell?.comment ?? nothing}
              .value=${cell?.typed ?? ""} aria-invalid=${error !== undefined}
              @input=${(event: Event) => emit(this, "trial-score", { key, typed: (event.target as HTMLInputElement).value })} /></span>
            ${error === undefined ? nothing : html`<span class="error">${error}</span>`}</td>`;
          })}</tr>`,
      )}</tbody></table></div>`;
  }

  private renderImport(inputs: TrialInputs) {
    const text = this.importText;
    const reading = text.trim() === "" ? null : readImport(text, inputs);
    const count = Object.keys(reading?.cells ?? {}).length;
    return html`<h3>Import a table</h3>
      <div class="line">
        <label class="file"><input class="unseen" type="file" accept=".csv,.txt,.tsv,text/csv" @change=${this.chooseFile} /><span>Choose a CSV file ...</span></label>
      </div>
      <label>Or paste its rows, the first one naming the columns
        <textarea id="trial-table" rows="4" spellcheck="false" .value=${text} @input=${(event: Event) => {
          emit(this, "trial-import", (event.target as HTMLTextAreaElement).value);
        }}></textarea>
      </label>
      <p class="hint">A row per score: player, activity, code, score; if wanted repeat, position, comment. Or a row per session: player, activity, and a column for every code.</p>
      ${this.fileProblem === "" ? nothing : html`<p class="error" role="alert">${this.fileProblem}</p>`}
      ${
        reading === null
          ? nothing
          : html`<div role="status" class="reading">
            ${faultList(reading.problems)}
            ${reading.cells === null ? nothing : html`<p>${count} ${count === 1 ? "score has" : "scores have"} a place${reading.replaced === 0 ? "." : `; ${reading.replaced} would replace another.`}</p>`}
          </div>
          <div class="line">
            <button type="button" class="is-main" ?disabled=${count === 0} @click=${() => {
              emit(this, "trial-change", { cells: { ...inputs.cells, ...reading.cells } });
              if (reading.problems.length === 0) emit(this, "trial-import", "");
            }}>Take these scores</button>
            <button type="button" @click=${() => {
              emit(this, "trial-import", "");
            }}>Clear</button>
          </div>`
      }`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-trial-scores": TrialScores;
  }
}
