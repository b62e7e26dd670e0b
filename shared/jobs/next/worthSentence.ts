import type { MeasurementWorth } from "./nextResult";

/** What a measurement would bring, in one sentence. */
export function worthSentence({
  name,
  designs,
  decides,
  decidesBestProbability,
  regretFallPercent,
}: Omit<MeasurementWorth, "sentence">): string {
  const own = decides.filter(({ first }) => designs.length === 0 || designs.includes(first));
  const surest = [...own].sort((a, b) => b.probability - a.probability)[0];
  const fall = `lowers the expected regret by ${(regretFallPercent ?? 0).toPrecision(2)} %`;
  if (surest === undefined) return `${name} ${fall} and shows the best in ${hundred(decidesBestProbability)} cases.`;
  const { first, second, probability } = surest;
  return `${name} decides ${first} against ${second} in ${hundred(probability)} cases and ${fall}.`;
}

function hundred(probability: number | null): string {
  return `${Math.round(100 * (probability ?? 0))} of 100`;
}
