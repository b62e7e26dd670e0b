import { html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { MeasuredCorrection } from "../../../../shared/jobs/evidence/carriedCorrection";
import type { Problem } from "../../../../shared/result";
import type { Solved } from "../../section/solved";
import { controlStyles } from "../../style/sharedStyles";
import type { UnitPreferences } from "../../units/units";
import "../info-mark/info-mark";
import { keyFiguresStyles } from "./key-figures.styles";
import { keyFigures } from "./keyFigures";

/** The figures of the present design; the last good ones stay, marked stale, when a newer design cannot be solved. */
@customElement("ww-key-figures")
export class KeyFiguresElement extends LitElement {
  static override styles = [controlStyles, keyFiguresStyles];

  @property({ attribute: false }) solved: Solved | null = null;
  /** Why the design has no solution; null when all is well. */
  @property({ attribute: false }) problem: Problem | null = null;
  /** True while the figures are those of another design. */
  @property({ type: Boolean }) stale = false;
  /** A measured offset that is carried; null for none. */
  @property({ attribute: false }) offset: MeasuredCorrection | null = null;
  @property({ attribute: false }) units: UnitPreferences = {};

  protected override render() {
    const { solved, problem } = this;
    if (solved === null) {
      return html`<p class="state" role="status">${problem ? html`<b>No result:</b> ${problem.message}` : "Solving ..."}</p>`;
    }
    const figures = keyFigures(solved, this.units, this.offset);
    return html`<p class="state" role="status">
        ${problem ? html`<b>Stale:</b> the figures belong to the last design that could be solved. ${problem.message}` : nothing}
      </p>
      <dl class=${this.stale ? "is-stale" : ""}>
        ${figures.map(
          (figure, i) => html`<div class=${i === 0 ? "lead" : ""}>
            <dt>${figure.name} ${figure.topic ? html`<ww-info-mark topic=${figure.topic}></ww-info-mark>` : nothing}</dt>
            <dd>${figure.value}<small>${figure.detail}</small></dd>
          </div>`,
        )}
      </dl>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-key-figures": KeyFiguresElement;
  }
}
