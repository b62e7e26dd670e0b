import { html, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { standardAnalysis } from "../../../../shared/jobs/trial/resolveTrial";
import { trialCsv } from "../../../../shared/jobs/trial/trialCsv";
import type { RankingResult, TrialResult } from "../../../../shared/jobs/trial/trialResult";
import { saveFile } from "../../files/saveFile";
import type { PlotFigure } from "../../plots/plotFigure";
import { lightPalette, type Palette } from "../../style/palette";
import { rankingTitle } from "../../trial/puckLabel";
import { rankFigure } from "../../trial/rankFigure";
import { newTrial, type TrialInputs } from "../../trial/trialInputs";
import type { RankingTask } from "../../trial/trialTasks";
import { emit } from "../../view/emit";
import { initialTask } from "../../view/taskState";
import { problemList } from "../fault-list/faultList";
import { loadPlotly } from "../plot/loadPlotly";
import "../plot/plot";
import { LightElement } from "../../view/lightElement";
import { rankingTables } from "./rankingTables";

/** The ranking of one activity or of all: strengths with bands, tests, pairs, and what is shown. Sends `trial-change` and `trial-activity`. */
@customElement("ww-trial-ranking")
export class TrialRanking extends LightElement {
  @property({ attribute: false }) inputs: TrialInputs = newTrial;
  @property({ attribute: false }) ranking: RankingTask = initialTask;
  /** Id of the activity that is looked at; null for all. */
  @property({ type: Number }) activity: number | null = null;
  @property({ attribute: false }) palette: Palette = lightPalette;
  @state() private showsOverall = true;
  @state() private pictures: readonly string[] = [];

  /** Draws the plots for paper. */
  async preparePictures(): Promise<void> {
    const result = this.ranking.last?.result;
    try {
      this.pictures = await Promise.all(
        (result?.rankings ?? []).map((ranking) => picture(this.figure(result as TrialResult, ranking, lightPalette))),
      );
    } catch {
      this.pictures = [];
    }
    await this.updateComplete;
    await Promise.all([...this.querySelectorAll("img")].map((image) => image.decode().catch(() => {})));
  }

  private figure(result: TrialResult, ranking: RankingResult, palette: Palette): PlotFigure {
    const { analysis } = this.inputs;
    return rankFigure(result, ranking, analysis?.bandPercent ?? 100 * standardAnalysis.bandCoverage, palette);
  }

  protected override render() {
    const { inputs, activity } = this;
    const { last: answer, problems, status } = this.ranking;
    const isWorking = status === "pending";
    return html`<section class="view-section trial-section" aria-labelledby="trial-ranking-heading" aria-busy=${isWorking}>
      <h2 id="trial-ranking-heading">Ranking</h2>
      ${problemList(problems)}
      <div class="line">
        <button type="button" aria-pressed=${inputs.isUnblinded} @click=${() => emit(this, "trial-change", { isUnblinded: !inputs.isUnblinded })}>${inputs.isUnblinded ? "Unblinded: hide the names" : "Unblind: show names and drag"}</button>
        ${answer === null ? nothing : html`<button type="button" @click=${() => saveFile("trial-ranking.csv", "text/csv", trialCsv(answer.result))}>Save the ranking (CSV)</button>`}
      </div>
      ${inputs.isUnblinded ? nothing : html`<p class="hint">Blind: judge what is shown before you look at the names. Unblind once the last score is in.</p>`}
      ${answer === null ? html`<p role="status">${isWorking ? "Ranking ..." : "No ranking yet."}</p>` : this.renderAnswer(answer.result, answer.inputs !== inputs, activity)}
    </section>`;
  }

  private renderAnswer(result: TrialResult, isStale: boolean, activity: number | null) {
    const { rankings } = result;
    if (rankings.length === 0) return html`<p role="status">No scores yet.</p>`;
    const { activities } = this.inputs;
    const name = activities.find(({ id }) => id === activity)?.name ?? null;
    const chosen =
      this.showsOverall || name === null
        ? rankings[rankings.length - 1]
        : rankings.find((one) => one.activity === name);
    const shown = chosen ?? rankings[rankings.length - 1];
    return html`<div class="line screen" role="group" aria-label="Ranking of">
        ${rankings.map(
          (one) =>
            html`<button type="button" aria-pressed=${one === shown} @click=${() => {
              this.showsOverall = one.activity === null;
              const id = activities.find((each) => each.name === one.activity)?.id;
              if (id !== undefined) emit(this, "trial-activity", id);
            }}>${rankingTitle(one.activity)}</button>`,
        )}
      </div>
      <div class=${isStale ? "screen is-stale" : "screen"} data-ranking=${rankingTitle(shown.activity)} data-stale=${isStale}>
        <ww-plot id="plot-trial-ranking" ?stale=${isStale} .figure=${this.figure(result, shown, this.palette)}></ww-plot>
        ${rankingTables(result, shown)}
      </div>
      <div class="paper">${rankings.map(
        (one, i) =>
          html`<div><h3>${rankingTitle(one.activity)}</h3>${this.pictures[i] === undefined ? nothing : html`<img src=${this.pictures[i]} alt="Strengths with bands" />`}${rankingTables(result, one)}</div>`,
      )}</div>
      ${result.notes.map((note) => html`<p class="hint">${note}</p>`)}`;
  }
}

const pictureMargin = { l: 14, r: 10, t: 6, b: 44 };

/** Half as wide as a page, since the pairs stand beside it, and as high as its pucks need. */
async function picture(figure: PlotFigure): Promise<string> {
  const plotly = await loadPlotly();
  const [width, height] = [460, 60 + 36 * figure.table.rows.length];
  return plotly.toImage(
    {
      data: [...figure.data],
      layout: { ...figure.layout, width, height, margin: pictureMargin, paper_bgcolor: "#ffffff" },
    },
    { format: "svg", width, height },
  );
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-trial-ranking": TrialRanking;
  }
}
