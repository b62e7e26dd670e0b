import { demoPuck } from "../../puck/demoPuck";
import type { PuckAnswers } from "../../puck/puckAnswers";
import { emit } from "../../view/emit";
import { cancelledCode, initialTask } from "../../view/taskState";
import "../../puck/puckEvents";
import { html, nothing, type PropertyValues } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { PuckCase } from "../../../../shared/jobs/puck/puckCase";
import type { Evaluation } from "../../../../shared/jobs/tradeoff/designSpace";
import type { TradeoffMember } from "../../../../shared/jobs/tradeoff/tradeoffMember";
import { percentText } from "../../puck/dragTexts";
import { shownFigure, verdictTexts } from "../../puck/figureRows";
import type { PuckInputs, PuckMake } from "../../puck/puckInputs";
import { dragSensitivityRows, sensitivityRows } from "../../puck/sensitivityRows";
import { LightElement } from "../../view/lightElement";

const shownFigures = [
  "massKilograms",
  "momentOfInertiaAxisKilogramSquareMetres",
  "centreOfMassMetres",
  "floorContactAreaSquareMetres",
  "coverMetres",
];

/** One member of the front: its size, its verdict against the baseline, and what happens when it is made wrong. Sends `puck-member`, `puck-work-on`, `puck-pin`. */
@customElement("ww-puck-member")
export class PuckMember extends LightElement {
  /** The case and the inputs of the search. */
  @property({ attribute: false }) search: PuckCase | null = null;
  @property({ attribute: false }) inputs: PuckInputs | null = null;
  @property({ attribute: false }) member: Evaluation | null = null;
  /** Number in the front, from 1. */
  @property({ type: Number }) number = 1;

  /** What is known of the member that was asked for last. */
  @property({ attribute: false }) answer: PuckAnswers["member"] = initialTask;

  protected override updated(changed: PropertyValues<this>): void {
    const { search, member } = this;
    if (!changed.has("member") || search === null || member === null) return;
    emit(this, "puck-member", { search, member, name: this.name });
  }

  private get name(): string {
    return `Front ${this.number}`;
  }

  private makeOf({ puck }: TradeoffMember): PuckMake {
    const { sandGrainRoughness } = (this.inputs ?? demoPuck).candidate;
    return { spec: { ...puck, name: this.name }, sandGrainRoughness };
  }

  protected override render() {
    const { inputs, last, status, problems } = this.answer;
    const report = inputs?.member === this.member && status === "complete" ? (last?.result ?? null) : null;
    if (report === null) {
      const problem = status === "error" && problems[0].code !== cancelledCode ? problems[0].message : "";
      return html`<p class="state" role="status">${problem ? html`<b>No report:</b> ${problem}` : `Solving number ${this.number} of the front ...`}</p>`;
    }
    const { figures, sensitivities, dragSensitivities, puck, rules } = report;
    const off = Number((1000 * report.madeOffMetres).toPrecision(4));
    const { index, sentence, verdict } = report.comparison.overall;
    const rows = [
      ...dragSensitivityRows(dragSensitivities, index.expected),
      ...sensitivityRows(sensitivities, shownFigures),
    ];
    return html`<h3>Number ${this.number} of the front</h3>
      <p class="verdict" data-verdict=${verdict}>${sentence}</p>
      <p>
        ${shownFigure("diameterMetres", figures.diameterMetres)} × ${shownFigure("thicknessMetres", figures.thicknessMetres)},
        ${figures.edgeRadiusMetres === null ? "free edge" : `edge radius ${shownFigure("edgeRadiusMetres", figures.edgeRadiusMetres)}`};
        mass ${shownFigure("massKilograms", figures.massKilograms)},
        ${puck.core.kind === "none" ? "no core" : `cover over the core ${shownFigure("coverMetres", figures.coverMetres ?? 0)}`},
        moment of inertia ${shownFigure("momentOfInertiaAxisKilogramSquareMetres", figures.momentOfInertiaAxisKilogramSquareMetres)};
        drag index ${percentText(100 * (index.expected - 1))} (${percentText(100 * (index.low - 1))} to ${percentText(100 * (index.high - 1))}).
        ${rules === null ? nothing : html`Rules: ${verdictTexts[rules.verdict]} with the making tolerances.`}
      </p>
      <div class="line">
        <button type="button" @click=${() => emit(this, "puck-work-on", this.makeOf(report))}>Work on it</button>
        <button type="button" @click=${() => emit(this, "puck-pin", this.makeOf(report))}>Pin it</button>
      </div>
      <h3>Sensitivities, and made ${off} mm off</h3>
      <div class="scroll" tabindex="0" role="region" aria-label="Sensitivities of number ${this.number}">
        <table class="results">
          <thead><tr>
            <th scope="col">Dimension</th>
            <th scope="col">Figure</th>
            <th scope="col">per 1 % of the dimension</th>
            <th scope="col">made ${off} mm smaller</th>
            <th scope="col">made ${off} mm larger</th>
          </tr></thead>
          <tbody>
            ${rows.map(
              (row) => html`<tr>
                <th scope="row">${row.dimension}</th>
                <td>${row.figure}</td>
                <td>${row.elasticity}</td>
                <td>${row.madeSmaller}</td>
                <td>${row.madeLarger}</td>
              </tr>`,
            )}
          </tbody>
        </table>
      </div>
      <p class="hint">The core keeps its size when a dimension is made wrong. The drag index is given with its band.</p>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-puck-member": PuckMember;
  }
}
