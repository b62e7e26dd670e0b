import type { Design } from "../../../shared/case/design";
import { sizeOf } from "./sectionFields";
import type { SweepInput } from "./sweepInputs";

/** What a ribbon shows of an input, SI. */
export interface RibbonRange {
  readonly from: number;
  readonly to: number;
  readonly isLogarithmic: boolean;
}

/** Ends as shares of the section's smaller side: nearly sharp to fully round. */
const radiusShares = [0.02, 0.5] as const;
/** Around the present value where an input has no ends of its own. */
const aroundShares = [0.5, 1.6] as const;
const speedShares = [0.25, 2.2] as const;
/** Gaps to a floor over the section's height. */
const gapShares = [0.05, 2] as const;
/** ks from polished to coarsely sanded, m. */
const roughnessEnds = [1e-6, 1e-3] as const;
/** Turbulence of the quietest tunnel to a pool in play, fraction. */
const turbulenceEnds = [0.0005, 0.08] as const;
/** rad */
const incidenceEnd = Math.PI / 9;
const exponentEnds = [2, 12] as const;

/** The range that shows what an input can do around a design. */
export function ribbonRange({ key, of, kind }: SweepInput, design: Design): RibbonRange {
  const value = of(design);
  const [length, height] = sizeOf(design.section);
  const small = Math.min(length, height);
  const even = (from: number, to: number): RibbonRange => ({ from, to, isLogarithmic: false });
  if (key === "edgeRadius" || key === "cornerRadius") return even(radiusShares[0] * small, radiusShares[1] * small);
  if (key === "sandGrainRoughness") return { from: roughnessEnds[0], to: roughnessEnds[1], isLogarithmic: true };
  if (key === "turbulenceIntensity") return { from: turbulenceEnds[0], to: turbulenceEnds[1], isLogarithmic: true };
  if (key === "incidence")
    return even(-Math.max(incidenceEnd, 1.2 * Math.abs(value)), Math.max(incidenceEnd, 1.2 * Math.abs(value)));
  if (key === "floorGap") return even(gapShares[0] * height, gapShares[1] * height);
  if (key === "exponent") return even(exponentEnds[0], exponentEnds[1]);
  const [least, most] = kind === "speed" ? speedShares : aroundShares;
  return even(least * value, most * value);
}

/** Values of a range, both ends met. */
export function ribbonValues({ from, to, isLogarithmic }: RibbonRange, count: number): number[] {
  return Array.from({ length: count }, (_, i) => {
    const share = i / (count - 1);
    return isLogarithmic ? from * (to / from) ** share : from + share * (to - from);
  });
}

/** The input in which two designs differ; null when there is none, or more than one. */
export function touchedInput(before: Design, after: Design, inputs: readonly SweepInput[]): string | null {
  const touched = inputs.filter((input) => !Object.is(input.of(before), input.of(after)));
  return touched.length === 1 ? touched[0].key : null;
}
