import { problem, type Result, success } from "../../../shared/result";

/** A closed outline as it stands in a file: corner points in the file's own unit, y up, without the closing repeat. */
export interface Outline {
  readonly points: readonly (readonly [number, number])[];
  /** Unit that the file itself names; null when it names none. */
  readonly unitKey: "mm" | "cm" | "m" | "in" | null;
  /** What the reader did that a person should know. */
  readonly remarks: readonly string[];
}

export const largestImportBytes = 2_000_000;
export const mostOutlinePoints = 2000;
/** Points per curve when a curved file is read. */
export const curvePoints = 240;

/**
 * Checks and tidies raw points: finite numbers, enough of them and not too many, repeated points dropped.
 * Self-crossing is left to the geometry, which checks every contour.
 */
export function makeOutline(
  raw: readonly (readonly [number, number])[],
  unitKey: Outline["unitKey"],
  remarks: readonly string[] = [],
): Result<Outline> {
  if (raw.some(([x, y]) => !(Number.isFinite(x) && Number.isFinite(y)))) {
    return problem("import", "The outline has a coordinate that is not a finite number.");
  }
  if (raw.length > mostOutlinePoints) {
    return problem("import", `The outline has ${raw.length} points; at most ${mostOutlinePoints} can be used.`);
  }
  const xs = raw.map(([x]) => x);
  const ys = raw.map(([, y]) => y);
  const size = Math.max(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
  if (raw.length > 0 && !(size > 0)) return problem("import", "All points of the outline are the same.");
  const points = raw.filter((point, i) => i === 0 || apart(point, raw[i - 1]) > 1e-9 * size);
  if (points.length > 1 && apart(points[0], points[points.length - 1]) <= 1e-6 * size) points.pop();
  const dropped = raw.length - points.length;
  if (points.length < 5) {
    return problem("import", `The outline has ${points.length} different points; at least 5 are needed.`);
  }
  return success({
    points,
    unitKey,
    remarks: dropped > 1 ? [...remarks, `${dropped} repeated points were dropped.`] : remarks,
  });
}

function apart(a: readonly [number, number], b: readonly [number, number]): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
