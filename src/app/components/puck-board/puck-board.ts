import { html, LitElement, nothing, svg } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { PuckFigures } from "../../../../shared/jobs/puck/body/puckFigures";
import { puckStyle } from "../../plots/puckStyle";
import { percent } from "../../puck/boardAnswer";
import { boardRows } from "../../puck/boardRows";
import { demoPuck } from "../../puck/demoPuck";
import { changeText, verdictTexts } from "../../puck/figureRows";
import { nothingKnown, type PuckAnswers } from "../../puck/puckAnswers";
import { type BoardColumn, type BoardRow, sortedBoard } from "../../puck/puckBoard";
import "../../puck/puckEvents";
import type { PuckInputs } from "../../puck/puckInputs";
import { evenTicks } from "../../scene/axes";
import { lightPalette, type Palette } from "../../style/palette";
import { emit } from "../../view/emit";
import { crisisCell, crisisWidth, dragCell, dragWidth, marginText, outlineCell } from "./boardCells";
import { puckBoardStyles } from "./puck-board.styles";

/** All pucks beside each other: outline, rules, mass, inertia, areas, crises and drag against the baseline. Sends `puck-swap`, `puck-pin`, `puck-unpin` and `puck-step`. */
@customElement("ww-puck-board")
export class PuckBoard extends LitElement {
  static override styles = puckBoardStyles;

  @property({ attribute: false }) inputs: PuckInputs = demoPuck;
  @property({ attribute: false }) known: PuckAnswers = nothingKnown;
  @property({ attribute: false }) palette: Palette = lightPalette;
  @state() private sortedBy: BoardColumn = "drag";

  private head(column: BoardColumn, title: string, below: string, isNumber = false) {
    return html`<th scope="col" class=${isNumber ? "number" : ""} aria-sort=${this.sortedBy === column ? "ascending" : "none"}>
      <button type="button" @click=${() => {
        this.sortedBy = column;
      }}>${title}${this.sortedBy === column ? " ▴" : ""}</button>${below}</th>`;
  }

  protected override render() {
    const { inputs, known } = this;
    const speeds = inputs.play.indexSpeeds ?? inputs.play.speeds;
    const play = [speeds[0], speeds[speeds.length - 1]] as const;
    const speed = speeds[Math.floor(speeds.length / 2)];
    const rows = sortedBoard(boardRows(inputs, known), this.sortedBy, speed);
    const [baseline] = rows;
    const reach = Math.max(...rows.map(({ spec }) => spec.diameterMetres));
    const highest = Math.max(
      2 * play[1],
      ...rows.flatMap(({ study }) => [study?.profileCrisis?.high ?? 0]).map((one) => Math.min(one, 3 * play[1])),
    );
    const [low, high] = changeRange(rows);
    const scale = (change: number) =>
      ((Math.min(high, Math.max(low, change)) - low) / (high - low)) * (dragWidth - 16) + 8;
    return html`<svg width="0" height="0" aria-hidden="true" style="position:absolute"><defs>
        <pattern id="board-hatch" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="5" height="5" fill="var(--ember)" opacity="0.16"></rect><line x1="0" x2="0" y1="0" y2="5" stroke="var(--ember)" stroke-width="1.6"></line></pattern>
      </defs></svg>
      <div class="scroll" tabindex="0" role="region" aria-label="All pucks beside each other">
      <table>
        <thead><tr>
          ${this.head("name", "Outline", "one scale; baseline dashed")}
          <th scope="col">puck</th>
          <th scope="col"><b class="strong">Rules</b><br />as made, ± tolerances</th>
          ${this.head("mass", "Mass", "kg", true)}
          ${this.head("inertia", "Inertia", "axis", true)}
          ${this.head("edgeOn", "Edge-on", "area", true)}
          ${this.head("faceOn", "Face-on", "area", true)}
          ${this.head("margin", `Crisis against play, ${play[0]} to ${play[1]} m/s`, "upper plan, lower profile section")}
          <th scope="col">margin at<br />${speed} m/s</th>
          ${this.head("drag", "Drag against the baseline, %", "mark expected, bar 9 in 10; hollow = not decided")}
          <th scope="col">in words</th>
          ${this.head("best", "Best", "of 100", true)}
        </tr></thead>
        <tbody>
          ${rows.map((row) => this.renderRow(row, baseline, { reach, play, highest, speed, scale }))}
        </tbody>
        <tfoot><tr>
          <td colspan="7" style="height:18px"></td>
          <td style="height:18px"><svg class="cell" width=${crisisWidth} height="16" aria-hidden="true">${evenTicks(0, highest, 4).map((tick) => svg`<text x=${(tick / highest) * crisisWidth} y="11" text-anchor=${tick === 0 ? "start" : "middle"}>${tick}</text>`)}</svg></td>
          <td></td>
          <td style="height:18px"><svg class="cell" width=${dragWidth} height="16" aria-hidden="true">${evenTicks(low, high, 5).map((tick) => svg`<text x=${scale(tick)} y="11" text-anchor="middle">${tick > 0 ? "+" : ""}${tick}</text>`)}</svg></td>
          <td colspan="2"></td>
        </tr></tfoot>
      </table></div>`;
  }

