import { demoPuck } from "../../puck/demoPuck";
import type { UnitPreferences } from "../../units/units";
import { emit } from "../../view/emit";
import "../../puck/puckEvents";
import { html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import { type DimensionKey, dimensionKeys, dimensionOf } from "../../../../shared/jobs/puck/body/puckDimension";
import type { PuckGoal, PuckGoalKey } from "../../../../shared/jobs/tradeoff/puckEvaluation";
import { dimensionText, goalKeys, goalText } from "../../puck/goalTexts";
import type { FreeDimension, PuckInputs, SearchMethod, TradeoffInputs } from "../../puck/puckInputs";
import { controlStyles } from "../../style/sharedStyles";
import type { QuantityChange } from "../quantity-field/quantity-field";
import "../quantity-field/quantity-field";
import { puckSearchInputsStyles } from "./puck-search-inputs.styles";

const mostGoals = 4;

const methodTexts: Readonly<Record<SearchMethod, string>> = {
  paretoSearch: "search for the front",
  latinHypercube: "Latin hypercube",
  sweep: "sweep of all combinations",
};

/** Free dimensions with their ranges, goals, and how long the search looks. Sends `puck-change`. */
@customElement("ww-puck-search-inputs")
export class PuckSearchInputs extends LitElement {
  static override styles = [controlStyles, puckSearchInputsStyles];

  @property({ attribute: false }) inputs: PuckInputs = demoPuck;
  @property({ attribute: false }) units: UnitPreferences = {};

  private set(change: Partial<TradeoffInputs>): void {
    emit(this, "puck-change", { tradeoff: { ...this.inputs.tradeoff, ...change } });
  }

  private setVariable(key: DimensionKey, change: Partial<FreeDimension>): void {
    const { variables } = this.inputs.tradeoff;
    this.set({ variables: variables.map((one) => (one.key === key ? { ...one, ...change } : one)) });
  }

  private setGoal(index: number, change: Partial<PuckGoal>): void {
    const { goals } = this.inputs.tradeoff;
    this.set({ goals: goals.map((one, i) => (i === index ? { ...one, ...change } : one)) });
  }

  /** A range about the present size, inside the rules' own where they have one. */
  private free(key: DimensionKey): void {
    const { tradeoff, candidate, rules } = this.inputs;
    const size = dimensionOf(candidate.spec, key) ?? 0;
    const ranges: Readonly<Record<string, { readonly from?: number; readonly to?: number } | undefined>> =
      rules?.ranges ?? {};
    const range = ranges[key];
    const own = { key, lowest: range?.from ?? 0.8 * size, highest: range?.to ?? 1.2 * size };
    this.set({ variables: [...tradeoff.variables, own] });
  }

  protected override render() {
    const { tradeoff, candidate } = this.inputs;
    const { variables, goals } = tradeoff;
    const others = dimensionKeys.filter(
      (key) => dimensionOf(candidate.spec, key) !== null && !variables.some((one) => one.key === key),
    );
    return html`<div class="inputs">
      <fieldset>
        <legend>Free dimensions</legend>
        ${variables.map((one) => this.renderVariable(one))}
        ${
          others.length === 0
            ? nothing
            : html`<label class="line">Free another <select @change=${(event: Event) => {
                const select = event.target as HTMLSelectElement;
                if (select.value !== "") this.free(select.value as DimensionKey);
                select.value = "";
              }}>
                <option value="">choose ...</option>
                ${others.map((key) => html`<option value=${key}>${dimensionText(key).label}</option>`)}
              </select></label>`
        }
      </fieldset>
      <fieldset>
        <legend>Goals</legend>
        ${goals.map((goal, i) => this.renderGoal(goal, i))}
        ${
          goals.length >= mostGoals
            ? nothing
            : html`<label class="line">Another goal <select @change=${(event: Event) => {
                const select = event.target as HTMLSelectElement;
                if (select.value !== "")
                  this.set({ goals: [...goals, { key: select.value as PuckGoalKey, sense: "least" }] });
                select.value = "";
              }}>
                <option value="">choose ...</option>
                ${goalKeys.filter((key) => !goals.some((one) => one.key === key)).map((key) => html`<option value=${key}>${goalText(key).label}</option>`)}
              </select></label>`
        }
      </fieldset>
      <fieldset>
        <legend>How far</legend>
        <label class="line">Method <select @change=${(event: Event) => this.set({ method: (event.target as HTMLSelectElement).value as SearchMethod })}>
          ${Object.entries(methodTexts).map(([key, text]) => html`<option value=${key} ?selected=${key === tradeoff.method}>${text}</option>`)}
        </select></label>
        ${tradeoff.method === "latinHypercube" ? this.renderWhole("Pucks", tradeoff.points, 1, 20_000, (value) => this.set({ points: Math.round(value) })) : nothing}
        ${tradeoff.method === "sweep" ? this.renderWhole("Values of each dimension", tradeoff.levels, 1, 100, (value) => this.set({ levels: Math.round(value) })) : nothing}
        ${tradeoff.method !== "paretoSearch" ? nothing : this.renderWhole("Pucks in a generation", tradeoff.populationSize, 4, 200, (value) => this.set({ populationSize: 2 * Math.round(value / 2) }))}
        ${tradeoff.method !== "paretoSearch" ? nothing : this.renderWhole("Generations", tradeoff.generations, 1, 500, (value) => this.set({ generations: Math.round(value) }))}
        ${tradeoff.method === "sweep" ? nothing : this.renderWhole("Seed", tradeoff.seed, -1e9, 1e9, (value) => this.set({ seed: Math.round(value) }))}
        <ww-quantity-field .units=${this.units} label="Made wrong by" kind="length" .value=${tradeoff.madeOff} .lowest=${0} above-lowest .highest=${0.1} @quantity-change=${(
          event: QuantityChange,
        ) => this.set({ madeOff: event.detail.value })}></ww-quantity-field>
      </fieldset>
    </div>`;
  }

  private renderVariable({ key, lowest, highest }: FreeDimension) {
    const { label } = dimensionText(key);
    const { candidate, tradeoff } = this.inputs;
    const missing = dimensionOf(candidate.spec, key) === null ? `This puck has no ${label} to vary.` : "";
    const problem = missing || (lowest < highest ? "" : `The range of the ${label} must begin below its end.`);
    return html`<div class="variable" role="group" aria-label=${label}>
      <div class="line"><b>${label}</b>
        <button type="button" class="is-quiet" @click=${() => this.set({ variables: tradeoff.variables.filter((one) => one.key !== key) })}>Keep it fixed<span class="unseen">: ${label}</span></button>
      </div>
      <ww-quantity-field .units=${this.units} label="from" kind="length" .value=${lowest} .lowest=${0} .highest=${10} @quantity-change=${(event: QuantityChange) => this.setVariable(key, { lowest: event.detail.value })}></ww-quantity-field>
      <ww-quantity-field .units=${this.units} label="to" kind="length" .value=${highest} .lowest=${0} .highest=${10} .problem=${problem} @quantity-change=${(
        event: QuantityChange,
      ) => this.setVariable(key, { highest: event.detail.value })}></ww-quantity-field>
    </div>`;
  }

  private renderGoal({ key, sense }: PuckGoal, index: number) {
    const { goals } = this.inputs.tradeoff;
    const { label } = goalText(key);
    return html`<div class="line">
      <select aria-label="Sense of the goal ${label}" @change=${(event: Event) => this.setGoal(index, { sense: (event.target as HTMLSelectElement).value as PuckGoal["sense"] })}>
        <option value="least" ?selected=${sense === "least"}>least</option>
        <option value="most" ?selected=${sense === "most"}>most</option>
      </select>
      <span>${label}</span>
      ${goals.length > 1 ? html`<button type="button" class="is-quiet" @click=${() => this.set({ goals: goals.filter((_, i) => i !== index) })}>Remove<span class="unseen"> the goal ${label}</span></button>` : nothing}
    </div>`;
  }

  private renderWhole(label: string, value: number, lowest: number, highest: number, set: (value: number) => void) {
    return html`<ww-quantity-field .units=${this.units} label=${label} .value=${value} .lowest=${lowest} .highest=${highest} @quantity-change=${(event: QuantityChange) => set(event.detail.value)}></ww-quantity-field>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-puck-search-inputs": PuckSearchInputs;
  }
}
