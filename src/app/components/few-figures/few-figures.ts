import { css, html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import { shortNumber } from "../../plots/curveRow";
import { risingState, type Solved } from "../../section/solved";
import { shedsRegularly } from "../key-figures/shedsRegularly";

/** The few numbers that people copy out, beside the inputs; all of them stand in the detail Numbers. */
@customElement("ww-few-figures")
export class FewFigures extends LitElement {
  static override styles = css`
    dl {
      display: grid;
      grid-template-columns: minmax(0, 1fr) auto 44px;
      gap: 3px 6px;
      margin: 0;
      font-size: 12px;
      line-height: 17px;
      color: var(--ink-soft);
      font-variant-numeric: tabular-nums;
    }
    dt,
    dd {
      margin: 0;
    }
    dd.number {
      text-align: right;
      color: var(--ink);
      font-weight: 700;
      font-size: 13px;
    }
    @media print {
      :host {
        display: none;
      }
    }
  `;

  @property({ attribute: false }) solved: Solved | null = null;

  protected override render() {
    const { solved } = this;
    const state = solved === null ? null : risingState(solved.solution);
    if (solved === null || state === null) return nothing;
    const { solution, design, fluid } = solved;
    const width = solution.referenceWidth;
    const drag = 0.5 * fluid.density * design.speed ** 2 * width * state.dragCoefficient;
    const rows: (readonly [string, string, string])[] = [
      ["Re", shortNumber(solution.condition.reynolds), ""],
      ["Cd as computed", state.dragCoefficient.toFixed(3), ""],
      ["drag", shortNumber(drag), "N/m"],
      shedsRegularly(solution)
        ? ["Strouhal", state.strouhal.toFixed(2), `${shortNumber((state.strouhal * design.speed) / width)} Hz`]
        : ["Strouhal", "none", ""],
      ["base pressure", state.basePressureCoefficient.toFixed(2).replace("-", "−"), ""],
    ];
    return html`<dl>${rows.map(([name, value, unit]) => html`<dt>${name}</dt><dd class="number">${value}</dd><dd>${unit}</dd>`)}</dl>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-few-figures": FewFigures;
  }
}
