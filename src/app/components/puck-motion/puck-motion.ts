import { demoPuck } from "../../puck/demoPuck";
import { nothingKnown, type PuckAnswers } from "../../puck/puckAnswers";
import type { PuckInputs } from "../../puck/puckInputs";
import { emit } from "../../view/emit";
import "../../puck/puckEvents";
import { html, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { repeat } from "lit/directives/repeat.js";
import { type MotionView, motionTitle, motionViews, puckMotionFigure, viewsOf } from "../../plots/puckMotionFigure";
import { addedMotion, type MotionInput, type MotionKind, mostMotions } from "../../puck/motionInputs";
import { motionRows } from "../../puck/motionRows";
import { shownPucks } from "../../puck/shownPucks";
import { lightPalette, type Palette } from "../../style/palette";
import { type UnitPreferences, unitChoices, unitFor } from "../../units/units";
import "../info-mark/info-mark";
import "../plot/plot";
import { LightElement } from "../../view/lightElement";
import type { MotionChange } from "../puck-motion-inputs/puck-motion-inputs";
import "../puck-motion-inputs/puck-motion-inputs";

const kinds: readonly MotionKind[] = ["slide", "flick", "sink"];

/** Slides, flicks and sinks of candidate, baseline and pins, with their bands. Sends `puck-change`. In the light DOM for its plots. */
@customElement("ww-puck-motion")
export class PuckMotionElement extends LightElement {
  @property({ attribute: false }) inputs: PuckInputs = demoPuck;
  /** What is known of the pucks. */
  @property({ attribute: false }) known: PuckAnswers = nothingKnown;
  @property({ attribute: false }) units: UnitPreferences = {};
  @property({ attribute: false }) palette: Palette = lightPalette;
  /** By the motion's name; the first view of its kind when a person chose none. */
  @state() private views: Readonly<Record<string, MotionView>> = {};
  @state() private turbulence: number | null = null;

  private add(kind: MotionKind): void {
    const { motions } = this.inputs;
    emit(this, "puck-change", { motions: [...motions, addedMotion(kind, motions)] });
  }

  /** Puts another motion in the place of one; null takes it out. */
  private replace(index: number, motion: MotionInput | null): void {
    emit(this, "puck-change", {
      motions: this.inputs.motions.flatMap((one, i) => (i !== index ? [one] : motion ? [motion] : [])),
    });
  }

  protected override render() {
    const pucks = shownPucks(this.known);
    const { motions } = this.inputs;
    const turbulences = [...new Set(pucks[0]?.motions.map((one) => one.turbulencePercent) ?? [])];
    const turbulence = turbulences.find((one) => one === this.turbulence) ?? turbulences[0];
    return html`<section class="view-section puck-section" aria-labelledby="puck-motion-heading">
      <div class="head"><h2 id="puck-motion-heading">Motion</h2><span class="marks"><ww-info-mark topic="addedMass"></ww-info-mark></span></div>
      <p class="caution">These are computed motions in water. Never try a flick near heads, hands or feet: a puck of 1.3 kg injures.</p>
      ${
        turbulences.length > 1
          ? html`<label class="choices">Turbulence <select @change=${(event: Event) => {
              this.turbulence = Number((event.target as HTMLSelectElement).value);
            }}>${turbulences.map((one) => html`<option value=${one} ?selected=${one === turbulence}>${Number(one.toPrecision(4))} %</option>`)}</select></label>`
          : nothing
      }
      ${turbulence === undefined ? html`<p class="state" role="status">${pucks[0]?.problem ?? "No motion yet."}</p>` : nothing}
      ${turbulence !== undefined && pucks[0].problem ? html`<p class="error" role="alert">${pucks[0].problem}</p>` : nothing}
      <div class="plots">${repeat(
        motions,
        ({ name }) => name,
        (motion, i) => this.renderMotion(motion, i, turbulence),
      )}</div>
      <div class="choices">
        ${kinds.map((kind) => html`<button type="button" ?disabled=${motions.length >= mostMotions} @click=${() => this.add(kind)}>Add a ${kind}</button>`)}
      </div>
    </section>`;
  }

  private renderMotion(motion: MotionInput, index: number, turbulencePercent: number | undefined) {
    const { motions } = this.inputs;
    const title = motionTitle(motion.kind, motion.name);
    const earlier = motions.slice(0, index).filter(({ kind }) => kind === motion.kind).length;
    return html`<div data-motion=${motion.name}>
      <h3>${title}</h3>
      <ww-puck-motion-inputs
        .motion=${motion}
        .units=${this.units}
        .otherNames=${motions.filter((one) => one !== motion).map(({ name }) => name)}
        @motion-change=${(event: MotionChange) => this.replace(index, event.detail.motion)}
        @motion-remove=${() => this.replace(index, null)}
      ></ww-puck-motion-inputs>
      ${turbulencePercent === undefined ? nothing : this.renderResults(motion, title, earlier, turbulencePercent)}
    </div>`;
  }

  private renderResults({ kind, name }: MotionInput, title: string, earlier: number, turbulencePercent: number) {
    const pucks = shownPucks(this.known);
    if (!pucks[0].motions.some((one) => one.name === name)) return html`<p class="state" role="status">Solving ...</p>`;
    const units = this.units;
    const view = this.views[name] ?? viewsOf[kind][0];
    // Ways through the water are long beside a puck: metres, unless a person chose another unit than the first.
    const chosen = units.length;
    const lengthUnit =
      chosen === undefined || chosen === "mm"
        ? unitChoices.length.find(({ key }) => key === "m")!
        : unitFor("length", units);
    const speedUnit = unitFor("speed", units);
    const figure = puckMotionFigure(
      { pucks, motion: kind, name, view, turbulencePercent, lengthUnit, speedUnit },
      this.palette,
    );
    const rows = motionRows(pucks, name, turbulencePercent, { ...units, length: lengthUnit.key });
    return html`<label class="choices">Show <select aria-label="Show of: ${title}" @change=${(event: Event) => {
      this.views = { ...this.views, [name]: (event.target as HTMLSelectElement).value as MotionView };
    }}>
        ${viewsOf[kind].map((key) => html`<option value=${key} ?selected=${key === view}>${motionViews[key]}</option>`)}
      </select></label>
      <ww-plot id="plot-puck-${kind}${earlier === 0 ? "" : `-${earlier + 1}`}" .figure=${figure}></ww-plot>
      <div class="scroll" tabindex="0" role="region" aria-label="Figures of: ${title}">
        <table class="results">
          <thead><tr><th scope="col">Figure</th>${pucks.map((puck) => html`<th scope="col">${puck.name}</th>`)}</tr></thead>
          <tbody>${rows.map((row) => html`<tr><th scope="row">${row.label}</th>${row.cells.map((cell) => html`<td>${cell}</td>`)}</tr>`)}</tbody>
        </table>
      </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-puck-motion": PuckMotionElement;
  }
}
