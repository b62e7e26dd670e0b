import { problem, success } from "../../../shared/result";
import type { NextInput } from "../commandInputs";
import { subCommand } from "../subCommand";

export const nextCommand = subCommand({
  name: "next",
  about: "Says what to test next: which measurement would help the choice between the designs of a case most.",
  usage: "FILE... [--json | --csv] [--out PATH]",
  files: {
    about:
      'a case file with sections and "compare", or with pucks; its block "next" lists what could be measured,\nwithout one a towing run of each design beside its baseline is judged; - for standard input;\nseveral are judged one after the other',
    example: "cases/harbour-league-candidates.json",
  },
  options: {
    json: {
      about:
        'one JSON document instead of the table; of several files an array of such documents, in their\norder, each with its name under "file"',
    },
    csv: {
      about:
        'comma-separated values, one line per measurement and pair, instead of the table; of several files\none table with the name in a first column "file"',
    },
    out: {
      value: "PATH",
      must: "the path of a file",
      about: "write to PATH instead of standard output; PATH appears only when it is complete",
    },
  },
  examples: ["next cases/harbour-league-candidates.json"],
  notes: `The value of a measurement is the expected fall of the regret: by how much of the least drag the choice that is
made after it is expected to be better. Equal seeds give equal answers.
Exit status: 0 done; 1 a measurement could not be judged (it is printed and marked); 2 unusable input; 70 fault in the
program; 130 interrupted.`,
  understand(files, { json, csv, out }) {
    if (json && csv) return problem("arguments", "--json and --csv exclude each other; give one of them");
    return success<NextInput>({ files, format: json ? "json" : csv ? "csv" : "table", out });
  },
  run: async (input) => (await import("../next")).runNext(input),
});
