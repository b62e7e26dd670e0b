import { html, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { MeasurementKind, ModelEnds, SpeedDirection } from "../../../../shared/jobs/evidence/measurement";
import type { MeasuredSetInputs } from "../../compare/compareInputs";
import { chosenKey, type DesignChoice, ofThing } from "../../compare/designChoices";
import { fieldText, type SetupField, setupFieldsOf, withField } from "../../compare/setupFields";
import { emit } from "../../view/emit";
import { LightElement } from "../../view/lightElement";
import { kindOptions } from "./kindOptions";

const endWords: Readonly<Record<ModelEnds, string>> = {
  endless: "spans the stream from wall to wall",
  endPlates: "has end plates",
  free: "has two free ends",
};

/** What is known of the chosen set: its name and source, its section, its stream and how it was mounted. Sends `compare-replace`. */
@customElement("ww-compare-setup")
export class CompareSetup extends LightElement {
  @property({ attribute: false }) set: MeasuredSetInputs | null = null;
  /** Names of all sets. */
  @property({ attribute: false }) names: readonly string[] = [];
  /** What a measurement may be of. */
  @property({ attribute: false }) choices: readonly DesignChoice[] = [];
  /** What was typed and is not allowed, by field, so that it is not lost. */
  @state() private refused: Readonly<Record<string, { readonly text: string; readonly message: string }>> = {};
  private lastSet: MeasuredSetInputs | null = null;

  protected override willUpdate(): void {
    const { set } = this;
    if (set?.name !== this.lastSet?.name && Object.keys(this.refused).length > 0) this.refused = {};
    this.lastSet = set;
  }

  private replace(old: MeasuredSetInputs, next: MeasuredSetInputs): void {
    emit(this, "compare-replace", { old, next });
  }

  private enter(set: MeasuredSetInputs, field: SetupField, text: string): void {
    const { [field.key]: _old, ...others } = this.refused;
    const read = withField(set, field, text);
    this.refused = read.ok ? others : { ...others, [field.key]: { text, message: read.message } };
    if (read.ok) this.replace(set, read.set);
  }

  private rename(set: MeasuredSetInputs, typed: string): void {
    const name = typed.trim();
    const taken = name !== set.name && this.names.includes(name);
    const { name: _old, ...others } = this.refused;
    if (name !== "" && !taken) {
      this.refused = others;
      this.replace(set, { ...set, name });
      return;
    }
    const message = taken ? `"${name}" is the name of another set; each needs its own.` : "A set needs a name.";
    this.refused = { ...others, name: { text: typed, message } };
  }

  protected override render() {
    const { set, choices } = this;
    if (set === null) return nothing;
    const ownKey = chosenKey(set);
    return html`<section class="view-section compare-section" aria-labelledby="compare-setup-heading">
      <h2 id="compare-setup-heading">Set-up of ${set.name}</h2>
      <div class="row"><label for="set-name">Name</label>
        <input id="set-name" type="text" maxlength="100" .value=${this.refused.name?.text ?? set.name} @change=${(event: Event) => this.rename(set, (event.target as HTMLInputElement).value)} /></div>
      ${this.renderRefusal("name")}
      <div class="row"><label for="set-source">Source</label>
        <input id="set-source" type="text" maxlength="500" .value=${set.source} @change=${(event: Event) => {
          const source = (event.target as HTMLInputElement).value.trim();
          if (source !== "") this.replace(set, { ...set, source });
        }} /></div>
      <div class="row"><label for="set-kind">Kind</label>
        <select id="set-kind" @change=${(event: Event) => this.replace(set, { ...set, kind: (event.target as HTMLSelectElement).value as MeasurementKind })}>${kindOptions(set.kind)}</select></div>
      <div class="row"><label for="set-section">What was measured</label>
        <select id="set-section" @change=${(event: Event) => {
          const chosen = choices.find(({ key }) => key === (event.target as HTMLSelectElement).value);
          if (chosen !== undefined) this.replace(set, ofThing(set, chosen.thing));
        }}>
          ${choices.map(({ key, label }) => html`<option value=${key} ?selected=${key === ownKey}>${label}</option>`)}
        </select></div>
      <div class="row"><label for="set-direction">Speed, where points do not say it</label>
        <select id="set-direction" @change=${(event: Event) => {
          const { value } = event.target as HTMLSelectElement;
          const { direction: _old, ...rest } = set;
          this.replace(set, value === "" ? rest : { ...rest, direction: value as SpeedDirection });
        }}>
          <option value="" ?selected=${set.direction === undefined}>not stated</option>
          <option value="rising" ?selected=${set.direction === "rising"}>rising</option>
          <option value="falling" ?selected=${set.direction === "falling"}>falling</option>
        </select></div>
      ${setupFieldsOf(set).map((field) => this.renderField(set, field))}
      ${set.puck === undefined ? this.renderEnds(set) : nothing}
      <label class="hint"><input type="checkbox" .checked=${set.blockageCorrected ?? false} @change=${(event: Event) => this.replace(set, { ...set, blockageCorrected: (event.target as HTMLInputElement).checked })} />
        The coefficients are corrected for blockage</label>
      <p class="hint">Empty fields are not stated: the usual value is assumed and said beside the result.</p>
    </section>`;
  }

  private renderEnds(set: MeasuredSetInputs) {
    const ends = set.ends ?? "endless";
    return html`<div class="row"><label for="set-ends">The model</label>
      <select id="set-ends" @change=${(event: Event) => this.replace(set, { ...set, ends: (event.target as HTMLSelectElement).value as ModelEnds })}>
        ${Object.entries(endWords).map(([key, words]) => html`<option value=${key} ?selected=${key === ends}>${words}</option>`)}
      </select></div>`;
  }

  private renderField(set: MeasuredSetInputs, field: SetupField) {
    const { key, label, unit } = field;
    const isRatio = key === "sandGrainRoughnessMetres" && set.sandGrainRoughnessRatio !== undefined;
    return html`<div class="row"><label for="set-${key}">${label}</label>
        <span class="pair"><input id="set-${key}" type="text" inputmode="decimal" autocomplete="off" placeholder=${isRatio ? `ks/D ${set.sandGrainRoughnessRatio}` : "not stated"}
          .value=${this.refused[key]?.text ?? fieldText(set, field)} aria-invalid=${key in this.refused}
          @change=${(event: Event) => this.enter(set, field, (event.target as HTMLInputElement).value)} /><span>${unit}</span></span></div>
      ${this.renderRefusal(key)}`;
  }

  private renderRefusal(key: string) {
    const refusal = this.refused[key];
    return refusal === undefined ? nothing : html`<p class="error" role="alert">${refusal.message}</p>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-compare-setup": CompareSetup;
  }
}
