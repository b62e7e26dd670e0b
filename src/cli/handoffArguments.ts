import { parseArgs } from "node:util";
import { problem, type Result, success } from "../../shared/result";

export type HandoffArguments =
  | { readonly wants: "help" }
  | {
      readonly wants: "run";
      readonly file: string;
      readonly puck: string;
      readonly folder: string;
      readonly isReplacing: boolean;
    };

export const handoffHelp = `Writes what the workshop and a flow computation need of one puck of a case.

  npm run --silent handoff -- FILE --puck NAME --to FOLDER [--replace]

  FILE         a case file with a puck, for instance cases/harbour-league-candidates.json
  --puck NAME  the puck, by its name in the case
  --to FOLDER  where the files go; the folder is made when it is missing
  --replace    replace files that are there already
  --help       this text

Files, lengths in mm: outlines of profile and plan (CSV, DXF, SVG), core (DXF), solid (STL, 3MF), briefs for flow
computations of both sections, a dimensioned drawing (SVG), and a text to read first with the cautions. Each appears
only when it is complete.
Exit status: 0 done; 2 unusable input; 70 fault in the program; 130 interrupted.
A screening design proves neither safety nor compliance; lead belongs to licensed practice under local rules.
`;

/** The command line's arguments, without the program's own. The problem's message is one line. */
export function handoffArguments(args: readonly string[]): Result<HandoffArguments> {
  let parsed: ReturnType<typeof parse>;
  try {
    parsed = parse(args);
  } catch (error) {
    const reason = error instanceof Error ? error.message.split(/[.\n]/)[0] : String(error);
    return problem("arguments", `${reason}; the options are --puck NAME, --to FOLDER, --replace and --help`);
  }
  const { values, positionals } = parsed;
  if (values.help === true) return success({ wants: "help" });
  if (positionals.length !== 1) {
    const found = positionals.length === 0 ? "no case file was named" : `${positionals.length} case files were named`;
    return problem("arguments", `${found}; name one, for instance cases/harbour-league-candidates.json`);
  }
  if (values.puck === undefined || values.puck === "") {
    return problem("arguments", "--puck NAME is missing; it must be the name of a puck of the case");
  }
  if (values.to === undefined || values.to === "") {
    return problem("arguments", "--to FOLDER is missing; it must be the folder that the files go to");
  }
  return success({
    wants: "run",
    file: positionals[0],
    puck: values.puck,
    folder: values.to,
    isReplacing: values.replace === true,
  });
}

function parse(args: readonly string[]) {
  return parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      puck: { type: "string" },
      to: { type: "string" },
      replace: { type: "boolean" },
      help: { type: "boolean", short: "h" },
    },
  });
}
