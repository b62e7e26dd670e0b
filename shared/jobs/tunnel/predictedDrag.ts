import { findDragCrisis, type SectionCrisis } from "../../engine/section/dragCrisis";
import { type PreparedShape, prepareShape } from "../../engine/section/prepareShape";
import { solveStreams } from "../../engine/section/solveStreams";
import type { DragBand } from "../../engine/trust/dragInterval";
import { percentOf } from "../../numerics/degreesAndPercent";
import { problem, type Result, success } from "../../result";
import { prepareHeldPuck } from "../puck/public";
import type { TunnelModel, TunnelShape } from "./tunnelShape";

export type SpeedDirection = "rising" | "falling";

/** One point of the predicted drag. */
export interface PredictedPoint {
  /** On the shape's reference length. */
  readonly reynolds: number;
  readonly direction: SpeedDirection;
  /** On the shape's reference area. */
  readonly dragCoefficient: DragBand;
  /** Of a section; null for a puck, whose plan and profile have their own. */
  readonly regime: string | null;
}

/** A drag crisis on the shape's reference length. */
export interface PredictedCrisis extends SectionCrisis {
  /** Which section of the shape, in words. */
  readonly of: string;
}

/** What the engine says of a shape in one stream, before any test. */
export interface PredictedDrag {
  readonly turbulencePercent: number;
  readonly points: readonly PredictedPoint[];
  readonly crises: readonly PredictedCrisis[];
  readonly notes: readonly string[];
}

/** How far beyond the tested range crises are looked for. */
const reach = 5;

/**
 * Solves a shape at several turbulences over a range of Reynolds numbers on its reference length.
 * @param reynolds where points are wanted, rising, each within 1e3 to 1e8
 */
export function predictDrag(
  { shape, sandGrainRoughness }: Pick<TunnelModel, "shape" | "sandGrainRoughness">,
  reynolds: readonly number[],
  turbulenceIntensities: readonly number[],
): Result<PredictedDrag[]> {
  if (shape.kind === "section") return predictSection(shape, sandGrainRoughness, reynolds, turbulenceIntensities);
  return predictPuck(shape, sandGrainRoughness, reynolds, turbulenceIntensities);
}

function searchRange(reynolds: readonly number[]): readonly [number, number] {
  return [Math.max(1e3, reynolds[0] / reach), Math.min(1e8, reynolds[reynolds.length - 1] * reach)];
}

function predictSection(
  shape: Extract<TunnelShape, { kind: "section" }>,
  sandGrainRoughness: number,
  reynolds: readonly number[],
  turbulenceIntensities: readonly number[],
): Result<PredictedDrag[]> {
  const [slowest] = reynolds;
  const sandGrainRoughnessRatio = sandGrainRoughness / shape.width;
  const prepared = prepareShape(
    { section: shape.contour },
    { reynolds: slowest, sandGrainRoughnessRatio, turbulenceIntensity: turbulenceIntensities[0] },
  );
  if (!prepared.ok) return prepared;
  return success(
    turbulenceIntensities.map((turbulenceIntensity) => {
      const wall = { sandGrainRoughnessRatio, turbulenceIntensity };
      const curve = solveStreams(
        prepared.value,
        reynolds.map((each) => ({ ...wall, reynolds: each })),
      );
      const points = (["rising", "falling"] as const).flatMap((direction) =>
        curve.flatMap(({ outcome, bands }, i): PredictedPoint[] => {
          const index = outcome[direction];
          if (index === null) return [];
          const { dragCoefficient: expected, regime } = outcome.states[index];
          const low = Math.min(bands[index].low, expected);
          const high = Math.max(bands[index].high, expected);
          return [{ reynolds: reynolds[i], direction, dragCoefficient: { low, expected, high }, regime }];
        }),
      );
      const crisis = findDragCrisis(prepared.value, wall, ...searchRange(reynolds));
      const lost = curve.filter(({ outcome }) => outcome.rising === null).length;
      return {
        turbulencePercent: percentOf(turbulenceIntensity),
        points,
        crises: crisis === null ? [] : [{ ...crisis, of: shape.name }],
        notes: [
          "Predicted for a section without ends in an unbounded stream.",
          ...(lost === 0 ? [] : [`${lost} of ${reynolds.length} predicted points did not converge and are left out.`]),
        ],
      };
    }),
  );
}

function predictPuck(
  shape: Extract<TunnelShape, { kind: "puck" }>,
  sandGrainRoughness: number,
  reynolds: readonly number[],
  turbulenceIntensities: readonly number[],
): Result<PredictedDrag[]> {
  const { diameterMetres: d, thicknessMetres: t } = shape.spec;
  const prepared = prepareHeldPuck(shape);
  if (!prepared.ok) return prepared;
  const { sections, solve } = prepared.value;
  const predicted: PredictedDrag[] = [];
  for (const turbulenceIntensity of turbulenceIntensities) {
    const solved = solve({ turbulenceIntensity, sandGrainRoughness, withBands: true }, reynolds);
    if (!solved.ok) return solved;
    const points = solved.value.map(({ drag: { dragCoefficient } }, i): PredictedPoint => {
      return { reynolds: reynolds[i], direction: "rising", dragCoefficient, regime: null };
    });
    const notes = new Set(solved.value.flatMap(({ drag }) => drag.notes));
    const crisesOf = (section: PreparedShape, of: string, width: number): PredictedCrisis[] => {
      const toDiameter = d / width;
      const [lowest, highest] = searchRange(reynolds);
      const found = findDragCrisis(
        section,
        { sandGrainRoughnessRatio: sandGrainRoughness / width, turbulenceIntensity },
        Math.max(1e3, lowest / toDiameter),
        highest / toDiameter,
      );
      if (found === null) return [];
      return [{ of, rising: found.rising * toDiameter, falling: found.falling * toDiameter, factor: found.factor }];
    };
    const profile = sections?.profiles.find(({ chordRatio }) => chordRatio === 1);
    predicted.push({
      turbulencePercent: percentOf(turbulenceIntensity),
      points,
      // Face-on the flow leaves at the edge whatever its layers do.
      crises: [
        ...(sections === null ? [] : crisesOf(sections.plan, "plan (circle)", d)),
        ...(profile === undefined ? [] : crisesOf(profile.shape, "profile", t)),
      ],
      notes: [...notes],
    });
  }
  return predicted.length > 0 ? success(predicted) : problem("prediction", "no turbulence was given to predict at");
}

/** The prediction between its points: linear in the logarithm of the Reynolds number; null outside them. */
export function predictedAt(
  { points }: Pick<PredictedDrag, "points">,
  reynolds: number,
  direction: SpeedDirection,
): DragBand | null {
  const own = points.filter((point) => point.direction === direction);
  const curve = own.length > 0 ? own : points;
  const above = curve.findIndex((point) => point.reynolds >= reynolds * (1 - 1e-9));
  if (above < 0 || curve.length === 0) return null;
  if (above === 0) return curve[0].reynolds <= reynolds * (1 + 1e-9) ? curve[0].dragCoefficient : null;
  const [a, b] = [curve[above - 1], curve[above]];
  const share = Math.log(reynolds / a.reynolds) / Math.log(b.reynolds / a.reynolds);
  const between = (part: keyof DragBand) =>
    a.dragCoefficient[part] + share * (b.dragCoefficient[part] - a.dragCoefficient[part]);
  return { low: between("low"), expected: between("expected"), high: between("high") };
}
