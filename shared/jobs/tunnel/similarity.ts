import type { FluidProperties } from "../../engine/fluid/fluidSpec";
import { type DragBand, scaleBand } from "../../engine/trust/dragInterval";
import { percentOf } from "../../numerics/degreesAndPercent";
import { crisisWarnings } from "./crisisWarnings";
import { type PredictedCrisis, type PredictedDrag, predictedAt } from "./predictedDrag";
import { blockageOf, type TunnelFacility } from "./tunnelFacility";
import { modelReference, referenceOf, type TunnelModel } from "./tunnelShape";

/** The flow at full size that the test stands for. */
export interface FullScaleFlow {
  readonly fluid: FluidProperties;
  /** m/s, rising. */
  readonly speeds: readonly number[];
  /** A fraction. */
  readonly turbulenceIntensity: number;
}

/** Up to this Mach number a flow counts as incompressible: the density changes by less than 5 %. Common practice, no source. */
export const machLimit = 0.3;

/** Frontal area of the model / test section from which blockage is no longer small. Common practice (West & Apelt 1982: 6 %), from memory. */
export const blockageLimit = 0.06;

/** One speed at full size and the tunnel speed of equal Reynolds number. Keys carry their units. */
export interface SimilarityRow {
  readonly fullScaleSpeedMetresPerSecond: number;
  readonly fullScaleReynolds: number;
  /** For equal Reynolds number, whether the tunnel reaches it or not. */
  readonly wantedSpeedMetresPerSecond: number;
  readonly wantedMach: number | null;
  /** The nearest speed that the tunnel and the Mach limit allow. */
  readonly tunnelSpeedMetresPerSecond: number;
  readonly tunnelReynolds: number;
  readonly mach: number | null;
  readonly dynamicPressurePascals: number;
  readonly predictedDragCoefficient: DragBand | null;
  readonly expectedForceNewtons: DragBand | null;
  /** Expected force / resolution of the balance. */
  readonly resolutionSteps: number | null;
  readonly warnings: readonly string[];
}

export interface Similarity {
  readonly referenceLength: string;
  readonly referenceArea: string;
  readonly modelReferenceLengthMetres: number;
  readonly modelReferenceAreaSquareMetres: number;
  /** Tunnel speed / speed at full size for equal Reynolds number. */
  readonly speedRatio: number;
  /** ks of the model for equal ks / D. */
  readonly modelSandGrainRoughnessMetres: number;
  readonly blockageRatio: number;
  readonly fullScaleTurbulencePercent: number;
  readonly tunnelTurbulencePercent: number;
  readonly crisesAtFullScaleTurbulence: readonly PredictedCrisis[];
  readonly crisesAtTunnelTurbulence: readonly PredictedCrisis[];
  readonly rows: readonly SimilarityRow[];
  /** For all speeds together. */
  readonly warnings: readonly string[];
}

/**
 * Tunnel speed / speed at full size for equal Reynolds number U L / nu.
 * @param scale model size / full size
 */
export function equalReynoldsSpeedRatio(tunnelViscosity: number, fullScaleViscosity: number, scale: number): number {
  if (!(tunnelViscosity > 0 && fullScaleViscosity > 0 && scale > 0)) {
    throw new RangeError(
      `viscosities ${tunnelViscosity} and ${fullScaleViscosity}, scale ${scale}; all must be above 0.`,
    );
  }
  return tunnelViscosity / (fullScaleViscosity * scale);
}

/**
 * What a test must match and what it meets.
 * @param atFullScale prediction at the turbulence of the full-scale flow; null where there is none
 * @param inTunnel    prediction at the turbulence of the tunnel
 */
