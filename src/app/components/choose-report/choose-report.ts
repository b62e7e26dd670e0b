import { css, html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import {
  candidateTable,
  costShareTable,
  decidingTable,
  dominatedWords,
  durabilityTables,
  type ShownTable,
  weightTable,
} from "../../puck/chooseTexts";
import { demoPuck } from "../../puck/demoPuck";
import { nothingKnown, type PuckAnswers } from "../../puck/puckAnswers";
import type { PuckInputs } from "../../puck/puckInputs";
import { reportStyles } from "../report/report.styles";

/** Two printed pages on the choice: cautions and decision, then the evidence. Not to be seen on the screen. */
@customElement("ww-choose-report")
export class ChooseReport extends LitElement {
  static override styles = [
    reportStyles,
    css`
      @media print {
        .page {
          break-before: page;
          break-inside: avoid;
        }
        caption {
          text-align: left;
          font-weight: bold;
        }
      }
    `,
  ];

  @property({ attribute: false }) inputs: PuckInputs = demoPuck;
  /** What is known of the pucks. */
  @property({ attribute: false }) known: PuckAnswers = nothingKnown;

  protected override render() {
    const { last } = this.known.choosing;
    const choice = last?.result.choice ?? null;
    if (last === null || choice === null) return nothing;
    const { cost, durability } = last.result;
    const deciding = decidingTable(choice);
    const isOld = last.inputs !== this.inputs;
    const cautions = new Set([...choice.cautions, ...(cost?.cautions ?? []), ...(durability?.cautions ?? [])]);
    return html`<div class="page">
        <h2>The choice: ${last.inputs.title}</h2>
        <ul>${[...cautions].map((caution) => html`<li>${caution}</li>`)}</ul>
        ${isOld ? html`<p><b>Stale:</b> the inputs have changed since.</p>` : nothing}
        <h2>Decision</h2>
        <p><b>${choice.sentence}</b></p>
        <p>${choice.decides?.sentence ?? ""}</p>
        ${choice.problem === null ? [candidateTable(choice), weightTable(choice), ...(deciding === null ? [] : [deciding])].map(tableOf) : nothing}
        ${dominatedWords(choice).map((words) => html`<p>${words}</p>`)}
      </div>
      <div class="page">
        <h2>Evidence</h2>
        ${cost === null ? nothing : html`<p>Prices and times: ${cost.source}.</p>${tableOf(costShareTable(cost))}`}
        ${durability === null ? nothing : durabilityTables(durability).map(tableOf)}
        <h2>What it rests on</h2>
        <ul>${[...choice.notes, ...(cost?.notes ?? []), ...(durability?.notes ?? [])].map((note) => html`<li>${note}</li>`)}</ul>
        <p>Wakewright, ${choice.draws} draws of seed ${choice.seed}, printed ${new Date().toLocaleDateString()}.</p>
      </div>`;
  }
}

function tableOf({ title, columns, rows }: ShownTable) {
  return html`<table>
    <caption>${title}</caption>
    <thead><tr>${columns.map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>
    <tbody>${rows.map(([head, ...cells]) => html`<tr><th scope="row">${head}</th>${cells.map((cell) => html`<td>${cell}</td>`)}</tr>`)}</tbody>
  </table>`;
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-choose-report": ChooseReport;
  }
}
