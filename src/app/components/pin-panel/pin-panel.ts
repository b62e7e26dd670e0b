import { html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import { mostPins, type Pin, risingState, type Solved } from "../../section/solved";
import { panelStyles } from "../../style/panelStyles";
import { controlStyles } from "../../style/sharedStyles";
import { tableStyles } from "../../style/tableStyles";
import { emit } from "../../view/emit";
import { differenceTable } from "./differences";
import { pinPanelStyles } from "./pin-panel.styles";

/** Pins that a page has room for; the style sheet leaves out the columns behind them. */
const mostPrinted = 7;

/** Candidates kept for comparison, with a table of what differs. Sends `section-pin`, `section-unpin` and `section-change`. */
@customElement("ww-pin-panel")
export class PinPanel extends LitElement {
  static override styles = [controlStyles, panelStyles, tableStyles, pinPanelStyles];

  @property({ attribute: false }) solved: Solved | null = null;
  @property({ attribute: false }) pins: readonly Pin[] = [];
  /** True while the solution is not that of the present design. */
  @property({ type: Boolean }) stale = false;

  protected override updated(): void {
    this.toggleAttribute("has-pins", this.pins.length > 0);
  }

  protected override render() {
    const { solved, stale, pins } = this;
    const canPin = solved !== null && !stale && pins.length < mostPins;
    return html`<section aria-labelledby="heading">
      <div class="heading">
        <h2 id="heading">Compare</h2>
        <button type="button" ?disabled=${!canPin} @click=${() => emit(this, "section-pin")}>Pin this design</button>
      </div>
      ${
        pins.length === 0
          ? html`<p class="hint">Pin a design, change it, and see both in the plots and in a table of differences.</p>`
          : this.renderTable()
      }
    </section>`;
  }

  private renderTable() {
    const { solved, pins } = this;
    if (solved === null || risingState(solved.solution) === null) return nothing;
    const table = differenceTable(solved, pins);
    return html`<div class="scroll" tabindex="0" role="region" aria-label="Differences between the designs">
        <table>
          <thead>
            <tr><th scope="col">Figure</th>${table.names.map((name) => html`<th scope="col">${name}</th>`)}</tr>
          </thead>
          <tbody>
            ${table.rows.map(
              (row) => html`<tr>
                <th scope="row">${row.figure}</th>
                ${row.cells.map((cell) => html`<td>${cell.value}${cell.change ? html`<small><span class="what">this design </span>${cell.change}</small>` : nothing}</td>`)}
              </tr>`,
            )}
          </tbody>
        </table>
      </div>
      <p class="on-paper">Changes are those of this design against each pin.${pins.length > mostPrinted ? ` The first ${mostPrinted} of ${pins.length} pins are printed.` : ""}</p>
      <ul class="hint">
        ${pins.map(
          (pin) => html`<li>
            ${pin.name}: ${pin.solved?.solution.nodes.name ?? "being solved"}, ${pin.design.title}
            <button type="button" class="is-quiet" @click=${() => emit(this, "section-change", pin.design)}>Work on it<span class="unseen">, ${pin.name}</span></button>
            <button type="button" class="is-quiet" @click=${() => emit(this, "section-unpin", pin.id)}>Remove<span class="unseen"> ${pin.name}</span></button>
          </li>`,
        )}
      </ul>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-pin-panel": PinPanel;
  }
}
