import type { FlowCondition } from "../../shared/engine/condition";
import { gradeNodes } from "../../shared/engine/geometry/gradedNodes";
import { buildContour } from "../../shared/engine/geometry/sectionFamilies";
import { traceDragCurve } from "../../shared/engine/solve/dragCurve";
import type { PreparedSection } from "../../shared/engine/solve/preparedSection";
import { prepareSection } from "../../shared/engine/solve/prepareSection";
import { solveCondition } from "../../shared/engine/solve/solveCondition";
import { conditionWhole, wholeFlows } from "../../shared/engine/whole/wholeDrag";
import { wholeStates } from "../../shared/engine/whole/wholeStates";
import { roundedDisc } from "../whole/bodies";
import { requireValue } from "./requireValue";
import { type Timing, timeOf } from "./timing";

export interface EngineTiming extends Timing {
  readonly what: string;
}

/**
 * A new shape of 200 panels to a full solution at one condition: contour, nodes, assembly, factorization, wake table and
 * all fixed points. The edge radius differs in every run, so that nothing can be reused.
 */
export function newShape200(): EngineTiming {
  const condition: FlowCondition = { reynolds: 1e5, sandGrainRoughnessRatio: 3e-4, turbulenceIntensity: 0.01 };
  const timing = timeOf(
    (run) => {
      const edgeRadius = 0.004 + 0.008 * ((run * 0.381966) % 1);
      const contour = requireValue(
        buildContour({ family: "roundedRectangle", length: 0.08, height: 0.03, edgeRadius }),
      );
      const section = requireValue(prepareSection(requireValue(gradeNodes(contour, 200)), 0));
      if (solveCondition(section, condition).rising === null) throw new Error(`radius ${edgeRadius} did not converge`);
    },
    31,
    12,
  );
  return {
    ...timing,
    what: "80 x 30 mm rounded rectangle, a new edge radius every time: contour, 200 nodes, assembly, factorization, wake table, all fixed points at one condition",
  };
}

/** A new puck as a whole body edge-on: kernels, factors, wakes of all rim separations and its states in one stream. */
export function newBody(): EngineTiming {
  const stream = {
    reynolds: 1.5e5,
    turbulenceIntensity: 0.01,
    rimRoughnessRatio: 0,
    faceRoughnessRatio: 0,
    facePattern: null,
  };
  const timing = timeOf(
    (run) => {
      const edgeRadius = 0.004 + 0.008 * ((run * 0.381966) % 1);
      const flows = requireValue(wholeFlows(roundedDisc(0.08, 0.03, edgeRadius)));
      if (wholeStates(conditionWhole(flows, 0, [stream])).states.length === 0) {
        throw new Error(`radius ${edgeRadius} has no state`);
      }
    },
    11,
    3,
  );
  return {
    ...timing,
    what: "80 x 30 mm puck edge-on, a new edge radius every time: flow, wakes, states in one stream",
  };
}

/** What a drag curve of 60 Reynolds numbers at 4 roughnesses takes. */
export interface DragCurveTiming extends EngineTiming {
  /** The same without preparing the circle. */
  readonly sweepsOnlyMilliseconds: number;
}

/** 60 Reynolds numbers at 4 roughnesses on a circle of 160 panels, its factorization and wake table included. */
export function dragCurve60x4(): DragCurveTiming {
  const contour = requireValue(buildContour({ family: "circle", diameter: 0.1 }));
  const nodes = requireValue(gradeNodes(contour, 160));
  const sweeps = [1e-5, 1e-3, 4.5e-3, 9e-3].map((sandGrainRoughnessRatio) =>
    Array.from(
      { length: 60 },
      (_, i): FlowCondition => ({
        reynolds: 1e4 * 1000 ** (i / 59),
        sandGrainRoughnessRatio,
        turbulenceIntensity: 0.001,
      }),
    ),
  );
  const run = (section: PreparedSection) => {
    const outcomes = sweeps.flatMap((conditions) => traceDragCurve(section, conditions));
    if (outcomes.length !== 240) throw new Error(`${outcomes.length} outcomes; 240 were asked for`);
  };
  const whole = timeOf(() => run(requireValue(prepareSection(nodes, 0))), 11, 4);
  const prepared = requireValue(prepareSection(nodes, 0));
  const sweepsOnly = timeOf(() => run(prepared), 11, 2);
  return {
    ...whole,
    sweepsOnlyMilliseconds: sweepsOnly.medianMilliseconds,
    what: "60 Re from 1e4 to 1e7 x 4 ks/D, both branches, on a circle of 160 panels: assembly, factorization, wake table, 240 conditions; nodes are there",
  };
}
