import { html, LitElement, nothing } from "lit";
import { customElement, state } from "lit/decorators.js";
import {
  type MotionKind,
  type MotionView,
  motionTitles,
  motionViews,
  puckMotionFigure,
  viewsOf,
} from "../../plots/puckMotionFigure";
import { motionRows } from "../../puck/motionRows";
import { changePuck, puckBench } from "../../puck/puckBench";
import type { MotionInputs } from "../../puck/puckInputs";
import { shownPucks } from "../../puck/shownPucks";
import { pageState } from "../../store/pageState";
import { preferences } from "../../store/preferences";
import { StoreController } from "../../store/storeController";
import { darkPalette, lightPalette } from "../../style/palette";
import { type QuantityKind, unitChoices, unitFor } from "../../units/units";
import "../info-mark/info-mark";
import "../plot/plot";
import type { QuantityChange } from "../quantity-field/quantity-field";
import "../quantity-field/quantity-field";

const kinds: readonly MotionKind[] = ["slide", "flick", "sink"];

/** Slide, flick and sink of candidate, baseline and pins, with their bands. In the light DOM for its plots. */
@customElement("ww-puck-motion")
export class PuckMotionElement extends LitElement {
  private readonly bench = new StoreController(this, puckBench, (value) => value);
  private readonly units = new StoreController(this, preferences, (value) => value.units);
  private readonly isDark = new StoreController(this, pageState, (value) => value.isDark);
  @state() private views: Readonly<Record<MotionKind, MotionView>> = { slide: "speed", flick: "path", sink: "speed" };
  @state() private turbulence: number | null = null;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  private set(change: Partial<MotionInputs>): void {
    changePuck({ motion: { ...this.bench.value.history.present.motion, ...change } });
  }

  protected override render() {
    const pucks = shownPucks(this.bench.value);
    const turbulences = [...new Set(pucks[0]?.motions.map((one) => one.turbulencePercent) ?? [])];
    const turbulence = turbulences.find((one) => one === this.turbulence) ?? turbulences[0];
    return html`<section class="puck-section" aria-labelledby="puck-motion-heading">
      <div class="head"><h2 id="puck-motion-heading">Motion</h2><span class="marks"><ww-info-mark topic="addedMass"></ww-info-mark></span></div>
      <p class="caution">These are computed motions in water. Never try a flick near heads, hands or feet: a puck of 1.3 kg injures.</p>
      ${this.renderInputs()}
      ${
        turbulences.length > 1
          ? html`<label class="choices">Turbulence <select @change=${(event: Event) => {
              this.turbulence = Number((event.target as HTMLSelectElement).value);
            }}>${turbulences.map((one) => html`<option value=${one} ?selected=${one === turbulence}>${Number(one.toPrecision(4))} %</option>`)}</select></label>`
          : nothing
      }
      ${
        turbulence === undefined
          ? html`<p class="state" role="status">${pucks[0]?.problem ?? "No motion yet."}</p>`
          : html`${pucks[0].problem ? html`<p class="error" role="alert">${pucks[0].problem}</p>` : nothing}
            <div class="plots">${kinds.map((kind) => this.renderMotion(kind, turbulence))}</div>`
      }
    </section>`;
  }

  private renderInputs() {
    const { motion } = this.bench.value.history.present;
    const field = (
      key: keyof MotionInputs & string,
      label: string,
      kind: QuantityKind,
      lowest: number,
      highest: number,
    ) => {
      const value = motion[key];
      if (typeof value !== "number") return nothing;
      return html`<ww-quantity-field
        label=${label}
        kind=${kind}
        data-key=${key}
        .value=${value}
        .lowest=${lowest}
        .highest=${highest}
        .aboveLowest=${lowest === 0}
        @quantity-change=${(event: QuantityChange) => this.set({ [key]: event.detail.value })}
      ></ww-quantity-field>`;
    };
    return html`<div class="fields">
      ${field("slideSpeed", "Slide: speed at the start", "speed", 0, 20)}
      ${field("flickSpeed", "Flick: speed at the start", "speed", 0, 20)}
      ${field("elevation", "Flick: over the horizontal", "angle", -Math.PI / 2, Math.PI / 2)}
      ${field("startHeight", "Flick: height at the start", "length", 0, 100)}
      ${field("waterDepth", "Depth of the water", "length", 0, 100)}
      ${field("markDistance", "Tell time and speed at", "length", 0, 100)}
      <label class="line">Flick: the puck lies <select @change=${(event: Event) => this.set({ flickAttitude: (event.target as HTMLSelectElement).value as MotionInputs["flickAttitude"] })}>
        <option value="edgeAlongPath" ?selected=${motion.flickAttitude === "edgeAlongPath"}>along its path</option>
        <option value="fixed" ?selected=${motion.flickAttitude === "fixed"}>as its spin holds it</option>
      </select></label>
      ${motion.flickAttitude === "fixed" ? field("pitch", "Flick: held at, front up", "angle", -Math.PI / 2, Math.PI / 2) : nothing}
      <label class="line">Sink: the puck falls <select @change=${(event: Event) => this.set({ sinkAttitude: (event.target as HTMLSelectElement).value as MotionInputs["sinkAttitude"] })}>
        <option value="faceOn" ?selected=${motion.sinkAttitude === "faceOn"}>face-on</option>
        <option value="edgeOn" ?selected=${motion.sinkAttitude === "edgeOn"}>edge-on</option>
      </select></label>
    </div>
    ${motion.startHeight < motion.waterDepth ? nothing : html`<p class="error" role="alert">The height at the start must be below the depth of the water.</p>`}`;
  }

  private renderMotion(kind: MotionKind, turbulencePercent: number) {
    const pucks = shownPucks(this.bench.value);
    const units = this.units.value;
    const view = this.views[kind];
    // Ways through the water are long beside a puck: metres, unless a person chose another unit than the first.
    const chosen = units.length;
    const lengthUnit =
      chosen === undefined || chosen === "mm"
        ? unitChoices.length.find(({ key }) => key === "m")!
        : unitFor("length", units);
    const figure = puckMotionFigure(
      { pucks, motion: kind, view, turbulencePercent, lengthUnit, speedUnit: unitFor("speed", units) },
      this.isDark.value ? darkPalette : lightPalette,
    );
    const rows = motionRows(pucks, kind, turbulencePercent, { ...units, length: lengthUnit.key });
    return html`<div>
      <label class="choices">Show <select aria-label="Show of: ${motionTitles[kind]}" @change=${(event: Event) => {
        this.views = { ...this.views, [kind]: (event.target as HTMLSelectElement).value as MotionView };
      }}>
        ${viewsOf[kind].map((key) => html`<option value=${key} ?selected=${key === view}>${motionViews[key]}</option>`)}
      </select></label>
      <ww-plot id="plot-puck-${kind}" .figure=${figure}></ww-plot>
      <div class="scroll" tabindex="0" role="region" aria-label="Figures of: ${motionTitles[kind]}">
        <table class="results">
          <thead><tr><th scope="col">Figure</th>${pucks.map(({ name }) => html`<th scope="col">${name}</th>`)}</tr></thead>
          <tbody>${rows.map((row) => html`<tr><th scope="row">${row.label}</th>${row.cells.map((cell) => html`<td>${cell}</td>`)}</tr>`)}</tbody>
        </table>
      </div>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-puck-motion": PuckMotionElement;
  }
}
