import { html, nothing, svg } from "lit";
import { profileOutline } from "../../../../shared/jobs/handoff/outline";
import { outlinePath } from "../../../../shared/jobs/handoff/outlineSvg";
import type { PuckSpec } from "../../../../shared/jobs/puck/body/puckSpec";
import type { BoardComparison, BoardRow } from "../../puck/puckBoard";
import { markLine } from "../../scene/marks";
import { svgPath } from "../../scene/svgPath";
import { type CrisisZone, crisisMargin } from "../../section/crisisZone";
import type { SeriesStyle } from "../../style/palette";

/** Width and height of the cells with pictures, px. */
export const crisisWidth = 128;
export const dragWidth = 240;
const cellHeight = 36;

/** A puck's profile to the board's scale, the baseline's dashed behind it. */
export function outlineCell(spec: PuckSpec, baseline: PuckSpec, reach: number, { color }: SeriesStyle) {
  const half = 500 * reach;
  const box = `${-half * 1.04} ${-half * 0.41} ${half * 2.08} ${half * 0.82}`;
  return html`<svg viewBox=${box} role="img" aria-label="Profile of ${spec.name}">
    <path d=${outlinePath(profileOutline(spec))} fill="var(--body-fill)" stroke=${color} stroke-width=${half * 0.03}></path>
    ${spec === baseline ? nothing : svg`<path d=${outlinePath(profileOutline(baseline))} fill="none" stroke="var(--edge)" stroke-width=${half * 0.016} stroke-dasharray="${half * 0.05} ${half * 0.05}"></path>`}
  </svg>`;
}

/** Where the crises of the plan (above) and the profile section (below) lie against the speeds of play. */
export function crisisCell({ study }: BoardRow, play: readonly [number, number], highest: number) {
  if (study === null) return html`<small>being computed</small>`;
  const at = (speed: number) => Math.min(crisisWidth, (speed / highest) * crisisWidth);
  const bar = (zone: CrisisZone | null, y: number) =>
    svg`<line x1="0" x2=${crisisWidth} y1=${y} y2=${y} stroke="var(--rule)"></line>
    ${zone === null ? nothing : svg`<rect x=${at(zone.low)} y=${y - 4} width=${Math.max(3, at(zone.high) - at(zone.low))} height="8" fill="url(#board-hatch)" stroke="var(--ember)" stroke-width="0.8"></rect>`}`;
  return html`<svg class="cell" width=${crisisWidth} height=${cellHeight} aria-hidden="true">
    <rect x=${at(play[0])} y="0" width=${at(play[1]) - at(play[0])} height=${cellHeight} fill="var(--accent)" opacity="0.13"></rect>
    ${bar(study.planCrisis, 10)}${bar(study.profileCrisis, 26)}
  </svg>`;
}

export function marginText(zone: CrisisZone | null | undefined, speed: number) {
  if (zone === undefined) return nothing;
  if (zone === null) return html`<small>no crisis</small>`;
  const margin = crisisMargin(speed, zone);
  if (margin.kind === "inside") return html`<small class="attention">inside</small>`;
  return html`<small>${margin.kind === "past" ? `past by ${margin.by.toFixed(1)}` : `${margin.by.toFixed(1)} short`}</small>`;
}

const humpPoints = 31;

/** The change against the baseline: the distribution, its 90 % bar and its mean; the part beyond zero paler. */
export function dragCell(comparison: BoardComparison | null, scale: (percent: number) => number, style: SeriesStyle) {
  const zero = scale(0);
  const line = svg`<line x1=${zero} x2=${zero} y1="-4" y2=${cellHeight + 5} stroke="var(--edge)" stroke-dasharray="4 3"></line>`;
  const base = cellHeight - 6;
  if (comparison === null) {
    return html`<svg class="cell" width=${dragWidth} height=${cellHeight} aria-hidden="true">${line}</svg>`;
  }
  const { change, decided } = comparison;
  const hump = humpOf(change).map(([percent, height]) => [scale(percent), base - 24 * height] as const);
  const area = (points: readonly (readonly [number, number])[]) =>
    points.length < 2 ? "" : svgPath([points[0][0], base, ...points.flat(), points[points.length - 1][0], base], true);
  const isLess = change.expected < 0;
  const main = hump.filter(([x]) => (isLess ? x <= zero : x >= zero));
  const beyond = hump.filter(([x]) => (isLess ? x >= zero : x <= zero));
  return html`<svg class="cell" width=${dragWidth} height=${cellHeight} aria-hidden="true">${line}
    <path d=${area(main)} fill=${style.color} opacity="0.32"></path>
    <path d=${area(beyond)} fill=${style.color} opacity="0.12"></path>
    <line x1=${scale(change.low)} x2=${scale(change.high)} y1=${base} y2=${base} stroke=${style.color} stroke-width="3"></line>
    <path d=${svgPath(markLine(style.mark, scale(change.expected), base, 5.5), true)} stroke=${style.color} stroke-width="1.6" fill=${decided === "not decided" ? "var(--paper)" : style.color}></path>
  </svg>`;
}

/** A split-normal shape through 5 %, mean and 95 %, height 1 at its mode. */
function humpOf({ low, expected, high }: BoardComparison["change"]): (readonly [number, number])[] {
  const quantile = 1.645;
  const [left, right] = [Math.max(0.3, (expected - low) / quantile), Math.max(0.3, (high - expected) / quantile)];
  return Array.from({ length: humpPoints }, (_, i) => {
    const share = i / (humpPoints - 1);
    const z = -2.4 + 4.8 * share;
    return [expected + z * (z < 0 ? left : right), Math.exp(-0.5 * z * z)] as const;
  });
}
