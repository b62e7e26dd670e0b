import { SHORT_BODY_NUMBERS } from "../../../engine/constants/shortBodyNumbers";
import { FREE_WAKE_GAP_RATIO } from "../../../engine/flow/quietWake";
import type { Regime } from "../../../engine/solution";
import { closureNearFloor } from "../../../engine/solve/floorNotes";
import { type DragBand, dragOn, type PuckDrag, scaleBand, spanBands } from "../../../engine/trust/dragInterval";
import { gaussIntegral } from "../../../numerics/gaussLegendre";
import { valueInTable } from "../../../numerics/tableLookup";
import { problem, type Result, success } from "../../../result";
import { endRelief, endReliefCaution, shortestMeasuredRatio } from "./endRelief";
import type { SectionDrag, SectionDragCurve } from "./sectionDrag";

/** The outside of a puck as the stream sees it, m and m^2. */
export interface EdgeOnShape {
  readonly diameter: number;
  readonly thickness: number;
  /** Shadow seen along the mid-plane. */
  readonly frontalArea: number;
}

/** Drag of the profile section (rounded rectangle) at one chord, over the Reynolds number on the thickness. */
export interface ProfileStrip {
  /** Chord / diameter, above 0 and at most 1. */
  readonly chordRatio: number;
  readonly drag: SectionDragCurve;
}

export interface EdgeOnSections {
  /** Circle, over the Reynolds number on the diameter. */
  readonly plan: SectionDragCurve;
  /** One or more chords of the profile, chordRatio rising; between them drag is linear in the chord. */
  readonly profile: readonly ProfileStrip[];
}

/**
 * Where the puck is; gap in m, 0 when it lies on the floor. On or near a floor the caller solves the profile section with
 * its mirror image at that gap (prepareProfile with the same place) and passes that curve as `profile`; this module then
 * only changes the end relief of the plan estimate.
 */
export type EdgeOnPlace = { readonly kind: "open" } | { readonly kind: "floor"; readonly gap: number };

export interface EdgeOnDrag extends PuckDrag {
  /** Drag coefficient on the frontal area from the circle in plan, and from the rounded rectangle in profile. */
  readonly planEstimate: DragBand;
  readonly profileEstimate: DragBand;
  /** Part of the expected value that the plan estimate has, 0 to 1. */
  readonly planShare: number;
}

/** The regime is taken from here on as past the crisis when the solver did not name it. Source: DNV-RP-C205 (2025). */
const crisisReynolds = SHORT_BODY_NUMBERS.endReliefCrisis.value;

/**
 * Drag of a puck moving along its mid-plane, as a band between two strip estimates with published end relief.
 * Plan: water goes round the rim as round a cylinder of length `thickness`; profile: it goes over both faces, strip by
 * strip across the puck, chord 2 sqrt(R^2 - y^2), as over a rounded rectangle of span `diameter`. The expected value weighs
 * the plan by thickness / diameter (at most 1): all of it where the tables of short cylinders begin, none for a thin
 * disc. The sweep of the rim to the stream is left out.
 * @param speed              m/s, above 0
 * @param kinematicViscosity m^2/s, above 0
 */
export function edgeOnDrag(
  shape: EdgeOnShape,
  sections: EdgeOnSections,
  speed: number,
  kinematicViscosity: number,
  place: EdgeOnPlace = { kind: "open" },
): Result<EdgeOnDrag> {
  const { diameter, thickness, frontalArea } = shape;
  for (const [name, value] of Object.entries({ diameter, thickness, frontalArea, speed, kinematicViscosity })) {
    if (!(value > 0)) return problem("edge-on", `${name} is ${value}; it must be above 0`, name);
  }
  const { profile } = sections;
  if (profile.length === 0) return problem("edge-on", "no profile section was given; give one or more", "profile");
  const isRising = profile.every(
    ({ chordRatio }, i) => chordRatio > (i === 0 ? 0 : profile[i - 1].chordRatio) && chordRatio <= 1,
  );
  if (!isRising) return problem("edge-on", "chord ratios must rise from above 0 to at most 1", "profile");
  const slenderness = thickness / diameter;
  const gapRatio = place.kind === "floor" ? place.gap / thickness : Number.POSITIVE_INFINITY;

  const planReynolds = (speed * diameter) / kinematicViscosity;
  const plan = sections.plan(planReynolds);
  // A body standing on a floor is half of itself and its mirror image, which is twice as long and has the free ends. That
  // this fades in proportion to the gap is an assumption without a source.
  const planLength = slenderness * (1 + Math.max(0, 1 - gapRatio / FREE_WAKE_GAP_RATIO));
  const planEstimate = relieved(plan, planLength, planReynolds);

  const profileReynolds = (speed * thickness) / kinematicViscosity;
  const strips = profile.map(({ chordRatio, drag }) => {
    return { chordRatio, drag: relieved(drag(profileReynolds), 1 / slenderness, profileReynolds) };
  });
  const average = (part: keyof DragBand) =>
    gaussIntegral((psi) => alongChord(strips, Math.cos(psi), part) * Math.cos(psi), 0, Math.PI / 2);
  const profileEstimate = { low: average("low"), expected: average("expected"), high: average("high") };

  const planShare = Math.min(1, slenderness);
  const coefficient = spanBands([planEstimate, profileEstimate], [planShare, 1 - planShare]);
  const notes = ["Two estimates from endless sections, plan and profile, span the band; neither is a measurement."];
  if (planLength < shortestMeasuredRatio) notes.push(endReliefCaution);
  if (place.kind === "floor") notes.push(closureNearFloor(gapRatio));
  return success({
    ...dragOn(scaleBand(coefficient, frontalArea), frontalArea, "frontal area edge-on", notes),
    planEstimate,
    profileEstimate,
    planShare,
  });
}

/** Section drag with the end relief of each value's own regime: the states behind low and high may be past the crisis. */
function relieved(section: SectionDrag, lengthOverWidth: number, reynolds: number): DragBand {
  const regime = section.regime ?? (reynolds < crisisReynolds ? "subcritical" : "supercritical");
  const relief = (own: Regime | null | undefined) => endRelief(lengthOverWidth, own ?? regime);
  return {
    low: section.low * relief(section.lowRegime).low,
    expected: section.expected * relief(regime).expected,
    high: section.high * relief(section.highRegime).high,
  };
}

/** Drag coefficient at a chord / diameter; beyond the given chords that of the nearest. */
function alongChord(
  strips: readonly { readonly chordRatio: number; readonly drag: DragBand }[],
  chordRatio: number,
  part: keyof DragBand,
): number {
  return valueInTable(
    strips.map((strip) => strip.chordRatio),
    strips.map(({ drag }) => drag[part]),
    chordRatio,
  );
}
