import { reynoldsBounds, roughnessRatioBounds } from "../../document/limits";
import type { Problem } from "../../result";
import type { FullScaleFlow } from "./similarity";
import { blockageOf, type TunnelFacility } from "./tunnelFacility";
import { referenceOf, type TunnelModel } from "./tunnelShape";

/** Above it no correction means anything. A choice, no source. */
const mostBlockage = 0.4;

/** Reynolds numbers, roughness and blockage that are beyond what the engine can tell; none when all is well. */
export function rangeProblems(
  model: TunnelModel,
  { fluid, speeds }: FullScaleFlow,
  facility: TunnelFacility,
): Problem[] {
  const problems: Problem[] = [];
  const { length } = referenceOf(model.shape);
  const reynolds = speeds.map((speed) => (speed * length) / fluid.kinematicViscosity);
  const { from = 0, to } = reynoldsBounds;
  const beyond = reynolds.findIndex((each) => !(each >= from && each <= to));
  if (beyond >= 0) {
    const message = `tunnel.fullScale.speedsMetresPerSecond: ${speeds[beyond]} m/s is Reynolds number ${reynolds[beyond].toPrecision(3)}; it must be from ${from} to ${to}`;
    problems.push({ code: "reynolds-range", message, field: "tunnel.fullScale.speedsMetresPerSecond" });
  }
  const smallest = model.shape.kind === "puck" ? model.shape.spec.thicknessMetres : model.shape.width;
  if (!(model.sandGrainRoughness / smallest <= roughnessRatioBounds.to)) {
    const message = `tunnel.model.sandGrainRoughnessMetres: ${model.sandGrainRoughness} m is ${(model.sandGrainRoughness / smallest).toPrecision(3)} of the model; it must be at most ${roughnessRatioBounds.to} of it`;
    problems.push({ code: "roughness-range", message, field: "tunnel.model.sandGrainRoughnessMetres" });
  }
  const blockage = blockageOf(model, facility);
  if (!(blockage < mostBlockage)) {
    const message = `tunnel.facility: the model fills ${(100 * blockage).toPrecision(3)} % of the test section; it must be below ${100 * mostBlockage} %`;
    problems.push({ code: "blockage", message, field: "tunnel.facility" });
  }
  return problems;
}
