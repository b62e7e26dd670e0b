import { demoPuck } from "../../puck/demoPuck";
import { nothingKnown, type PuckAnswers } from "../../puck/puckAnswers";
import type { UnitPreferences } from "../../units/units";
import { emit } from "../../view/emit";
import { cancelledCode } from "../../view/taskState";
import { problemList } from "../fault-list/faultList";
import "../../puck/puckEvents";
import { html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import {
  type DimensionKey,
  dimensionKeys,
  dimensionOf,
  dimensionTable,
} from "../../../../shared/jobs/puck/body/puckDimension";
import { judgementNotice } from "../../../../shared/jobs/puck/rules/judgePuck";
import type { MadeSizes } from "../../../../shared/jobs/puck/rules/madeShare";
import { readRuleSet } from "../../../../shared/jobs/puck/rules/ruleSet";
import type { Problem } from "../../../../shared/result";
import { demoRulesName, loadDemoRules } from "../../puck/demoRules";
import { verdictTexts } from "../../puck/figureRows";
import { judgeParts, sameParts } from "../../puck/puckChanges";
import type { PuckInputs } from "../../puck/puckInputs";
import { fieldsetStyles, panelStyles } from "../../style/panelStyles";
import { controlStyles } from "../../style/sharedStyles";
import type { QuantityChange } from "../quantity-field/quantity-field";
import "../info-mark/info-mark";
import "../puck-sizing/puck-sizing";
import "../quantity-field/quantity-field";
import { puckFormStyles } from "../../style/puckFormStyles";

/** Rules, making tolerances, what they say of the candidate, and the core for a wanted mass. Sends `puck-change` and `puck-job`. */
@customElement("ww-puck-rules")
export class PuckRules extends LitElement {
  static override styles = [controlStyles, panelStyles, fieldsetStyles, puckFormStyles];

  @property({ attribute: false }) inputs: PuckInputs = demoPuck;
  /** What is known of the pucks. */
  @property({ attribute: false }) known: PuckAnswers = nothingKnown;
  @property({ attribute: false }) units: UnitPreferences = {};
  @state() private problems: readonly Problem[] = [];

  private read(text: string, fileName: string): void {
    const reading = readRuleSet(text, fileName);
    this.problems = reading.ok ? [] : reading.problems;
    if (reading.ok) emit(this, "puck-change", { rules: reading.value });
  }

  private async openFile(event: Event): Promise<void> {
    const input = event.target as HTMLInputElement;
    const file = input.files?.[0];
    input.value = "";
    if (file === undefined) return;
    if (file.size > 400_000) {
      this.problems = [
        { code: "size", message: `${file.name} has ${file.size} bytes; a rules file must have at most 400000.` },
      ];
      return;
    }
    this.read(await file.text(), file.name);
  }

  protected override render() {
    const { rules } = this.inputs;
    return html`<section aria-labelledby="heading">
      <div class="heading"><h2 id="heading">Rules and making</h2><ww-info-mark topic="tolerances"></ww-info-mark></div>
      <div class="stack">
        <p class="hint">
          ${rules === null ? "No rules are open." : html`<b>${rules.name}</b>, ${rules.date}${rules.invented ? "; invented, no real body's rules" : ""}. ${rules.note ?? ""}`}
        </p>
        <div class="buttons">
          <button type="button" @click=${async () => this.read(await loadDemoRules(), demoRulesName)}>Harbour League rules</button>
          <label class="file">
            <input class="unseen" type="file" accept=".json,application/json" @change=${this.openFile} />
            <span class="button">Open a rules file ...</span>
          </label>
          ${rules === null ? nothing : html`<button type="button" class="is-quiet" @click=${() => emit(this, "puck-change", { rules: null })}>Close the rules</button>`}
        </div>
        ${problemList(this.problems)}
        ${this.renderVerdict()}
        ${this.renderTolerances()}
        ${rules === null ? nothing : this.renderCount()}
        <ww-puck-sizing .inputs=${this.inputs} .sizing=${this.known.sizing} .units=${this.units}></ww-puck-sizing>
      </div>
    </section>`;
  }

  private renderVerdict() {
    const { judged, judgeProblem, problem } = this.known;
    if (judgeProblem !== null) {
      return html`<p class="error" role="alert">Not judged: ${judgeProblem.message}.</p>`;
    }
    if (this.inputs.rules === null || judged === null) return nothing;
    const isNow = problem === null && sameParts(judged.inputs, this.inputs, judgeParts);
    const { verdict, rules } = judged.judgement;
    return html`<p class="overall" role="status" data-verdict=${verdict}>${verdictTexts[verdict]}${isNow ? "" : " (of the last puck judged)"}</p>
      <ul class="messages">
        ${rules.map((rule) => html`<li data-figure=${rule.figure} data-verdict=${rule.verdict}>${verdictTexts[rule.verdict]}: ${rule.message}.</li>`)}
      </ul>
      <p class="hint">${judgementNotice}</p>`;
  }

  private renderTolerances() {
    const { tolerances, candidate } = this.inputs;
    const keys = dimensionKeys.filter((key) => dimensionOf(candidate.spec, key) !== null);
    const set = (key: DimensionKey, value: number) => {
      const { [key]: _, ...rest } = tolerances;
      emit(this, "puck-change", { tolerances: value === 0 ? rest : { ...tolerances, [key]: value } });
    };
    return html`<fieldset>
      <legend>Making tolerances, plus and minus</legend>
      ${keys.map((key) => {
        const { label } = dimensionTable[key];
        return html`<ww-quantity-field .units=${this.units}
          label=${`${label.charAt(0).toUpperCase()}${label.slice(1)} ±`}
          kind="length"
          data-key=${key}
          .value=${tolerances[key] ?? 0}
          .lowest=${0}
          .highest=${0.1}
          @quantity-change=${(event: QuantityChange) => set(key, event.detail.value)}
        ></ww-quantity-field>`;
      })}
    </fieldset>`;
  }

  private renderCount() {
    const { sampling, tolerances, candidate, rules } = this.inputs;
    const { status, last: made, problems } = this.known.counting;
    const problem = status === "error" && problems[0].code !== cancelledCode ? problems[0].message : "";
    const isNow =
      made !== null &&
      made.inputs.candidate === candidate &&
      made.inputs.tolerances === tolerances &&
      made.inputs.rules === rules;
    const percent = (share: number) => `${(100 * share).toFixed(1)} %`;
    return html`<fieldset>
      <legend>Made at random</legend>
      <div class="row">
        <label for="sizes">Sizes lie</label>
        <select id="sizes" @change=${(event: Event) => emit(this, "puck-change", { sampling: { ...sampling, sizes: (event.target as HTMLSelectElement).value as MadeSizes } })}>
          <option value="uniform" ?selected=${sampling.sizes === "uniform"}>evenly within the tolerance</option>
          <option value="normal" ?selected=${sampling.sizes === "normal"}>normally, tolerance at three deviations</option>
        </select>
      </div>
      <ww-quantity-field .units=${this.units} label="Pucks made" .value=${sampling.samples} .lowest=${1} .highest=${100_000} @quantity-change=${(event: QuantityChange) => emit(this, "puck-change", { sampling: { ...sampling, samples: Math.round(event.detail.value) } })}></ww-quantity-field>
      <div class="buttons"><button type="button" @click=${() => emit(this, "puck-job", "count")}>${status === "pending" ? "Counting ..." : "Count the pucks inside"}</button></div>
      ${problem === "" ? nothing : html`<p class="error" role="alert">${problem}</p>`}
      ${
        made === null
          ? nothing
          : html`<p role="status" class="hint">${made.result.inside} of ${made.result.samples} made pucks are inside every range: ${percent(made.result.share)} (95 % interval ${percent(made.result.shareLow)} to ${percent(made.result.shareHigh)})${isNow ? "" : "; of an earlier puck or tolerance"}.</p>`
      }
    </fieldset>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-puck-rules": PuckRules;
  }
}
