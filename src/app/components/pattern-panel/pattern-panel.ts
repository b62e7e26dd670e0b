import { html, LitElement, nothing } from "lit";
import { customElement } from "lit/decorators.js";
import { roughnessHeightBounds } from "../../../../shared/document/limits";
import { equivalentRoughness, patternSource } from "../../../../shared/engine/pattern/equivalentRoughness";
import type { SurfacePattern } from "../../../../shared/engine/pattern/surfacePattern";
import { preferences } from "../../store/preferences";
import { sectionTools } from "../../store/sectionTools";
import { StoreController } from "../../store/storeController";
import { changeDesign, workbench } from "../../store/workbench";
import { panelStyles } from "../../style/panelStyles";
import { controlStyles } from "../../style/sharedStyles";
import { quantityText } from "../../units/units";
import type { QuantityChange } from "../quantity-field/quantity-field";
import "../quantity-field/quantity-field";

/** Estimates the sand-grain roughness of grooves, ridges or dimples and hands it to the design. */
@customElement("ww-pattern-panel")
export class PatternPanel extends LitElement {
  static override styles = [controlStyles, panelStyles];

  private readonly perimeter = new StoreController(
    this,
    workbench,
    (value) => value.solved?.solution.nodes.perimeter ?? null,
  );
  private readonly units = new StoreController(this, preferences, (value) => value.units);
  private readonly kept = new StoreController(this, sectionTools, (value) => value.pattern);

  private get pattern(): SurfacePattern {
    return this.kept.value;
  }

  private change(change: Partial<SurfacePattern>): void {
    sectionTools.patch({ pattern: { ...this.pattern, ...change } });
  }

  private field(key: "depth" | "width" | "pitch", label: string, problem: string) {
    return html`<ww-quantity-field
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
    const count = this.perimeter.value === null ? null : Math.round(this.perimeter.value / this.pattern.pitch);
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
              ? html`${count === null ? nothing : `About ${count} around the section. `}Estimated ks ${quantityText(estimate.value.sandGrainRoughness, "length", this.units.value, 3)}${estimate.value.insideMeasured ? "" : "; the pattern lies outside the surfaces that were measured, so take it as a rough guess"}.`
              : nothing
          }
        </p>
        <p class="hint">${patternSource}</p>
        <div class="buttons">
          <button type="button" ?disabled=${!estimate.ok} @click=${() => {
            if (estimate.ok) changeDesign({ sandGrainRoughness: estimate.value.sandGrainRoughness });
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
