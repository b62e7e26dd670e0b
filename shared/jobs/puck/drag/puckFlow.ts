import { SHORT_BODY_NUMBERS } from "../../../engine/constants/shortBodyNumbers";
import type { PreparedShape } from "../../../engine/section/prepareShape";
import { CONDITION_LIMITS } from "../../../engine/solve/checkCondition";
import { floorNotes } from "../../../engine/solve/floorNotes";
import type { DragBand } from "../../../engine/trust/dragInterval";
import { type Result, success } from "../../../result";
import type { PuckSpec } from "../body/puckSpec";
import type { CasePuck, PuckPlay, PuckStream } from "../puckCase";
import type { EdgeOnPlace, EdgeOnSections, ProfileStrip } from "./edgeOnDrag";
import { type FaceOnFlow, prepareFaceOn } from "./faceOnFlow";
import { type PreparedProfile, prepareProfile } from "./profileStrip";
import { faceRoughness, type Roughnesses, rimRoughness, surfaceNotes } from "./puckSurface";
import type { SectionDrag, SectionDragCurve } from "./sectionDrag";
import { prepareStrip, type StripStream, stripDrag } from "./solvedSections";

/** The solved sections of one puck at one turbulence. */
export interface PuckFlow {
  /** A fraction. */
  readonly turbulenceIntensity: number;
  /** In open water. */
  readonly open: EdgeOnSections;
  /** Gap under the puck that lies flat, m, 0 on the floor; null in open water, and where the gap could not be solved. */
  readonly flatGap: number | null;
  /** Over the floor, the profile with its mirror image; gaps that could not be solved are left out. */
  readonly overFloor: readonly SectionsOverFloor[];
  /** Along the axis; null where that could not be solved and tables have to do. */
  readonly faceOn: FaceOnFlow | null;
  /** What was assumed or left out in the sections. */
  readonly notes: readonly string[];
}

export interface SectionsOverFloor {
  /** m. */
  readonly gap: number;
  readonly sections: EdgeOnSections;
}

/** The gaps to the floor that are wanted: of a puck that lies flat in play, and others to report. */
export type FloorGaps = Pick<PuckPlay, "flatGap" | "sweptGaps">;

export const floorNote =
  "Over the floor the profile is solved with its mirror image; at gap 0 the hollow under the rounded edge is taken as filled with still water. The band also holds the figure in open water.";

/** The plan section of every puck: a circle, whose flow does not depend on its size. */
export function preparePlan(panelCount: number): Result<PreparedShape> {
  return prepareStrip({ family: "circle", diameter: 1 }, panelCount);
}

/** Solves plan and profile of a puck once and gives its drag curves at every turbulence of the stream. */
export function solvePuckFlows(
  puck: Pick<CasePuck, "spec" | "sandGrainRoughness">,
  stream: PuckStream,
  plan: PreparedShape,
  gaps: FloorGaps,
): Result<PuckFlow[]> {
  const open = prepareProfiles(puck.spec, stream, { kind: "open" });
  if (!open.ok) return open;
  const prepared = { plan, profiles: open.value };
  const notes = surfaceNotes(puck.spec);
  const { floors, failures } = prepareFloors(puck.spec, stream, gaps);
  if (floors.length > 0) {
    const lowest = Math.min(...floors.map(({ gap }) => gap));
    notes.push(floorNote, ...floorNotes(lowest / puck.spec.thicknessMetres));
  }
  notes.push(...failures);
  const faceOn = prepareFaceOn(puck.spec);
  const flatGap = floors.some(({ gap }) => gap === gaps.flatGap) ? gaps.flatGap : null;
  const flows: PuckFlow[] = [];
  for (const turbulenceIntensity of stream.turbulenceIntensities) {
    const strips: StripStream = {
      speeds: stream.solvedSpeeds,
      kinematicViscosity: stream.fluid.kinematicViscosity,
      turbulenceIntensity,
      relativeError: stream.sectionError,
    };
    const inOpen = solveSections(puck, prepared, strips);
    if (!inOpen.ok) return inOpen;
    const overFloor: SectionsOverFloor[] = [];
    for (const { gap, profiles } of floors) {
      const profile = profileDrag(puck, profiles, strips);
      if (!profile.ok) return profile;
      overFloor.push({ gap, sections: { plan: inOpen.value.plan, profile: profile.value } });
    }
    flows.push({
      turbulenceIntensity,
      open: inOpen.value,
      flatGap,
      overFloor,
      faceOn: faceOn.ok ? faceOn.value : null,
      notes,
    });
  }
  return success(flows);
}

