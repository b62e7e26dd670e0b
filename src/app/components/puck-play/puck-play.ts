import type { Problem } from "../../../../shared/result";
import { demoPuck } from "../../puck/demoPuck";
import type { UnitPreferences } from "../../units/units";
import { emit } from "../../view/emit";
import "../../puck/puckEvents";
import { css, html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { FluidSpec } from "../../../../shared/engine/fluid/fluidSpec";
import type { Orientation } from "../../../../shared/jobs/puck/drag/orientationIndex";
import type { PlayInputs } from "../../puck/puckInputs";
import { fieldsetStyles, panelStyles } from "../../style/panelStyles";
import { controlStyles } from "../../style/sharedStyles";
import { fluidFields, fluidLabels, fluidOfKind } from "../conditions-panel/fluidFields";
import type { ListChange } from "../puck-list-field/puck-list-field";
import "../puck-list-field/puck-list-field";
import type { QuantityChange } from "../quantity-field/quantity-field";
import "../quantity-field/quantity-field";

const shareLabels: Readonly<Record<Orientation, string>> = {
  upright: "Upright, edge-on",
  flat: "Flat, edge-on",
  faceOn: "Face-on",
};

const closeRows = css`
  fieldset {
    gap: 0.3rem;
  }
`;

const gapKey = "puck.play.flatGapMetres";
const sweptKey = "puck.play.sweptGapsMetres";
const spreadKey = "puck.play.frictionSpread";

/** The water, the speeds and how the puck is used: what drag, index and motions rest on. Sends `puck-change`. */
@customElement("ww-puck-play")
export class PuckPlayPanel extends LitElement {
  static override styles = [controlStyles, panelStyles, fieldsetStyles, closeRows];

  @property({ attribute: false }) play: PlayInputs = demoPuck.play;
  /** Why the pucks cannot be made or solved; null when all is well. */
  @property({ attribute: false }) problem: Problem | null = null;
  @property({ attribute: false }) units: UnitPreferences = {};

  private set(change: Partial<PlayInputs>): void {
    emit(this, "puck-change", { play: { ...this.play, ...change } });
  }

  /** The problem where it is about one of these keys of a case, or what lies under them. */
  private problemOf(...keys: readonly string[]): string {
    return keys.some((key) => isUnder(this.problem?.field, key)) ? (this.problem?.message ?? "") : "";
  }

  protected override render() {
    const { play } = this;
    const total = play.shares.upright + play.shares.flat + play.shares.faceOn;
    return html`<section aria-labelledby="heading">
      <div class="heading"><h2 id="heading">Play</h2></div>
      <div class="stack">
        <div class="row">
          <label for="fluid">Fluid</label>
          <select id="fluid" @change=${(event: Event) => this.set({ fluid: fluidOfKind((event.target as HTMLSelectElement).value as FluidSpec["kind"]) })}>
            ${Object.entries(fluidLabels).map(([kind, label]) => html`<option value=${kind} ?selected=${kind === play.fluid.kind}>${label}</option>`)}
          </select>
        </div>
        ${fluidFields(play.fluid).map(
          (field) => html`<ww-quantity-field .units=${this.units}
            label=${field.label}
            kind=${field.kind}
            .value=${field.value}
            .lowest=${field.range.lowest}
            .highest=${field.range.highest}
            .hint=${field.hint}
            .problem=${this.problemOf(`fluid.${field.key}`)}
            @quantity-change=${(event: QuantityChange) => this.set({ fluid: { ...play.fluid, [field.key]: event.detail.value } as FluidSpec })}
          ></ww-quantity-field>`,
        )}
        <ww-puck-list-field .units=${this.units}
          label="Speeds"
          kind="speed"
          .values=${play.speeds}
          .lowest=${0}
          above-lowest
          .highest=${100}
          .most=${20}
          .hint=${play.indexSpeeds === null ? "Drag is solved at these; the index is their average." : "The index is averaged over the case's own choice of them; a change here averages over all."}
          .problem=${this.problemOf("puck.candidates", "puck.baselines", "speedsMetresPerSecond")}
          @list-change=${(event: ListChange) => this.set({ speeds: event.detail.values, indexSpeeds: null })}
        ></ww-puck-list-field>
        <ww-puck-list-field .units=${this.units}
          label="Turbulence intensities"
          kind="fraction"
          .values=${play.turbulenceIntensities}
          .lowest=${0}
          .highest=${0.2}
          .most=${4}
          hint="About 1 % in a calm pool, 5 % in play: estimates, no published value was found."
          @list-change=${(event: ListChange) => this.set({ turbulenceIntensities: event.detail.values })}
        ></ww-puck-list-field>
        <fieldset>
          <legend>Shares of play</legend>
          ${(Object.keys(shareLabels) as Orientation[]).map(
            (orientation) => html`<ww-quantity-field .units=${this.units}
              label=${shareLabels[orientation]}
              data-key=${`share.${orientation}`}
              .value=${play.shares[orientation]}
              .lowest=${0}
              .highest=${1000}
              .hint=${total > 0 ? `${((100 * play.shares[orientation]) / total).toFixed(0)} % of play` : ""}
              .problem=${total > 0 ? "" : "Shares must not all be 0."}
              @quantity-change=${(event: QuantityChange) => this.set({ shares: { ...play.shares, [orientation]: event.detail.value } })}
            ></ww-quantity-field>`,
          )}
          <div class="row">
            <label for="flat-place">Lies flat</label>
            <select id="flat-place" @change=${(event: Event) => this.set({ flatPlace: (event.target as HTMLSelectElement).value as PlayInputs["flatPlace"] })}>
              <option value="floor" ?selected=${play.flatPlace === "floor"}>on the pool floor</option>
              <option value="openWater" ?selected=${play.flatPlace === "openWater"}>in open water</option>
            </select>
          </div>
          ${
            play.flatPlace === "floor"
              ? html`<ww-quantity-field .units=${this.units} label="Gap to the floor" kind="length" .value=${play.flatGap} .lowest=${0} .highest=${10} hint="0 is lying on it; else at least 2 % of the thickness." .problem=${this.problemOf(gapKey)} @quantity-change=${(
                  event: QuantityChange,
                ) => this.set({ flatGap: event.detail.value })}></ww-quantity-field>`
              : nothing
          }
          <ww-puck-list-field .units=${this.units}
            label="Gaps to report too"
            kind="length"
            .values=${play.sweptGaps}
            .fewest=${0}
            .lowest=${0}
            .highest=${10}
            .most=${8}
            hint="Flat over the floor; none needed."
            .problem=${this.problemOf(sweptKey)}
            @list-change=${(event: ListChange) => this.set({ sweptGaps: event.detail.values })}
          ></ww-puck-list-field>
        </fieldset>
        <fieldset>
          <legend>Attitude, friction, trust</legend>
          <ww-puck-list-field .units=${this.units}
            label="Tilts"
            kind="angle"
            .values=${play.tilts}
            .lowest=${0}
            .highest=${Math.PI / 2}
            .most=${8}
            hint="0° edge-on, 90° face-on."
            @list-change=${(event: ListChange) => this.set({ tilts: event.detail.values })}
          ></ww-puck-list-field>
          <ww-quantity-field .units=${this.units} label="Sliding friction" .value=${play.frictionCoefficient} .lowest=${0} .highest=${2} hint="Over the weight in water. 0.22 for hard plastic on wet tile is from memory: measure yours." @quantity-change=${(
            event: QuantityChange,
          ) =>
            this.set({
              frictionCoefficient: event.detail.value,
              frictionSpread: Math.min(play.frictionSpread, event.detail.value),
            })}></ww-quantity-field>
          <ww-quantity-field .units=${this.units} label="Its plus and minus" .value=${play.frictionSpread} .lowest=${0} .highest=${play.frictionCoefficient} .problem=${this.problemOf(spreadKey)} @quantity-change=${(
            event: QuantityChange,
          ) => this.set({ frictionSpread: event.detail.value })}></ww-quantity-field>
          <div class="row">
            <label for="bands">Bands of solved sections</label>
            <select id="bands" @change=${(event: Event) => this.set({ sectionError: (event.target as HTMLSelectElement).value === "own" ? 0.2 : null })}>
              <option value="checked" ?selected=${play.sectionError === null}>by published comparisons</option>
              <option value="own" ?selected=${play.sectionError !== null}>an error of my own</option>
            </select>
          </div>
          ${
            play.sectionError === null
              ? nothing
              : html`<ww-quantity-field .units=${this.units} label="Error of solved sections" kind="fraction" .value=${play.sectionError} .lowest=${0} .highest=${0.9} @quantity-change=${(
                  event: QuantityChange,
                ) => this.set({ sectionError: event.detail.value })}></ww-quantity-field>`
          }
        </fieldset>
        ${this.renderOther()}
      </div>
    </section>`;
  }

  /** A problem of the solution that no field above has told. */
  private renderOther() {
    const { problem } = this;
    const isTold = [gapKey, sweptKey, spreadKey].some((key) => isUnder(problem?.field, key));
    if (problem === null || isTold || !isUnder(problem.field, "puck.play")) return nothing;
    return html`<p class="error" role="alert">${problem.message}</p>`;
  }
}

function isUnder(field: string | undefined, key: string): boolean {
  return field === key || field?.startsWith(`${key}.`) === true || field?.startsWith(`${key}[`) === true;
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-puck-play": PuckPlayPanel;
  }
}
