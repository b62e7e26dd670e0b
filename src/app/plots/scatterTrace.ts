import type { Data } from "plotly.js-dist-min";

/** What the page itself reads of a scatter trace; the plot library's own type is far wider. */
export interface ScatterTrace {
  readonly mode?: string;
  readonly name?: string;
  readonly showlegend?: boolean;
  readonly fill?: string;
  readonly x?: ArrayLike<number | null>;
  readonly y?: ArrayLike<number | null>;
  readonly line?: { readonly color?: unknown; readonly dash?: unknown; readonly width?: number };
  readonly marker?: {
    readonly color?: unknown;
    readonly symbol?: unknown;
    readonly line?: { readonly color?: unknown };
  };
}

export function asScatter(trace: Data): ScatterTrace {
  return trace as ScatterTrace;
}
