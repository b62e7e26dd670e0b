import type { Regime } from "../solution";
import type { FixedPoint } from "./fixedPoint";

/**
 * Regime of a state in the terms of the drag crisis (Achenbach 1971, J. Fluid Mech. 46, 321; Roshko 1961, J. Fluid Mech. 10, 345):
 * subcritical, both layers separate laminar; critical, the two sides differ or a side sits on the switch between laminar
 * separation and a bubble; supercritical, a bubble and turbulent separation on both sides; transcritical, transition in
 * the attached layer on both sides.
 */
export function regimeOf(point: FixedPoint): Regime {
  const { lower, upper, onSwitch } = point;
  if (lower.state !== upper.state) return "critical";
  if (onSwitch && lower.state !== "turbulent separation") return "critical";
  if (lower.state === "laminar separation") return "subcritical";
  return lower.state === "separation bubble" ? "supercritical" : "transcritical";
}
