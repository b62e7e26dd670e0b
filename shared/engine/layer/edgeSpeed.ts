import type { SideStations } from "./sideStations";

/** Reads the edge speed of a side, and how its streamlines spread, at places that only move downstream: linear between the stations, without a search. */
export class EdgeSpeed {
  private cell = 0;
  private weight = 0;

  /** d(ln b)/ds of the streamlines' spacing b between the stations about the last place, 1/D; 0 in plane flow. */
  spread: number;

  constructor(
    private readonly stations: Pick<
      SideStations,
      "arc" | "speed" | "gradient" | "curvature" | "spacing" | "count" | "outline"
    >,
  ) {
    this.spread = this.spreadIn(0);
  }

  /** Edge speed / U at an arc / D, which becomes the place that {@link gradient} speaks of; no place may lie ahead of the last. */
  at(position: number): number {
    const { arc, speed, count } = this.stations;
    let cell = this.cell;
    while (cell < count - 2 && arc[cell + 1] <= position) cell++;
    const weight = (position - arc[cell]) / (arc[cell + 1] - arc[cell]);
    if (cell !== this.cell) this.spread = this.spreadIn(cell);
    this.cell = cell;
    this.weight = weight;
    return speed[cell] + weight * (speed[cell + 1] - speed[cell]);
  }

  /** d(speed)/d(arc) at the last place, 1/D in units of U. */
  gradient(): number {
    const { gradient } = this.stations;
    return gradient[this.cell] + this.weight * (gradient[this.cell + 1] - gradient[this.cell]);
  }

  /** Curvature of the wall * D at the last place. */
  bend(): number {
    const { curvature } = this.stations;
    return curvature[this.cell] + this.weight * (curvature[this.cell + 1] - curvature[this.cell]);
  }

  /** Curvature * D of the bend that begins about the last place, if one does. */
  bendAhead(): number {
    const { curvature, count, outline } = this.stations;
    const behind = this.cell === count - 2 && outline !== undefined ? outline.curvatureAhead : 0;
    return Math.max(curvature[this.cell], curvature[this.cell + 1], behind);
  }

  private spreadIn(cell: number): number {
    const { arc, spacing } = this.stations;
    return spacing === null ? 0 : Math.log(spacing[cell + 1] / spacing[cell]) / (arc[cell + 1] - arc[cell]);
  }
}
