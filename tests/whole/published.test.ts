import { describe, expect, test } from "vitest";
import type { WholeStream } from "../../shared/engine/whole/conditionFlow";
import { arcCurve, straightCurve } from "../../shared/engine/whole/meridianCurve";
import { roundLine } from "../../shared/engine/whole/separationFamily";
import { streamGrid } from "../../shared/engine/whole/streamGrid";
import { forcesAt, wakeRow } from "../../shared/engine/whole/wakeRow";
import { prepareWholeBody } from "../../shared/engine/whole/wholeBody";
import { conditionWhole, type WholeFlows, wholeFlows } from "../../shared/engine/whole/wholeDrag";
import { wholeStates } from "../../shared/engine/whole/wholeStates";
import { roundedDisc, spheroid } from "./bodies";

const stream = (reynolds: number, turbulenceIntensity: number, roughness = 0): WholeStream => ({
  reynolds,
  turbulenceIntensity,
  rimRoughnessRatio: roughness,
  faceRoughnessRatio: roughness,
  facePattern: null,
});

function flowsOf(...shape: Parameters<typeof wholeFlows>): WholeFlows {
  const flows = wholeFlows(...shape);
  if (!flows.ok) throw new Error(flows.problem.message);
  return flows.value;
}

const outcome = (flows: WholeFlows, tilt: number, of: WholeStream) => wholeStates(conditionWhole(flows, tilt, [of]));

/** Relative error of the expected drag. */
const error = (flows: WholeFlows, tilt: number, of: WholeStream, measured: number) =>
  outcome(flows, tilt, of).dragCoefficient.expected / measured - 1;

const sphere = flowsOf(spheroid(1));

/*
 * Errors of today's engine against published drag, on the frontal area. "Chosen on" says that a number of the ledger was
 * chosen with the value in view.
 *
 * | body | source | measured | engine | chosen on |
 * | --- | --- | --- | --- | --- |
 * | sphere below its crisis | Achenbach 1972 (from memory) | 0.49 | 0.47 | wideBasePressure, with others |
 * | sphere past it, Re 6e5 to 2e6, Tu 0.45 % | the same | 0.07 to 0.12 | 0.113, 0.100 | narrowingPower |
 * | sphere, Re 5e6 | the same | 0.2 | 0.10, a miss | |
 * | rough sphere, ks/d 0.0125, Re 3e5 | Achenbach 1974 (from memory) | 0.4 | 0.38 | |
 * | sphere's critical Re, Tu 0, 0.85, 2.5 % | Dryden 1937 | 3.85e5, 2.7e5, 1.3e5 | 4.4e5, 2.3e5, 1.1e5 | |
 * | cylinders along their axis, t/d 0.19 to 0.75 | Kritzinger 2004 | 1.16 to 1.02 | +1 to +3 % | afterbodyRelief |
 * | cylinders across, L/D 1, 2, 3, sharp ends | Wieselsberger 1921 | 0.63, 0.68, 0.73 | +20, +16, +13 % | acrossBasePressure, with the suction of the ends lost, not open as the engine finds them |
 * | disc with rounded rim edge-on, t/d 0.14, below its crisis | public flight constants | 0.45 to 0.52 | 0.56 | |
 * | wheel, width/d 0.33, past its crisis | wheels of full scale | 0.25 +- 30 % | 0.12, a miss by half | |
 */
