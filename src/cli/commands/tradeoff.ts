import { success } from "../../../shared/result";
import type { TradeoffInput } from "../commandInputs";
import { subCommand } from "../subCommand";

export const tradeoffCommand = subCommand({
  name: "trade-off",
  about: "Searches the free dimensions of a puck for less drag and what else the case's trade-off asks for.",
  usage: "FILE... [--json] [--out PATH] [--resume STATE]",
  files: {
    about:
      "a case file with a puck and a trade-off, for instance cases/harbour-league-tradeoff.json; - for\nstandard input; several are searched one after the other",
    example: "cases/harbour-league-tradeoff.json",
  },
  options: {
    json: {
      about:
        'one JSON document instead of the table; of several files an array of such documents, in their\norder, each with its name under "file"',
    },
    out: {
      value: "PATH",
      must: "the path of a file",
      about: "write to PATH instead of standard output; PATH appears only when it is complete",
    },
    resume: {
      value: "STATE",
      must: "the path of a file",
      about:
        "keep the state of the search in STATE and go on from it when it is there; of several files STATE\nholds all searches",
    },
  },
  examples: ["trade-off cases/harbour-league-tradeoff.json --json --out front.json --resume search-state.json"],
  notes: `Works in threads, one per core. Interrupted with Ctrl-C it keeps its state: the same command goes on from there and ends
with the same answer.
Exit status: 0 done; 1 no puck inside the rules was found, or a member of the front failed; 2 unusable input;
74 the results could not be written; 70 fault in the program; 130 interrupted.
Results are screening estimates: they prove neither safety nor compliance.`,
  understand: (files, { json, out, resume }) => success<TradeoffInput>({ files, isJson: json, out, state: resume }),
  run: async (input) => (await import("../tradeoff")).runTradeoff(input),
});
