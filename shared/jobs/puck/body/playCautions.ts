import { type Material, standardMaterials } from "./materials";
import type { PuckSpec } from "./puckSpec";

/** Holds for every puck, whatever it is made of. */
export const thrownPuckCautions: readonly string[] = [
  "A puck of more than a kilogram injures when it hits a head, a hand or a foot, in the water and above all out of it: never throw it in air, keep others clear when it is flicked, and use the protection that your body's rules ask for.",
  "A sharp or worn edge, a loose core or a cracked coat is a reason to take the puck out of play.",
  "Drag, motion and rule checks here are screening estimates: they prove neither safety nor compliance. Local rules and licensed practice come first.",
];

/** Everything to keep in mind with one puck: thrown weight, then what its materials ask for. */
export function puckCautions(spec: PuckSpec, userMaterials: readonly Material[]): string[] {
  const names = spec.core.kind === "none" ? [spec.coatMaterial] : [spec.core.material, spec.coatMaterial];
  const materials = [...userMaterials, ...standardMaterials];
  const own = names.flatMap((name) => materials.find((material) => material.name === name)?.cautions ?? []);
  return [...thrownPuckCautions, ...new Set(own)];
}
