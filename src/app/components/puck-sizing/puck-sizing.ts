import { html, LitElement, nothing } from "lit";
import { customElement, state } from "lit/decorators.js";
import type { FreeCoreDimension } from "../../../../shared/jobs/puck/coreSizing";
import { coreDimensions } from "../../puck/fittingTarget";
import { changeCandidate, changePuck, puckBench } from "../../puck/puckBench";
import { sizeCandidateCore } from "../../puck/puckJobs";
import { StoreController } from "../../store/storeController";
import { panelStyles } from "../../style/panelStyles";
import { controlStyles } from "../../style/sharedStyles";
import { puckRulesStyles } from "../puck-rules/puck-rules.styles";
import type { QuantityChange } from "../quantity-field/quantity-field";
import "../quantity-field/quantity-field";

const coreDimensionLabels: Readonly<Record<FreeCoreDimension, string>> = {
  diameter: "core diameter",
  thickness: "core thickness",
  innerDiameter: "core inner diameter",
  coatThickness: "coat thickness",
};

/** The core that gives the candidate a wanted mass. */
@customElement("ww-puck-sizing")
export class PuckSizing extends LitElement {
  static override styles = [controlStyles, panelStyles, puckRulesStyles];

  private readonly inputs = new StoreController(this, puckBench, (value) => value.history.present);
  @state() private sizeMessage: { readonly text: string; readonly isProblem: boolean } | null = null;

  private async size(): Promise<void> {
    const before = this.inputs.value.candidate;
    const sized = await sizeCandidateCore();
    if (sized === null || this.inputs.value.candidate !== before) return;
    if (!sized.ok) {
      this.sizeMessage = { text: sized.problem.message, isProblem: true };
      return;
    }
    changeCandidate({ spec: sized.value.spec });
    this.sizeMessage = {
      text: `The core is sized: ${Number(sized.value.figures.massKilograms.toPrecision(5))} kg, cover ${Number((1000 * (sized.value.figures.coverMetres ?? 0)).toPrecision(3))} mm.`,
      isProblem: false,
    };
  }

  protected override render() {
    const { massTarget, candidate } = this.inputs.value;
    const free = coreDimensions[candidate.spec.core.kind];
    if (free.length === 0) return nothing;
    const chosen = free.includes(massTarget.freeDimension) ? massTarget.freeDimension : free[0];
    return html`<fieldset>
      <legend>Core for a wanted mass</legend>
      <ww-quantity-field label="Wanted mass" kind="mass" .value=${massTarget.massKilograms} .lowest=${0} above-lowest .highest=${1000} @quantity-change=${(
        event: QuantityChange,
      ) => changePuck({ massTarget: { ...massTarget, massKilograms: event.detail.value } })}></ww-quantity-field>
      <ww-quantity-field label="Least cover over the core" kind="length" .value=${massTarget.leastCoverMetres} .lowest=${0} above-lowest .highest=${0.1} @quantity-change=${(
        event: QuantityChange,
      ) => changePuck({ massTarget: { ...massTarget, leastCoverMetres: event.detail.value } })}></ww-quantity-field>
      <div class="row">
        <label for="free">Free to change</label>
        <select id="free" @change=${(event: Event) => changePuck({ massTarget: { ...massTarget, freeDimension: (event.target as HTMLSelectElement).value as FreeCoreDimension } })}>
          ${free.map((key) => html`<option value=${key} ?selected=${key === chosen}>${coreDimensionLabels[key]}</option>`)}
        </select>
      </div>
      <div class="buttons"><button type="button" @click=${() => {
        void this.size();
      }}>Size the core</button></div>
      ${this.sizeMessage ? html`<p class=${this.sizeMessage.isProblem ? "error" : "hint"} role=${this.sizeMessage.isProblem ? "alert" : "status"}>${this.sizeMessage.text}</p>` : nothing}
    </fieldset>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-puck-sizing": PuckSizing;
  }
}
