import { html, LitElement, nothing, svg } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { PuckSpec } from "../../../../shared/jobs/puck/body/puckSpec";
import { puckDrawingShape } from "../../puck/drawingShape";
import { puckDrawingStyles } from "./puck-drawing.styles";

/** Half section and plan of the candidate to scale, core and coat told apart by fill, label and place. */
@customElement("ww-puck-drawing")
export class PuckDrawingElement extends LitElement {
  static override styles = puckDrawingStyles;

  /** The last puck that could be made; null before there is one. */
  @property({ attribute: false }) spec: PuckSpec | null = null;
  /** True while the present puck cannot be made. */
  @property({ type: Boolean }) stale = false;

  protected override render() {
    const { spec, stale: isStale } = this;
    if (spec === null) return html`<figure><p>Nothing to draw yet.</p></figure>`;
    return html`<figure class=${isStale ? "is-stale" : ""}>
      <div class="views">${this.renderSection(spec)}${this.renderPlan(spec)}</div>
      <figcaption>
        <span><span class="key is-coat"></span>coat: ${spec.coatMaterial}</span>
        ${spec.core.kind === "none" ? nothing : html`<span><span class="key is-core"></span>core: ${spec.core.material}</span>`}
        <span>left: outside; right: cut through the axis. mm, both views to one scale.</span>
        ${isStale ? html`<span><b>Stale:</b> the last puck that could be made.</span>` : nothing}
      </figcaption>
    </figure>`;
  }

  private renderSection(spec: PuckSpec) {
    const { diameter: d, thickness: t, profile, cores, grooves, edge } = puckDrawingShape(spec);
    const font = d / 20;
    const [left, right] = [-d / 2 - 4.2 * font, d / 2 + 3.2 * font];
    const [top, bottom] = [-t / 2 - 2.6 * font, t / 2 + 2.8 * font];
    const height = Math.max(bottom - top, 0.75 * (right - left));
    const below = t / 2 + 1.6 * font;
    const beside = -d / 2 - 1.4 * font;
    return html`<svg
      viewBox="${left} ${(top + bottom - height) / 2} ${right - left} ${height}"
      role="img"
      aria-label=${`Half section of ${spec.name}: diameter ${number(d)} mm, thickness ${number(t)} mm, edge ${edge.text}`}
    >
      <pattern id="hatch" width=${font / 2} height=${font / 2} patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <line class="hatch" x1="0" x2="0" y1="0" y2=${font / 2}></line>
      </pattern>
      <clipPath id="right"><rect x="0" y=${-t} width=${d} height=${2 * t}></rect></clipPath>
      <g clip-path="url(#right)">
        <path class="coat" d=${profile}></path>
        ${cores.map((core) => svg`<path class="core" d=${core}></path>`)}
        ${cores.map((core) => svg`<path class="core-line" fill="url(#hatch)" d=${core}></path>`)}
      </g>
      <path class="hidden-line" d=${grooves}></path>
      <path class="outline" d=${profile}></path>
      <line class="axis" x1="0" x2="0" y1=${-t / 2 - font} y2=${t / 2 + font}></line>
      <path class="thin" d="M${-d / 2} ${t / 4}V${below + 0.4 * font}M${d / 2} ${t / 4}V${below + 0.4 * font}M${-d / 2} ${below}H${d / 2}"></path>
      <text x="0" y=${below + 1.1 * font} font-size=${font} text-anchor="middle">⌀ ${number(d)}</text>
      <path class="thin" d="M${-d / 3} ${-t / 2}H${beside - 0.4 * font}M${-d / 3} ${t / 2}H${beside - 0.4 * font}M${beside} ${-t / 2}V${t / 2}"></path>
      <text x=${beside - 0.4 * font} y=${0.35 * font} font-size=${font} text-anchor="end">${number(t)}</text>
      <path class="thin" d="M${edge.x} ${edge.y}L${d / 2 - 0.4 * font} ${-t / 2 - 0.9 * font}"></path>
      <text x=${d / 2 - 0.4 * font} y=${-t / 2 - 1.2 * font} font-size=${font} text-anchor="middle">${edge.text}</text>
    </svg>`;
  }

  private renderPlan(spec: PuckSpec) {
    const { diameter: d, plan, planGrooves } = puckDrawingShape(spec);
    const font = d / 20;
    const [left, right] = [-d / 2 - 4.2 * font, d / 2 + 3.2 * font];
    const height = Math.max(d + 2 * font, 0.75 * (right - left));
    const { core } = spec;
    const coreRadius =
      core.kind === "disc"
        ? 500 * core.diameterMetres
        : core.kind === "ring"
          ? 500 * core.outerDiameterMetres
          : core.kind === "underCoat"
            ? d / 2 - 1000 * core.coatThicknessMetres
            : 0;
    return html`<svg viewBox="${left} ${-height / 2} ${right - left} ${height}" role="img" aria-label="Plan of ${spec.name}, seen along the axis">
      <path class="coat" d=${plan}></path>
      <path class="outline" d=${plan}></path>
      <path class="thin" d=${planGrooves}></path>
      ${coreRadius > 0 ? svg`<circle class="hidden-line" r=${coreRadius}></circle>` : nothing}
      ${core.kind === "ring" ? svg`<circle class="hidden-line" r=${500 * core.innerDiameterMetres}></circle>` : nothing}
      <line class="axis" x1=${-d / 2 - font} x2=${d / 2 + font} y1="0" y2="0"></line>
      <line class="axis" y1=${-d / 2 - font / 2} y2=${d / 2 + font / 2} x1="0" x2="0"></line>
    </svg>`;
  }
}

function number(value: number): string {
  return String(Number(value.toPrecision(5)));
}

declare global {
  interface HTMLElementTagNameMap {
    "ww-puck-drawing": PuckDrawingElement;
  }
}
