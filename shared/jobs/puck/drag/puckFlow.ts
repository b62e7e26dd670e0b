import { SHORT_BODY_NUMBERS } from "../../../engine/constants/shortBodyNumbers";
import type { PreparedShape } from "../../../engine/section/prepareShape";
import { CONDITION_LIMITS } from "../../../engine/solve/checkCondition";
import { floorNotes } from "../../../engine/solve/floorNotes";
import type { DragBand } from "../../../engine/trust/dragInterval";
import type { WholeFlows } from "../../../engine/whole/wholeDrag";
import { type Result, success } from "../../../result";
import type { PuckSpec } from "../body/puckSpec";
import type { CasePuck, PuckPlay, PuckStream } from "../puckCase";
import type { EdgeOnPlace, EdgeOnSections, ProfileStrip } from "./edgeOnDrag";
import { type FaceOnFlow, prepareFaceOn } from "./faceOnFlow";
import { type PreparedProfile, prepareProfile } from "./profileStrip";
import { faceRoughness, type Roughnesses, rimRoughness, surfaceNotes } from "./puckSurface";
import type { SectionDrag, SectionDragCurve } from "./sectionDrag";
import { prepareStrip, type StripCurve, type StripStream, type StudiedStrip, stripDrag } from "./solvedSections";
import { rememberedWholePuck } from "./wholePuck";

/** The solved sections of one puck at one turbulence. */
export interface PuckFlow {
  /** A fraction. */
  readonly turbulenceIntensity: number;
  /** The flow round the whole puck in open water; null where it could not be solved and sections have to do. */
  readonly whole: WholeFlows | null;
  /** Plan and profile sections in open water, for comparison; null where they were not wanted. */
  readonly open: StudiedSections | null;
  /** Gap under the puck that lies flat, m, 0 on the floor; null in open water, and where the gap could not be solved. */
  readonly flatGap: number | null;
  /** Over the floor, with the mirror image; gaps that could not be solved are left out. */
  readonly overFloor: readonly FlowOverFloor[];
  /** Along the axis; null where that could not be solved and tables have to do. */
  readonly faceOn: FaceOnFlow | null;
  /** What was assumed or left out in the sections. */
  readonly notes: readonly string[];
}

export interface FlowOverFloor {
  /** m. */
  readonly gap: number;
  readonly flow: { readonly whole: WholeFlows } | { readonly whole: null; readonly sections: StudiedSections };
}

/** Sections with what common draws need of them. */
export interface StudiedSections extends EdgeOnSections {
  /** A plain wall's, and of a textured one also that of the rough wall. */
  readonly planStudy: readonly StudiedStrip[];
  /** The same of the profile at each of its chords. */
  readonly profileStudy: readonly (readonly StudiedStrip[])[];
}

/** The gaps to the floor that are wanted: of a puck that lies flat in play, and others to report. */
export type FloorGaps = Pick<PuckPlay, "flatGap" | "sweptGaps">;

export const floorNote =
  "Over the floor the profile is solved with its mirror image; at gap 0 the hollow under the rounded edge is taken as filled with still water. The band also holds the figure in open water.";

/** The plan section of every puck: a circle, whose flow does not depend on its size. */
export function preparePlan(panelCount: number): Result<PreparedShape> {
  return prepareStrip({ family: "circle", diameter: 1 }, panelCount);
}

/**
 * Solves the flow round a puck once and gives what its drag is read from at every turbulence of the stream.
 * @param withSections whether plan and profile sections are solved too, for comparison
 */
export function solvePuckFlows(
  puck: Pick<CasePuck, "spec" | "sandGrainRoughness">,
  stream: PuckStream,
  plan: PreparedShape,
  gaps: FloorGaps,
  withSections = false,
): Result<PuckFlow[]> {
  const whole = rememberedWholePuck(puck.spec, null);
  if (!whole.ok) return solveBySections(puck, stream, plan, gaps, whole.problem.message);
  const notes = [wholeNote, ...surfaceNotes(puck.spec)];
  const wanted = wantedGaps(gaps);
  const overFloor: FlowOverFloor[] = [];
  for (const gap of wanted) {
    const flow = rememberedWholePuck(puck.spec, gap);
    if (flow.ok) overFloor.push({ gap, flow: { whole: flow.value } });
    else notes.push(floorFailure(gap, gaps, flow.problem.message));
  }
  if (overFloor.length > 0) notes.push(wholeFloorNote);
  const flatGap = overFloor.some(({ gap }) => gap === gaps.flatGap) ? gaps.flatGap : null;
  const profiles = withSections ? prepareProfiles(puck.spec, stream, { kind: "open" }) : null;
  return success(
    stream.turbulenceIntensities.map((turbulenceIntensity): PuckFlow => {
      const open =
        profiles?.ok !== true
          ? null
          : solveSections(puck, { plan, profiles: profiles.value }, stripStream(stream, turbulenceIntensity));
      return {
        turbulenceIntensity,
        whole: whole.value,
        open: open?.ok === true ? open.value : null,
        flatGap,
        overFloor,
        faceOn: null,
        notes,
      };
    }),
  );
}

