import type { UnitPreferences } from "../../units/units";
import { emit } from "../../view/emit";
import "../../puck/puckEvents";
import { html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { panelStyles } from "../../style/panelStyles";
import { controlStyles } from "../../style/sharedStyles";
import type { QuantityChange } from "../quantity-field/quantity-field";
import "../quantity-field/quantity-field";

/** The files of a hand-off by how their names end, in the order of the buttons. */
const kinds: readonly { readonly ending: string; readonly label: string; readonly mediaType: string }[] = [
  { ending: "-profile.csv", label: "Profile, CSV", mediaType: "text/csv" },
  { ending: "-profile.dxf", label: "Profile, DXF", mediaType: "image/vnd.dxf" },
  { ending: "-profile.svg", label: "Profile, SVG", mediaType: "image/svg+xml" },
  { ending: "-plan.csv", label: "Plan, CSV", mediaType: "text/csv" },
  { ending: "-plan.dxf", label: "Plan, DXF", mediaType: "image/vnd.dxf" },
  { ending: "-plan.svg", label: "Plan, SVG", mediaType: "image/svg+xml" },
  { ending: "-core.dxf", label: "Core, DXF", mediaType: "image/vnd.dxf" },
  { ending: "-solid.stl", label: "Solid, STL", mediaType: "model/stl" },
  { ending: "-solid.3mf", label: "Solid, 3MF", mediaType: "model/3mf" },
  { ending: "-profile-brief.txt", label: "Flow brief, profile", mediaType: "text/plain" },
  { ending: "-plan-brief.txt", label: "Flow brief, plan", mediaType: "text/plain" },
  { ending: "-drawing.svg", label: "Drawing with tolerances", mediaType: "image/svg+xml" },
  { ending: "-read-first.txt", label: "Read first: cautions", mediaType: "text/plain" },
];

/** Files of the candidate for the workshop and for a flow computation, the same as the command line's. Sends `puck-handoff`. */
@customElement("ww-puck-handoff")
export class PuckHandoff extends LitElement {
  static override styles = [controlStyles, panelStyles];

  /** Of the stream, a fraction. */
  @property({ type: Number }) turbulenceIntensity = 0.01;
  /** True while the puck cannot be made. */
  @property({ type: Boolean }) disabled = false;
  /** What became of the last request. */
  @property({ attribute: false }) message: { readonly text: string; readonly isProblem: boolean } | null = null;
  @property({ attribute: false }) units: UnitPreferences = {};
  @state() private deviation = 1e-5;
  @state() private speed = 3;
  @state() private wantedYPlus = 1;

  private ask(ending: string, mediaType: string): void {
    emit(this, "puck-handoff", {
      settings: { deviationMetres: this.deviation, wantedYPlus: this.wantedYPlus },
      request: {
        speed: this.speed,
        turbulenceIntensity: this.turbulenceIntensity,
        date: new Date().toISOString().slice(0, 10),
      },
      ending,
      mediaType,
    });
  }

  protected override render() {
    return html`<section aria-labelledby="heading">
      <div class="heading"><h2 id="heading">Hand-off</h2></div>
      <div class="stack">
        <p class="hint">Closed outlines and solids in mm; grooves and the core are not in the solids. STL carries no unit: say mm with it.</p>
        <ww-quantity-field .units=${this.units} label="Curves within" kind="length" .value=${this.deviation} .lowest=${0} above-lowest .highest=${0.001} @quantity-change=${(
          event: QuantityChange,
        ) => {
          this.deviation = event.detail.value;
        }}></ww-quantity-field>
        <ww-quantity-field .units=${this.units} label="Flow brief: speed" kind="speed" .value=${this.speed} .lowest=${0} above-lowest .highest=${100} @quantity-change=${(
          event: QuantityChange,
        ) => {
          this.speed = event.detail.value;
        }}></ww-quantity-field>
        <ww-quantity-field .units=${this.units} label="Flow brief: wanted y+" .value=${this.wantedYPlus} .lowest=${0} above-lowest .highest=${1000} @quantity-change=${(
          event: QuantityChange,
        ) => {
          this.wantedYPlus = event.detail.value;
        }}></ww-quantity-field>
        <div class="buttons">
          ${kinds.map(
            ({ ending, label, mediaType }) =>
              html`<button type="button" data-ending=${ending} ?disabled=${this.disabled} @click=${() => this.ask(ending, mediaType)}>${label}</button>`,
          )}
        </div>
        ${this.message ? html`<p class=${this.message.isProblem ? "error" : "hint"} role=${this.message.isProblem ? "alert" : "status"}>${this.message.text}</p>` : nothing}
      </div>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-puck-handoff": PuckHandoff;
  }
}
