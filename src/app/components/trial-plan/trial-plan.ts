import { html } from "lit";
import { customElement, property } from "lit/decorators.js";
import { planResult } from "../../../../shared/jobs/trial/planResult";
import { codeKeyCsv, scoreSheetCsv } from "../../../../shared/jobs/trial/scoreSheetCsv";
import { codeKeyHtml, scoreSheetHtml } from "../../../../shared/jobs/trial/scoreSheetHtml";
import { trialCautions } from "../../../../shared/jobs/trial/trialCautions";
import { printPage } from "../../files/printPage";
import { saveFile } from "../../files/saveFile";
import { planOf, setupOf } from "../../trial/trialBlock";
import { newTrial, type TrialInputs } from "../../trial/trialInputs";
import { LightElement } from "../../view/lightElement";

/** The plan: who plays which code when, how even that is, and the sheets. */
@customElement("ww-trial-plan")
export class TrialPlanSection extends LightElement {
  @property({ attribute: false }) inputs: TrialInputs = newTrial;

  protected override render() {
    const inputs = this.inputs;
    const setup = setupOf(inputs);
    const plan = planOf(inputs);
    const { sentence, sessions } = planResult({ setup, plan });
    const sheets = () => scoreSheetHtml(inputs.title, setup, plan);
    return html`<section class="view-section trial-section" aria-labelledby="trial-plan-heading">
      <h2 id="trial-plan-heading">Plan</h2>
      <p class="verdict" role="status">${sentence}</p>
      <div class="line">
        <button type="button" class="is-main" @click=${() => printPage(sheets())}>Print score sheets</button>
        <button type="button" @click=${() => saveFile("score-sheets.html", "text/html", sheets())}>Save them as a page</button>
        <button type="button" @click=${() => saveFile("score-sheets.csv", "text/csv", scoreSheetCsv({ plan: { sessions } }))}>Save a table to fill in</button>
      </div>
      <div class="line">
        <button type="button" @click=${() => printPage(codeKeyHtml(inputs.title, setup))}>Print the code key</button>
        <button type="button" @click=${() => saveFile("code-key.csv", "text/csv", codeKeyCsv(setup.pucks))}>Save the code key</button>
      </div>
      <p class="hint">Keep the key from players and from whoever collects or types in scores.</p>
      <details class="screen"><summary>Orders of play</summary>${this.renderOrders(inputs, sessions)}</details>
      ${trialCautions.map((caution) => html`<p class="caution">${caution}</p>`)}
    </section>`;
  }

  private renderOrders(inputs: TrialInputs, sessions: ReturnType<typeof planResult>["sessions"]) {
    return html`<div class="scroll" tabindex="0" role="region" aria-label="Orders of play"><table class="is-wide">
      <thead><tr><th scope="col">player</th><th scope="col">activity</th>${inputs.repeats > 1 ? html`<th scope="col">time</th>` : ""}${inputs.pucks.map((_, i) => html`<th scope="col">${i + 1}</th>`)}</tr></thead>
      <tbody>${sessions.map(
        ({ player, activity, repeat, codes }) =>
          html`<tr><th scope="row">${player}</th><td>${activity}</td>${inputs.repeats > 1 ? html`<td>${repeat}</td>` : ""}${codes.map((code) => html`<td class="code">${code}</td>`)}</tr>`,
      )}</tbody></table></div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-trial-plan": TrialPlanSection;
  }
}
