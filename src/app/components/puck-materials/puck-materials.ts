import { demoPuck } from "../../puck/demoPuck";
import type { UnitPreferences } from "../../units/units";
import { emit } from "../../view/emit";
import "../../puck/puckEvents";
import { html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { type Material, standardMaterials } from "../../../../shared/jobs/puck/body/materials";
import type { PuckSpec } from "../../../../shared/jobs/puck/body/puckSpec";
import { panelStyles } from "../../style/panelStyles";
import { controlStyles } from "../../style/sharedStyles";
import type { QuantityChange } from "../quantity-field/quantity-field";
import "../quantity-field/quantity-field";
import { puckMaterialsStyles } from "./puck-materials.styles";

/** Materials that a person adds to the table: density with its spread, and where it comes from. Sends `puck-change`. */
@customElement("ww-puck-materials")
export class PuckMaterials extends LitElement {
  static override styles = [controlStyles, panelStyles, puckMaterialsStyles];

  @property({ attribute: false }) own: readonly Material[] = [];
  /** The candidate, whose materials cannot be removed. */
  @property({ attribute: false }) spec: PuckSpec = demoPuck.candidate.spec;
  @property({ attribute: false }) units: UnitPreferences = {};
  @state() private name = "";
  @state() private density = 2700;
  @state() private spread = 50;
  @state() private source = "";
  @state() private fault = "";

  private add(): void {
    const name = this.name.trim();
    const source = this.source.trim();
    if (name === "" || source === "") {
      this.fault = "Give the material a name, and say where its density comes from.";
      return;
    }
    if (!(this.spread < this.density)) {
      this.fault = `The spread is ${this.spread} kg/m³; it must be below the density, ${this.density} kg/m³.`;
      return;
    }
    this.fault = "";
    const standard = standardMaterials.find((one) => one.name === name);
    const material: Material = {
      name,
      density: this.density,
      lowestDensity: this.density - this.spread,
      highestDensity: this.density + this.spread,
      source,
      cautions: standard?.cautions ?? [],
    };
    emit(this, "puck-change", { userMaterials: [...this.own.filter((one) => one.name !== name), material] });
    this.name = "";
    this.source = "";
  }

  private drop(name: string): void {
    emit(this, "puck-change", { userMaterials: this.own.filter((one) => one.name !== name) });
  }

  protected override render() {
    const { coatMaterial, core } = this.spec;
    const used = [coatMaterial, core.kind === "none" ? "" : core.material];
    return html`<details>
      <summary>Own materials (${this.own.length})</summary>
      <div class="stack">
        ${this.own.map(
          ({ name, density, source }) => html`<p class="line">
            <span><b>${name}</b>, ${density} kg/m³; ${source}</span>
            <button type="button" class="is-quiet" ?disabled=${used.includes(name)} @click=${() => this.drop(name)}>Remove<span class="unseen"> ${name}</span></button>
          </p>`,
        )}
        <div class="row">
          <label for="material-name">New material</label>
          <input id="material-name" type="text" maxlength="100" .value=${this.name} @input=${(event: Event) => {
            this.name = (event.target as HTMLInputElement).value;
          }} />
        </div>
        <ww-quantity-field .units=${this.units} label="Density, kg/m³" .value=${this.density} .lowest=${0} above-lowest .highest=${29999} @quantity-change=${(
          event: QuantityChange,
        ) => {
          this.density = event.detail.value;
        }}></ww-quantity-field>
        <ww-quantity-field .units=${this.units} label="Plus and minus, kg/m³" .value=${this.spread} .lowest=${0} .highest=${29999} @quantity-change=${(
          event: QuantityChange,
        ) => {
          this.spread = event.detail.value;
        }}></ww-quantity-field>
        <div class="row">
          <label for="material-source">Source</label>
          <input id="material-source" type="text" maxlength="500" .value=${this.source} @input=${(event: Event) => {
            this.source = (event.target as HTMLInputElement).value;
          }} />
        </div>
        ${this.fault ? html`<p class="error" role="alert">${this.fault}</p>` : nothing}
        <div class="buttons"><button type="button" @click=${this.add}>Add the material</button></div>
      </div>
    </details>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-puck-materials": PuckMaterials;
  }
}