export function similarity(
  model: TunnelModel,
  fullScale: FullScaleFlow,
  facility: TunnelFacility,
  atFullScale: PredictedDrag | null,
  inTunnel: PredictedDrag | null,
): Similarity {
  const full = referenceOf(model.shape);
  const reference = modelReference(model);
  const speedRatio = equalReynoldsSpeedRatio(
    facility.fluid.kinematicViscosity,
    fullScale.fluid.kinematicViscosity,
    model.scale,
  );
  const crises = { full: atFullScale?.crises ?? [], tunnel: inTunnel?.crises ?? [] };
  const blockageRatio = blockageOf(model, facility);
  return {
    referenceLength: reference.lengthName,
    referenceArea: reference.areaName,
    modelReferenceLengthMetres: reference.length,
    modelReferenceAreaSquareMetres: reference.area,
    speedRatio,
    modelSandGrainRoughnessMetres: model.sandGrainRoughness * model.scale,
    blockageRatio,
    fullScaleTurbulencePercent: percentOf(fullScale.turbulenceIntensity),
    tunnelTurbulencePercent: percentOf(facility.turbulenceIntensity),
    crisesAtFullScaleTurbulence: crises.full,
    crisesAtTunnelTurbulence: crises.tunnel,
    rows: fullScale.speeds.map((speed) => similarityRow(speed, speedRatio)),
    warnings: commonWarnings(),
  };

  function similarityRow(speed: number, ratio: number): SimilarityRow {
    const { fluid, balance } = facility;
    const wanted = speed * ratio;
    const machSpeed = fluid.speedOfSound === null ? Number.POSITIVE_INFINITY : machLimit * fluid.speedOfSound;
    const tunnelSpeed = Math.max(facility.slowestSpeed, Math.min(facility.fastestSpeed, machSpeed, wanted));
    const fullScaleReynolds = (speed * full.length) / fullScale.fluid.kinematicViscosity;
    const tunnelReynolds = (tunnelSpeed * reference.length) / fluid.kinematicViscosity;
    const dynamicPressure = 0.5 * fluid.density * tunnelSpeed ** 2;
    const coefficient = inTunnel === null ? null : predictedAt(inTunnel, tunnelReynolds, "rising");
    const force = coefficient === null ? null : scaleBand(coefficient, dynamicPressure * reference.area);
    const mach = (u: number) => (fluid.speedOfSound === null ? null : u / fluid.speedOfSound);
    const warnings: string[] = [];
    if (wanted > machSpeed) {
      warnings.push(
        `Equal Re needs ${text(wanted)} m/s, Mach ${text(wanted / (fluid.speedOfSound ?? 1))}: above the limit of ${machLimit}. A larger model, a denser or a colder fluid lowers it.`,
      );
    }
    if (wanted > facility.fastestSpeed) {
      warnings.push(`Equal Re needs ${text(wanted)} m/s; the tunnel ends at ${text(facility.fastestSpeed)} m/s.`);
    }
    if (wanted < facility.slowestSpeed) {
      warnings.push(`Equal Re needs ${text(wanted)} m/s; the tunnel begins at ${text(facility.slowestSpeed)} m/s.`);
    }
    if (force !== null && force.high > balance.range) {
      warnings.push(`The force may reach ${text(force.high)} N; the balance ends at ${text(balance.range)} N.`);
    }
    if (force !== null && force.expected < leastResolutionSteps * balance.resolution) {
      warnings.push(
        `The force, about ${text(force.expected)} N, is less than ${leastResolutionSteps} steps of the balance (${text(balance.resolution)} N each).`,
      );
    }
    warnings.push(...crisisWarnings(fullScaleReynolds, tunnelReynolds, crises));
    return {
      fullScaleSpeedMetresPerSecond: speed,
      fullScaleReynolds,
      wantedSpeedMetresPerSecond: wanted,
      wantedMach: mach(wanted),
      tunnelSpeedMetresPerSecond: tunnelSpeed,
      tunnelReynolds,
      mach: mach(tunnelSpeed),
      dynamicPressurePascals: dynamicPressure,
      predictedDragCoefficient: coefficient,
      expectedForceNewtons: force,
      resolutionSteps: force === null ? null : force.expected / balance.resolution,
      warnings,
    };
  }

  function commonWarnings(): string[] {
    const warnings: string[] = [];
    if (blockageRatio > blockageLimit) {
      warnings.push(
        `The model fills ${text(100 * blockageRatio)} % of the test section; above ${100 * blockageLimit} % corrections become large and doubtful.`,
      );
    }
    const [water, air] = [percentOf(fullScale.turbulenceIntensity), percentOf(facility.turbulenceIntensity)];
    if (Math.abs(Math.log((water + 1e-3) / (air + 1e-3))) > Math.log(1.5)) {
      warnings.push(
        air < water
          ? `The tunnel's turbulence, ${text(air)} %, is below the ${text(water)} % at full size: a grid ahead of the model raises it.`
          : `The tunnel's turbulence, ${text(air)} %, is above the ${text(water)} % at full size: the crisis comes sooner in the tunnel.`,
      );
    }
    return warnings;
  }
}

/** Below this many steps the reading itself limits the test. Common practice, no source. */
const leastResolutionSteps = 100;

function text(value: number): string {
  return String(Number(value.toPrecision(3)));
}
