import { html, nothing } from "lit";
import { pText } from "../../../../shared/jobs/trial/numberWords";
import type { RankingResult, TrialResult } from "../../../../shared/jobs/trial/trialResult";
import { testText } from "../../../../shared/jobs/trial/trialTable";
import { puckLabel } from "../../trial/puckLabel";

/** What is shown, the test, the pucks in order, and the pairs. */
export function rankingTables(result: TrialResult, ranking: RankingResult) {
  const { test, kendallW, problem, missingCells, players, completePlayers } = ranking;
  return html`<div class="verdict">${ranking.conclusions.map((one) => html`<p>${one}</p>`)}${problem === null ? nothing : html`<p>No test: ${problem}.</p>`}</div>
    ${test === null ? nothing : html`<p class="test">${testText(test, kendallW)}.</p>`}
    ${missingCells === 0 ? nothing : html`<p class="hint">${missingCells} cells of ${players} players are missing; ${completePlayers} players scored every puck.</p>`}
    ${standingTable(result, ranking)} ${test === null ? nothing : pairTable(ranking)}`;
}

function standingTable(result: TrialResult, { standings, activity }: RankingResult) {
  const percent = (share: number | null) => (share === null ? "–" : `${(100 * share).toFixed(0)} %`);
  return html`<div class="scroll is-standings" tabindex="0" role="region" aria-label="Pucks in order"><table class="is-wide standings">
    <thead><tr><th scope="col">puck</th><th scope="col">mean rank</th>${activity === null ? nothing : html`<th scope="col">median score</th>`}<th scope="col">strength</th><th scope="col">band</th><th scope="col">first in</th><th scope="col">players</th></tr></thead>
    <tbody>${standings.map(
      (
        one,
      ) => html`<tr><th scope="row">${puckLabel(result, one.code)}</th><td>${fixed(one.meanRank, 2)}</td>${activity === null ? nothing : html`<td>${fixed(one.medianScore, 1)}</td>`}
        <td>${fixed(one.strength, 3)}</td><td>${one.strengthLow === null ? "–" : `${fixed(one.strengthLow, 3)} to ${fixed(one.strengthHigh, 3)}`}</td><td>${percent(one.firstShare)}</td><td>${one.scored}</td></tr>`,
    )}</tbody></table></div>`;
}

function pairTable({ pairs }: RankingResult) {
  return html`<div class="scroll is-pairs" tabindex="0" role="region" aria-label="Pairs"><table class="is-wide pairs">
    <thead><tr><th scope="col">pair</th><th scope="col">for</th><th scope="col">against</th><th scope="col">equal</th><th scope="col">p</th><th scope="col">p, all claims</th><th scope="col">verdict</th></tr></thead>
    <tbody>${pairs.map(
      (
        pair,
      ) => html`<tr><th scope="row">${pair.better} over ${pair.worse}</th><td>${pair.preferBetter}</td><td>${pair.preferWorse}</td><td>${pair.undecided}</td>
        <td>${pText(pair.pValue)}</td><td>${pText(pair.familyP)}</td><td>${pair.isShown ? html`<strong>shown</strong>` : "not shown"}</td></tr>`,
    )}</tbody></table></div>`;
}

function fixed(value: number | null, digits: number): string {
  return value === null ? "–" : value.toFixed(digits);
}