  private renderRow(
    row: BoardRow,
    baseline: BoardRow,
    {
      reach,
      play,
      highest,
      speed,
      scale,
    }: {
      reach: number;
      play: readonly [number, number];
      highest: number;
      speed: number;
      scale: (change: number) => number;
    },
  ) {
    const { spec, figures, study, role, id, styleIndex } = row;
    const style = puckStyle(this.palette, styleIndex);
    const isBaseline = role === "baseline";
    const against = (key: keyof PuckFigures) => {
      const [own, base] = [figures?.[key] ?? null, baseline.figures?.[key] ?? null];
      return own === null || base === null ? "–" : changeText(own, base);
    };
    const comparison = study?.comparison ?? null;
    const own = (key: keyof PuckFigures, factor: number, unit: string) =>
      html`${((figures?.[key] ?? 0) * factor).toPrecision(3)}<small>${unit}</small>`;
    return html`<tr class=${role === "candidate" ? "is-candidate" : ""} data-puck=${spec.name}>
      <td class="outline">${outlineCell(spec, baseline.spec, reach, style)}</td>
      <td><span class="name" style="color:${style.color}">${spec.name}</span>
        <span class="does">${
          role === "pin"
            ? html`<button type="button" @click=${() => id !== null && emit(this, "puck-swap", id)}>work on it<span class="unseen" hidden> ${spec.name}</span></button>
              <button type="button" aria-label="Remove ${spec.name}" @click=${() => id !== null && emit(this, "puck-unpin", id)}>remove</button>`
            : html`<small>${isBaseline ? "reference" : "worked on"}</small>`
        }</span></td>
      <td>${this.renderRules(row)}</td>
      <td class="number">${figures === null ? "–" : figures.massKilograms.toFixed(3)}</td>
      <td class="number">${isBaseline ? own("momentOfInertiaAxisKilogramSquareMetres", 1e4, "kg cm²") : against("momentOfInertiaAxisKilogramSquareMetres")}</td>
      <td class="number">${isBaseline ? own("frontalAreaEdgeOnSquareMetres", 1e4, "cm²") : against("frontalAreaEdgeOnSquareMetres")}</td>
      <td class="number">${isBaseline ? own("frontalAreaFaceOnSquareMetres", 1e4, "cm²") : against("frontalAreaFaceOnSquareMetres")}</td>
      <td>${crisisCell(row, play, highest)}</td>
      <td>${marginText(study === null ? undefined : study.planCrisis, speed)}${marginText(study === null ? undefined : study.profileCrisis, speed)}</td>
      <td>${dragCell(comparison, scale, style)}</td>
      <td>${
        isBaseline
          ? html`<small>reference</small>`
          : comparison === null
            ? html`<small>${study === null ? "being computed" : "not compared"}</small>`
            : html`<span class=${comparison.decided === "not decided" ? "" : "strong"}>${percent(comparison.change.expected)} ${comparison.decided === "not decided" ? "not decided" : `${comparison.decided} drag`}</span>
              <small>${comparison.change.expected < 0 ? "less" : "more"} in ${Math.round(100 * (comparison.change.expected < 0 ? comparison.probabilityLess : 1 - comparison.probabilityLess))} of 100</small>`
      }</td>
      <td class="number strong">${study?.probabilityBest == null ? "" : Math.round(100 * study.probabilityBest)}</td>
    </tr>`;
  }

  private renderRules({ judgement }: BoardRow) {
    if (this.inputs.rules === null) return html`<small>no rules open</small>`;
    if (judgement === null) return html`<small>judging</small>`;
    const worst = judgement.rules.find(({ verdict }) => verdict === judgement.verdict);
    const isWell = judgement.verdict === "pass";
    return html`<span class=${isWell ? "" : "attention"}>${verdictTexts[judgement.verdict]}</span>${
      isWell || worst === undefined
        ? nothing
        : html`<small title=${worst.message}>${worst.message.slice(0, 34)}…</small>`
    }`;
  }
}

/** Room for all the bars, in round tens, zero among it. */
function changeRange(rows: readonly BoardRow[]): readonly [number, number] {
  const changes = rows.flatMap(({ study }) => (study?.comparison == null ? [] : [study.comparison.change]));
  if (changes.length === 0) return [-40, 40];
  const tens = (value: number) => 10 * Math.sign(value) * Math.ceil(Math.abs(value) / 10);
  return [
    Math.max(-100, tens(Math.min(-10, ...changes.map(({ low }) => low)))),
    Math.min(150, tens(Math.max(10, ...changes.map(({ high }) => high)))),
  ];
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-puck-board": PuckBoard;
  }
}
