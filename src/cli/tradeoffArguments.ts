import { parseArgs } from "node:util";
import { problem, type Result, success } from "../../shared/result";

export type TradeoffArguments =
  | { readonly wants: "help" }
  | {
      readonly wants: "run";
      readonly file: string;
      readonly isJson: boolean;
      readonly out: string | null;
      readonly state: string | null;
    };

export const tradeoffHelp = `Searches the free dimensions of a puck for less drag and what else the case's trade-off asks for.

  npm run --silent tradeoff -- FILE [--json] [--out PATH] [--resume STATE]

  FILE            a case file with a puck and a trade-off, for instance cases/harbour-league-tradeoff.json
  --json          one JSON document instead of the table
  --out PATH      write to PATH instead of standard output; PATH appears only when it is complete
  --resume STATE  keep the state of the search in STATE and go on from it when it is there
  --help          this text

Works in threads, one fewer than there are cores. Interrupted with Ctrl-C it keeps its state: the same command goes on
from there and ends with the same answer.
Exit status: 0 done; 1 no puck inside the rules was found, or a member of the front failed; 2 unusable input; 70 fault
in the program; 130 interrupted.
Results are screening estimates: they prove neither safety nor compliance.
`;

/** The command line's arguments, without the program's own. The problem's message is one line. */
export function tradeoffArguments(args: readonly string[]): Result<TradeoffArguments> {
  let parsed: ReturnType<typeof parse>;
  try {
    parsed = parse(args);
  } catch (error) {
    const reason = error instanceof Error ? error.message.split(/[.\n]/)[0] : String(error);
    return problem("arguments", `${reason}; the options are --json, --out PATH, --resume STATE and --help`);
  }
  const { values, positionals } = parsed;
  if (values.help === true) return success({ wants: "help" });
  if (positionals.length !== 1) {
    const found = positionals.length === 0 ? "no case file was named" : `${positionals.length} case files were named`;
    return problem("arguments", `${found}; name one, for instance cases/harbour-league-tradeoff.json`);
  }
  const empty = (["out", "resume"] as const).find((key) => values[key] === "");
  if (empty !== undefined) return problem("arguments", `--${empty} is empty; it must be the path of a file`);
  return success({
    wants: "run",
    file: positionals[0],
    isJson: values.json === true,
    out: values.out ?? null,
    state: values.resume ?? null,
  });
}

function parse(args: readonly string[]) {
  return parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      json: { type: "boolean" },
      out: { type: "string" },
      resume: { type: "string" },
      help: { type: "boolean", short: "h" },
    },
  });
}
