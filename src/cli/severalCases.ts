import Papa from "papaparse";

/** The results of one of the files that were named. */
export interface NamedResults<Results extends object> {
  /** As it is shown. */
  readonly file: string;
  readonly results: Results;
}

/** What was written of one of the files that were named. */
interface NamedText {
  readonly file: string;
  readonly text: string;
}

/** The document of one case; of several an array of documents, each with its file's name. */
export function jsonText(done: readonly NamedResults<object>[]): string {
  const document = done.length === 1 ? done[0].results : done.map(({ file, results }) => ({ file, ...results }));
  return `${JSON.stringify(document, null, 2)}\n`;
}

/** One table as it is; of several each under its file's name. */
export function joinedTables(texts: readonly NamedText[]): string {
  if (texts.length === 1) return texts[0].text;
  return texts.map(({ file, text }) => `${file}\n\n${text}`).join("\n");
}

/** What makes a spreadsheet take text for a formula. */
const formulaStart = /^[=+\-@\t\r]/;

/** One CSV as it is; several as one, with the file's name in a first column. All have the same header. */
export function joinedCsv(texts: readonly NamedText[]): string {
  if (texts.length === 1) return texts[0].text;
  const tables = texts.map(({ file, text }) => ({
    name: formulaStart.test(file) ? `'${file}` : file,
    lines: readLines(text),
  }));
  const [header] = tables[0].lines;
  const lines = [
    ["file", ...header],
    ...tables.flatMap(({ name, lines: [, ...rows] }) => rows.map((row) => [name, ...row])),
  ];
  return `${Papa.unparse(lines, { newline: "\r\n" })}\r\n`;
}

function readLines(text: string): string[][] {
  return Papa.parse<string[]>(text, { header: false, skipEmptyLines: true }).data;
}
