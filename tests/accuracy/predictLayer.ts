import type { CalibratedConstants } from "../../shared/constants/calibrated";
import { marchTurbulent } from "../../shared/layer/lagEntrainmentMarch";
import type { SideStations } from "../../shared/layer/sideStations";
import { LAMINAR_SEPARATION_LAMBDA, thwaitesThickness } from "../../shared/layer/thwaites";
import { hiemenzSpeedRatio } from "../published/hiemenz-1911";
import type { GivenEdgeSpeed, LayerQuantity } from "../published/quantity";
import { notPredicted, type Prediction, predicted } from "./prediction";

const degree = Math.PI / 180;
const stationCount = 4001;

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
      const { x, speed, squared } = laminarLayer(quantity.edgeSpeed);
      const { unit } = edgeSpeeds[quantity.edgeSpeed];
      let previous = 0;
      for (let i = 1; i < x.length - 1; i++) {
        const lambda = (squared[i] * (speed[i + 1] - speed[i - 1])) / (x[i + 1] - x[i - 1]);
        if (lambda <= LAMINAR_SEPARATION_LAMBDA) {
          const share = (previous - LAMINAR_SEPARATION_LAMBDA) / (previous - lambda);
          return predicted((x[i - 1] + share * (x[i] - x[i - 1])) / unit);
        }
        previous = lambda;
      }
      return notPredicted("the layer does not separate");
    }
    case "laminarMomentumThickness": {
      const { x, squared } = laminarLayer(quantity.edgeSpeed);
      const at = quantity.station * edgeSpeeds[quantity.edgeSpeed].unit;
      const i = Math.min(x.length - 2, Math.floor(at / x[1]));
      const share = at / x[1] - i;
      return predicted(Math.sqrt(squared[i] + share * (squared[i + 1] - squared[i])));
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

function laminarLayer(edgeSpeed: GivenEdgeSpeed) {
  const { speed: speedAt, end } = edgeSpeeds[edgeSpeed];
  const x = Float64Array.from({ length: stationCount }, (_, i) => (i * end) / (stationCount - 1));
  const speed = x.map(speedAt);
  return { x, speed, squared: thwaitesThickness(x, speed) };
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
    laminarThickness: new Float64Array(2),
    lambda: new Float64Array(2),
    laminarSeparation: Number.POSITIVE_INFINITY,
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
