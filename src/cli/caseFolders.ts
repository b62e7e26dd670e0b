import { basename } from "node:path";
import { problem, type Result, success } from "../../shared/result";
import type { NamedContent } from "./outputFolder";
import { shownInputName, standardInputName } from "./standardInput";

/** The files that are to be written for one case. */
export interface CaseFiles {
  /** The case file as it was named. */
  readonly file: string;
  readonly made: readonly NamedContent[];
}

/**
 * All files to write: those of a single case as they are; of several cases, each in a folder with the name of its case
 * file without ".json".
 */
export function inCaseFolders(cases: readonly CaseFiles[]): Result<NamedContent[]> {
  if (cases.length === 1) return success([...cases[0].made]);
  const owners = new Map<string, string>();
  for (const { file } of cases) {
    const folder = folderName(file);
    // File systems that take capitals for small letters would put both into one folder.
    const owner = owners.get(folder.toLowerCase());
    if (owner !== undefined) {
      return problem(
        "output",
        `${shownInputName(file)}: would be written to the same folder, ${folder}, as ${shownInputName(owner)}; name them in two calls`,
      );
    }
    owners.set(folder.toLowerCase(), file);
  }
  return success(
    cases.flatMap(({ file, made }) =>
      made.map(({ name, content }) => ({ name: `${folderName(file)}/${name}`, content })),
    ),
  );
}

function folderName(file: string): string {
  return file === standardInputName ? "standard-input" : basename(file).replace(/\.json$/i, "");
}
