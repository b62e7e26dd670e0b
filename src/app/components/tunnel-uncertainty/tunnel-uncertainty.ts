import { html } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { blockageMethods, blockageMethodWords } from "../../../../shared/jobs/tunnel/blockage";
import { type StatedKey, statedKeys, statedWords } from "../../../../shared/jobs/tunnel/statedUncertainties";
import type { TunnelBlockDocument } from "../../../../shared/jobs/tunnel/tunnelBlockDocument";
import { type StatementKind, statementKinds } from "../../../../shared/statistics/uncertaintyStatement";
import { enterValue, uncertaintyFields } from "../../tunnel/tunnelFields";
import { startTunnel } from "../../tunnel/tunnelInputs";
import type { TunnelTask } from "../../tunnel/tunnelTask";
import { emit } from "../../view/emit";
import { initialTask } from "../../view/taskState";
import "../tunnel-correlations/tunnel-correlations";
import { LightElement } from "../../view/lightElement";
import "../tunnel-fields/tunnel-fields";

const kindWords: Readonly<Record<StatementKind, string>> = {
  standard: "standard",
  normal95: "95 %",
  rectangular: "rectangular",
  triangular: "triangular",
  arcsine: "arcsine",
};

/** What is known of instruments, model and stream, and how the runs are reduced. Sends `tunnel-block` and `tunnel-keys`. */
@customElement("ww-tunnel-uncertainty")
export class TunnelUncertainty extends LightElement {
  @property({ attribute: false }) block: TunnelBlockDocument = startTunnel.block;
  @property({ attribute: false }) solving: TunnelTask = initialTask;
  @state() private refused: Readonly<Record<string, { readonly text: string; readonly message: string }>> = {};

  private enter(key: StatedKey, text: string): void {
    const { [key]: _old, ...others } = this.refused;
    const typed = text.trim().replace(",", ".");
    const kind = this.block.uncertainty?.stated?.[key]?.kind ?? "rectangular";
    const before = this.block.uncertainty?.stated?.[key];
    const statement = typed === "" ? undefined : { ...before, plusMinus: Number(typed), kind };
    const entry = enterValue(this.block, ["uncertainty", "stated", key], statement, statedWords[key]);
    this.refused = entry.ok ? others : { ...others, [key]: { text, message: entry.message } };
    if (entry.ok) emit(this, "tunnel-block", entry.block);
  }

  private enterPart(key: StatedKey, part: "kind" | "degreesOfFreedom", value: unknown, text: string): void {
    const id = `${key}-${part}`;
    const { [id]: _old, ...others } = this.refused;
    const entry = enterValue(this.block, ["uncertainty", "stated", key, part], value, statedWords[key]);
    this.refused = entry.ok ? others : { ...others, [id]: { text, message: entry.message } };
    if (entry.ok) emit(this, "tunnel-block", entry.block);
  }

  protected override render() {
    const block = this.block;
    const { uncertainty, blockageCorrection } = block;
    return html`<section class="view-section tunnel-section" aria-labelledby="tunnel-uncertainty-heading">
      <h2 id="tunnel-uncertainty-heading">Reduction and uncertainty</h2>
      <div class="row"><label for="tunnel-correction">Blockage correction reported</label>
        <select id="tunnel-correction" @change=${(event: Event) => {
          const chosen = blockageMethods.find((method) => method === (event.target as HTMLSelectElement).value);
          emit(this, "tunnel-keys", { blockageCorrection: chosen });
        }}>
          <option value="" ?selected=${blockageCorrection === undefined}>by the model</option>
          ${blockageMethods.map((method) => html`<option value=${method} ?selected=${method === blockageCorrection}>${blockageMethodWords[method]}</option>`)}
        </select></div>
      <div class="row"><label for="tunnel-repeatability">Scatter of repeats</label>
        <select id="tunnel-repeatability" @change=${(event: Event) => {
          const repeatability = (event.target as HTMLSelectElement).value === "pooled" ? "pooled" : "perPoint";
          emit(this, "tunnel-keys", { uncertainty: { ...uncertainty, repeatability } });
        }}>
          <option value="perPoint" ?selected=${uncertainty?.repeatability !== "pooled"}>each point's own</option>
          <option value="pooled" ?selected=${uncertainty?.repeatability === "pooled"}>pooled over all points</option>
        </select></div>
      <ww-tunnel-fields .block=${block} .fields=${uncertaintyFields}></ww-tunnel-fields>
      <details ?open=${uncertainty?.stated !== undefined}>
        <summary>Stated uncertainties: plus-minus, its kind, degrees of freedom</summary>
        ${statedKeys.map((key) => this.renderStatement(key))}
        <p class="hint">Empty is not stated: taken as exact, and said so. Degrees of freedom: empty is endless.</p>
      </details>
      <ww-tunnel-correlations .block=${block} .solving=${this.solving}></ww-tunnel-correlations>
    </section>`;
  }

  private renderStatement(key: StatedKey) {
    const statement = this.block.uncertainty?.stated?.[key];
    const refusals = [key, `${key}-degreesOfFreedom`].flatMap((id) => this.refused[id] ?? []);
    return html`<div class="row is-tall"><label for="stated-${key}">${statedWords[key]}</label>
        <span class="triple">
          <input id="stated-${key}" type="text" inputmode="decimal" autocomplete="off" placeholder="exact" aria-invalid=${key in this.refused}
            .value=${this.refused[key]?.text ?? (statement === undefined ? "" : String(statement.plusMinus))}
            @change=${(event: Event) => this.enter(key, (event.target as HTMLInputElement).value)} />
          <select aria-label="Kind of: ${statedWords[key]}" ?disabled=${statement === undefined} @change=${(event: Event) => this.enterPart(key, "kind", (event.target as HTMLSelectElement).value, "")}>
            ${statementKinds.map((kind) => html`<option value=${kind} ?selected=${kind === (statement?.kind ?? "rectangular")}>${kindWords[kind]}</option>`)}
          </select>
          <input type="text" inputmode="decimal" autocomplete="off" placeholder="endless" aria-label="Degrees of freedom of: ${statedWords[key]}" ?disabled=${statement === undefined}
            .value=${this.refused[`${key}-degreesOfFreedom`]?.text ?? String(statement?.degreesOfFreedom ?? "")}
            @change=${(event: Event) => {
              const text = (event.target as HTMLInputElement).value;
              const typed = text.trim().replace(",", ".");
              this.enterPart(key, "degreesOfFreedom", typed === "" ? undefined : Number(typed), text);
            }} />
        </span></div>
      ${refusals.map(({ message }) => html`<p class="error" role="alert">${message}</p>`)}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-tunnel-uncertainty": TunnelUncertainty;
  }
}
