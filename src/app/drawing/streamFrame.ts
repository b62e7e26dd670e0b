/**
 * Between body axes (m, x along the stream at zero incidence, y up) and the drawing: the stream runs from left to
 * right, y points down as in SVG, lengths in units of the view box.
 */
export interface StreamFrame {
  readonly toView: (x: number, y: number) => readonly [number, number];
  readonly toBody: (viewX: number, viewY: number) => readonly [number, number];
  /** View-box units per metre. */
  readonly scale: number;
}

/**
 * @param centroid  of the section, body axes, m; it is drawn at `place`
 * @param incidence  rad, nose up: the section is turned, the stream stays level
 * @param scale  view-box units per metre
 */
export function streamFrame(
  centroid: readonly [number, number],
  incidence: number,
  scale: number,
  place: readonly [number, number],
): StreamFrame {
  const cos = Math.cos(incidence);
  const sin = Math.sin(incidence);
  return {
    scale,
    toView: (x, y) => {
      const dx = x - centroid[0];
      const dy = y - centroid[1];
      return [place[0] + scale * (dx * cos + dy * sin), place[1] - scale * (dy * cos - dx * sin)];
    },
    toBody: (viewX, viewY) => {
      const along = (viewX - place[0]) / scale;
      const up = (place[1] - viewY) / scale;
      return [centroid[0] + along * cos - up * sin, centroid[1] + along * sin + up * cos];
    },
  };
}
