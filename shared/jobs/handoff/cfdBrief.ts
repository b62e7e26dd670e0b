import type { FluidProperties } from "../../engine/fluid/fluidSpec";
import type { DragBand } from "../../engine/trust/dragInterval";
import { percentOf } from "../../numerics/degreesAndPercent";
import { problem, type Result, success } from "../../result";

/** Where the friction speed for the first cell comes from. */
export type FrictionEstimate =
  /** Turbulent flat plate of this length, m: Cf = 0.0592 Re_x^(-1/5). Source: White, Viscous Fluid Flow (1991), eq. 6-112b (from memory). */
  | { readonly kind: "flatPlate"; readonly length: number }
  /** Largest friction speed / stream speed of a solved layer, from largestFrictionSpeedRatio. */
  | { readonly kind: "solved"; readonly ratio: number };

export interface CfdBriefInput {
  readonly title: string;
  /** Width across the stream, m. */
  readonly referenceWidth: number;
  /** m/s. */
  readonly speed: number;
  readonly fluid: FluidProperties;
  /** A fraction. */
  readonly turbulenceIntensity: number;
  /** Equivalent sand-grain roughness, m; 0 is smooth. */
  readonly sandGrainRoughness: number;
  readonly wantedYPlus: number;
  readonly friction: FrictionEstimate;
  /** Expected separation on each side, rad from the front, at the section's centre. */
  readonly separationAngles: readonly number[];
  readonly strouhal: number;
  readonly expectedDrag: DragBand;
  /** The area or width that expectedDrag is on. */
  readonly dragAreaName: string;
}

export interface CfdBrief {
  readonly title: string;
  readonly fluidName: string;
  readonly densityKilogramsPerCubicMetre: number;
  readonly kinematicViscositySquareMetresPerSecond: number;
  readonly speedMetresPerSecond: number;
  readonly referenceWidthMetres: number;
  readonly reynolds: number;
  readonly turbulencePercent: number;
  readonly sandGrainRoughnessMetres: number;
  readonly upstreamMetres: number;
  readonly downstreamMetres: number;
  readonly eachSideMetres: number;
  /** Reference width / domain width. */
  readonly blockage: number;
  readonly frictionSpeedMetresPerSecond: number;
  readonly wantedYPlus: number;
  /** Height of the first cell's centre above the wall. */
  readonly firstCellHeightMetres: number;
  readonly separationAnglesDegrees: readonly number[];
  readonly strouhal: number;
  readonly sheddingHertz: number;
  readonly timeStepSeconds: number;
  readonly startUpSeconds: number;
  readonly averagingSeconds: number;
  readonly expectedDragCoefficient: DragBand;
  readonly dragAreaName: string;
  readonly cautions: readonly string[];
}

/**
 * Distances in reference widths: common practice, no source; the sides give a blockage of 2.5 %, inside the 3 % of
 * Franke et al. (2007), COST Action 732 expected practice guideline (from memory).
 */
const domainWidths = { upstream: 15, downstream: 30, eachSide: 20 };

/** Common practice, no source. */
const shedding = { stepsPerPeriod: 200, startUpPeriods: 20, averagedPeriods: 40 };

/** The numbers that a flow computation of the same case needs to be set up, from a solved section. */
export function cfdBrief(input: CfdBriefInput): Result<CfdBrief> {
  const { referenceWidth: D, speed, fluid, strouhal, wantedYPlus, friction } = input;
  const size = friction.kind === "flatPlate" ? friction.length : friction.ratio;
  const positive = {
    "reference width": D,
    speed,
    "Strouhal number": strouhal,
    "wanted y+": wantedYPlus,
    friction: size,
  };
  for (const [name, value] of Object.entries(positive)) {
    if (!(value > 0)) return problem("cfd-brief", `${name} is ${value}; it must be above 0`);
  }
  const nu = fluid.kinematicViscosity;
  const frictionSpeed =
    friction.kind === "solved" ? friction.ratio * speed : speed * Math.sqrt(plateFriction((speed * size) / nu) / 2);
  const period = D / (strouhal * speed);
  const cautions = [
    "Expected values come from a two-dimensional screening method: use them to size the mesh and the time step, not as the answer.",
    "The flow is unsteady and may differ across the span: a steady or two-dimensional computation will not settle the drag near the crisis.",
  ];
  if (input.turbulenceIntensity > 0 || input.sandGrainRoughness > 0) {
    cautions.push("Transition decides the drag here: a model that is turbulent from the nose on will not show it.");
  }
  return success({
    title: input.title,
    fluidName: fluid.name,
    densityKilogramsPerCubicMetre: fluid.density,
    kinematicViscositySquareMetresPerSecond: nu,
    speedMetresPerSecond: speed,
    referenceWidthMetres: D,
    reynolds: (speed * D) / nu,
    turbulencePercent: percentOf(input.turbulenceIntensity),
    sandGrainRoughnessMetres: input.sandGrainRoughness,
    upstreamMetres: domainWidths.upstream * D,
    downstreamMetres: domainWidths.downstream * D,
    eachSideMetres: domainWidths.eachSide * D,
    blockage: 1 / (2 * domainWidths.eachSide),
    frictionSpeedMetresPerSecond: frictionSpeed,
    wantedYPlus,
    firstCellHeightMetres: (wantedYPlus * nu) / frictionSpeed,
    separationAnglesDegrees: input.separationAngles.map((angle) => (angle * 180) / Math.PI),
    strouhal,
    sheddingHertz: 1 / period,
    timeStepSeconds: period / shedding.stepsPerPeriod,
    startUpSeconds: shedding.startUpPeriods * period,
    averagingSeconds: shedding.averagedPeriods * period,
    expectedDragCoefficient: input.expectedDrag,
    dragAreaName: input.dragAreaName,
    cautions,
  });
}

/** Local skin friction of a turbulent plate. */
function plateFriction(reynolds: number): number {
  return 0.0592 * reynolds ** -0.2;
}

/**
 * Largest sqrt(Cf/2) Ue / U along a solved layer.
 * @param edgeSpeed    Ue / U, shape [n]
 * @param skinFriction on the local dynamic pressure, shape [n]
 */
export function largestFrictionSpeedRatio(
  edgeSpeed: Readonly<Float64Array>,
  skinFriction: Readonly<Float64Array>,
): number {
  if (edgeSpeed.length !== skinFriction.length) {
    throw new RangeError(`there are ${edgeSpeed.length} edge speeds and ${skinFriction.length} frictions.`);
  }
  return edgeSpeed.reduce((most, Ue, i) => Math.max(most, Ue * Math.sqrt(Math.max(0, skinFriction[i]) / 2)), 0);
}
