import { success } from "../../../shared/result";
import type { HandoffInput } from "../commandInputs";
import { subCommand } from "../subCommand";

export const handoffCommand = subCommand({
  name: "hand-off",
  about: "Writes what the workshop and a flow computation need of one puck, of one case or of several.",
  usage: "FILE... --puck NAME --to FOLDER [--replace]",
  files: {
    about:
      "a case file with a puck, for instance cases/harbour-league-candidates.json; - for standard input;\nof several the same puck is written, each into a folder of its own",
    example: "cases/harbour-league-candidates.json",
  },
  options: {
    puck: {
      value: "NAME",
      needed: true,
      must: "the name of a puck of the case",
      about: "the puck, by its name in the case; with several files each must have it",
    },
    to: {
      value: "FOLDER",
      needed: true,
      must: "the folder that the files go to",
      about:
        "where the files go; the folder is made when it is missing; of several cases each has a folder in\nit with the name of its file",
    },
    replace: { about: "replace files that are there already" },
  },
  examples: ['hand-off cases/harbour-league-candidates.json --puck "Pebble, round edge" --to pebble'],
  notes: `Files, lengths in mm: outlines of profile and plan (CSV, DXF, SVG), core (DXF), solid (STL, 3MF), briefs for flow
computations of both sections, a dimensioned drawing (SVG), and a text to read first with the cautions. Each appears
only when it is complete.
Exit status: 0 done; 2 unusable input; 74 the results could not be written; 70 fault in the program; 130 interrupted.
A screening design proves neither safety nor compliance; lead belongs to licensed practice under local rules.`,
  understand: (files, { puck, to, replace }) =>
    success<HandoffInput>({ files, puck, folder: to, isReplacing: replace }),
  run: async (input) => (await import("../handoff")).runHandoff(input),
});
