import { parseArgs } from "node:util";
import { problem, type Result, success } from "../../shared/result";

export type SheetsArguments =
  | { readonly wants: "help" }
  | { readonly wants: "run"; readonly file: string; readonly folder: string; readonly isReplacing: boolean };

export const sheetsHelp = `Writes the sheets that a test or a trial needs, to print and to fill in.

  npm run --silent sheets -- FILE --to FOLDER [--replace]

  FILE         a case file with a tunnel test or a player trial, for instance cases/harbour-trial.json
  --to FOLDER  where the files go; the folder is made when it is missing
  --replace    replace files that are there already
  --help       this text

A player trial gives score sheets and, in files of their own, the key of its blind codes: keep the key from players and
from whoever collects the scores. A tunnel test gives its run sheet. Each as a page to print (HTML) and as a table to
fill in (CSV), which the case reads back.
Exit status: 0 done; 2 unusable input; 70 fault in the program.
`;

/** The command line's arguments, without the program's own. The problem's message is one line. */
export function sheetsArguments(args: readonly string[]): Result<SheetsArguments> {
  let parsed: ReturnType<typeof parse>;
  try {
    parsed = parse(args);
  } catch (error) {
    const reason = error instanceof Error ? error.message.split(/[.\n]/)[0] : String(error);
    return problem("arguments", `${reason}; the options are --to FOLDER, --replace and --help`);
  }
  const { values, positionals } = parsed;
  if (values.help === true) return success({ wants: "help" });
  if (positionals.length !== 1) {
    const found = positionals.length === 0 ? "no case file was named" : `${positionals.length} case files were named`;
    return problem("arguments", `${found}; name one, for instance cases/harbour-trial.json`);
  }
  if (values.to === undefined || values.to === "") {
    return problem("arguments", "--to FOLDER is missing; it must be the folder that the files go to");
  }
  return success({ wants: "run", file: positionals[0], folder: values.to, isReplacing: values.replace === true });
}

function parse(args: readonly string[]) {
  return parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      to: { type: "string" },
      replace: { type: "boolean" },
      help: { type: "boolean", short: "h" },
    },
  });
}
