import type { Attack, AttackResult } from "./attackResult";

/** An attack that was run. */
export interface Done {
  readonly attack: Attack;
  readonly result: AttackResult;
  readonly seconds: number;
}

/** Faults that are written out of each attack. */
const mostFaults = 20;

/** The report in Markdown. */
export function attackReport(done: readonly Done[]): string {
  const rows = done.map(({ attack, result, seconds }) => {
    const kinds = Object.entries(result.kinds).map(([kind, count]) => `${count} ${kind}`);
    const slowest = result.slowestMilliseconds === null ? "" : `${result.slowestMilliseconds.toFixed(0)} ms`;
    const share = `${result.tried} of ${attack.fullCount}`;
    return `| ${attack.name} | ${attack.what} | ${share} | ${kinds.join(", ")} | ${slowest} | ${result.faults.length} | ${seconds.toFixed(0)} s |`;
  });
  const faults = done.flatMap(({ attack, result }) =>
    result.faults.slice(0, mostFaults).map((fault) => `- ${attack.name}, ${fault}`),
  );
  return `# What the program stands

Written by \`npm run attack -- --write\`; seeds are fixed, so that every try can be repeated.

| Attack | What must hold | Tries | How they ended | Slowest | Faults | Took |
| --- | --- | --- | --- | --- | --- | --- |
${rows.join("\n")}
${faults.length === 0 ? "" : `\nFaults:\n\n${faults.join("\n")}\n`}`;
}
