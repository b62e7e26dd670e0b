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

export function dragOn(dragArea: DragBand, area: number, areaName: string, notes: readonly string[]): PuckDrag {
  return {
    dragArea,
    dragCoefficient: scaleBand(dragArea, 1 / area),
    referenceArea: area,
    referenceAreaName: areaName,
    notes,
  };
}
