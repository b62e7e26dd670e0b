import { css, html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { Applicability } from "../../../../shared/engine/trust/applicability";
import type { Problem } from "../../../../shared/result";
import type { AnswerWords, Words } from "../../section/answerWords";

/** Bars of the trust mark that are filled, by where a result stands among published values. */
const trustLevels: Readonly<Record<Applicability, number>> = {
  "outside: do not rely on it": 1,
  "between checked shapes": 2,
  "inside the checked range": 3,
};

/** The sentence that leads a view: what comes out, how sure it is, what to do next. */
@customElement("ww-answer")
export class Answer extends LitElement {
  static override styles = css`
    :host {
      display: grid;
      grid-template-columns: minmax(0, 1fr) auto;
      gap: 2px 24px;
      align-items: start;
    }
    .sentence {
      margin: 0;
      font:
        clamp(19px, 1.75vw, 25px) / 1.25 "Charter", "Iowan Old Style", "C059", "Georgia", "DejaVu Serif", serif;
      min-height: 2.5em;
      max-width: 44em;
      font-variant-numeric: lining-nums tabular-nums;
    }
    b {
      font-weight: 700;
    }
    .side {
      text-align: right;
      font-size: 12px;
      line-height: 1.5;
      color: var(--ink-soft);
      max-width: 300px;
    }
    .side p {
      margin: 0;
    }
    .trust {
      color: var(--ink);
      font-size: 12.5px;
      display: inline-flex;
      gap: 7px;
      align-items: flex-end;
      border-bottom: 1px dotted transparent;
    }
    .trust[title] {
      border-bottom-color: var(--edge);
    }
    .fault {
      font-size: 13px;
      margin: 0;
      grid-column: 1 / -1;
    }
    .fault b {
      color: var(--alarm);
    }
    .is-stale {
      opacity: 0.6;
    }
    @media (max-width: 899px) {
      :host {
        grid-template-columns: minmax(0, 1fr);
      }
      .side {
        text-align: left;
        max-width: none;
        display: flex;
        flex-wrap: wrap;
        gap: 2px 14px;
      }
      .sentence {
        font-size: 20px;
        min-height: 5em;
      }
    }
    @media print {
      :host {
        gap: 0 4mm;
      }
      .sentence {
        font-size: 10.5pt;
        line-height: 1.2;
        min-height: 0;
        max-width: none;
      }
      .side {
        font-size: 6.5pt;
        line-height: 1.2;
      }
      .trust svg {
        height: 8px;
      }
      .fault:empty {
        display: none;
      }
    }
  `;

  /** null while the first answer is computed. */
  @property({ attribute: false }) words: AnswerWords | null = null;
  @property({ attribute: false }) trust: Applicability | null = null;
  /** What was not checked, in one sentence; null where all was. */
  @property({ attribute: false }) reason: string | null = null;
  /** Why there is no answer for what is at hand; null when all is well. */
  @property({ attribute: false }) problem: Problem | null = null;
  /** True while the answer is that of something older. */
  @property({ type: Boolean }) stale = false;

  protected override render() {
    const { words, trust, problem } = this;
    return html`<p class="sentence ${this.stale ? "is-stale" : ""}">${words === null ? (problem === null ? "Solving ..." : "No answer for this design.") : words.sentence.map(piece)}</p>
      <div class="side">
        ${trust === null ? nothing : html`<p><span class="trust" title=${this.reason ?? nothing}>${trustMark(trustLevels[trust])}${trust}</span></p>`}
        ${words === null || words.next.length === 0 ? nothing : html`<p>${words.next.map(piece)}</p>`}
      </div>
      <p class="fault" role="status">${problem === null ? nothing : html`<b>${words === null ? "No result:" : "Stale: this is the last design that could be solved."}</b> ${problem.message}`}</p>`;
  }
}

function piece({ text, isStrong }: Words) {
  return isStrong === true ? html`<b>${text}</b>` : text;
}

/** Three rising bars: outside, between, inside the checked shapes. */
function trustMark(level: number) {
  return html`<svg width="20" height="15" viewBox="0 0 20 15" aria-hidden="true">
    ${[1, 2, 3].map((bar) => {
      const height = 4 + 3.4 * bar;
      return html`<svg x=${(bar - 1) * 7} y=${14.5 - height} width="6" height=${height}><rect x="0.5" y="0.5" width="5" height=${height - 1} fill=${bar <= level ? "currentColor" : "none"} stroke="currentColor" /></svg>`;
    })}
  </svg>`;
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-answer": Answer;
  }
}
