import type { Data } from "plotly.js-dist-min";
import type { LayerProfile } from "../../../shared/engine/solution";
import { type Palette, seriesStyle } from "../style/palette";
import { figureLayout, type PlotFigure } from "./plotFigure";
import type { OverlaidState } from "./pressureFigure";

export const layerQuantities = ["momentumThickness", "shapeFactor", "skinFriction"] as const;

export type LayerQuantity = (typeof layerQuantities)[number];

interface QuantityText {
  readonly title: string;
  readonly axis: string;
  readonly caption: string;
  readonly values: (layer: LayerProfile) => Readonly<Float64Array>;
}

const quantityTexts: Record<LayerQuantity, QuantityText> = {
  momentumThickness: {
    title: "Momentum thickness",
    axis: "momentum thickness θ / D (–)",
    caption: "Momentum thickness of the boundary layer from the stagnation point to separation.",
    values: (layer) => layer.momentumThickness,
  },
  shapeFactor: {
    title: "Shape factor",
    axis: "shape factor H (–)",
    caption: "Shape factor: about 2.6 in a laminar layer, 1.4 in a turbulent one, rising towards separation.",
    values: (layer) => layer.shapeFactor,
  },
  skinFriction: {
    title: "Skin friction",
    axis: "skin friction Cf (–)",
    caption: "Skin friction on the local edge speed.",
    values: (layer) => layer.skinFriction,
  },
};

const kindNames = ["laminar", "bubble", "turbulent"] as const;
const kindWidths = [1.4, 2.2, 3.6] as const;

/**
 * One boundary-layer quantity along both sides. The kind of layer is told by the line's weight (thin laminar, dotted
 * bubble, thick turbulent); the lower side is drawn lighter with the same style.
 */
export function layerFigure(overlaid: readonly OverlaidState[], quantity: LayerQuantity, palette: Palette): PlotFigure {
  const text = quantityTexts[quantity];
  const data: Data[] = [];
  const rows: (string | number | null)[][] = [];
  overlaid.forEach(({ name, state }, i) => {
    const style = seriesStyle(palette, i);
    for (const sideName of ["upper", "lower"] as const) {
      const { layer } = state[sideName];
      const values = text.values(layer);
      for (const run of runsOfOneKind(layer.layerKind)) {
        const at = Array.from({ length: run.end - run.start }, (_, k) => run.start + k);
        data.push({
          type: "scatter",
          mode: "lines",
          name: `${name}, ${sideName}, ${kindNames[run.kind]}`,
          x: at.map((station) => layer.arc[station]),
          y: at.map((station) => finiteOrNull(values[station])),
          opacity: sideName === "upper" ? 1 : 0.6,
          hovertemplate: "arc %{x:.3f}<br>%{y:.4g}<extra>%{fullData.name}</extra>",
          line: {
            color: style.color,
            width: kindWidths[run.kind],
            dash: run.kind === 1 ? "dot" : sideName === "upper" ? "solid" : "dash",
          },
          showlegend: true,
        });
      }
      for (let k = 0; k < layer.arc.length; k++) {
        rows.push([name, sideName, layer.arc[k], kindNames[kindOf(layer.layerKind[k])], finiteOrNull(values[k])]);
      }
    }
  });
  return {
    key: `layer-${quantity}`,
    title: text.title,
    caption: `${text.caption} Thin line laminar, dotted bubble, thick turbulent; lower side dashed.`,
    data,
    layout: figureLayout(
      palette,
      { title: "arc from stagnation s / D (–)", values: rows.map((row) => row[2] as number), fromZero: true },
      { title: text.axis, values: rows.map((row) => row[4] as number | null), fromZero: quantity !== "shapeFactor" },
    ),
    table: { columns: ["curve", "side", "arc / reference width", "layer", text.axis], rows },
  };
}

interface Run {
  readonly kind: 0 | 1 | 2;
  readonly start: number;
  /** One past the last station; overlaps the next run by one station so that the line has no gap. */
  readonly end: number;
}

function runsOfOneKind(kinds: Readonly<Uint8Array>): Run[] {
  const runs: Run[] = [];
  let start = 0;
  for (let i = 1; i <= kinds.length; i++) {
    if (i < kinds.length && kinds[i] === kinds[start]) continue;
    runs.push({ kind: kindOf(kinds[start]), start, end: Math.min(i + 1, kinds.length) });
    start = i;
  }
  return runs;
}

function kindOf(value: number): 0 | 1 | 2 {
  return value === 2 ? 2 : value === 1 ? 1 : 0;
}

function finiteOrNull(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
