import type { DragBand } from "../puck/dragBand";
import type { EdgeOnSections, ProfileStrip } from "../puck/edgeOnDrag";
import type { PuckSpec } from "../puck/puckSpec";
import type { SectionDrag, SectionDragCurve } from "../puck/sectionDrag";
import { prepareStrip, profileSection, type StripStream, stripDrag } from "../puck/solvedSections";
import { type Result, success } from "../result";
import { floorNotes } from "../solve/floorNotes";
import type { PreparedSection } from "../solve/prepareSection";
import type { CasePuck, PuckStream } from "./puckCase";

/** The solved sections of one puck at one turbulence. */
export interface PuckFlow {
  readonly turbulencePercent: number;
  /** In open water. */
  readonly open: EdgeOnSections;
  /** Lying on the floor, the profile with its mirror image; null where that was not asked for or could not be solved. */
  readonly floor: EdgeOnSections | null;
  /** What was assumed or left out in the sections. */
  readonly notes: readonly string[];
}

export const grooveNote =
  "Grooves are not solved: drag is given between that of the plain finish and that of a wall with sand grains as high as the grooves are deep, the best value half-way; an assumption without a source.";
export const recessNote = "The recess is left out of the drag edge-on: nothing published was found for it.";
export const floorNote =
  "Lying flat: the profile is solved with its mirror image in the floor at gap 0, the hollow under the rounded edge taken as filled with still water. The band also holds the figure in open water.";

/** The plan section of every puck: a circle, whose flow does not depend on its size. */
export function preparePlan(panelCount: number): Result<PreparedSection> {
  return prepareStrip({ family: "circle", diameter: 1 }, panelCount);
}

/** Solves plan and profile of a puck once and gives its drag curves at every turbulence of the stream. */
export function solvePuckFlows(
  puck: Pick<CasePuck, "spec" | "finish">,
  stream: PuckStream,
  plan: PreparedSection,
  isOnFloor: boolean,
): Result<PuckFlow[]> {
  const open = prepareProfile(puck.spec, stream);
  if (!open.ok) return open;
  // The mirror image in the floor doubles the height; the edges keep their size. With the hollow filled, section and
  // image are one symmetric body, far better conditioned than a section in contact with a floor.
  const doubled = { ...puck.spec, thicknessMetres: 2 * puck.spec.thicknessMetres };
  const floor = isOnFloor ? prepareProfile(doubled, stream) : null;
  const notes = surfaceNotes(puck.spec);
  if (floor?.ok === true) notes.push(floorNote, ...floorNotes(0));
  if (floor?.ok === false) {
    notes.push(
      `Lying on the floor is taken as in open water: its section on the floor could not be solved: ${floor.problem.message}`,
    );
  }
  const flows: PuckFlow[] = [];
  for (const turbulencePercent of stream.turbulencePercents) {
    const strips: StripStream = {
      speeds: stream.solvedSpeeds,
      kinematicViscosity: stream.fluid.kinematicViscosity,
      turbulenceIntensity: turbulencePercent / 100,
      relativeError: stream.sectionError,
    };
    const planDrag = bracketedDrag(plan, puck.spec.diameterMetres, rimRoughness(puck), strips);
    if (!planDrag.ok) return planDrag;
    const inOpen = profileDrag(puck, open.value, puck.spec.thicknessMetres, strips, stream);
    if (!inOpen.ok) return inOpen;
    const onFloor = floor?.ok === true ? profileDrag(puck, floor.value, doubled.thicknessMetres, strips, stream) : null;
    if (onFloor?.ok === false) return onFloor;
    flows.push({
      turbulencePercent,
      open: { plan: planDrag.value, profile: inOpen.value },
      floor: onFloor === null ? null : { plan: planDrag.value, profile: onFloor.value.map(onThickness) },
      notes,
    });
  }
  return success(flows);
}

/** Roughnesses of the plain wall and of what grooves could amount to, m, smaller first; one where there are no grooves. */
type Roughnesses = readonly number[];

function rimRoughness({ spec, finish }: Pick<CasePuck, "spec" | "finish">): Roughnesses {
  if (spec.rim.kind === "rough") return [spec.rim.sandGrainRoughnessMetres];
  // Rings lie along the flow round the rim: they are no obstacle to it.
  return spec.rim.kind === "axialGrooves" ? [finish, Math.max(finish, spec.rim.depthMetres)] : [finish];
}

function faceRoughness({ spec, finish }: Pick<CasePuck, "spec" | "finish">): Roughnesses {
  return spec.face.kind === "radialGrooves" ? [finish, Math.max(finish, spec.face.depthMetres)] : [finish];
}

function surfaceNotes({ face, rim }: PuckSpec): string[] {
  const notes: string[] = [];
  if (face.kind === "radialGrooves" || rim.kind === "axialGrooves") notes.push(grooveNote);
  if (face.kind === "recess") notes.push(recessNote);
  return notes;
}

function prepareProfile(spec: PuckSpec, stream: PuckStream): Result<PreparedSection[]> {
  const sections: PreparedSection[] = [];
  for (const ratio of stream.chordRatios) {
    const section = prepareStrip(profileSection(spec, ratio * spec.diameterMetres), stream.panelCount);
    if (!section.ok) return section;
    sections.push(section.value);
  }
  return success(sections);
}

function profileDrag(
  puck: Pick<CasePuck, "spec" | "finish">,
  sections: readonly PreparedSection[],
  width: number,
  strips: StripStream,
  { chordRatios }: PuckStream,
): Result<ProfileStrip[]> {
  const profile: ProfileStrip[] = [];
  for (const [i, section] of sections.entries()) {
    const drag = bracketedDrag(section, width, faceRoughness(puck), strips);
    if (!drag.ok) return drag;
    profile.push({ chordRatio: chordRatios[i], drag: drag.value });
  }
  return success(profile);
}

/** Largest ks / D that the roughness model takes. */
const roughest = 0.05;

function bracketedDrag(
  section: PreparedSection,
  width: number,
  roughnesses: Roughnesses,
  strips: StripStream,
): Result<SectionDragCurve> {
  const curves: SectionDragCurve[] = [];
  for (const roughness of roughnesses) {
    const curve = stripDrag(section, width, Math.min(roughness, roughest * width), strips);
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
    best: (a.best + b.best) / 2,
    high: higher.high,
    regime: a.regime,
    lowRegime: lower.lowRegime ?? lower.regime,
    highRegime: higher.highRegime ?? higher.regime,
  };
}

/** The curve of a body with its mirror image, asked with the Reynolds number on the thickness of the body alone. */
function onThickness({ chordRatio, drag }: ProfileStrip): ProfileStrip {
  return { chordRatio, drag: (reynolds) => drag(2 * reynolds) };
}

/** Both bands in one, the best value that of the first. */
export function widened(band: DragBand, other: DragBand): DragBand {
  return { low: Math.min(band.low, other.low), best: band.best, high: Math.max(band.high, other.high) };
}
