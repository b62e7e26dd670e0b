import { html, LitElement, nothing } from "lit";
import { customElement, state } from "lit/decorators.js";
import { saveFile } from "../../files/saveFile";
import { fileStem, type HandoffKind, handoffFile, handoffKinds } from "../../puck/handoffFiles";
import { puckBench } from "../../puck/puckBench";
import { writeBrief } from "../../puck/puckJobs";
import { StoreController } from "../../store/storeController";
import { panelStyles } from "../../style/panelStyles";
import { controlStyles } from "../../style/sharedStyles";
import type { QuantityChange } from "../quantity-field/quantity-field";
import "../quantity-field/quantity-field";

/** Files of the candidate for the workshop and for a flow computation. */
@customElement("ww-puck-handoff")
export class PuckHandoff extends LitElement {
  static override styles = [controlStyles, panelStyles];

  private readonly bench = new StoreController(this, puckBench, (value) => value);
  @state() private deviation = 1e-5;
  @state() private speed = 3;
  @state() private wantedYPlus = 1;
  @state() private message: { readonly text: string; readonly isProblem: boolean } | null = null;
  @state() private writing = false;

  private save(kind: HandoffKind): void {
    const { measured, history } = this.bench.value;
    if (measured === null) return;
    const date = new Date().toISOString().slice(0, 10);
    const file = handoffFile(kind, history.present, measured.candidate, this.deviation, date);
    if (!file.ok) {
      this.message = { text: file.problem.message, isProblem: true };
      return;
    }
    const { name, mediaType, content, notes } = file.value;
    saveFile(name, mediaType, content);
    this.message = { text: [`${name} is made.`, ...notes].join(" "), isProblem: false };
  }

  private async brief(): Promise<void> {
    this.writing = true;
    const text = await writeBrief(this.speed, this.wantedYPlus);
    this.writing = false;
    if (text === null) return;
    if (!text.ok) {
      this.message = { text: text.problem.message, isProblem: true };
      return;
    }
    const name = `${fileStem(this.bench.value.history.present.candidate.spec.name)}-brief.txt`;
    saveFile(name, "text/plain", text.value);
    this.message = { text: `${name} is made.`, isProblem: false };
  }

  protected override render() {
    const { measured, problem } = this.bench.value;
    const cannot = measured === null || problem !== null;
    return html`<section aria-labelledby="heading">
      <div class="heading"><h2 id="heading">Hand-off</h2></div>
      <div class="stack">
        <p class="hint">Closed outlines and solids in mm. STL carries no unit: say mm with it.</p>
        <ww-quantity-field label="Curves within" kind="length" .value=${this.deviation} .lowest=${0} above-lowest .highest=${0.001} @quantity-change=${(
          event: QuantityChange,
        ) => {
          this.deviation = event.detail.value;
        }}></ww-quantity-field>
        <div class="buttons">
          ${(Object.keys(handoffKinds) as HandoffKind[]).map(
            (kind) =>
              html`<button type="button" data-kind=${kind} ?disabled=${cannot} @click=${() => this.save(kind)}>${handoffKinds[kind].label}</button>`,
          )}
        </div>
        <ww-quantity-field label="Brief: speed" kind="speed" .value=${this.speed} .lowest=${0} above-lowest .highest=${100} @quantity-change=${(
          event: QuantityChange,
        ) => {
          this.speed = event.detail.value;
        }}></ww-quantity-field>
        <ww-quantity-field label="Brief: wanted y+" .value=${this.wantedYPlus} .lowest=${0} above-lowest .highest=${1000} @quantity-change=${(
          event: QuantityChange,
        ) => {
          this.wantedYPlus = event.detail.value;
        }}></ww-quantity-field>
        <div class="buttons">
          <button type="button" data-kind="brief" ?disabled=${cannot || this.writing} @click=${this.brief}>${this.writing ? "Solving ..." : "Brief for a flow computation"}</button>
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
