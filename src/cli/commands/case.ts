import type { CsvOption } from "../../../shared/case/jobBlocks";
import { problem, type Result, success } from "../../../shared/result";
import type { CaseRunInput, OutputFormat } from "../commandInputs";
import { subCommand } from "../subCommand";

/** What --csv may be of; the jobs of `shared/case/jobBlocks.ts`, which take longer to load than this help may. */
const jobOptions = {
  pucks: "the pucks, one line per attitude and condition, instead of the sections",
  comparisons: "the sections or pucks against their baseline, one line per candidate and condition",
  next: "what to test next, one line per measurement and pair of designs",
  tunnel: "the reduced runs of a tunnel test, one line per speed and direction",
  trial: "the rankings of a player trial, one line per activity and puck",
  measurements: "the measured points against the prediction, one line per point",
  durability: "impacts and wear of the pucks, one line per puck and figure",
  cost: "what the pucks cost to make, one line per puck and size of batch",
  choice: "the choice between pucks, one line per candidate and criterion",
} as const satisfies Record<CsvOption, string>;
const csvOptions = Object.keys(jobOptions) as CsvOption[];

export type CaseInput = { readonly wants: "schema" } | CaseRunInput;

export const caseCommand = subCommand({
  name: "case",
  about: "Runs case files: drag, base pressure, separation and Strouhal number of their sections.",
  usage:
    "FILE... [--json | --csv [--pucks | --comparisons | --next | --tunnel | --trial | --measurements |\n --durability | --cost | --choice]] [--out PATH]",
  files: {
    about:
      "a case file, for instance cases/harbour-league-puck.json (format: cases/case.schema.json);\n- for standard input; several are run one after the other",
    example: "cases/cylinder-smooth.json",
  },
  options: {
    json: {
      about:
        'one JSON document with a top-level "results" array, instead of the table; of several files an\narray of such documents, in their order, each with its name under "file"',
    },
    csv: {
      about:
        'comma-separated values, one line per result, instead of the table; of several files one table\nwith the name in a first column "file"',
    },
    pucks: { about: `with --csv: ${jobOptions.pucks}` },
    comparisons: { about: `with --csv: ${jobOptions.comparisons}` },
    next: { about: `with --csv: ${jobOptions.next}` },
    tunnel: { about: `with --csv: ${jobOptions.tunnel}` },
    trial: { about: `with --csv: ${jobOptions.trial}` },
    measurements: { about: `with --csv: ${jobOptions.measurements}` },
    durability: { about: `with --csv: ${jobOptions.durability}` },
    cost: { about: `with --csv: ${jobOptions.cost}` },
    choice: { about: `with --csv: ${jobOptions.choice}` },
    out: {
      value: "PATH",
      must: "the path of a file",
      about: "write to PATH instead of standard output; PATH appears only when it is complete",
    },
    schema: { about: "the JSON Schema of case files, and nothing else" },
  },
  standsAlone: "schema",
  examples: [
    "case cases/cylinder-smooth.json --json --out results.json",
    "case cases/cylinder-smooth.json cases/cylinder-rough.json --csv",
  ],
  notes: `Several files are all read before the first one is run: an unusable one stops the whole.
Exit status: 0 done; 1 some results did not converge (they are printed and marked); 2 unusable input;
74 the results could not be written; 70 fault in the program; 130 interrupted.
Results are screening estimates: shortlist with them, then measure. They prove neither safety nor compliance.`,
  understand(files, values): Result<CaseInput> {
    if (values.schema) return success({ wants: "schema" });
    if (values.json && values.csv) {
      return problem("arguments", "--json and --csv exclude each other; give one of them");
    }
    const parts = csvOptions.filter((part) => values[part]);
    if (parts.length > 0 && !values.csv) {
      return problem("arguments", `--${parts[0]} goes with --csv; give both`);
    }
    if (parts.length > 1) {
      return problem("arguments", `--${parts[0]} and --${parts[1]} exclude each other; give one of them`);
    }
    const [csvFormat = "csv"] = parts;
    const format: OutputFormat = values.json ? "json" : values.csv ? csvFormat : "table";
    return success({ wants: "run", files, format, out: values.out });
  },
  async run(input) {
    const work = await import("../case");
    return input.wants === "schema" ? work.printSchema() : work.runCases(input);
  },
});
