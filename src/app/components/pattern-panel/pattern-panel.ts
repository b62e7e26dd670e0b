import { html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import { roughnessHeightBounds } from "../../../../shared/document/limits";
import { equivalentRoughness, patternSource } from "../../../../shared/engine/pattern/equivalentRoughness";
import type { SurfacePattern } from "../../../../shared/engine/pattern/surfacePattern";
import { firstTools } from "../../section/sectionTools";
import { panelStyles } from "../../style/panelStyles";
import { controlStyles } from "../../style/sharedStyles";
import { quantityText, type UnitPreferences } from "../../units/units";
import { emit } from "../../view/emit";
import type { QuantityChange } from "../quantity-field/quantity-field";
import "../quantity-field/quantity-field";

/** Estimates the sand-grain roughness of grooves, ridges or dimples and hands it to the design. Sends `section-tools` and `section-change`. */
@customElement("ww-pattern-panel")
export class PatternPanel extends LitElement {
  static override styles = [controlStyles, panelStyles];

  @property({ attribute: false }) pattern: SurfacePattern = firstTools.pattern;
  /** Of the solved section, m; null before there is one. */
  @property({ attribute: false }) perimeter: number | null = null;
  @property({ attribute: false }) units: UnitPreferences = {};

  private change(change: Partial<SurfacePattern>): void {
    emit(this, "section-tools", { pattern: { ...this.pattern, ...change } });
  }

  private field(key: "depth" | "width" | "pitch", label: string, problem: string) {
    return html`<ww-quantity-field .units=${this.units}
      label=${label}
      kind="length"
      .value=${this.pattern[key]}
      .lowest=${0}
      .highest=${roughnessHeightBounds.to}
      above-lowest
      .problem=${problem}
      @quantity-change=${(event: QuantityChange) => this.change({ [key]: event.detail.value })}
    ></ww-quantity-field>`;
  }

  protected override render() {
    const estimate = equivalentRoughness(this.pattern);
    const problemOf = (key: string) => (!estimate.ok && estimate.problem.field === key ? estimate.problem.message : "");
    const count = this.perimeter === null ? null : Math.round(this.perimeter / this.pattern.pitch);
    return html`<section aria-labelledby="heading">
      <div class="heading"><h2 id="heading">Surface pattern</h2></div>
      <div class="stack">
        <div class="row">
          <label for="kind">Pattern</label>
          <select id="kind" @change=${(event: Event) =>
            this.change({ kind: (event.target as HTMLSelectElement).value as SurfacePattern["kind"] })}>
            ${(["grooves", "ridges", "dimples"] as const).map((kind) => html`<option value=${kind} ?selected=${kind === this.pattern.kind}>${kind}</option>`)}
          </select>
        </div>
        ${this.field("depth", this.pattern.kind === "ridges" ? "Height" : "Depth", problemOf("depth"))}
        ${this.field("width", this.pattern.kind === "dimples" ? "Diameter of a dimple" : "Width of each", problemOf("width"))}
        ${this.field("pitch", "Pitch", problemOf("pitch"))}
        <p class="hint" role="status">
          ${
            estimate.ok
              ? html`${count === null ? nothing : `About ${count} around the section. `}Estimated ks ${quantityText(estimate.value.sandGrainRoughness, "length", this.units, 3)}${estimate.value.insideMeasured ? "" : "; the pattern lies outside the surfaces that were measured, so take it as a rough guess"}.`
              : nothing
          }
        </p>
        <p class="hint">${patternSource}</p>
        <div class="buttons">
          <button type="button" ?disabled=${!estimate.ok} @click=${() => {
            if (estimate.ok) emit(this, "section-change", { sandGrainRoughness: estimate.value.sandGrainRoughness });
          }}>Use as the design's ks</button>
        </div>
      </div>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-pattern-panel": PatternPanel;
  }
}
