import { prepareSettledShape } from "../case/prepareShape";
import type { DragBand } from "../puck/dragBand";
import { prepareStrip, profileSection } from "../puck/solvedSections";
import { dragByOrientation } from "../puckcase/orientationDrag";
import { preparePlan, solvePuckFlows } from "../puckcase/puckFlow";
import { problem, type Result, success } from "../result";
import { traceDragCurve } from "../solve/dragCurve";
import type { PreparedSection } from "../solve/prepareSection";
import { curveBands } from "../uncertainty/curveBands";
import { findDragCrisis, type SectionCrisis } from "./dragCrisis";
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
  turbulencePercents: readonly number[],
): Result<PredictedDrag[]> {
  if (shape.kind === "section") return predictSection(shape, sandGrainRoughness, reynolds, turbulencePercents);
  return predictPuck(shape, sandGrainRoughness, reynolds, turbulencePercents);
}

function searchRange(reynolds: readonly number[]): readonly [number, number] {
  return [Math.max(1e3, reynolds[0] / reach), Math.min(1e8, reynolds[reynolds.length - 1] * reach)];
}

function predictSection(
  shape: Extract<TunnelShape, { kind: "section" }>,
  roughness: number,
  reynolds: readonly number[],
  turbulencePercents: readonly number[],
): Result<PredictedDrag[]> {
  const stream = (turbulencePercent: number) => ({
    sandGrainRoughnessRatio: roughness / shape.width,
    turbulenceIntensity: turbulencePercent / 100,
  });
  const prepared = prepareSettledShape(shape.contour, 0, () => ({
    ...stream(turbulencePercents[0]),
    reynolds: reynolds[0],
  }));
  if (!prepared.ok) return prepared;
  const { section } = prepared.value;
  return success(
    turbulencePercents.map((turbulencePercent) => {
      const conditions = reynolds.map((each) => ({ ...stream(turbulencePercent), reynolds: each }));
      const outcomes = traceDragCurve(section, conditions);
      const bands = curveBands(section, conditions, outcomes);
      const points = (["rising", "falling"] as const).flatMap((direction) =>
        outcomes.flatMap((outcome, i): PredictedPoint[] => {
          const index = outcome[direction];
          if (index === null) return [];
          const { dragCoefficient: best, regime } = outcome.states[index];
          const { low, high } = bands[i][index];
          return [{ reynolds: reynolds[i], direction, dragCoefficient: { low, best, high }, regime }];
        }),
      );
      const crisis = findDragCrisis(section, stream(turbulencePercent), ...searchRange(reynolds));
      const lost = outcomes.filter(({ rising }) => rising === null).length;
      return {
        turbulencePercent,
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

/** m^2/s: any value serves, since only the Reynolds number matters. */
const anyViscosity = 1e-6;
const puckPanels = 120;
const puckChords = [0.7, 1];

function predictPuck(
  shape: Extract<TunnelShape, { kind: "puck" }>,
  roughness: number,
  reynolds: readonly number[],
  turbulencePercents: readonly number[],
): Result<PredictedDrag[]> {
  const { spec, figures, attitude } = shape;
  const { diameterMetres: d, thicknessMetres: t } = spec;
  const plan = preparePlan(puckPanels);
  if (!plan.ok) return plan;
  const speeds = reynolds.map((each) => (each * anyViscosity) / d);
  const fluid = {
    name: "any fluid",
    density: 1000,
    kinematicViscosity: anyViscosity,
    dynamicViscosity: 1000 * anyViscosity,
    speedOfSound: null,
    source: "",
  };
  const stream = {
    fluid,
    speeds,
    solvedSpeeds: speeds,
    turbulencePercents,
    panelCount: puckPanels,
    chordRatios: puckChords,
    sectionError: null,
  };
  const flows = solvePuckFlows({ spec, finish: roughness }, stream, plan.value, { flatGap: null, sweptGaps: [] });
  if (!flows.ok) return flows;
  const profile = attitude === "edgeOn" ? prepareStrip(profileSection(spec, d), puckPanels) : null;
  if (profile?.ok === false) return profile;
  const predicted: PredictedDrag[] = [];
  for (const flow of flows.value) {
    const notes = new Set<string>();
    const points: PredictedPoint[] = [];
    for (const [i, speed] of speeds.entries()) {
      const drag = dragByOrientation({ spec, figures }, flow, speed, anyViscosity);
      if (!drag.ok) return drag;
      const own = attitude === "edgeOn" ? drag.value.upright : drag.value.faceOn;
      points.push({ reynolds: reynolds[i], direction: "rising", dragCoefficient: own.dragCoefficient, regime: null });
      for (const note of own.notes) notes.add(note);
    }
    const crisesOf = (section: PreparedSection, of: string, width: number): PredictedCrisis[] => {
      const toDiameter = d / width;
      const [lowest, highest] = searchRange(reynolds);
      const found = findDragCrisis(
        section,
        { sandGrainRoughnessRatio: roughness / width, turbulenceIntensity: flow.turbulencePercent / 100 },
        Math.max(1e3, lowest / toDiameter),
        highest / toDiameter,
      );
      if (found === null) return [];
      return [{ of, rising: found.rising * toDiameter, falling: found.falling * toDiameter, factor: found.factor }];
    };
    predicted.push({
      turbulencePercent: flow.turbulencePercent,
      points,
      // Face-on the flow leaves at the edge whatever its layers do.
      crises:
        profile === null ? [] : [...crisesOf(plan.value, "plan (circle)", d), ...crisesOf(profile.value, "profile", t)],
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
  return { low: between("low"), best: between("best"), high: between("high") };
}
