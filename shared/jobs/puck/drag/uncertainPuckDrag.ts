import { SHORT_BODY_NUMBERS } from "../../../engine/constants/shortBodyNumbers";
import { FREE_WAKE_GAP_RATIO } from "../../../engine/flow/quietWake";
import { flowCondition } from "../../../engine/section/stream";
import type { DragBand } from "../../../engine/trust/dragInterval";
import type { StudyBody } from "../../../engine/trust/studyDraws";
import type { DragWorld, UncertainDrag } from "../../../engine/trust/uncertainDrag";
import type { WholeFlows } from "../../../engine/whole/wholeDrag";
import { dragOfDraw } from "../../../engine/whole/wholeDraws";
import { WHOLE_ERROR_NAMES, type WholeErrorDraw } from "../../../engine/whole/wholeErrors";
import { gaussIntegral } from "../../../numerics/gaussLegendre";
import { valueInTable } from "../../../numerics/tableLookup";
import { normalDistribution } from "../../../statistics/normal";
import { endRelief } from "./endRelief";
import { dragFaceOn, type FiguredPuck, recessWallArea } from "./orientationDrag";
import type { Orientation } from "./orientationIndex";
import type { PuckFlow, StudiedSections } from "./puckFlow";
import type { StudiedStrip } from "./solvedSections";
import { conditionPuck } from "./wholePuck";

/**
 * What is not known of whole pucks besides the errors of their sections, by name: each is a standard normal that all
 * pucks of a study share, so that it cancels where they are alike.
 */
export const PUCK_ERROR_NAMES = {
  /** Which of the published end reliefs holds, and how they go on below the shortest measured length. */
  endRelief: "end relief",
  /** How much of a puck edge-on is a cylinder in plan and how much a rectangle in profile. */
  planWeight: "weight between plan and profile",
  faceOn: "face-on base pressure",
  /** Whether grooves act as a plain wall or as sand grains as high as they are deep. */
  groovedWall: "groovedWall",
  /** How much of a recess's wall the stream presses on. */
  recess: "recess walls",
  /** Whether a puck on the floor has the drag of the floor's image or that of open water. */
  floor: "floor against open water",
} as const;

/** Standard normal at the ends of a band of 90 %. */
const BAND_END = SHORT_BODY_NUMBERS.bandEnd.value;
const WEIGHT_SPREAD = SHORT_BODY_NUMBERS.planWeightSpread.value;

/** A puck in one stream and attitude: what its drag is made of, and whether all of it was compared with published values. */
export interface UncertainPuckDrag {
  readonly drag: UncertainDrag;
  readonly isChecked: boolean;
}

/** One equally likely way that a puck and its water may be. */
export interface PuckSample {
  readonly puck: FiguredPuck;
  readonly flow: PuckFlow;
  /** m/s */
  readonly speed: number;
}

/**
 * Drag area of a puck, m^2, in one attitude as a function of what is not known.
 * @param samples equally likely ones, in the order that is common to all pucks of a study; one or more
 */
export function uncertainPuckDrag(
  samples: readonly PuckSample[],
  orientation: Orientation,
  kinematicViscosity: number,
): UncertainPuckDrag {
  const wholes = samples.map((sample) => wholeModel(sample, orientation, kinematicViscosity));
  const all = wholes.flatMap((model) => (model === null ? [] : [model]));
  if (all.length === samples.length) {
    return {
      drag: {
        parts: [],
        streamCount: samples.length,
        sharedErrors: [...WHOLE_ERROR_NAMES, PUCK_ERROR_NAMES.recess, PUCK_ERROR_NAMES.floor],
        evaluate: (world) => all[world.stream](world),
      },
      isChecked: true,
    };
  }
  if (orientation === "faceOn") return faceOnUncertain(samples, kinematicViscosity);
  const models = samples.map((sample) => edgeOnModel(sample, orientation));
  const [first] = models;
  const parts = first.strips.map(
    (_, p): StudyBody => ({ streams: models.map(({ strips }, s) => studyStream(strips[p], samples[s].speed)) }),
  );
  const { endRelief: relief, planWeight, groovedWall, recess, floor } = PUCK_ERROR_NAMES;
  return {
    drag: {
      parts,
      streamCount: samples.length,
      sharedErrors: [relief, planWeight, groovedWall, recess, floor],
      evaluate: (world) => models[world.stream].evaluate(world),
    },
    isChecked: models.every(({ strips }) => strips.every(({ isChecked }) => isChecked)),
  };
}

/** Drag area by the flow round the whole puck, in draws of what is not known of such flows; null where it was not solved. */
function wholeModel(
  { puck, flow, speed }: PuckSample,
  orientation: Orientation,
  kinematicViscosity: number,
): ((world: DragWorld) => number) | null {
  if (flow.whole === null) return null;
  const areaOf = (whole: WholeFlows, tilt: number) => {
    const body = conditionPuck(whole, puck, tilt, speed, kinematicViscosity, flow.turbulenceIntensity);
    return (draw: WholeErrorDraw) => body.frontalArea * dragOfDraw(body, draw);
  };
  const open = areaOf(flow.whole, orientation === "faceOn" ? Math.PI / 2 : 0);
  const gap = orientation === "flat" ? flow.flatGap : null;
  const over = flow.overFloor.find((one) => one.gap === gap)?.flow.whole ?? null;
  const floor = gap === null || over === null ? null : areaOf(over, 0);
  const recess = orientation === "faceOn" ? 0 : recessWallArea(puck.spec);
  return (world) => {
    const draw = Object.fromEntries(WHOLE_ERROR_NAMES.map((name) => [name, world.shared(name)])) as WholeErrorDraw;
    const walls = recess === 0 ? 0 : (recess * Math.max(0, world.shared(PUCK_ERROR_NAMES.recess))) / BAND_END;
    if (floor === null) return open(draw) + walls;
    const share = Math.min(1, Math.max(0, world.shared(PUCK_ERROR_NAMES.floor)) / BAND_END);
    const onFloor = floor(draw);
    return (share === 0 ? onFloor : onFloor ** (1 - share) * open(draw) ** share) + walls;
  };
}

