import type { Problem } from "../../shared/result";

/** Longest message that a person reads to its end; it also shows that nothing was echoed whole. */
const longestMessage = 1000;

/** What is wrong with a refusal: it must name the key and say what would be right, in words and on one line. */
export function refusalFaults(problems: readonly Problem[]): string[] {
  if (problems.length === 0) return ["refused without a word"];
  return problems.flatMap(({ code, message, field }) => {
    const start = JSON.stringify(message.slice(0, 200));
    const faults: string[] = [];
    if (message.length > longestMessage) faults.push(`a message of ${message.length} characters: ${start}`);
    if (/Invalid input|undefined|NaN|\[object/.test(message)) faults.push(`no words of ours: ${start}`);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
    if (/[\u0000-\u001f\u007f\u202e]/.test(message)) faults.push(`control characters: ${start}`);
    if (isOfAKey(code) && !field) faults.push(`names no key: ${start}`);
    if (isOfAKey(code) && !/must|needs?\b|cannot|only|at most|at least|not a known key|known keys/.test(message)) {
      faults.push(`says not what would be right: ${start}`);
    }
    return faults;
  });
}

/** Problems of the text as a whole have no key. */
function isOfAKey(code: string): boolean {
  return code === "value" || code === "missing-key" || code === "unknown-key" || code === "rule";
}
