import type { CalibratedConstants } from "../../shared/engine/constants/calibrated";
import { marchTurbulent } from "../../shared/engine/layer/lagEntrainmentMarch";
import { type LaminarLayer, laminarLayer, marchLaminar } from "../../shared/engine/layer/laminarLayer";
import type { SideStations } from "../../shared/engine/layer/sideStations";
import { hiemenzSpeedRatio } from "../published/hiemenz-1911";
import type { GivenEdgeSpeed, LayerQuantity } from "../published/quantity";
import { notPredicted, type Prediction, predicted } from "./prediction";

const degree = Math.PI / 180;
const stationCount = 4001;
/** theta / sqrt(nu x / U) and H32 of Blasius's layer (beta 0 of the similar layers). */
const blasiusThickness = 0.66411;
const blasiusEnergyShape = 1.5726;

/** Edge speed over x, the x at which the table's unit of station 1 lies, and the end of the march. */
const edgeSpeeds: Record<GivenEdgeSpeed, { speed: (x: number) => number; unit: number; end: number }> = {
  howarth: { speed: (x) => 1 - x, unit: 1, end: 0.2 },
  sine: { speed: (x) => 2 * Math.sin(x), unit: degree, end: 125 * degree },
  hiemenz: { speed: hiemenzSpeedRatio, unit: degree, end: 90 * degree },
};

/** The engine's layers under published edge speeds and on plates. */
export function predictLayer(quantity: LayerQuantity, constants: CalibratedConstants): Prediction {
  switch (quantity.kind) {
    case "laminarSeparation": {
      const { x, layer } = givenLayer(quantity.edgeSpeed);
      if (layer.separation === Number.POSITIVE_INFINITY) return notPredicted("the layer does not separate");
      return predicted(atStation(x, layer.separation) / edgeSpeeds[quantity.edgeSpeed].unit);
    }
    case "laminarMomentumThickness": {
      const { x, layer } = givenLayer(quantity.edgeSpeed);
      const at = quantity.station * edgeSpeeds[quantity.edgeSpeed].unit;
      return predicted(atStation(layer.thickness, (at - x[0]) / (x[1] - x[0])));
    }
    case "smoothPlateFriction": {
      // Tripped near the leading edge: the laminar run ends at Re_x = 5e4 with Blasius's thickness.
      const start = 5e4 / quantity.reynoldsX;
      const momentumThickness = (0.664 * start) / Math.sqrt(5e4);
      return plate(quantity.reynoldsX, 0, start, momentumThickness, constants);
    }
    case "roughPlateFriction": {
      // Ue ks / nu = 2000 is just fully rough (ks+ 70 or more) up to x/ks = 1e5; the layer starts one ks from the edge.
      const roughness = 1 / quantity.lengthToRoughness;
      return plate(2000 * quantity.lengthToRoughness, roughness, roughness, 0.05 * roughness, constants);
    }
  }
}

function givenLayer(edgeSpeed: GivenEdgeSpeed): { x: Float64Array; layer: LaminarLayer } {
  const { speed: speedAt, end } = edgeSpeeds[edgeSpeed];
  // Howarth's flow starts at a leading edge: the march begins a little behind it with Blasius's layer.
  const start = edgeSpeed === "howarth" ? 1e-3 : 0;
  const x = Float64Array.from({ length: stationCount }, (_, i) => start + (i * (end - start)) / (stationCount - 1));
  const speed = x.map(speedAt);
  const gradient = x.map((at) => (speedAt(at + 1e-6) - speedAt(at - 1e-6)) / 2e-6);
  if (start === 0) return { x, layer: laminarLayer(x, speed, gradient) };
  return { x, layer: marchLaminar(x, speed, gradient, 0, blasiusThickness ** 2 * start, blasiusEnergyShape) };
}

function atStation(values: Readonly<Float64Array>, station: number): number {
  const i = Math.min(values.length - 2, Math.max(0, Math.floor(station)));
  return values[i] + (station - i) * (values[i + 1] - values[i]);
}

/** Friction at the end of a flat plate of unit length. */
function plate(
  reynolds: number,
  roughnessRatio: number,
  start: number,
  momentumThickness: number,
  constants: CalibratedConstants,
): Prediction {
  const stations: SideStations = {
    count: 2,
    arc: Float64Array.of(0, 1),
    position: new Float64Array(2),
    speed: Float64Array.of(1, 1),
    gradient: new Float64Array(2),
    curvature: new Float64Array(2),
    spacing: null,
    laminar: {
      thickness: new Float64Array(2),
      lambda: new Float64Array(2),
      shapeFactor: new Float64Array(2),
      shear: new Float64Array(2),
      separation: Number.POSITIVE_INFINITY,
      separationThickness: Number.NaN,
      remainingArc: 0,
      dips: [],
    },
  };
  let friction = 0;
  const march = marchTurbulent(
    stations,
    reynolds,
    roughnessRatio,
    { arc: start, momentumThickness, stress: null },
    constants.detachmentFriction,
    (_arc, _momentumThickness, _shapeFactor, skinFriction) => {
      friction = skinFriction;
    },
  );
  return march.separationArc === null ? predicted(friction) : notPredicted("the layer separates");
}