function faceOnUncertain(samples: readonly PuckSample[], kinematicViscosity: number): UncertainPuckDrag {
  const bands = samples.map(({ puck, flow, speed }) => {
    const drag = dragFaceOn(puck, flow, speed, kinematicViscosity);
    if (!drag.ok) throw new RangeError(drag.problem.message);
    return drag.value.dragArea;
  });
  return {
    drag: {
      parts: [],
      streamCount: samples.length,
      sharedErrors: [PUCK_ERROR_NAMES.faceOn],
      evaluate: (world) => alongBand(bands[world.stream], world.shared(PUCK_ERROR_NAMES.faceOn)),
    },
    isChecked: true,
  };
}

interface EdgeOnModel {
  readonly strips: readonly StudiedStrip[];
  readonly evaluate: (world: DragWorld) => number;
}

/** Plan and profile in open water, and over the floor the profile with its image as well. */
function edgeOnModel({ puck, flow }: PuckSample, orientation: "upright" | "flat"): EdgeOnModel {
  const strips: StudiedStrip[] = [];
  if (flow.open === null) throw new RangeError("a puck has neither a flow round its whole body nor sections.");
  const open = estimateOf(puck, flow.open, Number.POSITIVE_INFINITY, strips);
  const gap = orientation === "flat" ? flow.flatGap : null;
  const overFloor = flow.overFloor.find((one) => one.gap === gap)?.flow;
  const floor =
    gap === null || overFloor === undefined || overFloor.whole !== null
      ? null
      : estimateOf(puck, overFloor.sections, gap / puck.spec.thicknessMetres, strips);
  const frontalArea = puck.figures.frontalAreaEdgeOnSquareMetres;
  const recess = recessWallArea(puck.spec);
  return {
    strips,
    evaluate: (world) => {
      const upward = (name: string) => Math.max(0, world.shared(name)) / BAND_END;
      const inOpen = open(world);
      let coefficient = inOpen;
      if (floor !== null) {
        const share = Math.min(1, upward(PUCK_ERROR_NAMES.floor));
        coefficient = floor(world) ** (1 - share) * inOpen ** share;
      }
      return coefficient * frontalArea + (recess === 0 ? 0 : recess * upward(PUCK_ERROR_NAMES.recess));
    },
  };
}

/** Drag coefficient on the frontal area by the two estimates; adds their sections to the strips. */
function estimateOf(
  { spec }: FiguredPuck,
  sections: StudiedSections,
  gapRatio: number,
  strips: StudiedStrip[],
): (world: DragWorld) => number {
  const slenderness = spec.thicknessMetres / spec.diameterMetres;
  const planLength = slenderness * (1 + Math.max(0, 1 - gapRatio / FREE_WAKE_GAP_RATIO));
  const place = (own: readonly StudiedStrip[]) => own.map((strip) => strips.push(strip) - 1);
  const plan = place(sections.planStudy);
  const profile = sections.profileStudy.map(place);
  const shares = chordShares(sections.profile.map(({ chordRatio }) => chordRatio));
  const planShare = Math.min(1, slenderness);
  const logit = planShare < 1 ? Math.log(planShare / (1 - planShare)) : Number.POSITIVE_INFINITY;
  return (world) => {
    const relief = world.shared(PUCK_ERROR_NAMES.endRelief);
    const wall = normalDistribution(world.shared(PUCK_ERROR_NAMES.groovedWall));
    const dragOf = (places: readonly number[], lengthOverWidth: number) => {
      const relieved = places.map(
        (part) => world.drag(part) * alongBand(endRelief(lengthOverWidth, world.regime(part)), relief),
      );
      return relieved.length === 1 ? relieved[0] : (1 - wall) * relieved[0] + wall * relieved[1];
    };
    const ofPlan = dragOf(plan, planLength);
    const ofProfile = profile.reduce((sum, places, i) => sum + shares[i] * dragOf(places, 1 / slenderness), 0);
    const weight = 1 / (1 + Math.exp(-(logit + WEIGHT_SPREAD * world.shared(PUCK_ERROR_NAMES.planWeight))));
    return weight * ofPlan + (1 - weight) * ofProfile;
  };
}

/** Part that each chord has in the mean over the strips of a round puck; they add up to 1. */
function chordShares(chordRatios: readonly number[]): number[] {
  return chordRatios.map((_, i) =>
    gaussIntegral(
      (psi) =>
        valueInTable(
          chordRatios,
          chordRatios.map((_, j) => (i === j ? 1 : 0)),
          Math.cos(psi),
        ) * Math.cos(psi),
      0,
      Math.PI / 2,
    ),
  );
}

function studyStream(strip: StudiedStrip, speed: number) {
  const { section, knots, width, sandGrainRoughness, kinematicViscosity, turbulenceIntensity } = strip;
  const stream = { speed, fluid: { kinematicViscosity }, sandGrainRoughness, turbulenceIntensity };
  return { section, knots, condition: flowCondition(stream, width) };
}

/** A value of a band whose ends hold 90 %: its expected one at 0, its ends at -1.645 and 1.645, by ratios. */
function alongBand({ low, expected, high }: DragBand, z: number): number {
  const end = z < 0 ? low : high;
  return expected * (end / expected) ** (Math.abs(z) / BAND_END);
}
