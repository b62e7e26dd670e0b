import { demoPuck } from "../../puck/demoPuck";
import type { PuckAnswers } from "../../puck/puckAnswers";
import type { PuckInputs } from "../../puck/puckInputs";
import type { UnitPreferences } from "../../units/units";
import { emit } from "../../view/emit";
import { cancelledCode, initialTask } from "../../view/taskState";
import "../../puck/puckEvents";
import { html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { FreeCoreDimension } from "../../../../shared/jobs/puck/body/coreSizing";
import { coreDimensions } from "../../puck/fittingTarget";
import { fieldsetStyles, panelStyles } from "../../style/panelStyles";
import { puckFormStyles } from "../../style/puckFormStyles";
import { controlStyles } from "../../style/sharedStyles";
import type { QuantityChange } from "../quantity-field/quantity-field";
import "../quantity-field/quantity-field";

const coreDimensionLabels: Readonly<Record<FreeCoreDimension, string>> = {
  diameter: "core diameter",
  thickness: "core thickness",
  innerDiameter: "core inner diameter",
  coatThickness: "coat thickness",
};

/** The core that gives the candidate a wanted mass. Sends `puck-change` and `puck-job`. */
@customElement("ww-puck-sizing")
export class PuckSizing extends LitElement {
  static override styles = [controlStyles, panelStyles, fieldsetStyles, puckFormStyles];

  @property({ attribute: false }) inputs: PuckInputs = demoPuck;
  @property({ attribute: false }) sizing: PuckAnswers["sizing"] = initialTask;
  @property({ attribute: false }) units: UnitPreferences = {};

  /** What became of the last sizing; null while there is nothing to say. */
  private get message(): { readonly text: string; readonly isProblem: boolean } | null {
    const { status, last, problems } = this.sizing;
    if (status === "complete" && last !== null) {
      const { massKilograms, coverMetres } = last.result.figures;
      const cover = Number((1000 * (coverMetres ?? 0)).toPrecision(3));
      return {
        text: `The core is sized: ${Number(massKilograms.toPrecision(5))} kg, cover ${cover} mm.`,
        isProblem: false,
      };
    }
    const isRefused = status === "error" && problems[0].code !== cancelledCode;
    return isRefused ? { text: problems[0].message, isProblem: true } : null;
  }

  protected override render() {
    const { massTarget, candidate } = this.inputs;
    const { message } = this;
    const free = coreDimensions[candidate.spec.core.kind];
    if (free.length === 0) return nothing;
    const chosen = free.includes(massTarget.freeDimension) ? massTarget.freeDimension : free[0];
    return html`<fieldset>
      <legend>Core for a wanted mass</legend>
      <ww-quantity-field .units=${this.units} label="Wanted mass" kind="mass" .value=${massTarget.massKilograms} .lowest=${0} above-lowest .highest=${1000} @quantity-change=${(
        event: QuantityChange,
      ) =>
        emit(this, "puck-change", {
          massTarget: { ...massTarget, massKilograms: event.detail.value },
        })}></ww-quantity-field>
      <ww-quantity-field .units=${this.units} label="Least cover over the core" kind="length" .value=${massTarget.leastCoverMetres} .lowest=${0} above-lowest .highest=${0.1} @quantity-change=${(
        event: QuantityChange,
      ) =>
        emit(this, "puck-change", {
          massTarget: { ...massTarget, leastCoverMetres: event.detail.value },
        })}></ww-quantity-field>
      <div class="row">
        <label for="free">Free to change</label>
        <select id="free" @change=${(event: Event) => emit(this, "puck-change", { massTarget: { ...massTarget, freeDimension: (event.target as HTMLSelectElement).value as FreeCoreDimension } })}>
          ${free.map((key) => html`<option value=${key} ?selected=${key === chosen}>${coreDimensionLabels[key]}</option>`)}
        </select>
      </div>
      <div class="buttons"><button type="button" @click=${() => emit(this, "puck-job", "size")}>Size the core</button></div>
      ${message ? html`<p class=${message.isProblem ? "error" : "hint"} role=${message.isProblem ? "alert" : "status"}>${message.text}</p>` : nothing}
    </fieldset>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-puck-sizing": PuckSizing;
  }
}
