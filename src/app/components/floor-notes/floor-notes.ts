import { css, html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { LiveFloor } from "../../../../shared/engine/section/liveFloor";
import { floorNotes } from "../../../../shared/engine/solve/floorNotes";

/** What to keep in mind about the figures of a section above a floor, on the screen and on paper; nothing in open water. */
@customElement("ww-floor-notes")
export class FloorNotes extends LitElement {
  static override styles = css`
    :host {
      display: block;
    }
    ul {
      margin: 0.5rem 0 0;
      padding-left: 1.2rem;
      font-size: 0.86rem;
      color: var(--ink-soft);
      max-width: 70rem;
    }
    @media print {
      ul {
        margin: 1mm 0 0;
        padding-left: 3mm;
        font-size: 6.5pt;
        max-width: none;
      }
    }
  `;

  @property({ attribute: false }) floor: LiveFloor | null = null;

  protected override render() {
    const { floor } = this;
    if (floor === null) return nothing;
    return html`<ul aria-label="Near the floor">${floorNotes(floor.gapRatio).map((note) => html`<li>${note}</li>`)}</ul>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-floor-notes": FloorNotes;
  }
}
