import { CALIBRATED, type CalibratedConstants } from "../../shared/engine/constants/calibrated";
import type { Quantity, SectionQuantity } from "../published/quantity";
import { smoothStream } from "../published/streams";
import { groupBy } from "./groupBy";
import { discSections, predictEdgeOnDisc } from "./predictEdgeOnDisc";
import { predictFinite } from "./predictFinite";
import { predictFluid } from "./predictFluid";
import { notPredicted, type Prediction, predicted } from "./prediction";
import { predictLayer } from "./predictLayer";
import { predictSection } from "./predictSection";
import { predictWake } from "./predictWake";
import { reynoldsNumbersFor, type StreamCurve, streamKey, traceStream } from "./streamCurve";

export interface PredictionOptions {
  /** Calibrated constants to try; the engine's own by default. */
  readonly constants?: CalibratedConstants;
  /** Receives a line before every curve. */
  readonly progress?: (text: string) => void;
}

/** Runs the engine for every quantity; curves are traced once per stream and shared. */
export function predictAll(
  quantities: readonly Quantity[],
  { constants = CALIBRATED, progress }: PredictionOptions = {},
): Prediction[] {
  const curves = traceAll(quantities.flatMap(neededCurves), constants, progress);
  const section = (quantity: SectionQuantity): Prediction => {
    const curve = curves.get(streamKey(quantity));
    if (curve === undefined) throw new RangeError(`no curve was traced for ${streamKey(quantity)}.`);
    return typeof curve === "string" ? notPredicted(curve) : predictSection(quantity, curve);
  };
  return quantities.map((quantity) => {
    switch (quantity.kind) {
      case "criticalReynoldsRatio": {
        const [here, reference] = neededCurves(quantity).map(section);
        if (here.value === null) return here;
        if (reference.value === null) return notPredicted(`reference stream: ${reference.note}`);
        return predicted(here.value / reference.value);
      }
      case "crossFlowCylinderDrag":
        return predictFinite(quantity, section(endlessCylinder(quantity.reynolds)));
      case "edgeOnDiscDrag":
        return predictEdgeOnDisc(quantity, discSections(quantity).map(section));
      case "crossFlowLengthFactor":
      case "axialCylinderDrag":
        return predictFinite(quantity, null);
      case "laminarSeparation":
      case "laminarMomentumThickness":
      case "smoothPlateFriction":
      case "roughPlateFriction":
        return predictLayer(quantity, constants);
      case "wakeSourceDrag":
      case "wakeSourceLowestPressure":
        return predictWake(quantity);
      case "waterDynamicViscosity":
      case "waterDensity":
      case "waterKinematicViscosity":
      case "airDynamicViscosity":
      case "airDensity":
        return predictFluid(quantity);
      default:
        return section(quantity);
    }
  });
}

/** The quantities whose curves a quantity is read from; a ratio needs its reference stream too. */
function neededCurves(quantity: Quantity): SectionQuantity[] {
  if (quantity.kind === "crossFlowCylinderDrag") return [endlessCylinder(quantity.reynolds)];
  if (quantity.kind === "edgeOnDiscDrag") return discSections(quantity);
  if (!("section" in quantity)) return [];
  if (quantity.kind !== "criticalReynoldsRatio") return [quantity];
  return [quantity, { ...quantity, turbulenceIntensity: quantity.referenceTurbulenceIntensity }];
}

function endlessCylinder(reynolds: number): SectionQuantity {
  return { kind: "dragCoefficient", ...smoothStream(), reynolds };
}

function traceAll(
  quantities: readonly SectionQuantity[],
  constants: CalibratedConstants,
  progress: ((text: string) => void) | undefined,
): Map<string, StreamCurve | string> {
  const streams = groupBy(quantities, streamKey);
  const curves = new Map<string, StreamCurve | string>();
  for (const [key, members] of streams) {
    progress?.(`${curves.size + 1} of ${streams.size}: ${key}`);
    curves.set(key, traceStream(members[0], reynoldsNumbersFor(members), constants));
  }
  return curves;
}