describe("published drag of whole bodies", () => {
  test("sphere below its crisis 0.49 within 8 %, rough past its crisis 0.4 within 10 % (Achenbach 1972, 1974, from memory)", () => {
    expect(Math.abs(error(sphere, 0, stream(1e5, 0.0045), 0.49))).toBeLessThan(0.08);
    expect(Math.abs(error(sphere, 0, stream(3e5, 0.0045, 0.0125), 0.4))).toBeLessThan(0.1);
  });

  test("sphere past its crisis within 0.07 to 0.12 from Re 6e5 to 2e6 (Achenbach 1972, from memory)", () => {
    for (const reynolds of [6e5, 2e6]) {
      const { expected } = outcome(sphere, 0, stream(reynolds, 0.0045)).dragCoefficient;
      expect(expected).toBeGreaterThan(0.07);
      expect(expected).toBeLessThan(0.12);
    }
  });

  test("critical Re of the sphere over turbulence within 21 % (Dryden and others 1937, NACA Report 581): the rule was not fitted to spheres", () => {
    for (const [turbulence, measured] of [
      [0.0001, 3.85e5],
      [0.0085, 2.7e5],
      [0.025, 1.3e5],
    ]) {
      const { crisisReynolds } = outcome(sphere, 0, stream(1e5, turbulence));
      expect(Math.abs(crisisReynolds / measured - 1)).toBeLessThan(0.21);
    }
  });

  test("sharp cylinders along their axis within 4 % (Kritzinger 2004), on which the afterbody's relief was chosen", () => {
    for (const [ratio, measured] of [
      [0.192, 1.16],
      [0.375, 1.13],
      [0.747, 1.02],
    ]) {
      const flows = flowsOf(roundedDisc(1, ratio, 0.01 * ratio));
      expect(Math.abs(error(flows, Math.PI / 2, stream(1e5, 0.005), measured))).toBeLessThan(0.04);
    }
  });

  test("cylinders across of 1, 2 and 3 diameters (Wieselsberger 1921): 10 to 22 % high, a known miss of the ends' bubbles", () => {
    for (const [length, measured] of [
      [1, 0.63],
      [2, 0.68],
      [3, 0.73],
    ]) {
      const own = error(flowsOf(roundedDisc(1, length, 0.03)), 0, stream(8.8e4, 0.01), measured);
      expect(own).toBeGreaterThan(0);
      expect(own).toBeLessThan(0.23);
    }
  });

  test("a family left out: the base pressure that the other one wants gives its drag within 12 %", () => {
    // Base pressure with which the flow has the measured drag: sphere 0.48 without friction, hemisphere round forward 0.42.
    const hemisphere = prepareWholeBody([
      arcCurve(0, 0, 0.5, -Math.PI / 2, 0),
      arcCurve(0.48, 0, 0.02, 0, Math.PI / 2),
      straightCurve(0.48, 0.02, 0, 0.02),
    ]);
    if (!hemisphere.ok) throw new Error(hemisphere.problem.message);
    const { flow, shape } = hemisphere.value;
    const rear = (118 * Math.PI) / 180;
    const round = wakeRow(streamGrid(flow, shape, Math.PI / 2), roundLine(rear)).nodes;
    const ball = sphere.edgeOn.laminar;
    const drag = (nodes: typeof ball, Cpb: number) => {
      const { forebody, base } = forcesAt(nodes, Math.sqrt(1 - Cpb));
      return forebody + base;
    };
    const wanted = (nodes: typeof ball, measured: number) => {
      let [low, high] = [-0.6, -0.05];
      for (let i = 0; i < 40; i++) {
        const middle = (low + high) / 2;
        if (drag(nodes, middle) > measured) low = middle;
        else high = middle;
      }
      return low;
    };
    expect(Math.abs(drag(round, wanted(ball, 0.48)) / 0.42 - 1)).toBeLessThan(0.12);
    expect(Math.abs(drag(ball, wanted(round, 0.42)) / 0.48 - 1)).toBeLessThan(0.12);
  });
});

describe("facts of the trade: common practice, no source", () => {
  const puck = flowsOf(roundedDisc(0.08, 0.03, 0.006));
  const inAir = 1.6e5; // 30 m/s on 80 mm, nu 1.5e-5 m^2/s

  test("0.34 smooth at 30 m/s in air lies between the states, inside the band of a stream of 1 %, where some rims have turned", () => {
    const { dragCoefficient, states } = outcome(puck, 0, stream(inAir, 0.01));
    expect(dragCoefficient.low).toBeLessThan(0.34);
    expect(dragCoefficient.high).toBeGreaterThan(0.34);
    for (const { rimState, dragCoefficient: own } of states) {
      if (rimState === "laminar") expect(own.low).toBeGreaterThan(0.34);
      else expect(own.high).toBeLessThan(0.34);
    }
  });

  test("0.11 with a face pattern that makes turbulence lies in the state rim turned, edge kept", () => {
    const { states } = outcome(puck, 0, {
      ...stream(inAir, 0.01),
      facePattern: { outerRadiusRatio: 0.42, heightRatio: 0.0125 },
      faceRoughnessRatio: 0.0125,
    });
    const turned = states.find(({ rimState, edgeState }) => rimState === "turned" && edgeState === "kept");
    expect(turned?.dragCoefficient.low).toBeLessThan(0.11);
    expect(turned?.dragCoefficient.high).toBeGreaterThan(0.11);
  });
});

describe("convergence", () => {
  test("the drag of a laminar and of a turned rim within 3 % over nodes and harmonics", () => {
    const curves = roundedDisc(0.08, 0.03, 0.006);
    const fine = flowsOf(curves, null, { harmonics: 16, order: 10, edgePanels: 2 });
    const standard = flowsOf(curves);
    for (const reynolds of [1e5, 6e5]) {
      const drag = (flows: WholeFlows) => outcome(flows, 0, stream(reynolds, 0.01)).dragCoefficient.expected;
      expect(Math.abs(drag(standard) / drag(fine) - 1)).toBeLessThan(0.03);
    }
  });
});
