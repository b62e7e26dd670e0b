import { arcCurve, type MeridianCurve, spheroidCurve, straightCurve } from "../../shared/engine/whole/meridianCurve";
import { type MeridianShape, meridianShape } from "../../shared/engine/whole/meridianShape";
import { type WholeFlow, type WholeResolution, wholeFlow } from "../../shared/engine/whole/wholeFlow";

/** A flat cylinder of diameter d and thickness t with edges rounded by r. */
export function roundedDisc(d: number, t: number, r: number): MeridianCurve[] {
  const [R, h] = [d / 2, t / 2];
  return [
    straightCurve(0, -h, R - r, -h),
    arcCurve(R - r, r - h, r, -Math.PI / 2, 0),
    straightCurve(R, r - h, R, h - r),
    arcCurve(R - r, h - r, r, 0, Math.PI / 2),
    straightCurve(R - r, h, 0, h),
  ];
}

/** Half axes 1 across and `polar` along the axis. */
export function spheroid(polar: number): MeridianCurve[] {
  return [spheroidCurve(1, polar)];
}

export function solved(
  curves: readonly MeridianCurve[],
  resolution: Partial<WholeResolution> = {},
  floorGap: number | null = null,
): { readonly flow: WholeFlow; readonly shape: MeridianShape } {
  const flow = wholeFlow(curves, { harmonics: 2, order: 10, edgePanels: 2, ...resolution }, floorGap);
  if (!flow.ok) throw new Error(flow.problem.message);
  const shape = meridianShape(flow.value.panels);
  if (!shape.ok) throw new Error(shape.problem.message);
  return { flow: flow.value, shape: shape.value };
}

/**
 * alpha_0 (across the axis) and gamma_0 (along it) of an oblate or prolate spheroid of half axes 1, 1, c.
 * Source: Lamb (1932), Hydrodynamics, arts. 114 and 373 (6), (7).
 */
export function spheroidConstants(c: number): { readonly across: number; readonly along: number } {
  if (c === 1) return { across: 2 / 3, along: 2 / 3 };
  let along: number;
  if (c < 1) {
    const e = Math.sqrt(1 - c * c);
    along = (2 / (e * e)) * (1 - (c / e) * Math.asin(e));
  } else {
    const e = Math.sqrt(1 - 1 / (c * c));
    along = ((2 * (1 - e * e)) / e ** 3) * (Math.atanh(e) - e);
  }
  return { across: (2 - along) / 2, along };
}
