import { prepareShape } from "../../engine/section/prepareShape";
import { solveStream } from "../../engine/section/solveStreams";
import { intervalAt } from "../../numerics/tableLookup";
import { problem, type Result, success } from "../../result";
import type { SpeedDirection } from "./predictedDrag";
import type { PredictedPressure } from "./pressureTaps";
import type { TunnelModel } from "./tunnelShape";

/** The engine's pressures at one Reynolds number, linear in arc length between the nodes of the section. */
export function predictPressure(
  { shape, sandGrainRoughness }: Pick<TunnelModel, "shape" | "sandGrainRoughness">,
  reynolds: number,
  turbulenceIntensity: number,
  direction: SpeedDirection,
): Result<PredictedPressure> {
  if (shape.kind !== "section") return problem("taps", "pressures are predicted for sections only");
  const stream = {
    reynolds,
    sandGrainRoughnessRatio: sandGrainRoughness / shape.width,
    turbulenceIntensity,
  };
  const prepared = prepareShape({ section: shape.contour }, stream);
  if (!prepared.ok) return prepared;
  const { nodes } = prepared.value.section;
  const { outcome } = solveStream(prepared.value, stream, "none");
  const index = outcome[direction];
  if (index === null) return problem("taps", outcome.problem?.message ?? "no steady state was found");
  const { pressureCoefficient } = outcome.states[index];
  const { arc, count, perimeter } = nodes;
  return success((at) => {
    const wrapped = at - perimeter * Math.floor(at / perimeter);
    const low = intervalAt(arc, wrapped, count);
    const next = (low + 1) % count;
    const share = (wrapped - arc[low]) / ((next === 0 ? perimeter : arc[next]) - arc[low]);
    return pressureCoefficient[low] + share * (pressureCoefficient[next] - pressureCoefficient[low]);
  });
}
