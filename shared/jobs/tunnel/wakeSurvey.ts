import { problem, type Result, success } from "../../result";
import { type FirstOrderUncertainty, propagateFirstOrder } from "../../statistics/firstOrder";
import { exactInput, type UncertainInput } from "../../statistics/uncertainInput";

export const wakeMethods = ["jones", "betz", "simpleDeficit"] as const;
export type WakeMethod = (typeof wakeMethods)[number];

export const wakeMethodWords: Readonly<Record<WakeMethod, string>> = {
  jones: "Jones (1936)",
  betz: "Betz (1925)",
  simpleDeficit: "momentum deficit alone",
};

/** A traverse across the wake of a section. Pressures are over the static pressure of the free stream, Pa. */
export interface WakeTraverse {
  /** m, rising, shape [n], 5 or more. */
  readonly position: Readonly<Float64Array>;
  /** Shape [n]. */
  readonly totalPressure: Readonly<Float64Array>;
  /** Shape [n]; null where only total pressure was taken, which leaves the momentum deficit alone. */
  readonly staticPressure: Readonly<Float64Array> | null;
  /** Of the free stream, Pa, above 0. */
  readonly dynamicPressure: number;
}

/** Standard uncertainties of a traverse, Pa and fractions. */
export interface TraverseUncertainty {
  readonly pressurePascals: number;
  readonly dynamicPressureShare: number;
  readonly referenceLengthShare: number;
}

export interface WakeDrag {
  readonly method: WakeMethod;
  /** Per span, on the reference width. */
  readonly dragCoefficient: number;
  readonly uncertainty: FirstOrderUncertainty;
}

export interface WakeSurveyResult {
  readonly points: number;
  readonly drags: readonly WakeDrag[];
  /** Loss of total pressure at the two ends of the traverse / dynamic pressure: 0 where it reached the free stream. */
  readonly endLosses: readonly [number, number];
  readonly notes: readonly string[];
}

/** Loss of total pressure at an end / dynamic pressure that still counts as the free stream. A choice, no source. */
const clearEnd = 0.02;

/** Pressures of one station over the dynamic pressure: g total, p static. */
type Integrand = (g: number, p: number) => number;

const integrands: Readonly<Record<WakeMethod, Integrand>> = {
  // The wake is carried on to where its static pressure is that of the stream, without losses.
  // Source: Jones (1936), ARC R&M 1688, Cd = (2/c) integral of sqrt(g - p) (1 - sqrt(g)) dy.
  jones: (g, p) => 2 * Math.sqrt(Math.max(0, g - p)) * (1 - Math.sqrt(Math.max(0, g))),
  // Source: Betz (1925), Z. Flugtechn. Motorluftsch. 16, 42; in the form of Schlichting, Boundary-Layer Theory, ch. 25
  // (from memory): Cd = (1/c) integral of [1 - g + (u* - u)(u* + u - 2)] dy, u* = sqrt(1 - p), speeds over U.
  betz: (g, p) => {
    const own = Math.sqrt(Math.max(0, g - p));
    const ideal = Math.sqrt(Math.max(0, 1 - p));
    return 1 - g + (ideal - own) * (ideal + own - 2);
  },
  // Static pressure taken as that of the stream: D = rho integral of u (U - u) dy.
  simpleDeficit: (g) => {
    const own = Math.sqrt(Math.max(0, g));
    return 2 * own * (1 - own);
  },
};

/**
 * Drag of a section per span from a traverse across its wake, by the trapezoidal rule.
 * @param referenceLength on which the coefficient is, m
 * @returns a problem when positions do not rise or there are fewer than 5
 */
