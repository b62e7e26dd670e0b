import { html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import { type Design, demoDesign } from "../../../../shared/case/design";
import { roughnessHeightBounds, speedBounds, turbulenceBounds } from "../../../../shared/document/limits";
import type { FluidSpec } from "../../../../shared/engine/fluid/fluidSpec";
import { resolveFluid } from "../../../../shared/engine/fluid/resolveFluid";
import { type LayerMethodName, layerMethodNames } from "../../../../shared/engine/layer/layerMethodName";
import type { SurfacePattern } from "../../../../shared/engine/pattern/surfacePattern";
import type { Problem } from "../../../../shared/result";
import { layerMethodTexts } from "../../reference/layerMethods";
import { finishPresets, type Preset, presetOf, turbulencePresets } from "../../reference/presets";
import { firstTools } from "../../section/sectionTools";
import { panelStyles } from "../../style/panelStyles";
import { controlStyles } from "../../style/sharedStyles";
import type { UnitPreferences } from "../../units/units";
import { emit } from "../../view/emit";
import type { QuantityChange } from "../quantity-field/quantity-field";
import "../quantity-field/quantity-field";
import "../info-mark/info-mark";
import "../pattern-panel/pattern-panel";
import { fluidFields, fluidLabels, fluidOfKind } from "./fluidFields";

const headings: Readonly<Record<ConditionsPanel["shown"], string>> = {
  all: "Stream and finish",
  stream: "Stream",
  turbulence: "Turbulence",
  finish: "Finish",
  layers: "Boundary layers",
};

/** Fluid, speed, turbulence and finish. Sends `section-change`. */
@customElement("ww-conditions-panel")
export class ConditionsPanel extends LitElement {
  static override styles = [controlStyles, panelStyles];

  @property({ attribute: false }) design: Design = demoDesign;
  /** Why the design has no solution; null when all is well. */
  @property({ attribute: false }) problem: Problem | null = null;
  @property({ attribute: false }) pattern: SurfacePattern = firstTools.pattern;
  /** Of the solved section, m; null before there is one. */
  @property({ attribute: false }) perimeter: number | null = null;
  @property({ attribute: false }) units: UnitPreferences = {};
  /** The part of it that is shown. */
  @property() shown: "all" | "stream" | "turbulence" | "finish" | "layers" = "all";

  private shows(part: ConditionsPanel["shown"]): boolean {
    return this.shown === "all" || this.shown === part;
  }

  private problemOf(key: string): string {
    const problem = this.problem;
    return problem?.field?.split(".").at(-1) === key ? problem.message : "";
  }

  protected override render() {
    return html`<section aria-labelledby="heading">
      <div class="heading"><h2 id="heading">${headings[this.shown]}</h2><ww-info-mark topic="roughness"></ww-info-mark></div>
      <div class="stack">
        ${this.shows("stream") ? this.renderStream() : nothing}
        ${this.shows("turbulence") ? this.renderTurbulence() : nothing}
        ${this.shows("finish") ? this.renderFinish() : nothing}
        ${this.shows("layers") ? this.renderLayerMethod() : nothing}
      </div>
    </section>`;
  }

  private renderStream() {
    const { fluid, speed } = this.design;
    const properties = resolveFluid(fluid);
    return html`<div class="row">
          <label for="fluid">Fluid</label>
          <select id="fluid" @change=${(event: Event) =>
            emit(this, "section-change", {
              fluid: fluidOfKind((event.target as HTMLSelectElement).value as FluidSpec["kind"]),
            })}>
            ${Object.entries(fluidLabels).map(
              ([kind, label]) => html`<option value=${kind} ?selected=${kind === fluid.kind}>${label}</option>`,
            )}
          </select>
        </div>
        ${fluidFields(fluid).map(
          (field) => html`<ww-quantity-field .units=${this.units}
            label=${field.label}
            kind=${field.kind}
            .value=${field.value}
            .lowest=${field.range.lowest}
            .highest=${field.range.highest}
            .hint=${field.hint}
            .problem=${this.problemOf(field.key)}
            @quantity-change=${(event: QuantityChange) =>
              emit(this, "section-change", { fluid: { ...fluid, [field.key]: event.detail.value } as FluidSpec })}
          ></ww-quantity-field>`,
        )}
        <p class="hint">
          ${
            properties.ok
              ? `Density ${properties.value.density.toPrecision(5)} kg/m³, kinematic viscosity ${(properties.value.kinematicViscosity * 1e6).toPrecision(4)}e-6 m²/s. ${properties.value.source}`
              : ""
          }
        </p>
        <ww-quantity-field .units=${this.units}
          label="Stream speed"
          kind="speed"
          .value=${speed}
          .lowest=${0}
          .highest=${speedBounds.to}
          above-lowest
          .problem=${this.problemOf("speed") || this.problemOf("reynolds")}
          @quantity-change=${(event: QuantityChange) => emit(this, "section-change", { speed: event.detail.value })}
        ></ww-quantity-field>`;
  }

  private renderTurbulence() {
    const { turbulenceIntensity } = this.design;
    return html`${this.renderPresets("turbulence", "Turbulence", turbulencePresets, turbulenceIntensity, (value) =>
      emit(this, "section-change", { turbulenceIntensity: value }),
    )}
        <ww-quantity-field .units=${this.units}
          label="Turbulence intensity, Tu"
          kind="fraction"
          .value=${turbulenceIntensity}
          .lowest=${0}
          .highest=${turbulenceBounds.to / 100}
          .problem=${this.problemOf("turbulenceIntensity")}
          @quantity-change=${(event: QuantityChange) => emit(this, "section-change", { turbulenceIntensity: event.detail.value })}
        ></ww-quantity-field>`;
  }

  private renderFinish() {
    const { sandGrainRoughness } = this.design;
    return html`${this.renderPresets("finish", "Finish", finishPresets, sandGrainRoughness, (value) =>
      emit(this, "section-change", { sandGrainRoughness: value }),
    )}
        <ww-quantity-field .units=${this.units}
          label="Sand-grain roughness, ks"
          kind="length"
          .value=${sandGrainRoughness}
          .lowest=${0}
          .highest=${roughnessHeightBounds.to}
          .problem=${this.problemOf("sandGrainRoughnessRatio")}
          @quantity-change=${(event: QuantityChange) => emit(this, "section-change", { sandGrainRoughness: event.detail.value })}
        ></ww-quantity-field>
        <details>
          <summary>Estimate ks from a surface pattern</summary>
          <ww-pattern-panel .pattern=${this.pattern} .perimeter=${this.perimeter} .units=${this.units}></ww-pattern-panel>
        </details>`;
  }

  private renderLayerMethod() {
    const { layerMethod = "integral" } = this.design;
    return html`<div>
      <div class="row">
        <label for="layers">Boundary layers</label>
        <select id="layers" @change=${(event: Event) =>
          emit(this, "section-change", { layerMethod: (event.target as HTMLSelectElement).value as LayerMethodName })}>
          ${layerMethodNames.map(
            (name) =>
              html`<option value=${name} ?selected=${name === layerMethod}>${layerMethodTexts[name].label}</option>`,
          )}
        </select>
      </div>
      <p class="hint">${layerMethodTexts[layerMethod].hint}</p>
    </div>`;
  }

  private renderPresets(
    id: string,
    label: string,
    presets: readonly Preset[],
    value: number,
    choose: (value: number) => void,
  ) {
    const chosen = presetOf(presets, value);
    return html`<div>
      <div class="row">
        <label for=${id}>${label}</label>
        <select
          id=${id}
          @change=${(event: Event) => {
            const preset = presets.find((one) => one.key === (event.target as HTMLSelectElement).value);
            if (preset) choose(preset.value);
          }}
        >
          <option value="" ?selected=${chosen === undefined}>own value</option>
          ${presets.map((preset) => html`<option value=${preset.key} ?selected=${preset === chosen}>${preset.label}</option>`)}
        </select>
      </div>
      <p class="hint">${chosen?.source ?? ""}</p>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-conditions-panel": ConditionsPanel;
  }
}
