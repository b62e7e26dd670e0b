import { html, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { fileNameOf } from "../../../../shared/jobs/handoff/handoffFiles";
import type { TunnelPlan } from "../../../../shared/jobs/tunnel/plannedTest";
import { runSheetCsv } from "../../../../shared/jobs/tunnel/runSheetCsv";
import { runSheetHeading } from "../../../../shared/jobs/tunnel/runSheetFiles";
import { runSheetHtml } from "../../../../shared/jobs/tunnel/runSheetHtml";
import { printPage } from "../../files/printPage";
import { saveFile } from "../../files/saveFile";
import { planFields } from "../../tunnel/tunnelFields";
import { startTunnel, type TunnelInputs } from "../../tunnel/tunnelInputs";
import type { TunnelTask } from "../../tunnel/tunnelTask";
import { emit } from "../../view/emit";
import { LightElement } from "../../view/lightElement";
import { initialTask } from "../../view/taskState";
import "../tunnel-fields/tunnel-fields";

/** The plan: speeds, repeats and order, and its run sheet on paper, as a file, or straight into the data. Sends `tunnel-keys` and `tunnel-fill-in`. */
@customElement("ww-tunnel-plan")
export class TunnelPlanElement extends LightElement {
  @property({ attribute: false }) inputs: TunnelInputs = startTunnel;
  @property({ attribute: false }) solving: TunnelTask = initialTask;
  @state() private mayReplace = false;

  private fillIn(plan: TunnelPlan): void {
    const hasData = this.inputs.block.runs !== undefined;
    if (hasData && !this.mayReplace) {
      this.mayReplace = true;
      return;
    }
    this.mayReplace = false;
    emit(this, "tunnel-fill-in", plan);
  }

  protected override render() {
    const { block, title } = this.inputs;
    const solved = this.solving.last;
    const plan = solved?.result.plan ?? null;
    return html`<section class="view-section tunnel-section" aria-labelledby="tunnel-plan-heading">
      <h2 id="tunnel-plan-heading">Plan</h2>
      <div class="fields">
        <ww-tunnel-fields .block=${block} .fields=${planFields}></ww-tunnel-fields>
        <div class="row"><label for="tunnel-order">Order</label>
          <select id="tunnel-order" @change=${(event: Event) => {
            const order = (event.target as HTMLSelectElement).value === "randomised" ? "randomised" : "sweeps";
            emit(this, "tunnel-keys", { plan: { ...block.plan, order } });
          }}>
            <option value="sweeps" ?selected=${block.plan?.order !== "randomised"}>sweeps up and down</option>
            <option value="randomised" ?selected=${block.plan?.order === "randomised"}>points at random, in blocks</option>
          </select></div>
        <label class="hint"><input type="checkbox" .checked=${block.plan?.bothDirections ?? true} @change=${(event: Event) => emit(this, "tunnel-keys", { plan: { ...block.plan, bothDirections: (event.target as HTMLInputElement).checked } })} />
          Both directions of speed, for the hysteresis of the crisis</label>
      </div>
      ${
        plan === null || solved === null
          ? html`<p class="hint">No plan yet.</p>`
          : html`<p id="plan-summary"><b>${plan.runs.length} runs</b>, about ${short(plan.minutes / 60)} hours.</p>
            <div class="line">
              <button type="button" @click=${() => printPage(runSheetHtml(plan, runSheetHeading(solved.result, title)))}>Print the run sheet</button>
              <button type="button" @click=${() => saveFile(`${fileNameOf(title)}-run-sheet.csv`, "text/csv", runSheetCsv(plan))}>Save the run sheet as CSV</button>
              <button type="button" @click=${() => this.fillIn(plan)}>${this.mayReplace ? "Replace the data by the empty sheet" : "Fill it in under Data"}</button>
            </div>
            ${this.mayReplace ? html`<p class="error" role="alert">There are data already: press again to replace them, or save the case first. Undo brings them back.</p>` : nothing}
            <div class="scroll" tabindex="0" role="region" aria-label="Planned speeds">
              <table class="results" id="plan-table">
                <thead><tr><th scope="col">U, m/s</th><th scope="col">Re</th><th scope="col">Force, N</th><th scope="col">Repeats</th><th scope="col">Half-width of the mean, %</th></tr></thead>
                <tbody>${plan.speeds.map(
                  (row) =>
                    html`<tr><th scope="row">${short(row.speedMetresPerSecond)}</th><td>${row.reynolds.toExponential(2)}</td><td>${row.expectedForceNewtons === null ? "–" : `${short(row.expectedForceNewtons.expected)} (${short(row.expectedForceNewtons.low)} to ${short(row.expectedForceNewtons.high)})`}</td><td>${row.repeats}</td><td>${row.halfWidthPercent === null ? "–" : short(row.halfWidthPercent)}</td></tr>`,
                )}</tbody>
              </table>
            </div>
            ${plan.notes.length === 0 ? nothing : html`<ul class="hint">${plan.notes.map((note) => html`<li>${note}</li>`)}</ul>`}`
      }
    </section>`;
  }
}

function short(value: number): string {
  return String(Number(value.toPrecision(3)));
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-tunnel-plan": TunnelPlanElement;
  }
}
