import { html, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import { firstMotions, type MotionInput } from "../../puck/motionInputs";
import type { QuantityKind, UnitPreferences } from "../../units/units";
import { emit, type PageEvent } from "../../view/emit";
import type { ListChange } from "../puck-list-field/puck-list-field";
import "../puck-list-field/puck-list-field";
import { LightElement } from "../../view/lightElement";
import type { QuantityChange } from "../quantity-field/quantity-field";
import "../quantity-field/quantity-field";

/** A motion that a person changed. */
export type MotionChange = PageEvent<"motion-change">;

const rightAngle = Math.PI / 2;
const farthest = 100;

/** What one motion starts from. Sends `motion-change` and `motion-remove`. In the light DOM, for the view's styles. */
@customElement("ww-puck-motion-inputs")
export class PuckMotionInputs extends LightElement {
  @property({ attribute: false }) motion: MotionInput = firstMotions.slide;
  @property({ attribute: false }) units: UnitPreferences = {};
  /** Names of the other motions: results are told apart by them. */
  @property({ attribute: false }) otherNames: readonly string[] = [];

  private change(change: Readonly<Record<string, unknown>>): void {
    const motion = { ...this.motion, ...change } as MotionInput;
    emit(this, "motion-change", { motion });
  }

  private rename(event: Event): void {
    const input = event.target as HTMLInputElement;
    const name = input.value.trim();
    if (name === "" || this.otherNames.includes(name)) input.value = this.motion.name;
    else this.change({ name });
  }

  private field(key: string, label: string, kind: QuantityKind, value: number, lowest: number, highest: number) {
    return html`<ww-quantity-field .units=${this.units}
      label=${label}
      kind=${kind}
      data-key=${key}
      .value=${value}
      .lowest=${lowest}
      .highest=${highest}
      .aboveLowest=${lowest === 0}
      @quantity-change=${(event: QuantityChange) => this.change({ [key]: event.detail.value })}
    ></ww-quantity-field>`;
  }

  private choice(key: string, label: string, value: string, options: readonly (readonly [string, string])[]) {
    return html`<label class="line">${label}
      <select data-key=${key} @change=${(event: Event) => this.change({ [key]: (event.target as HTMLSelectElement).value })}>
        ${options.map(([one, text]) => html`<option value=${one} ?selected=${one === value}>${text}</option>`)}
      </select>
    </label>`;
  }

  protected override render() {
    const { motion } = this;
    return html`<fieldset>
      <legend>What the ${motion.kind} starts from</legend>
      <label class="line">Name <input type="text" maxlength="60" .value=${motion.name} @change=${this.rename} /></label>
      ${this.renderOwn()}
      <ww-puck-list-field .units=${this.units}
        label="Tell time and speed at"
        kind="length"
        .values=${motion.markDistances}
        .highest=${farthest}
        above-lowest
        .fewest=${0}
        @list-change=${(event: ListChange) => this.change({ markDistances: event.detail.values })}
      ></ww-puck-list-field>
      <div>
        <button type="button" class="is-quiet" ?disabled=${this.otherNames.length === 0} @click=${() => emit(this, "motion-remove")}>
          Remove<span class="unseen"> ${motion.name}</span>
        </button>
      </div>
    </fieldset>`;
  }

  private renderOwn() {
    const { motion } = this;
    switch (motion.kind) {
      case "slide":
        return this.field("startSpeed", "Speed at the start", "speed", motion.startSpeed, 0, 20);
      case "sink":
        return html`${this.field("depth", "Way to the floor", "length", motion.depth, 0, farthest)}
          ${this.choice("attitude", "The puck falls", motion.attitude, [
            ["faceOn", "face-on"],
            ["edgeOn", "edge-on"],
          ])}`;
      case "flick":
        return html`${this.field("startSpeed", "Speed at the start", "speed", motion.startSpeed, 0, 20)}
          ${this.field("elevation", "Over the horizontal", "angle", motion.elevation, -rightAngle, rightAngle)}
          ${this.field("startHeight", "Height at the start", "length", motion.startHeight, 0, farthest)}
          ${this.field("waterDepth", "Depth of the water", "length", motion.waterDepth, 0, farthest)}
          ${
            motion.startHeight < motion.waterDepth
              ? nothing
              : html`<p class="error" role="alert">The height at the start must be below the depth of the water.</p>`
          }
          ${this.choice("attitude", "The puck lies", motion.attitude, [
            ["edgeAlongPath", "along its path"],
            ["fixed", "as its spin holds it"],
          ])}
          ${motion.attitude === "fixed" ? this.field("pitch", "Held at, front up", "angle", motion.pitch, -rightAngle, rightAngle) : nothing}`;
    }
  }
}

declare global {
  interface PageEvents {
    "motion-change": { readonly motion: MotionInput };
    "motion-remove": undefined;
  }
  interface HTMLElementTagNameMap {
    "ww-puck-motion-inputs": PuckMotionInputs;
  }
}
