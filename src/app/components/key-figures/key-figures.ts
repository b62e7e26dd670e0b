import { html, LitElement, nothing } from "lit";
import { customElement } from "lit/decorators.js";
import { carriedOffset } from "../../compare/carriedOffset";
import { preferences } from "../../store/preferences";
import { StoreController } from "../../store/storeController";
import { workbench } from "../../store/workbench";
import { controlStyles } from "../../style/sharedStyles";
import "../info-mark/info-mark";
import { keyFiguresStyles } from "./key-figures.styles";
import { keyFigures } from "./keyFigures";

/** The figures of the present design; the last good ones stay, marked stale, when a newer design cannot be solved. */
@customElement("ww-key-figures")
export class KeyFiguresElement extends LitElement {
  static override styles = [controlStyles, keyFiguresStyles];

  private readonly solved = new StoreController(this, workbench, (value) => value.solved);
  private readonly problem = new StoreController(this, workbench, (value) => value.problem);
  private readonly stale = new StoreController(this, workbench, ({ stale, problem }) => stale && problem !== null);
  private readonly offset = new StoreController(this, carriedOffset, (value) => value);
  private readonly units = new StoreController(this, preferences, (value) => value.units);

  protected override render() {
    const solved = this.solved.value;
    const problem = this.problem.value;
    if (solved === null) {
      return html`<p class="state" role="status">${problem ? html`<b>No result:</b> ${problem.message}` : "Solving ..."}</p>`;
    }
    const figures = keyFigures(solved, this.units.value, this.offset.value);
    return html`<p class="state" role="status">
        ${problem ? html`<b>Stale:</b> the figures belong to the last design that could be solved. ${problem.message}` : nothing}
      </p>
      <dl class=${this.stale.value ? "is-stale" : ""}>
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
