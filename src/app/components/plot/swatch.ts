import { html, nothing } from "lit";
import type { LegendEntry } from "../../plots/legendEntries";

const markerPaths: Readonly<Record<string, string>> = {
  circle: "M-4 0A4 4 0 1 0 4 0A4 4 0 1 0 -4 0Z",
  square: "M-3.6 -3.6H3.6V3.6H-3.6Z",
  diamond: "M0 -5L5 0L0 5L-5 0Z",
  "triangle-up": "M0 -4.6L4.6 3.6H-4.6Z",
  cross: "M-4.5 -1.5H-1.5V-4.5H1.5V-1.5H4.5V1.5H1.5V4.5H-1.5V1.5H-4.5Z",
  "star-triangle-down": "M-4.8 -3.4Q0 -1.6 4.8 -3.4Q1.4 0 0 4.8Q-1.4 0 -4.8 -3.4Z",
  "star-diamond": "M0 -6Q1.2 -1.2 6 0Q1.2 1.2 0 6Q-1.2 1.2 -6 0Q-1.2 -1.2 0 -6Z",
};

/** A sample of a curve's line and marker for the legend. */
export function swatch({ color, dash, width, symbol }: LegendEntry) {
  const isOpen = symbol?.endsWith("-open") === true;
  const marker = symbol === null ? undefined : markerPaths[symbol.replace(/-open$/, "")];
  return html`<svg viewBox="-18 -7 36 14" width="36" height="14" aria-hidden="true">
    ${
      dash === null
        ? nothing
        : html`<svg viewBox="-18 -7 36 14" x="-18" y="-7" width="36" height="14"><path d="M-17 0H17" fill="none" stroke=${color} stroke-width=${width} stroke-dasharray=${dash || "none"} /></svg>`
    }
    ${
      marker === undefined
        ? nothing
        : html`<svg viewBox="-18 -7 36 14" x="-18" y="-7" width="36" height="14"><path d=${marker} fill=${isOpen ? "none" : color} stroke=${color} stroke-width="1.4" /></svg>`
    }
  </svg>`;
}