/** Plan and profile of a puck in open water, ready for every stream. */
export interface PreparedSections {
  readonly plan: PreparedShape;
  readonly profiles: readonly PreparedProfile[];
}

/** Drag curves of prepared sections in one stream. */
export function solveSections(
  puck: Pick<CasePuck, "spec" | "sandGrainRoughness">,
  { plan, profiles }: PreparedSections,
  strips: StripStream,
): Result<EdgeOnSections> {
  const planDrag = bracketedDrag(plan, puck.spec.diameterMetres, rimRoughness(puck), strips);
  if (!planDrag.ok) return planDrag;
  const profile = profileDrag(puck, profiles, strips);
  return profile.ok ? success({ plan: planDrag.value, profile: profile.value }) : profile;
}

interface PreparedFloor {
  readonly gap: number;
  readonly profiles: readonly PreparedProfile[];
}

function prepareFloors(spec: PuckSpec, stream: PuckStream, { flatGap, sweptGaps }: FloorGaps) {
  const wanted = [...new Set([...(flatGap === null ? [] : [flatGap]), ...sweptGaps])].sort((a, b) => a - b);
  const floors: PreparedFloor[] = [];
  const failures: string[] = [];
  for (const gap of wanted) {
    const profiles = prepareProfiles(spec, stream, { kind: "floor", gap });
    if (profiles.ok) floors.push({ gap, profiles: profiles.value });
    else {
      const instead = gap === flatGap ? "; lying flat is taken as in open water" : "";
      failures.push(
        `The section at a floor gap of ${Number((1000 * gap).toPrecision(4))} mm could not be solved${instead}: ${profiles.problem.message}`,
      );
    }
  }
  return { floors, failures };
}

/** The profile of a puck at every chord of a stream, ready to be solved. */
export function prepareProfiles(
  spec: PuckSpec,
  stream: Pick<PuckStream, "chordRatios" | "panelCount">,
  place: EdgeOnPlace,
): Result<PreparedProfile[]> {
  const profiles: PreparedProfile[] = [];
  for (const ratio of stream.chordRatios) {
    const profile = prepareProfile(spec, ratio, stream.panelCount, place);
    if (!profile.ok) return profile;
    profiles.push(profile.value);
  }
  return success(profiles);
}

function profileDrag(
  puck: Pick<CasePuck, "spec" | "sandGrainRoughness">,
  profiles: readonly PreparedProfile[],
  strips: StripStream,
): Result<ProfileStrip[]> {
  const profile: ProfileStrip[] = [];
  for (const { chordRatio, shape, heights } of profiles) {
    const drag = bracketedDrag(shape, heights * puck.spec.thicknessMetres, faceRoughness(puck), strips);
    if (!drag.ok) return drag;
    // Always asked with the Reynolds number on the thickness of the puck alone.
    profile.push({ chordRatio, drag: (reynolds) => drag.value(heights * reynolds) });
  }
  return success(profile);
}

/** Largest ks / D that the roughness model takes. */
const roughest = CONDITION_LIMITS.sandGrainRoughnessRatio[1];

/** Part of the rough wall in the expected value of a grooved one. */
const roughShare = SHORT_BODY_NUMBERS.grooveShare.value;

function bracketedDrag(
  shape: PreparedShape,
  width: number,
  roughnesses: Roughnesses,
  strips: StripStream,
): Result<SectionDragCurve> {
  const curves: SectionDragCurve[] = [];
  for (const roughness of roughnesses) {
    const curve = stripDrag(shape, width, Math.min(roughness, roughest * width), strips);
    if (!curve.ok) return curve;
    curves.push(curve.value);
  }
  const [smooth, rough] = curves;
  return success(rough === undefined ? smooth : (reynolds) => between(smooth(reynolds), rough(reynolds)));
}

function between(a: SectionDrag, b: SectionDrag): SectionDrag {
  const lower = a.low <= b.low ? a : b;
  const higher = a.high >= b.high ? a : b;
  return {
    low: lower.low,
    expected: (1 - roughShare) * a.expected + roughShare * b.expected,
    high: higher.high,
    regime: a.regime,
    lowRegime: lower.lowRegime ?? lower.regime,
    highRegime: higher.highRegime ?? higher.regime,
  };
}

/** Both bands in one, the expected value that of the first. */
export function widened(band: DragBand, other: DragBand): DragBand {
  return { low: Math.min(band.low, other.low), expected: band.expected, high: Math.max(band.high, other.high) };
}
