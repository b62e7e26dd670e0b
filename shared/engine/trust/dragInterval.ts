/** A value with the lowest and highest that the methods and sources behind it allow; low <= expected <= high. */
export interface DragBand {
  readonly low: number;
  readonly expected: number;
  readonly high: number;
}

/** Drag of a puck in one attitude. Areas are named because the same drag has another coefficient on another area. */
export interface PuckDrag {
  /** Drag / dynamic pressure, m^2: independent of any choice of area. */
  readonly dragArea: DragBand;
  readonly dragCoefficient: DragBand;
  /** The area that dragCoefficient is on, m^2, and what it is. */
  readonly referenceArea: number;
  readonly referenceAreaName: string;
  /** What to keep in mind about the figures, in plain words. */
  readonly notes: readonly string[];
  /** The ways in which the flow may pass the puck; empty where its flow is not solved as that of a whole body. */
  readonly states: readonly DragState[];
}

/** Parts of a drag coefficient. */
export type DragParts = Readonly<Record<"forebody" | "lostSuction" | "base" | "friction", DragBand>>;

/** One way in which the flow may pass a whole body. */
export interface DragState {
  /** Whether the rim's layer is laminar where it leaves, or has turned before or in a bubble. */
  readonly rimState: "laminar" | "turned";
  /** Whether the edge's layer stays on it, leaves it and comes back on the face, or leaves for good. */
  readonly edgeState: "kept" | "lost" | "open";
  /** How likely the state is, 0 to 1. */
  readonly share: number;
  /** Where the rim's layer leaves, degrees from its front; null where the flow does not follow the rim. */
  readonly rimSeparationDegrees: number | null;
  /** False where the layer leaves so late that the wake does not settle: the drag is that of 124 degrees, low confidence. */
  readonly settled: boolean;
  /** On the same area as the drag's own coefficient. */
  readonly dragCoefficient: DragBand;
  readonly parts: DragParts;
  readonly basePressureCoefficient: DragBand;
}

export function scaleBand(band: DragBand, factor: number): DragBand {
  return { low: band.low * factor, expected: band.expected * factor, high: band.high * factor };
}

/** From the lowest to the highest of several bands, the expected value a weighted mean of theirs. */
export function spanBands(bands: readonly DragBand[], weights: readonly number[]): DragBand {
  if (bands.length !== weights.length) {
    throw new RangeError(`there are ${bands.length} bands and ${weights.length} weights; both need the same number.`);
  }
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return {
    low: Math.min(...bands.map((band) => band.low)),
    expected: bands.reduce((sum, band, i) => sum + (weights[i] / total) * band.expected, 0),
    high: Math.max(...bands.map((band) => band.high)),
  };
}

export function dragOn(
  dragArea: DragBand,
  area: number,
  areaName: string,
  notes: readonly string[],
  states: readonly DragState[] = [],
): PuckDrag {
  return {
    dragArea,
    dragCoefficient: scaleBand(dragArea, 1 / area),
    referenceArea: area,
    referenceAreaName: areaName,
    notes,
    states,
  };
}
