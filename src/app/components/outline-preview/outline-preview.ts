import { html, LitElement, nothing, svg } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { ImportedOutline } from "../../../../shared/outlines/importOutline";
import { shortLength } from "../../../../shared/outlines/solvedOutline";
import { controlStyles } from "../../style/sharedStyles";
import { outlinePreviewStyles } from "./outline-preview.styles";

type Places = readonly (readonly [number, number])[];

/** The contour that is solved over the outline that was given, their largest distance, and what was done to it. */
@customElement("ww-outline-preview")
export class OutlinePreview extends LitElement {
  static override styles = [controlStyles, outlinePreviewStyles];

  @property({ attribute: false }) outline: ImportedOutline | null = null;

  protected override render() {
    if (this.outline === null) return nothing;
    const { solved, unitFrom } = this.outline;
    const { length, height, deviation, deviationAt, betweenPoints, corners, cornerRadius, remarks } = solved;
    const margin = 0.15 * Math.max(length, height);
    const box = [-length / 2 - margin, -height / 2 - margin, length + 2 * margin, height + 2 * margin].join(" ");
    const [x, y] = deviationAt;
    const share = (100 * deviation) / Math.min(length, height);
    const sentences = [
      `The contour that is solved is ${size(length)} along the stream (from the left), ${size(height)} across it.`,
      `It leaves the outline by ${shortLength(deviation)} at most (${Number(share.toPrecision(2))} % of its smaller dimension)${deviation > 0 ? ", at the ring" : ""}.`,
      ...(betweenPoints === null
        ? []
        : [
            `Between the points it leaves the straight line from one to the next by up to ${shortLength(betweenPoints)}.`,
          ]),
      ...(corners === 0
        ? []
        : [
            `${corners} ${corners === 1 ? "corner gets" : "corners get"} a radius of ${size(cornerRadius)}${solved.spec.cornerRadius === undefined ? ", the smallest that the solver takes; slight ones a larger one" : ""}.`,
          ]),
      ...(unitFrom === "assumed" ? ["The file names no unit: its numbers are taken as millimetres."] : []),
      ...remarks,
    ];
    return html`<svg viewBox=${box} role="img" aria-label="Preview of the contour">${svg`
        <path class="solved" d=${drawn(solved.solved)}></path>
        <path class="given" d=${drawn(solved.given)}></path>
        ${deviation > 0 ? svg`<circle cx=${x} cy=${-y} r=${margin / 4}></circle>` : nothing}`}</svg>
      ${sentences.map((sentence) => html`<p>${sentence}</p>`)}`;
  }
}

function drawn(places: Places): string {
  return `${places.map(([x, y], i) => `${i === 0 ? "M" : "L"}${x} ${-y}`).join("")}Z`;
}

function size(metres: number): string {
  return `${Number((metres * 1000).toPrecision(5))} mm`;
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-outline-preview": OutlinePreview;
  }
}