const wholeNote =
  "The flow round the whole puck is solved in three dimensions. No published relation closes its base pressure: each state's band holds what such bodies showed, a pressure tap in the base would narrow it most. No measured drag of a cylinder across the stream was found below length/diameter 1: its base pressure is carried on from longer ones.";
const wholeFloorNote =
  "Over the floor the whole puck is solved with its mirror image; nearer than 5 % of its thickness it is taken as lying on the floor, the hollow under the rounded edge filled with still water. The band also holds the figure in open water.";

function stripStream(stream: PuckStream, turbulenceIntensity: number): StripStream {
  return {
    speeds: stream.solvedSpeeds,
    kinematicViscosity: stream.fluid.kinematicViscosity,
    turbulenceIntensity,
    relativeError: stream.sectionError,
  };
}

function wantedGaps({ flatGap, sweptGaps }: FloorGaps): number[] {
  return [...new Set([...(flatGap === null ? [] : [flatGap]), ...sweptGaps])].sort((a, b) => a - b);
}

function floorFailure(gap: number, { flatGap }: FloorGaps, reason: string): string {
  const instead = gap === flatGap ? "; lying flat is taken as in open water" : "";
  return `The flow at a floor gap of ${Number((1000 * gap).toPrecision(4))} mm could not be solved${instead}: ${reason}`;
}

/** Plan and profile sections stand in for a puck whose flow as a whole body could not be solved. */
function solveBySections(
  puck: Pick<CasePuck, "spec" | "sandGrainRoughness">,
  stream: PuckStream,
  plan: PreparedShape,
  gaps: FloorGaps,
  reason: string,
): Result<PuckFlow[]> {
  const open = prepareProfiles(puck.spec, stream, { kind: "open" });
  if (!open.ok) return open;
  const prepared = { plan, profiles: open.value };
  const notes = [
    `The flow round the whole puck could not be solved (${reason}); sections in plan and profile stand in for it.`,
    ...surfaceNotes(puck.spec),
  ];
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
    const strips = stripStream(stream, turbulenceIntensity);
    const inOpen = solveSections(puck, prepared, strips);
    if (!inOpen.ok) return inOpen;
    const overFloor: FlowOverFloor[] = [];
    for (const { gap, profiles } of floors) {
      const profile = profileDrag(puck, profiles, strips);
      if (!profile.ok) return profile;
      const { plan, planStudy } = inOpen.value;
      overFloor.push({ gap, flow: { whole: null, sections: { plan, planStudy, ...profile.value } } });
    }
    flows.push({
      turbulenceIntensity,
      whole: null,
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
): Result<StudiedSections> {
  const planDrag = bracketedDrag(plan, puck.spec.diameterMetres, rimRoughness(puck), strips);
  if (!planDrag.ok) return planDrag;
  const profile = profileDrag(puck, profiles, strips);
  if (!profile.ok) return profile;
  return success({ plan: planDrag.value.drag, planStudy: planDrag.value.study, ...profile.value });
}

interface PreparedFloor {
  readonly gap: number;
  readonly profiles: readonly PreparedProfile[];
}

function prepareFloors(spec: PuckSpec, stream: PuckStream, gaps: FloorGaps) {
  const floors: PreparedFloor[] = [];
  const failures: string[] = [];
  for (const gap of wantedGaps(gaps)) {
    const profiles = prepareProfiles(spec, stream, { kind: "floor", gap });
    if (profiles.ok) floors.push({ gap, profiles: profiles.value });
    else failures.push(floorFailure(gap, gaps, profiles.problem.message));
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
): Result<Pick<StudiedSections, "profile" | "profileStudy">> {
  const profile: ProfileStrip[] = [];
  const profileStudy: (readonly StudiedStrip[])[] = [];
  for (const { chordRatio, shape, heights } of profiles) {
    const drag = bracketedDrag(shape, heights * puck.spec.thicknessMetres, faceRoughness(puck), strips);
    if (!drag.ok) return drag;
    // Always asked with the Reynolds number on the thickness of the puck alone.
    profile.push({ chordRatio, drag: (reynolds) => drag.value.drag(heights * reynolds) });
    profileStudy.push(drag.value.study);
  }
  return success({ profile, profileStudy });
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
): Result<{ readonly drag: SectionDragCurve; readonly study: readonly StudiedStrip[] }> {
  const curves: StripCurve[] = [];
  for (const roughness of roughnesses) {
    const curve = stripDrag(shape, width, Math.min(roughness, roughest * width), strips);
    if (!curve.ok) return curve;
    curves.push(curve.value);
  }
  const [smooth, rough] = curves.map(({ drag }) => drag);
  const drag: SectionDragCurve =
    rough === undefined ? smooth : (reynolds) => between(smooth(reynolds), rough(reynolds));
  return success({ drag, study: curves.map(({ study }) => study) });
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
