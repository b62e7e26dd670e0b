import { sectionFlow } from "../../shared/engine/flow/sectionFlow";
import { quadraticAt, surfaceVelocity, wakeFlow } from "../../shared/engine/wake/wakeFlow";
import type { WakeQuantity } from "../published/quantity";
import { notPredicted, type Prediction, predicted } from "./prediction";
import { sectionNodesOf } from "./preparedSections";

/** The wake-source flow of a circle with given separation points and base pressure. */
export function predictWake(quantity: WakeQuantity): Prediction {
  const nodes = sectionNodesOf({ shape: "circle" });
  if (!nodes.ok) return notPredicted(nodes.problem.message);
  const flow = sectionFlow(nodes.value, 0);
  if (!flow.ok) return notPredicted(flow.problem.message);
  const { count } = nodes.value;
  const lower = (count * quantity.separationDegrees) / 360;
  const wake = wakeFlow(flow.value, lower, count - lower);
  if (!wake.ok) return notPredicted(wake.problem.message);
  const k = Math.sqrt(1 - quantity.basePressureCoefficient);
  if (quantity.kind === "wakeSourceDrag") return predicted(quadraticAt(wake.value.pressureDrag, k));
  const wetted = surfaceVelocity(wake.value, k).slice(0, Math.ceil(lower));
  return predicted(Math.min(...wetted.map((speed) => 1 - speed * speed)));
}
