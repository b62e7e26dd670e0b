import { css, html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import { choiceCautions } from "../../../../shared/jobs/choice/choiceCautions";
import { type CriterionKey, criterionCatalogue } from "../../../../shared/jobs/choice/criteria";
import { choiceFigure, costFigure } from "../../plots/chooseFigure";
import { offeredCriteria, swingOf, withCriterion, withSwing, withSwings } from "../../puck/chooseInputs";
import {
  candidateTable,
  costShareTable,
  decidingTable,
  dominatedWords,
  durabilityTables,
  type ShownTable,
  weightTable,
} from "../../puck/chooseTexts";
import { demoPuck } from "../../puck/demoPuck";
import { nothingKnown, type PuckAnswers } from "../../puck/puckAnswers";
import "../../puck/puckEvents";
import type { PuckInputs } from "../../puck/puckInputs";
import { lightPalette, type Palette } from "../../style/palette";
import { panelStyles } from "../../style/panelStyles";
import { puckFormStyles } from "../../style/puckFormStyles";
import { controlStyles } from "../../style/sharedStyles";
import type { UnitPreferences } from "../../units/units";
import { emit } from "../../view/emit";
import { cancelledCode } from "../../view/taskState";
import { problemList } from "../fault-list/faultList";
import "../plot/plot";
import "../quantity-field/quantity-field";
import type { QuantityChange } from "../quantity-field/quantity-field";

/**
 * The choice between the pucks that are shown: criteria and their swings, who is first how often, under which weights,
 * and what decides. Sends `puck-change` and `puck-choose`.
 */
@customElement("ww-puck-choose")
export class PuckChoose extends LitElement {
  static override styles = [
    controlStyles,
    panelStyles,
    puckFormStyles,
    css`
      .wide {
        overflow-x: auto;
      }
      table {
        border-collapse: collapse;
        font-variant-numeric: tabular-nums;
      }
      th,
      td {
        padding: 2px 10px 2px 0;
        text-align: left;
        vertical-align: top;
      }
      .criteria {
        display: flex;
        flex-wrap: wrap;
        gap: 4px 14px;
      }
      .swing {
        display: grid;
        grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
        gap: 0 12px;
      }
    `,
  ];

  @property({ attribute: false }) inputs: PuckInputs = demoPuck;
  /** What is known of the pucks. */
  @property({ attribute: false }) known: PuckAnswers = nothingKnown;
  @property({ attribute: false }) units: UnitPreferences = {};
  @property({ attribute: false }) palette: Palette = lightPalette;

  protected override render() {
    const { choose } = this.inputs;
    return html`<section aria-labelledby="heading">
      <h2 id="heading">Choose</h2>
      <div class="stack">
        ${choiceCautions.map((caution) => html`<p class="caution">${caution}</p>`)}
        ${this.renderAnswer()}
        <fieldset>
          <legend>What counts</legend>
          <div class="criteria">
            ${offeredCriteria(choose).map((key) => this.renderCriterion(key))}
          </div>
          ${this.renderEvidence()}
        </fieldset>
        ${this.renderSwings()}
        ${this.renderButtons()}
        ${this.renderResult()}
      </div>
    </section>`;
  }

  private renderCriterion(key: CriterionKey) {
    const { choose } = this.inputs;
    const isWanted = choose.choice?.criteria.some(({ criterion }) => criterion === key) ?? false;
    return html`<label><input type="checkbox" .checked=${isWanted} @change=${(event: Event) =>
      emit(this, "puck-change", {
        choose: withCriterion(choose, key, (event.target as HTMLInputElement).checked),
      })} /> ${criterionCatalogue[key].label}</label>`;
  }

  private renderEvidence() {
    const { trial, durability, cost } = this.inputs.choose;
    const missing = [
      ...(trial?.scores === undefined ? ["liking (trial with scores)"] : []),
      ...(cost === null ? ["cost"] : []),
      ...(durability === null ? ["durability"] : []),
    ];
    return html`${cost === null ? nothing : html`<p class="hint">Prices in ${cost.currency}: ${cost.source}.</p>`}
      ${
        missing.length === 0
          ? nothing
          : html`<p class="hint">The case holds nothing on ${missing.join(", ")}: give your own numbers in the case file, as its schema describes.</p>
              <button type="button" @click=${() => emit(this, "puck-choose", "demo")}>Open the invented example</button>`
      }`;
  }

  private renderSwings() {
    const { choose } = this.inputs;
    const criteria = choose.choice?.criteria ?? [];
    if (criteria.length === 0) return nothing;
    const areStated = criteria.some(({ swing }) => swing !== undefined);
    return html`<fieldset>
      <legend>Weights by swings</legend>
      <label><input type="checkbox" .checked=${areStated} @change=${(event: Event) =>
        emit(this, "puck-change", {
          choose: withSwings(choose, (event.target as HTMLInputElement).checked),
        })} /> Say how much each swing from worst to best is worth, 100 for the greatest</label>
      ${
        areStated
          ? criteria.map((criterion, i) => {
              const label = criterion.name ?? criterionCatalogue[criterion.criterion].label;
              const { from, to } = swingOf(criterion);
              const field = (end: "from" | "to", value: number) =>
                html`<ww-quantity-field .units=${this.units} label=${`${label}, ${end}`} .value=${value} .lowest=${0} .highest=${100}
                  @quantity-change=${(event: QuantityChange) =>
                    emit(this, "puck-change", {
                      choose: withSwing(choose, i, end, event.detail.value),
                    })}></ww-quantity-field>`;
              return html`<div class="swing" data-criterion=${criterion.criterion}>${field("from", from)}${field("to", to)}</div>`;
            })
          : html`<p class="hint">Nothing is said of weights: all of them count alike.</p>`
      }
    </fieldset>`;
  }

  private renderButtons() {
    const { status, step, problems } = this.known.choosing;
    if (this.inputs.choose.choice === null) return html`<p class="hint">Tick what counts, then choose.</p>`;
    if (status === "pending") {
      return html`<div class="buttons"><progress max=${step?.total ?? 1} .value=${step?.done ?? 0} aria-label="Choice"></progress>
        <button type="button" @click=${() => emit(this, "puck-choose", "cancel")}>Cancel</button>
        <span class="hint">${step?.label ?? ""}</span></div>`;
    }
    const isCancelled = problems[0]?.code === cancelledCode;
    return html`<div class="buttons"><button type="button" class="is-main" ?disabled=${this.known.solving} @click=${() => emit(this, "puck-choose", "start")}>Choose</button></div>
      ${status !== "error" ? nothing : isCancelled ? html`<p class="hint" role="status">${problems[0].message}</p>` : problemList(problems)}`;
  }

  /** The answer first. */
  private renderAnswer() {
    const { last } = this.known.choosing;
    const choice = last?.result.choice ?? null;
    if (choice === null) return nothing;
    const isStale = last?.inputs !== this.inputs;
    return html`<p class="overall" role="status">${choice.sentence} ${choice.decides?.sentence ?? ""}${isStale ? html` <em>The inputs have changed since.</em>` : nothing}</p>`;
  }

  private renderResult() {
    const { last } = this.known.choosing;
    if (last === null) return nothing;
    const { choice, cost, durability } = last.result;
    const isStale = last.inputs !== this.inputs;
    const deciding = choice === null ? null : decidingTable(choice);
    return html`
      ${
        choice === null || choice.problem !== null
          ? nothing
          : html`<ww-plot id="plot-choice" ?stale=${isStale} .figure=${choiceFigure(choice, this.palette)}></ww-plot>
            ${[candidateTable(choice), weightTable(choice), ...(deciding === null ? [] : [deciding])].map(tableOf)}
            ${dominatedWords(choice).map((words) => html`<p>${words}</p>`)}`
      }
      ${
        cost === null
          ? nothing
          : html`${cost.cautions.map((caution) => html`<p class="caution">${caution}</p>`)}
            <ww-plot id="plot-cost" ?stale=${isStale} .figure=${costFigure(cost, this.palette)}></ww-plot>${tableOf(costShareTable(cost))}`
      }
      ${
        durability === null
          ? nothing
          : html`${durability.cautions.map((caution) => html`<p class="caution">${caution}</p>`)}
            ${durabilityTables(durability).map(tableOf)}`
      }`;
  }
}

function tableOf({ title, columns, rows }: ShownTable) {
  return html`<div class="wide"><table>
    <caption>${title}</caption>
    <thead><tr>${columns.map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>
    <tbody>${rows.map(([head, ...cells]) => html`<tr><th scope="row">${head}</th>${cells.map((cell) => html`<td>${cell}</td>`)}</tr>`)}</tbody>
  </table></div>`;
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-puck-choose": PuckChoose;
  }
}
