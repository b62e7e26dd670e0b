import { problem, type Result, success } from "../result";
import { printable, shownText } from "./shownText";

/** A key whose value is one of the number words of JavaScript that JSON does not have. */
const nonFinite = /"((?:[^"\\]|\\.)*)"\s*:\s*(-?(?:NaN|Infinity))\b/;

/** A JSON text as plain data; the problem says where the text stops being JSON. A leading byte-order mark is skipped. */
export function parseJson(text: string): Result<unknown> {
  const content = text.startsWith("\uFEFF") ? text.slice(1) : text;
  if (content.trim() === "") return problem("json", "the file is empty; it must be a case in JSON");
  try {
    return success(JSON.parse(content));
  } catch (error) {
    const word = nonFinite.exec(content);
    if (word !== null) {
      return problem(
        "json",
        `${shownText(word[1])} is ${word[2]}; it must be a finite number (JSON has no ${word[2]})`,
        shownText(word[1]),
      );
    }
    const reason = error instanceof Error ? error.message : String(error);
    return problem("json", `not a JSON document: ${printable(withLine(reason, content))}`);
  }
}

/** Some engines give the place as "at position 17"; people look for a line. */
function withLine(reason: string, content: string): string {
  const oneLine = reason.replace(/\s+/g, " ");
  const position = /at position (\d+)/.exec(oneLine);
  if (position === null) return oneLine;
  const before = content.slice(0, Number(position[1])).split("\n");
  const place = `at line ${before.length}, column ${before[before.length - 1].length + 1}`;
  return oneLine.replace(/ ?\(line \d+ column \d+\)/, "").replace(position[0], place);
}
