import { html, LitElement, nothing } from "lit";
import { customElement, state } from "lit/decorators.js";
import {
  type DimensionKey,
  dimensionKeys,
  dimensionOf,
  dimensionTable,
} from "../../../../shared/jobs/puck/puckDimension";
import { judgementNotice } from "../../../../shared/jobs/puck/rules/judgePuck";
import type { MadeShare, MadeSizes } from "../../../../shared/jobs/puck/rules/madeShare";
import { readRuleSet } from "../../../../shared/jobs/puck/rules/ruleSet";
import type { Problem } from "../../../../shared/result";
import { demoRulesName, loadDemoRules } from "../../puck/demoRules";
import { verdictTexts } from "../../puck/figureRows";
import { changePuck, puckBench } from "../../puck/puckBench";
import { judgeParts, sameParts } from "../../puck/puckChanges";
import type { PuckInputs } from "../../puck/puckInputs";
import { countMadePucks } from "../../puck/puckJobs";
import { StoreController } from "../../store/storeController";
import { panelStyles } from "../../style/panelStyles";
import { controlStyles } from "../../style/sharedStyles";
import type { QuantityChange } from "../quantity-field/quantity-field";
import "../info-mark/info-mark";
import "../puck-sizing/puck-sizing";
import "../quantity-field/quantity-field";
import { puckRulesStyles } from "./puck-rules.styles";

/** Rules, making tolerances, what they say of the candidate, and the core for a wanted mass. */
@customElement("ww-puck-rules")
export class PuckRules extends LitElement {
  static override styles = [controlStyles, panelStyles, puckRulesStyles];

  private readonly bench = new StoreController(this, puckBench, (value) => value);
  @state() private problems: readonly Problem[] = [];
  @state() private made: { readonly inputs: PuckInputs; readonly share: MadeShare } | null = null;
  @state() private countState: "idle" | "counting" | string = "idle";

  private get inputs(): PuckInputs {
    return this.bench.value.history.present;
  }

  private read(text: string, fileName: string): void {
    const reading = readRuleSet(text, fileName);
    this.problems = reading.ok ? [] : reading.problems;
    if (reading.ok) changePuck({ rules: reading.value });
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

  private async count(): Promise<void> {
    const { inputs } = this;
    this.countState = "counting";
    const share = await countMadePucks();
    if (share === null) return;
    this.countState = share.ok ? "idle" : share.problem.message;
    if (share.ok) this.made = { inputs, share: share.value };
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
          ${rules === null ? nothing : html`<button type="button" class="is-quiet" @click=${() => changePuck({ rules: null })}>Close the rules</button>`}
        </div>
        ${this.problems.length > 0 ? html`<ul class="error" role="alert">${this.problems.slice(0, 8).map(({ message }) => html`<li>${message}</li>`)}</ul>` : nothing}
        ${this.renderVerdict()}
        ${this.renderTolerances()}
        ${rules === null ? nothing : this.renderCount()}
        <ww-puck-sizing></ww-puck-sizing>
      </div>
    </section>`;
  }

  private renderVerdict() {
    const { judged, judgeProblem, problem } = this.bench.value;
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
      changePuck({ tolerances: value === 0 ? rest : { ...tolerances, [key]: value } });
    };
    return html`<fieldset>
      <legend>Making tolerances, plus and minus</legend>
      ${keys.map((key) => {
        const { label } = dimensionTable[key];
        return html`<ww-quantity-field
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
    const isNow =
      this.made !== null &&
      this.made.inputs.candidate === candidate &&
      this.made.inputs.tolerances === tolerances &&
      this.made.inputs.rules === rules;
    const percent = (share: number) => `${(100 * share).toFixed(1)} %`;
    return html`<fieldset>
      <legend>Made at random</legend>
      <div class="row">
        <label for="sizes">Sizes lie</label>
        <select id="sizes" @change=${(event: Event) => changePuck({ sampling: { ...sampling, sizes: (event.target as HTMLSelectElement).value as MadeSizes } })}>
          <option value="uniform" ?selected=${sampling.sizes === "uniform"}>evenly within the tolerance</option>
          <option value="normal" ?selected=${sampling.sizes === "normal"}>normally, tolerance at three deviations</option>
        </select>
      </div>
      <ww-quantity-field label="Pucks made" .value=${sampling.samples} .lowest=${1} .highest=${100_000} @quantity-change=${(event: QuantityChange) => changePuck({ sampling: { ...sampling, samples: Math.round(event.detail.value) } })}></ww-quantity-field>
      <div class="buttons"><button type="button" @click=${this.count}>${this.countState === "counting" ? "Counting ..." : "Count the pucks inside"}</button></div>
      ${this.countState !== "idle" && this.countState !== "counting" ? html`<p class="error" role="alert">${this.countState}</p>` : nothing}
      ${
        this.made === null
          ? nothing
          : html`<p role="status" class="hint">${this.made.share.inside} of ${this.made.share.samples} made pucks are inside every range: ${percent(this.made.share.share)} (95 % interval ${percent(this.made.share.shareLow)} to ${percent(this.made.share.shareHigh)})${isNow ? "" : "; of an earlier puck or tolerance"}.</p>`
      }
    </fieldset>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-puck-rules": PuckRules;
  }
}
