import { problem, type Result, success } from "../../../shared/result";

type ProfilePoints = readonly (readonly [number, number])[];

const mostPoints = 500;

/** An edge profile as lines of "inset from the rim, inset from the face" in mm. */
export function edgeProfileText(points: ProfilePoints): string {
  return points.map((pair) => pair.map((value) => Number((1000 * value).toPrecision(6))).join("; ")).join("\n");
}

/** Reads such lines; numbers may be parted by blanks, semicolons or tabs and have a decimal comma. */
export function readEdgeProfile(text: string): Result<ProfilePoints> {
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== "");
  if (lines.length < 2 || lines.length > mostPoints) {
    return problem(
      "edge-profile",
      `The profile has ${lines.length} points; it must have 2 to ${mostPoints}, one a line.`,
    );
  }
  const points: [number, number][] = [];
  for (const [i, line] of lines.entries()) {
    const numbers = line
      .trim()
      .split(/[;\s]+/)
      .map((part) => Number(part.replace(",", ".")));
    if (numbers.length !== 2 || !numbers.every((value) => value >= 0 && value <= 1e4)) {
      return problem("edge-profile", `Line ${i + 1} is "${line.trim()}"; it must be two numbers of 0 mm or more.`);
    }
    points.push([numbers[0] / 1000, numbers[1] / 1000]);
  }
  return success(points);
}
