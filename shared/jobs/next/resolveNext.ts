import { resolveFluid } from "../../engine/fluid/resolveFluid";
import type { StreamFluid } from "../../engine/section/stream";
import { fractionOf } from "../../numerics/degreesAndPercent";
import type { Problem } from "../../result";
import { type CompareJob, compareBlock, comparedNames } from "../compare/public";
import type { CaseSurroundings, JobResolution } from "../jobBlock";
import { type Orientation, puckBlock } from "../puck/public";
import type { NextBlockDocument, PossibleMeasurement } from "./nextBlockDocument";

/** One measurement that might be made, in SI units. */
export interface PlannedMeasurement {
  readonly kind: PossibleMeasurement["kind"];
  readonly name: string;
  readonly cost: number;
  /** Names; none for the turbulence. */
  readonly designs: readonly string[];
  readonly attitude: Orientation | null;
  /** m/s */
  readonly speed: number | null;
  readonly reynolds: number | null;
  readonly fluid: StreamFluid | null;
  /** A fraction; null for the water of the case. */
  readonly turbulenceIntensity: number | null;
  /** Of ln drag; of turbulence a fraction of the speed. */
  readonly deviation: number;
  readonly facility: string;
}

/** What to test next, ready to run. */
export interface NextJob {
  readonly compare: CompareJob;
  readonly measurements: readonly PlannedMeasurement[];
  /** m/s; null for all conditions together. */
  readonly speed: number | null;
  readonly attitude: Orientation | null;
  readonly simulations: number;
}

const standardSimulations = 400;
/** Standard uncertainty of a towing run that the case says nothing of, %: that of a good towing test. */
const standardUncertaintyPercent = 3;

export function resolveNext(document: NextBlockDocument, around: CaseSurroundings): JobResolution<NextJob> {
  const compare = around.jobOf(compareBlock);
  if (compare === undefined) {
    const message = 'next needs a comparison: "compare" with a baseline, or two pucks or more';
    return { ok: false, problems: [{ code: "next", message, field: "next" }] };
  }
  const names = comparedNames(compare);
  const isPuck = around.jobOf(puckBlock) !== undefined;
  const listed = document.measurements ?? standardList(names, compare, around);
  const problems: Problem[] = [];
  const measurements = listed.map((measurement, i) => {
    const field = `next.measurements[${i}]`;
    const refuse = (key: string, message: string) =>
      problems.push({ code: "next", message: `${field}.${key} ${message}`, field: `${field}.${key}` });
    const planned = plannedMeasurement(measurement, isPuck, refuse);
    if (measurement.kind === "turbulence") {
      if (compare.unknown?.turbulencePercent === undefined) {
        refuse("kind", 'is "turbulence", which the case knows; give its range in compare.unknown.turbulencePercent');
      }
      return planned;
    }
    measurement.designs.forEach((name, d) => {
      if (!names.some((known) => name.startsWith(known))) {
        refuse(`designs[${d}]`, `is "${name}"; it must be one of ${names.join(", ")}`);
      }
    });
    const given = [measurement.speedMetresPerSecond, measurement.reynoldsNumber].filter((value) => value !== undefined);
    if (given.length !== 1) {
      refuse("speedMetresPerSecond", "and reynoldsNumber: exactly one of them must be given");
    }
    if (isPuck && measurement.reynoldsNumber !== undefined) refuse("reynoldsNumber", "is for sections; give a speed");
    if (!isPuck && measurement.attitude !== undefined) refuse("attitude", "is for pucks; leave it out for sections");
    return planned;
  });
  if (!isPuck && document.attitude !== undefined) {
    problems.push({
      code: "next",
      message: "next.attitude is for pucks; leave it out for sections",
      field: "next.attitude",
    });
  }
  const { speedMetresPerSecond: speed } = document;
  if (speed !== undefined && !around.speeds.includes(speed)) {
    const known = around.speeds.length === 0 ? "the case has none" : `one of ${around.speeds.join(", ")}`;
    const message = `next.speedMetresPerSecond is ${speed}; it must be a speed of the case, ${known}`;
    problems.push({ code: "next", message, field: "next.speedMetresPerSecond" });
  }
  if (problems.length > 0) return { ok: false, problems };
  return {
    ok: true,
    value: {
      compare,
      measurements,
      speed: speed ?? null,
      attitude: document.attitude ?? null,
      simulations: document.simulations ?? standardSimulations,
    },
  };
}

/** A towing run of every design beside the first, and the turbulence where it is not known. */
function standardList(
  names: readonly string[],
  { unknown, baseline }: CompareJob,
  { speeds }: CaseSurroundings,
): PossibleMeasurement[] {
  const [first = ""] = baseline === null ? names : [baseline];
  const speedMetresPerSecond = speeds[Math.floor(speeds.length / 2)];
  const runs = names
    .filter((name) => name !== first)
    .map(
      (name): PossibleMeasurement => ({
        kind: "towing",
        designs: [name, first],
        speedMetresPerSecond,
        standardUncertaintyPercent,
      }),
    );
  const turbulence: PossibleMeasurement = { kind: "turbulence", standardUncertaintyPercent: 1 / 2 };
  return unknown?.turbulencePercent === undefined ? runs : [...runs, turbulence];
}

function plannedMeasurement(
  measurement: PossibleMeasurement,
  isPuck: boolean,
  refuse: (key: string, message: string) => void,
): PlannedMeasurement {
  const { kind, cost = 1, standardUncertaintyPercent: percent } = measurement;
  const deviation = fractionOf(percent);
  if (kind === "turbulence") {
    const nothing = { designs: [], attitude: null, speed: null, reynolds: null, fluid: null, facility: "" };
    const name = measurement.name ?? "turbulence of the water";
    return { kind, cost, deviation, name, turbulenceIntensity: null, ...nothing };
  }
  const { designs, attitude, speedMetresPerSecond: speed = null, reynoldsNumber: reynolds = null } = measurement;
  let fluid: StreamFluid | null = null;
  if (kind === "tunnel" && measurement.fluid !== undefined) {
    const resolved = resolveFluid(measurement.fluid);
    if (resolved.ok) fluid = resolved.value;
    else refuse(`fluid.${resolved.problem.field}`, resolved.problem.message);
  }
  const at = speed === null ? `Re ${reynolds}` : `${speed} m/s`;
  const held = attitude === undefined ? "" : `, ${attitude}`;
  const place = kind === "tunnel" ? "tunnel" : "towing";
  const name = measurement.name ?? `${place} run of ${designs.join(" and ")} at ${at}${held}`;
  return {
    kind,
    cost,
    deviation,
    name,
    designs,
    attitude: isPuck ? (attitude ?? "upright") : null,
    speed,
    reynolds,
    fluid,
    turbulenceIntensity: kind === "tunnel" ? fractionOf(measurement.turbulencePercent) : null,
    facility: measurement.facility ?? name,
  };
}
