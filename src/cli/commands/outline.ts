import { type OutlineUnit, outlineUnits } from "../../../shared/outlines/outline";
import { problem, type Result, success } from "../../../shared/result";
import type { OutlineInput } from "../commandInputs";
import { subCommand } from "../subCommand";

export const outlineCommand = subCommand({
  name: "outline",
  about: "Reads outlines of sections and tells what would be solved: height, length, area and deviation.",
  usage: "FILE... [--to CASE.json] [--unit UNIT] [--json]",
  files: {
    about:
      "an outline: points as text (x, y), an SVG or a text DXF drawing; - for standard input; several are\nread one after the other",
    example: "profile.dxf",
  },
  options: {
    to: {
      value: "CASE.json",
      must: "the path of a file",
      about: "write a case with the outlines as its sections; it appears only when it is complete",
    },
    unit: {
      value: "UNIT",
      must: `one of ${outlineUnits.join(", ")}`,
      about: `unit of the coordinates, one of ${outlineUnits.join(", ")}, whatever the files say; without it the unit that\na file names, else millimetres, which is then said`,
    },
    json: {
      about: 'one JSON document instead of the table; of several files an array, each with its name under "file"',
    },
  },
  examples: ["outline profile.dxf", "outline front.svg rear.csv --unit in --to profiles.json"],
  notes: `x is along the stream, y across it. Lines stay lines and arcs stay arcs; corners get the smallest radius that the
solver takes, 1 % of the smaller of length and height. The deviation is the largest distance of the outline in the file
from the contour that is solved; above 5 % of the smaller dimension the outline is refused.
Exit status: 0 done; 2 unusable input; 70 fault in the program.`,
  understand(files, { to, unit, json }): Result<OutlineInput> {
    if (unit !== null && !isUnit(unit)) {
      return problem("arguments", `--unit is "${unit.slice(0, 40)}"; it must be one of ${outlineUnits.join(", ")}`);
    }
    return success({ files, to, unit, isJson: json });
  },
  run: async (input) => (await import("../outline")).runOutline(input),
});

function isUnit(text: string): text is OutlineUnit {
  return outlineUnits.some((unit) => unit === text);
}
