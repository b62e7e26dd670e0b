import { html, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import { sectionText } from "../../compare/sectionText";
import { facilityFields, fullScaleFields, modelFields, spanField } from "../../tunnel/tunnelFields";
import { startTunnel, type TunnelInputs } from "../../tunnel/tunnelInputs";
import { emit } from "../../view/emit";
import "../tunnel-fields/tunnel-fields";
import { LightElement } from "../../view/lightElement";
import { fluidRows } from "./fluidRows";

const demos = [
  ["harbour-tunnel.json", "Demo: a puck in air"],
  ["harbour-tunnel-section.json", "Demo: a section between walls"],
] as const;

/** What stands in the tunnel, the flow that it stands for, and the tunnel with its balance. Sends `tunnel-title`, `tunnel-demo`, `tunnel-model` and `tunnel-keys`. */
@customElement("ww-tunnel-setup")
export class TunnelSetup extends LightElement {
  @property({ attribute: false }) inputs: TunnelInputs = startTunnel;
  /** Why a demo could not be opened; empty when it could. */
  @property() problem = "";
  /** What the section that was taken as the model has lost; empty when nothing. */
  @property({ attribute: "left-out" }) leftOut = "";

  protected override render() {
    const { title, block } = this.inputs;
    const { model } = block;
    return html`<section class="view-section tunnel-section" aria-labelledby="tunnel-setup-heading">
      <h2 id="tunnel-setup-heading">Test</h2>
      <div class="row"><label for="tunnel-title">Title</label>
        <input id="tunnel-title" type="text" maxlength="200" .value=${title} @change=${(event: Event) => {
          const typed = (event.target as HTMLInputElement).value.trim();
          if (typed !== "") emit(this, "tunnel-title", typed);
        }} /></div>
      <div class="line">${demos.map(([fileName, words]) => html`<button type="button" @click=${() => emit(this, "tunnel-demo", fileName)}>${words}</button>`)}</div>
      ${this.problem === "" ? nothing : html`<p class="error" role="alert">${this.problem}</p>`}
      <p class="hint">The data of both demos are invented. Cases are opened and saved under Cases, above.</p>
      <h3>Model</h3>
      <p>${
        model.puck === undefined
          ? html`Section, at full size: ${model.section === undefined ? "none" : sectionText(model.section)}`
          : html`Puck, at full size: ${model.puck.name}, ${mm(model.puck.diameterMetres)} x ${mm(model.puck.thicknessMetres)} mm`
      }</p>
      <div class="line">
        <button type="button" @click=${() => emit(this, "tunnel-model", "candidate")}>Take the puck view's candidate</button>
        <button type="button" @click=${() => emit(this, "tunnel-model", "design")}>Take the section view's design</button>
      </div>
      <p class="hint" role="status" id="tunnel-left-out">${this.leftOut}</p>
      ${
        model.puck === undefined
          ? nothing
          : html`<div class="row"><label for="tunnel-attitude">Held</label>
            <select id="tunnel-attitude" @change=${(event: Event) => {
              const attitude = (event.target as HTMLSelectElement).value === "faceOn" ? "faceOn" : "edgeOn";
              emit(this, "tunnel-keys", { model: { ...model, attitude } });
            }}>
              <option value="edgeOn" ?selected=${model.attitude !== "faceOn"}>edge-on</option>
              <option value="faceOn" ?selected=${model.attitude === "faceOn"}>face-on</option>
            </select></div>`
      }
      <ww-tunnel-fields .block=${block} .fields=${model.puck === undefined ? [spanField, ...modelFields] : modelFields}></ww-tunnel-fields>
      <h3>Flow that the test stands for</h3>
      ${fluidRows(block.fullScale.fluid, "full", "Fluid at full size", (fluid) => emit(this, "tunnel-keys", { fullScale: { ...block.fullScale, fluid } }))}
      <ww-tunnel-fields .block=${block} .fields=${fullScaleFields}></ww-tunnel-fields>
      <h3>Tunnel and balance</h3>
      ${fluidRows(block.facility.fluid, "tunnel", "Fluid of the tunnel", (fluid) => emit(this, "tunnel-keys", { facility: { ...block.facility, fluid } }))}
      <ww-tunnel-fields .block=${block} .fields=${facilityFields}></ww-tunnel-fields>
    </section>`;
  }
}

function mm(metres: number): string {
  return String(Number((1000 * metres).toPrecision(4)));
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-tunnel-setup": TunnelSetup;
  }
}
