import { success } from "../../../shared/result";
import type { SheetsInput } from "../commandInputs";
import { subCommand } from "../subCommand";

export const sheetsCommand = subCommand({
  name: "sheets",
  about: "Writes the sheets that a test or a trial needs, to print and to fill in.",
  usage: "FILE... --to FOLDER [--replace]",
  files: {
    about:
      "a case file with a tunnel test or a player trial, for instance cases/harbour-trial.json; - for\nstandard input; of several the sheets of each go into a folder of their own",
    example: "cases/harbour-trial.json",
  },
  options: {
    to: {
      value: "FOLDER",
      needed: true,
      must: "the folder that the files go to",
      about:
        "where the files go; the folder is made when it is missing; of several cases each has a folder in\nit with the name of its file",
    },
    replace: { about: "replace files that are there already" },
  },
  examples: [
    "sheets cases/harbour-trial.json --to trial-sheets",
    "sheets cases/harbour-trial.json cases/harbour-tunnel.json --to sheets",
  ],
  notes: `A player trial gives score sheets and, in files of their own, the key of its blind codes: keep the key from players and
from whoever collects the scores. A tunnel test gives its run sheet. Each as a page to print (HTML) and as a table to
fill in (CSV), which the case reads back.
Exit status: 0 done; 2 unusable input; 74 the results could not be written; 70 fault in the program.`,
  understand: (files, { to, replace }) => success<SheetsInput>({ files, folder: to, isReplacing: replace }),
  run: async (input) => (await import("../sheets")).runSheets(input),
});
