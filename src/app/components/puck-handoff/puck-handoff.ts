import { html, LitElement, nothing } from "lit";
import { customElement, state } from "lit/decorators.js";
import type { HandoffFile } from "../../../../shared/jobs/handoff/handoffFile";
import { saveFile } from "../../files/saveFile";
import { puckBench } from "../../puck/puckBench";
import type { PuckInputs } from "../../puck/puckInputs";
import { makeHandoff } from "../../puck/puckJobs";
import { StoreController } from "../../store/storeController";
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

interface Made {
  readonly inputs: PuckInputs;
  /** null where they could not be made. */
  readonly files: Promise<readonly HandoffFile[] | null>;
}

/** Files of the candidate for the workshop and for a flow computation, the same as the command line's. */
@customElement("ww-puck-handoff")
export class PuckHandoff extends LitElement {
  static override styles = [controlStyles, panelStyles];

  private readonly bench = new StoreController(this, puckBench, (value) => value);
  @state() private deviation = 1e-5;
  @state() private speed = 3;
  @state() private wantedYPlus = 1;
  @state() private message: { readonly text: string; readonly isProblem: boolean } | null = null;
  private made: Made | null = null;

  private change(set: () => void): void {
    set();
    this.made = null;
  }

  /** All files of the present candidate, made once for it, however many of them are asked for meanwhile. */
  private files(): Promise<readonly HandoffFile[] | null> {
    const inputs = this.bench.value.history.present;
    if (this.made?.inputs !== inputs) this.made = { inputs, files: this.make(inputs) };
    return this.made.files;
  }

  private async make(inputs: PuckInputs): Promise<readonly HandoffFile[] | null> {
    this.message = { text: "Making the files ...", isProblem: false };
    const answer = await makeHandoff(
      { deviationMetres: this.deviation, wantedYPlus: this.wantedYPlus },
      {
        speed: this.speed,
        turbulenceIntensity: inputs.play.turbulenceIntensities[0],
        date: new Date().toISOString().slice(0, 10),
      },
    );
    if (answer?.ok) return answer.value;
    this.made = null;
    this.message = answer === null ? null : { text: answer.problem.message, isProblem: true };
    return null;
  }

  private async save(ending: string, mediaType: string): Promise<void> {
    const files = await this.files();
    if (files === null) return;
    const file = files.find(({ name }) => name.endsWith(ending));
    if (file === undefined) {
      this.message = { text: "This puck has no such file: it has no core.", isProblem: true };
      return;
    }
    saveFile(file.name, mediaType, file.content);
    this.message = { text: `${file.name} is made. Hand the cautions on with it.`, isProblem: false };
  }

  protected override render() {
    const { measured, problem } = this.bench.value;
    const cannot = measured === null || problem !== null;
    return html`<section aria-labelledby="heading">
      <div class="heading"><h2 id="heading">Hand-off</h2></div>
      <div class="stack">
        <p class="hint">Closed outlines and solids in mm; grooves and the core are not in the solids. STL carries no unit: say mm with it.</p>
        <ww-quantity-field label="Curves within" kind="length" .value=${this.deviation} .lowest=${0} above-lowest .highest=${0.001} @quantity-change=${(
          event: QuantityChange,
        ) =>
          this.change(() => {
            this.deviation = event.detail.value;
          })}></ww-quantity-field>
        <ww-quantity-field label="Flow brief: speed" kind="speed" .value=${this.speed} .lowest=${0} above-lowest .highest=${100} @quantity-change=${(
          event: QuantityChange,
        ) =>
          this.change(() => {
            this.speed = event.detail.value;
          })}></ww-quantity-field>
        <ww-quantity-field label="Flow brief: wanted y+" .value=${this.wantedYPlus} .lowest=${0} above-lowest .highest=${1000} @quantity-change=${(
          event: QuantityChange,
        ) =>
          this.change(() => {
            this.wantedYPlus = event.detail.value;
          })}></ww-quantity-field>
        <div class="buttons">
          ${kinds.map(
            ({ ending, label, mediaType }) =>
              html`<button type="button" data-ending=${ending} ?disabled=${cannot} @click=${() => this.save(ending, mediaType)}>${label}</button>`,
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
