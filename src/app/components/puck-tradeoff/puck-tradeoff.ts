import { demoPuck } from "../../puck/demoPuck";
import { nothingKnown, type PuckAnswers } from "../../puck/puckAnswers";
import type { PuckInputs } from "../../puck/puckInputs";
import type { UnitPreferences } from "../../units/units";
import { emit } from "../../view/emit";
import "../../puck/puckEvents";
import { html, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { Evaluation, Goal } from "../../../../shared/jobs/tradeoff/designSpace";
import type { PuckGoalKey } from "../../../../shared/jobs/tradeoff/puckEvaluation";
import { frontOf, runCounts } from "../../../../shared/jobs/tradeoff/tradeoffRun";
import { puckFrontFigure } from "../../plots/puckFrontFigure";
import { dimensionText, goalText } from "../../puck/goalTexts";
import { noTradeoff, type PuckSearchState, type TradeoffBench } from "../../puck/tradeoffState";
import { lightPalette, type Palette } from "../../style/palette";
import "../info-mark/info-mark";
import "../plot/plot";
import "../puck-member/puck-member";
import { LightElement } from "../../view/lightElement";
import "../puck-search-inputs/puck-search-inputs";

/** Searches the free dimensions for pucks that none beats. Sends `puck-search`. In the light DOM, because it holds a plot. */
@customElement("ww-puck-tradeoff")
export class PuckTradeoff extends LightElement {
  @property({ attribute: false }) inputs: PuckInputs = demoPuck;
  @property({ attribute: false }) run: TradeoffBench = noTradeoff;
  /** What is known of the pucks. */
  @property({ attribute: false }) known: PuckAnswers = nothingKnown;
  @property({ attribute: false }) units: UnitPreferences = {};
  @property({ attribute: false }) palette: Palette = lightPalette;
  @state() private chosen: Evaluation | null = null;

  /** A search that is done shows its expected member by the first goal at once, with the verdict against the baseline. */
  protected override willUpdate(): void {
    const { status, search } = this.run;
    if (status !== "done" || search === null || this.chosen !== null) return;
    const front = frontOf(search.run);
    const [goal] = search.inputs.tradeoff.goals;
    this.chosen = front.at(goal.sense === "least" ? 0 : -1) ?? null;
  }

  private start(): void {
    this.chosen = null;
    emit(this, "puck-search", "start");
  }

  protected override render() {
    const { run } = this;
    const active = run.status === "running" || run.status === "paused";
    return html`<section class="view-section puck-section" aria-labelledby="puck-tradeoff-heading">
      <div class="head"><h2 id="puck-tradeoff-heading">Trade-off</h2><span class="marks"><ww-info-mark topic="paretoSearch"></ww-info-mark></span></div>
      <p class="hint">Varies the free dimensions inside the rules, sizes the core of every puck for the wanted mass, and keeps those that no other beats in every goal.</p>
      <ww-puck-search-inputs .inputs=${this.inputs} .units=${this.units}></ww-puck-search-inputs>
      ${run.problem ? html`<p class="error" role="alert">${run.problem}</p>` : nothing}
      <div class="line">
        <button type="button" class="is-main" ?disabled=${active || this.known.problem !== null} @click=${this.start}>Start the search</button>
        ${run.status === "running" ? html`<button type="button" @click=${() => emit(this, "puck-search", "pause")}>Pause</button>` : nothing}
        ${run.status === "paused" ? html`<button type="button" @click=${() => emit(this, "puck-search", "resume")}>Go on</button>` : nothing}
        ${active ? html`<button type="button" @click=${() => emit(this, "puck-search", "cancel")}>Cancel the search</button>` : nothing}
      </div>
      ${run.search === null ? nothing : this.renderRun(run.search)}
    </section>`;
  }

  private renderRun(state: PuckSearchState) {
    const { status, workers } = this.run;
    const { run, seconds, refused, reason } = state;
    const { done, total } = runCounts(run);
    const left = done > 0 ? `about ${Math.ceil((seconds / done) * (total - done))} s left` : "starting";
    const words = {
      idle: "",
      running: left,
      paused: "paused",
      done: `done in ${seconds.toFixed(0)} s`,
      cancelled: "cancelled; the pucks so far are kept",
    }[status];
    const at = run.kind === "paretoSearch" ? `, generation ${run.search.generation}` : "";
    const pool = workers === 0 ? "" : ` on ${workers} ${workers === 1 ? "worker" : "workers"}`;
    return html`<div class="line">
        <progress aria-label="Progress of the search" max=${total} .value=${done}></progress>
        <span role="status">${done} of ${total} pucks${pool}${at}, ${words}.</span>
      </div>
      ${refused > 0 ? html`<p class="hint">${refused} ${refused === 1 ? "puck was" : "pucks were"} outside the rules or could not be made; the last one because: ${reason}.</p>` : nothing}
      ${this.renderFront(state)}`;
  }

  private renderFront(state: PuckSearchState) {
    const { inputs, run, allowed } = state;
    if (allowed.length === 0) return nothing;
    const { goals } = (run.kind === "points" ? run.points : run.search.offspring).space;
    const front = frontOf(run);
    const inFront = new Set(front.map((one) => one.variables.join(" ")));
    const beaten = allowed.filter((one) => !inFront.has(one.variables.join(" ")));
    const variableTexts = inputs.tradeoff.variables.map(({ key }) => dimensionText(key));
    const goalTexts = goals.map(({ key }) => goalText(key as PuckGoalKey));
    const shown = (one: Evaluation) => ({
      variables: one.variables.map((value, i) => value * variableTexts[i].factor),
      goals: one.goals.map((value, i) => value * goalTexts[i].factor),
    });
    const chosen = front.findIndex((one) => one.variables.join(" ") === this.chosen?.variables.join(" "));
    const figure = puckFrontFigure(
      {
        variables: variableTexts,
        goals: goalTexts,
        front: front.map(shown),
        beaten: beaten.map(shown),
        baseline: this.baselineGoals(state, goals),
        chosen: chosen < 0 ? null : chosen,
      },
      this.palette,
    );
    const number = (value: number) => String(Number(value.toPrecision(4)));
    return html`<ww-plot id="plot-puck-front" .figure=${figure}></ww-plot>
      ${
        front.length === 0
          ? html`<p class="hint">The front is told after the first generation.</p>`
          : html`<div class="scroll front" tabindex="0" role="region" aria-label="Members of the front">
            <table class="results">
              <thead><tr>
                <th scope="col">Front</th>
                ${[...variableTexts, ...goalTexts].map(({ label, unit }) => html`<th scope="col">${label}, ${unit}</th>`)}
                <th scope="col"><span class="unseen">What to do with it</span></th>
              </tr></thead>
              <tbody>
                ${front.map((one, i) => {
                  const { variables: own, goals: wanted } = shown(one);
                  return html`<tr>
                    <th scope="row">${i + 1}</th>
                    ${[...own, ...wanted].map((value) => html`<td>${number(value)}</td>`)}
                    <td><button type="button" class="is-quiet" aria-pressed=${one === this.chosen} @click=${() => {
                      this.chosen = one;
                    }}>Look at<span class="unseen"> number ${i + 1}</span></button></td>
                  </tr>`;
                })}
              </tbody>
            </table>
          </div>`
      }
      ${this.chosen === null || chosen < 0 ? nothing : html`<ww-puck-member .answer=${this.known.member} .search=${state.theCase} .inputs=${inputs} .member=${this.chosen} .number=${chosen + 1}></ww-puck-member>`}`;
  }

  /** The baseline as a point of the plot; null where one of the goals is not determined for it. */
  private baselineGoals({ inputs }: PuckSearchState, goals: readonly Goal[]) {
    const figures = this.known.measured?.baseline;
    if (figures === undefined) return null;
    const values: number[] = [];
    for (const { key } of goals as readonly { readonly key: PuckGoalKey }[]) {
      const value =
        key === "dragIndex"
          ? 1
          : key === "massErrorKilograms"
            ? Math.abs(figures.massKilograms - inputs.massTarget.massKilograms)
            : figures[key];
      if (value === null) return null;
      values.push(value * goalText(key).factor);
    }
    return { name: inputs.baseline.spec.name, goals: values };
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-puck-tradeoff": PuckTradeoff;
  }
}
