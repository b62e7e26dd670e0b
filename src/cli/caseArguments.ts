import { parseArgs } from "node:util";
import { problem, type Result, success } from "../../shared/result";

/**
 * "puckCsv", "tunnelCsv", "trialCsv" and "comparisonCsv": the pucks of a case, its reduced tunnel test, its rankings by
 * players or its compared measurements, in place of its sections.
 */
export type OutputFormat = "table" | "json" | "csv" | "puckCsv" | "tunnelCsv" | "trialCsv" | "comparisonCsv";

/** Parts of a case that have a table of their own, by their option, which is also their key in the case. */
export const partFormats = {
  pucks: "puckCsv",
  tunnel: "tunnelCsv",
  trial: "trialCsv",
  measurements: "comparisonCsv",
} as const satisfies Record<string, OutputFormat>;
type CasePart = keyof typeof partFormats;

export type CaseArguments =
  | { readonly wants: "help" }
  | { readonly wants: "schema" }
  | { readonly wants: "run"; readonly file: string; readonly format: OutputFormat; readonly out: string | null };

export const helpText = `Runs a case file: drag, base pressure, separation and Strouhal number of its sections.

  npm run --silent case -- FILE [--json | --csv [--pucks | --tunnel | --trial | --measurements]] [--out PATH]

  FILE        a case file, for instance cases/harbour-league-puck.json (format: cases/case.schema.json)
  --json      one JSON document with a top-level "results" array, instead of the table
  --csv       comma-separated values, one line per result, instead of the table
  --pucks     with --csv: the pucks of the case, one line per attitude and condition, instead of its sections
  --tunnel    with --csv: the reduced runs of a tunnel test, one line per speed and direction
  --trial     with --csv: the rankings of a player trial, one line per activity and puck
  --measurements
              with --csv: the measured points against the prediction, one line per point, instead of the sections
  --out PATH  write to PATH instead of standard output; PATH appears only when it is complete
  --schema    the JSON Schema of case files, and nothing else
  --help      this text

Exit status: 0 done; 1 some results did not converge (they are printed and marked); 2 unusable input; 70 fault in
the program; 130 interrupted.
Results are screening estimates: shortlist with them, then measure. They prove neither safety nor compliance.
`;

/** The command line's arguments, without the program's own. The problem's message is one line. */
export function caseArguments(args: readonly string[]): Result<CaseArguments> {
  let parsed: ReturnType<typeof parse>;
  try {
    parsed = parse(args);
  } catch (error) {
    const reason = error instanceof Error ? error.message.split(/[.\n]/)[0] : String(error);
    return problem(
      "arguments",
      `${reason}; the options are --json, --csv, --pucks, --tunnel, --trial, --measurements, --out PATH, --schema and --help`,
    );
  }
  const { values, positionals } = parsed;
  if (values.help === true) return success({ wants: "help" });
  if (values.schema === true) return success({ wants: "schema" });
  if (positionals.length !== 1) {
    const found = positionals.length === 0 ? "no case file was named" : `${positionals.length} case files were named`;
    return problem("arguments", `${found}; name one, for instance cases/cylinder-smooth.json (--help tells more)`);
  }
  if (values.json === true && values.csv === true) {
    return problem("arguments", "--json and --csv exclude each other; give one of them");
  }
  const parts = (Object.keys(partFormats) as CasePart[]).filter((part) => values[part] === true);
  if (parts.length > 0 && values.csv !== true) {
    return problem("arguments", `--${parts[0]} goes with --csv; give both`);
  }
  if (parts.length > 1) {
    return problem("arguments", `--${parts[0]} and --${parts[1]} exclude each other; give one of them`);
  }
  if (values.out === "") return problem("arguments", "--out is empty; it must be the path of a file");
  const csvFormat = parts.length === 0 ? "csv" : partFormats[parts[0]];
  const format: OutputFormat = values.json === true ? "json" : values.csv === true ? csvFormat : "table";
  return success({ wants: "run", file: positionals[0], format, out: values.out ?? null });
}

function parse(args: readonly string[]) {
  return parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      json: { type: "boolean" },
      csv: { type: "boolean" },
      pucks: { type: "boolean" },
      tunnel: { type: "boolean" },
      trial: { type: "boolean" },
      measurements: { type: "boolean" },
      out: { type: "string" },
      schema: { type: "boolean" },
      help: { type: "boolean", short: "h" },
    },
  });
}
