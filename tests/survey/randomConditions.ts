import type { FlowCondition, Trip } from "../../shared/engine/condition";
import type { SectionSpec } from "../../shared/engine/geometry/sectionSpec";
import { CONDITION_LIMITS } from "../../shared/engine/solve/checkCondition";
import { type RandomDraws, randomDraws } from "../../shared/statistics/randomDraws";

/** A section in a stream, drawn at random; lengths in m, angles in rad. */
export interface RandomSection {
  readonly spec: SectionSpec;
  readonly incidence: number;
  /** Gap / D to a floor; undefined without one. */
  readonly floorGapRatio: number | undefined;
  readonly conditions: readonly FlowCondition[];
}

export const conditionsPerSection = 3;

type Family = Exclude<SectionSpec["family"], "outline">;

const families: readonly Family[] = [
  "circle",
  "ellipse",
  "roundedRectangle",
  "superellipse",
  "stadium",
  "bevelledRectangle",
  "dShape",
  "roundedPolygon",
  "roundedTriangle",
  "freeContour",
];

const height = 0.05;

/**
 * The section of a seed. Every family in turn; length / height from 0.05 to 20; half at zero incidence, a quarter within
 * 20 degrees, a quarter from all round; one in three over a floor, of these four in ten lying on it; one in five with
 * trips; Reynolds numbers from 1e4 to the engine's limit.
 */
export function randomSection(seed: number): RandomSection {
  const draws = randomDraws(scattered(seed));
  const spec = specOf(families[seed % families.length], draws);
  const kind = draws.uniform();
  const turn = 2 * draws.uniform() - 1;
  const incidence = kind < 0.5 ? 0 : kind < 0.75 ? (turn * Math.PI) / 9 : turn * Math.PI;
  const overFloor = draws.uniform() < 1 / 3;
  const floorGapRatio = !overFloor ? undefined : draws.uniform() < 0.4 ? 0 : ratio(draws, 0.02, 1.5);
  const trips = draws.uniform() < 0.2 ? tripsOf(draws) : [];
  const conditions = Array.from({ length: conditionsPerSection }, () => ({
    reynolds: ratio(draws, 1e4, CONDITION_LIMITS.reynolds[1]),
    sandGrainRoughnessRatio: draws.uniform() < 1 / 3 ? 0 : ratio(draws, 1e-5, 2e-2),
    turbulenceIntensity: ratio(draws, 5e-4, 0.05),
    ...(trips.length > 0 ? { trips } : {}),
  }));
  return { spec, incidence, floorGapRatio, conditions };
}

/** Neighbouring seeds far apart (Knuth's multiplier of the golden section): the first draws of small seeds are all near 1. */
const scattered = (seed: number) => Math.imul(seed + 1, 0x9e3779b1) >>> 0;

/** Evenly drawn between two numbers, or between their logarithms. */
const between = (draws: RandomDraws, low: number, high: number) => low + (high - low) * draws.uniform();
const ratio = (draws: RandomDraws, low: number, high: number) => low * (high / low) ** draws.uniform();

function tripsOf(draws: RandomDraws): Trip[] {
  const trip = { arcRatio: between(draws, 0.05, 0.5), heightRatio: ratio(draws, 1e-4, 1e-2) };
  const sides = draws.uniform() < 0.5 ? (["upper", "lower"] as const) : (["upper"] as const);
  return sides.map((side) => ({ side, ...trip }));
}

function specOf(family: Family, draws: RandomDraws): SectionSpec {
  const length = height * ratio(draws, 0.05, 20);
  const smaller = Math.min(length, height);
  const corner = (largest: number) => smaller * ratio(draws, 0.01, largest);
  switch (family) {
    case "circle":
      return { family, diameter: ratio(draws, 1e-3, 1) };
    case "ellipse":
    case "stadium":
      return { family, length, height };
    case "roundedRectangle":
      return { family, length, height, edgeRadius: corner(0.5) };
    case "superellipse":
      return { family, length, height, exponent: between(draws, 2, 20) };
    case "bevelledRectangle": {
      const [bevelLength, bevelHeight] = [length * between(draws, 0.02, 0.5), height * between(draws, 0.02, 0.5)];
      return { family, length, height, bevelLength, bevelHeight, cornerRadius: corner(0.3) };
    }
    case "dShape": {
      const cornerRadius = corner(0.5);
      const noseLength = between(draws, 0.1 * height, Math.max(0.1 * height, length - cornerRadius));
      const flatSide = draws.uniform() < 0.5 ? "front" : "rear";
      return { family, length, height, noseLength, cornerRadius, flatSide };
    }
    case "roundedPolygon": {
      const facing = draws.uniform() < 0.5 ? "flat" : "corner";
      const cornerRadius = height * ratio(draws, 0.01, 0.5);
      return { family, sides: 3 + draws.below(22), inscribedDiameter: height, cornerRadius, facing };
    }
    case "roundedTriangle": {
      const apex = draws.uniform() < 0.5 ? "forward" : "rearward";
      return { family, length, height, cornerRadius: corner(0.5), apex };
    }
    case "freeContour":
      return { family, points: wavyPoints(draws) };
  }
}

/** Points on a circle whose radius waves, drawn out along x. */
function wavyPoints(draws: RandomDraws): [number, number][] {
  const count = 8 + draws.below(60);
  const waves = [0.3, 0.2, 0.1].map((largest) => ({ depth: largest * draws.uniform(), phase: 7 * draws.uniform() }));
  const stretch = ratio(draws, 0.2, 5);
  return Array.from({ length: count }, (_, i) => {
    const angle = (2 * Math.PI * i) / count;
    const radius = waves.reduce((sum, { depth, phase }, k) => sum + depth * Math.cos((k + 1) * angle + phase), 1);
    return [stretch * height * radius * Math.cos(angle), height * radius * Math.sin(angle)];
  });
}
