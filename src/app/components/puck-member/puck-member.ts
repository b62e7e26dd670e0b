import { html, LitElement, nothing, type PropertyValues } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { PuckCase } from "../../../../shared/jobs/puck/puckcase/puckCase";
import type { Evaluation } from "../../../../shared/jobs/tradeoff/designSpace";
import type { TradeoffMember } from "../../../../shared/jobs/tradeoff/tradeoffMember";
import { percentText } from "../../puck/dragTexts";
import { shownFigure, verdictTexts } from "../../puck/figureRows";
import { changePuck, pinPuck, presentPuck, puckBench } from "../../puck/puckBench";
import type { PuckInputs } from "../../puck/puckInputs";
import { reportMember } from "../../puck/puckJobs";
import { dragSensitivityRows, sensitivityRows } from "../../puck/sensitivityRows";
import { freeName } from "../../store/freeName";
import { StoreController } from "../../store/storeController";

const shownFigures = [
  "massKilograms",
  "momentOfInertiaAxisKilogramSquareMetres",
  "centreOfMassMetres",
  "floorContactAreaSquareMetres",
  "coverMetres",
];

/** One member of the front: its size, its verdict against the baseline, and what happens when it is made wrong. */
@customElement("ww-puck-member")
export class PuckMember extends LitElement {
  /** The case and the inputs of the search. */
  @property({ attribute: false }) search: PuckCase | null = null;
  @property({ attribute: false }) inputs: PuckInputs | null = null;
  @property({ attribute: false }) member: Evaluation | null = null;
  /** Number in the front, from 1. */
  @property({ type: Number }) number = 1;

  @state() private report: TradeoffMember | null = null;
  @state() private problem = "";
  private readonly pins = new StoreController(this, puckBench, (value) => value.pins);

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("member")) void this.load();
  }

  private async load(): Promise<void> {
    const { search, member } = this;
    this.report = null;
    this.problem = "";
    if (search === null || member === null) return;
    const report = await reportMember(search, member, `Front ${this.number}`);
    if (report === null || member !== this.member) return;
    if (report.ok) this.report = report.value;
    else this.problem = report.problem.message;
  }

  private makeOf(report: TradeoffMember) {
    const { candidate, baseline } = presentPuck();
    const taken = [candidate, baseline, ...this.pins.value.map(({ make }) => make)].map(({ spec }) => spec.name);
    const spec = { ...report.puck, name: freeName(`Front ${this.number}`, taken) };
    return { spec, sandGrainRoughness: this.inputs?.candidate.sandGrainRoughness ?? candidate.sandGrainRoughness };
  }

  /** Works on this puck; the present candidate is pinned, so that nothing is lost. */
  private workOn(report: TradeoffMember): void {
    const { candidate } = presentPuck();
    const make = this.makeOf(report);
    changePuck({ candidate: make });
    pinPuck(candidate);
  }

  protected override render() {
    const { report } = this;
    if (report === null) {
      return html`<p class="state" role="status">${this.problem ? html`<b>No report:</b> ${this.problem}` : `Solving number ${this.number} of the front ...`}</p>`;
    }
    const { figures, sensitivities, dragSensitivities, puck, rules } = report;
    const off = Number((1000 * report.madeOffMetres).toPrecision(4));
    const { index, sentence, verdict } = report.comparison.overall;
    const rows = [
      ...dragSensitivityRows(dragSensitivities, index.best),
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
        drag index ${percentText(100 * (index.best - 1))} (${percentText(100 * (index.low - 1))} to ${percentText(100 * (index.high - 1))}).
        ${rules === null ? nothing : html`Rules: ${verdictTexts[rules.verdict]} with the making tolerances.`}
      </p>
      <div class="line">
        <button type="button" @click=${() => this.workOn(report)}>Work on it</button>
        <button type="button" @click=${() => pinPuck(this.makeOf(report))}>Pin it</button>
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
