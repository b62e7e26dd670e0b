import { html, LitElement, nothing } from "lit";
import { customElement, state } from "lit/decorators.js";
import { sectionToDocument } from "../../../../shared/case/sectionToDocument";
import type { TunnelBlockDocument } from "../../../../shared/jobs/tunnel/tunnelBlockDocument";
import { sectionText } from "../../compare/sectionText";
import { loadDemoCase } from "../../files/demoCases";
import { presentPuck } from "../../puck/puckBench";
import { StoreController } from "../../store/storeController";
import { presentDesign } from "../../store/workbench";
import { leftOutOfTunnel } from "../../tunnel/leftOutOfTunnel";
import { openTunnelCase } from "../../tunnel/openTunnelCase";
import { changeBlock, changeTunnel, tunnelBench } from "../../tunnel/tunnelBench";
import { facilityFields, fullScaleFields, modelFields, spanField } from "../../tunnel/tunnelFields";
import "../tunnel-fields/tunnel-fields";
import { fluidRows } from "./fluidRows";

const demos = [
  ["harbour-tunnel.json", "Demo: a puck in air"],
  ["harbour-tunnel-section.json", "Demo: a section between walls"],
] as const;

/** What stands in the tunnel, the flow that it stands for, and the tunnel with its balance. */
@customElement("ww-tunnel-setup")
export class TunnelSetup extends LitElement {
  private readonly inputs = new StoreController(this, tunnelBench, (value) => value.history.present);
  @state() private problem = "";
  /** What the section that was taken last has lost; said for as long as it is the model. */
  @state() private loss: { readonly of: string; readonly sentence: string } | null = null;

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  private async openDemo(fileName: string): Promise<void> {
    try {
      this.problem = (await openTunnelCase(fileName, await loadDemoCase(fileName)))[0]?.message ?? "";
    } catch {
      this.problem = "The demonstration could not be loaded.";
    }
  }

  /** Another model keeps scale and roughness; surveys belong to a section. */
  private takePuck(): void {
    const { candidate } = presentPuck();
    const { scale, attitude } = this.inputs.value.block.model;
    const model: TunnelBlockDocument["model"] = {
      puck: candidate.spec as NonNullable<TunnelBlockDocument["model"]["puck"]>,
      attitude: attitude ?? "edgeOn",
      scale,
      sandGrainRoughnessMetres: candidate.sandGrainRoughness,
    };
    changeBlock({ model: withoutGaps(model), wakeSurvey: undefined, pressureTaps: undefined });
  }

  private takeSection(): void {
    const design = presentDesign();
    const { scale, spanMetres, sandGrainRoughnessMetres } = this.inputs.value.block.model;
    const section = sectionToDocument(design.section, design.sectionName);
    const sentence = leftOutOfTunnel(design);
    this.loss = sentence === null ? null : { of: JSON.stringify(section), sentence };
    const model: TunnelBlockDocument["model"] = {
      section,
      spanMetres: spanMetres ?? this.inputs.value.block.facility.testSectionHeightMetres,
      scale,
      sandGrainRoughnessMetres,
    };
    changeBlock({ model: withoutGaps(model) });
  }

  protected override render() {
    const { title, block } = this.inputs.value;
    const { model } = block;
    return html`<section class="view-section tunnel-section" aria-labelledby="tunnel-setup-heading">
      <h2 id="tunnel-setup-heading">Test</h2>
      <div class="row"><label for="tunnel-title">Title</label>
        <input id="tunnel-title" type="text" maxlength="200" .value=${title} @change=${(event: Event) => {
          const typed = (event.target as HTMLInputElement).value.trim();
          if (typed !== "") changeTunnel({ title: typed });
        }} /></div>
      <div class="line">${demos.map(([fileName, words]) => html`<button type="button" @click=${() => this.openDemo(fileName)}>${words}</button>`)}</div>
      ${this.problem === "" ? nothing : html`<p class="error" role="alert">${this.problem}</p>`}
      <p class="hint">The data of both demos are invented. Cases are opened and saved under Cases, above.</p>
      <h3>Model</h3>
      <p>${
        model.puck === undefined
          ? html`Section, at full size: ${model.section === undefined ? "none" : sectionText(model.section)}`
          : html`Puck, at full size: ${model.puck.name}, ${mm(model.puck.diameterMetres)} x ${mm(model.puck.thicknessMetres)} mm`
      }</p>
      <div class="line">
        <button type="button" @click=${this.takePuck}>Take the puck view's candidate</button>
        <button type="button" @click=${this.takeSection}>Take the section view's design</button>
      </div>
      <p class="hint" role="status" id="tunnel-left-out">${this.loss !== null && this.loss.of === JSON.stringify(model.section) ? this.loss.sentence : ""}</p>
      ${
        model.puck === undefined
          ? nothing
          : html`<div class="row"><label for="tunnel-attitude">Held</label>
            <select id="tunnel-attitude" @change=${(event: Event) => {
              const attitude = (event.target as HTMLSelectElement).value === "faceOn" ? "faceOn" : "edgeOn";
              changeBlock({ model: { ...model, attitude } });
            }}>
              <option value="edgeOn" ?selected=${model.attitude !== "faceOn"}>edge-on</option>
              <option value="faceOn" ?selected=${model.attitude === "faceOn"}>face-on</option>
            </select></div>`
      }
      <ww-tunnel-fields .fields=${model.puck === undefined ? [spanField, ...modelFields] : modelFields}></ww-tunnel-fields>
      <h3>Flow that the test stands for</h3>
      ${fluidRows(block.fullScale.fluid, "full", "Fluid at full size", (fluid) => changeBlock({ fullScale: { ...block.fullScale, fluid } }))}
      <ww-tunnel-fields .fields=${fullScaleFields}></ww-tunnel-fields>
      <h3>Tunnel and balance</h3>
      ${fluidRows(block.facility.fluid, "tunnel", "Fluid of the tunnel", (fluid) => changeBlock({ facility: { ...block.facility, fluid } }))}
      <ww-tunnel-fields .fields=${facilityFields}></ww-tunnel-fields>
    </section>`;
  }
}

function mm(metres: number): string {
  return String(Number((1000 * metres).toPrecision(4)));
}

/** Without keys of no value, as a case file is written. */
function withoutGaps<T extends object>(record: T): T {
  return Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined)) as T;
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-tunnel-setup": TunnelSetup;
  }
}