export function wakeDrag(
  traverse: WakeTraverse,
  referenceLength: number,
  uncertainty: TraverseUncertainty,
  coverage = 0.95,
): Result<WakeSurveyResult> {
  const { position, totalPressure, staticPressure, dynamicPressure } = traverse;
  const n = position.length;
  if (totalPressure.length !== n || (staticPressure !== null && staticPressure.length !== n)) {
    throw new RangeError(
      `there are ${n} positions and ${totalPressure.length} total pressures; both need the same number.`,
    );
  }
  if (!(n >= 5)) return problem("wake", `a wake traverse has ${n} points; it needs 5 or more`);
  if (!(dynamicPressure > 0)) return problem("wake", `dynamic pressure is ${dynamicPressure} Pa; it must be above 0`);
  if (!(referenceLength > 0)) return problem("wake", `reference length is ${referenceLength} m; it must be above 0`);
  for (let i = 1; i < n; i++) {
    if (!(position[i] > position[i - 1])) {
      return problem("wake", `positions must rise; ${position[i]} m follows ${position[i - 1]} m`);
    }
  }
  const methods = wakeMethods.filter((method) => staticPressure !== null || method === "simpleDeficit");
  const independent = independentInputs(traverse, uncertainty);
  const drags: WakeDrag[] = [];
  for (const method of methods) {
    const integrand = integrands[method];
    const coefficient = (x: Readonly<Float64Array>) => {
      const q = dynamicPressure * x[2 * n];
      let sum = 0;
      let before = 0;
      for (let i = 0; i < n; i++) {
        const value = integrand(x[i] / q, staticPressure === null ? 0 : x[n + i] / q);
        if (i > 0) sum += 0.5 * (value + before) * (position[i] - position[i - 1]);
        before = value;
      }
      return sum / (referenceLength * x[2 * n + 1]);
    };
    const found = propagateFirstOrder(coefficient, independent, [], coverage);
    if (!found.ok) return found;
    drags.push({ method, dragCoefficient: found.value.value, uncertainty: gathered(found.value, n) });
  }
  const loss = (i: number) => 1 - totalPressure[i] / dynamicPressure;
  const endLosses = [loss(0), loss(n - 1)] as const;
  const notes: string[] = [];
  if (endLosses.some((each) => Math.abs(each) > clearEnd)) {
    notes.push(
      `At an end of the traverse ${(100 * Math.max(...endLosses.map(Math.abs))).toFixed(1)} % of the dynamic pressure is missing or too much: it did not reach the free stream, and the drag is not all in it.`,
    );
  }
  if (staticPressure === null) {
    notes.push(
      "Without static pressures the wake must be far behind the body, where its pressure is that of the stream.",
    );
  } else if (totalPressure.some((total, i) => total < staticPressure[i])) {
    notes.push(
      "Total pressure is below static pressure at places: reversed flow, the traverse is too close to the body.",
    );
  }
  return success({ points: n, drags, endLosses, notes });
}

/** Total pressures, static pressures, the factor of the dynamic pressure and that of the length. */
function independentInputs(
  { totalPressure, staticPressure }: WakeTraverse,
  { pressurePascals, dynamicPressureShare, referenceLengthShare }: TraverseUncertainty,
): UncertainInput[] {
  const read = (kind: string, values: Readonly<Float64Array>, isRead: boolean) =>
    Array.from(values, (value, i) => ({
      ...exactInput(`${kind}${i}`, kind, value),
      standardUncertainty: isRead ? pressurePascals : 0,
    }));
  return [
    ...read("totalPressure", totalPressure, true),
    ...read("staticPressure", staticPressure ?? new Float64Array(totalPressure.length), staticPressure !== null),
    { ...exactInput("dynamicPressure", "dynamic pressure", 1), standardUncertainty: dynamicPressureShare },
    { ...exactInput("referenceLength", "reference length", 1), standardUncertainty: referenceLengthShare },
  ];
}

/** One part for all total pressures and one for all static ones in place of one for every station. */
function gathered(found: FirstOrderUncertainty, n: number): FirstOrderUncertainty {
  const group = (from: number, name: string) => {
    const own = found.parts.slice(from, from + n);
    return {
      ...own[0],
      key: name.replace(" ", ""),
      name: `${name} readings`,
      value: 0,
      sensitivity: 0,
      contribution: Math.hypot(...own.map(({ contribution }) => contribution)),
      share: own.reduce((sum, { share }) => sum + share, 0),
    };
  };
  return { ...found, parts: [group(0, "total pressure"), group(n, "static pressure"), ...found.parts.slice(2 * n)] };
}
