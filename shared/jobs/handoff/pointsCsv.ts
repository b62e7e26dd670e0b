import Papa from "papaparse";
import { type Outline, outlinePoints } from "./outline";

/** An outline as a CSV table of points in mm, in order, first point not repeated (library papaparse). */
export function pointsCsv(outline: Outline, deviation: number): string {
  const data = outlinePoints(outline, deviation).map(([x, y]) => [millimetres(x), millimetres(y)]);
  return Papa.unparse({ fields: ["xMillimetres", "yMillimetres"], data }, { newline: "\n" });
}

/** To a tenth of a nanometre, without the noise of binary fractions. */
function millimetres(metres: number): number {
  return Number((metres * 1000).toFixed(7)) + 0;
}
