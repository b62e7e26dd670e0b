import type { CauseSuggestion } from "./causeSteps";
import { type CauseKey, endlessRatio } from "./causes";

/** Share of the squared residuals from which a cause is said to explain them, to explain a part, or not to. */
const explains = 0.8;
const explainsPart = 0.2;

/** How far a setting explains a disagreement, in words. */
export function causeVerdict({
  explainedShare,
  exceedingBefore,
  exceedingAfter,
}: Pick<CauseSuggestion, "explainedShare" | "exceedingBefore" | "exceedingAfter">): string {
  if (exceedingBefore === 0) return fitVerdict(explainedShare);
  if (explainedShare >= explains) return "would explain it";
  if (explainedShare >= explainsPart && exceedingAfter > exceedingBefore) {
    return "would explain part of it and set other points apart";
  }
  return explainedShare >= explainsPart ? "would explain part of it" : "does not explain it";
}

/** Where all points agree inside both bands there is nothing to explain, but a setting may fit better. */
function fitVerdict(explainedShare: number): string {
  if (explainedShare >= explains) return "would fit far better";
  return explainedShare >= explainsPart ? "would fit better" : "would not fit better";
}

/** A setting's value as people write it: per cent of turbulence, ks/D, length/width, blockage in per cent. */
export function causeValueText(key: CauseKey, value: number): string {
  const number = bareValue(key, value);
  switch (key) {
    case "turbulence":
      return `Tu ${number}`;
    case "roughness":
      return `ks/D ${number}`;
    case "ends":
      return number === endless ? number : `length/width ${number}`;
    case "blockage":
      return `blockage ${number}`;
  }
}

const endless = "endless";

function bareValue(key: CauseKey, value: number): string {
  if (key === "ends") return value >= endlessRatio ? endless : digits(value, 2);
  return key === "roughness" ? digits(value, 2) : `${digits(100 * value, 2)} %`;
}

/** A suggestion in one or two sentences. */
export function causeSentence(cause: CauseSuggestion): string {
  const { key, name, stated, value, low, high, explainedShare, exceedingBefore, exceedingAfter } = cause;
  const verdict = causeVerdict(cause);
  const Name = name[0].toUpperCase() + name.slice(1);
  if (explainedShare < explainsPart) return `${Name} ${verdict}, whatever its value.`;
  const range = `${bareValue(key, low)} to ${bareValue(key, high)}`;
  const points =
    exceedingBefore === 0 && exceedingAfter === 0
      ? ""
      : `; points beyond both bands ${exceedingBefore} before, ${exceedingAfter} after`;
  const plausible = cause.plausible ? "That is a plausible value" : "That is not a plausible value";
  return `${Name} ${verdict}: ${causeValueText(key, value)} (${range}) in place of ${bareValue(key, stated)} takes away ${Math.round(100 * explainedShare)} % of the squared residuals${points}. ${plausible} (${cause.plausibleSource}).`;
}

function digits(value: number, count: number): string {
  if (value === 0) return "0";
  const size = Math.abs(value);
  if (size >= 1e-3 && size < 1e4) return String(Number(value.toPrecision(count)));
  return value.toExponential(count - 1).replace("e+", "e");
}
