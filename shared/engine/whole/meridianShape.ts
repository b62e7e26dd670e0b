import { valueInTable } from "../../numerics/tableLookup";
import { problem, type Result, success } from "../../result";
import { type MeridianPanels, panelParameter } from "./meridianPanels";

/** A meridian by latitude as seen from the centre, so that a direction finds its point on the surface. */
export interface MeridianShape {
  readonly panels: MeridianPanels;
  /** Place of the centre on the axis, m. */
  readonly centre: number;
  /** Latitudes, rad, increasing, with distance from the centre, m, and fractional panel coordinate, shape [n]. */
  readonly latitude: Float64Array;
  readonly distance: Float64Array;
  readonly panelPlace: Float64Array;
}

const SAMPLES = 60;

/** @returns a problem when a ray from the centre meets the surface more than once */
export function meridianShape(panels: MeridianPanels): Result<MeridianShape> {
  const lower = panels.panels[0].curve.at(panels.panels[0].t1).z;
  const last = panels.panels[panels.panels.length - 1];
  const upper = last.curve.at(last.t2).z;
  const centre = (lower + upper) / 2;
  const size = panels.panels.length * SAMPLES + 1;
  const [latitude, distance, panelPlace] = [new Float64Array(size), new Float64Array(size), new Float64Array(size)];
  for (let i = 0; i < size; i++) {
    const p = Math.min(panels.panels.length - 1, Math.floor(i / SAMPLES));
    const place = panels.panels[p].curve.at(panelParameter(panels.panels[p], (2 * (i - p * SAMPLES)) / SAMPLES - 1));
    latitude[i] = Math.atan2(place.z - centre, Math.max(0, place.r));
    distance[i] = Math.hypot(place.r, place.z - centre);
    panelPlace[i] = i / SAMPLES;
    if (i > 0 && !(latitude[i] > latitude[i - 1])) {
      return problem(
        "not-star-shaped",
        "a straight line from the middle of the body meets its surface more than once; recesses and grooves must be left out",
        "meridian",
      );
    }
  }
  return success({ panels, centre, latitude, distance, panelPlace });
}

/** Distance of the surface from the centre at a latitude, m; linear in the table. */
export function locateInTable(shape: MeridianShape, latitude: number): number {
  return valueInTable(shape.latitude, shape.distance, latitude);
}

/** Fractional panel coordinate at a latitude: panel index plus half of (x + 1). */
export function panelPlaceAt(shape: MeridianShape, latitude: number): number {
  return Math.min(shape.panels.panels.length - 1e-9, valueInTable(shape.latitude, shape.panelPlace, latitude));
}
