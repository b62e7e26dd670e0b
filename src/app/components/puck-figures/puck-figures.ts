import { html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import { demoPuck } from "../../puck/demoPuck";
import { figureRows, verdictTexts } from "../../puck/figureRows";
import { nothingKnown, type PuckAnswers } from "../../puck/puckAnswers";
import { judgeParts, sameParts } from "../../puck/puckChanges";
import type { PuckInputs } from "../../puck/puckInputs";
import { puckTableStyles } from "../../puck/puckTableStyles";
import { panelStyles } from "../../style/panelStyles";
import { controlStyles } from "../../style/sharedStyles";
import { tableStyles } from "../../style/tableStyles";
import { puckFiguresStyles } from "./puck-figures.styles";

/** Mass, balance, inertia, areas and the rest, beside the baseline's and the rules' verdict on each. */
@customElement("ww-puck-figures")
export class PuckFiguresElement extends LitElement {
  static override styles = [controlStyles, panelStyles, tableStyles, puckTableStyles, puckFiguresStyles];

  @property({ attribute: false }) inputs: PuckInputs = demoPuck;
  /** What is known of the pucks. */
  @property({ attribute: false }) known: PuckAnswers = nothingKnown;

  protected override render() {
    const { measured, problem, judged } = this.known;
    if (measured === null) {
      return html`<section aria-labelledby="heading"><h2 id="heading">Figures</h2><p class="state" role="status">${problem?.message ?? "Computing ..."}</p></section>`;
    }
    const isJudgedNow = judged !== null && sameParts(judged.inputs, this.inputs, judgeParts);
    const rows = figureRows(measured.candidate, measured.baseline, judged?.judgement ?? null);
    return html`<section aria-labelledby="heading">
      <div class="heading"><h2 id="heading">Figures</h2></div>
      <p class="state" role="status">
        ${problem ? html`<b>Stale:</b> the figures belong to the last puck that could be made. ${problem.message}` : nothing}
      </p>
      <div class=${problem ? "is-stale" : ""}>
        <div class="scroll" tabindex="0" role="region" aria-label="Figures of the puck">
          <table>
            <thead>
              <tr>
                <th scope="col">Figure</th>
                <th scope="col" class="number">${measured.inputs.candidate.spec.name}</th>
                <th scope="col" class="number">${measured.inputs.baseline.spec.name}</th>
                <th scope="col" class="number">change</th>
                <th scope="col">allowed</th>
                <th scope="col">verdict${judged !== null && !isJudgedNow ? " (judging ...)" : ""}</th>
              </tr>
            </thead>
            <tbody>
              ${rows.map(
                (row) => html`<tr data-figure=${row.figure}>
                  <th scope="row">${row.label}</th>
                  <td class="number">${row.candidate}</td>
                  <td class="number">${row.baseline}</td>
                  <td class="number">${row.change}</td>
                  <td class="allowed">${row.rule?.allowed ?? ""}</td>
                  <td class="verdict" data-verdict=${row.rule?.verdict ?? nothing}>${row.rule === null ? "" : verdictTexts[row.rule.verdict]}</td>
                </tr>`,
              )}
            </tbody>
          </table>
        </div>
      </div>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-puck-figures": PuckFiguresElement;
  }
}
