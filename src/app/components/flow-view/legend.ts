import { html, svg } from "lit";
import { markNames, markShapes } from "../../drawing/markShape";
import type { SurfaceMark } from "../../drawing/surfaceParts";

const layers = [
  ["laminar", "laminar layer"],
  ["bubble", "bubble"],
  ["turbulent", "turbulent layer"],
  ["base", "separated"],
] as const;

/** What lines and marks of the drawing mean. */
export const legend = html`<ul class="legend">
  ${layers.map(
    ([kind, name]) => html`<li>
      <svg viewBox="0 0 34 14" aria-hidden="true">${svg`<path class="part ${kind}" d="M2 7H32"></path>`}</svg>${name}
    </li>`,
  )}
  <li><svg viewBox="0 0 34 14" aria-hidden="true"><path class="shear" d="M1 7H33"></path></svg>free shear layer, wake between</li>
  ${(Object.keys(markNames) as SurfaceMark["kind"][]).map(
    (kind) => html`<li>
      <svg viewBox="-17 -7 34 14" aria-hidden="true">${svg`<path class="mark" d=${markShapes[kind]}></path>`}</svg>${markNames[kind]}
    </li>`,
  )}
</ul>`;
