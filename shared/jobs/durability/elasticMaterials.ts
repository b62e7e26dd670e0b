import { problem, type Result, success } from "../../result";
import type { UncertainRange } from "../../statistics/uncertainRange";

/** How a material gives under load; handbook values of what is sold under one name differ, so the stiffness is a range. */
export interface ElasticMaterial {
  readonly name: string;
  /** Pa. */
  readonly youngsModulus: UncertainRange;
  /** 0 to below 0.5. */
  readonly poissonRatio: number;
  readonly source: string;
}

function entry(name: string, from: number, to: number, poissonRatio: number, source: string): ElasticMaterial {
  return { name, youngsModulus: { from, to, spacing: "log" }, poissonRatio, source };
}

/** Cores, coats and what they hit. Your supplier's data sheet, at the speed of an impact, beats every one of them. */
export const elasticMaterials: readonly ElasticMaterial[] = [
  entry("lead", 14e9, 18e9, 0.44, "CRC Handbook of Chemistry and Physics, 16 GPa (from memory)"),
  entry("brass", 96e9, 110e9, 0.34, "Gere, Mechanics of Materials, 5th ed. (2001), table H-2 (from memory)"),
  entry("stainless steel", 190e9, 210e9, 0.29, "Gere, Mechanics of Materials, 5th ed. (2001), table H-2 (from memory)"),
  entry("tungsten compound", 5e9, 25e9, 0.35, "filled thermoplastics, makers' data sheets (from memory)"),
  entry("acetal", 2.4e9, 3.2e9, 0.35, "acetal copolymer by ISO 527, makers' data sheets (from memory)"),
  entry(
    "polyurethane",
    20e6,
    120e6,
    0.48,
    "cast elastomers of 85 Shore A to 55 Shore D, makers' data sheets (from memory)",
  ),
  entry("rubber", 2e6, 10e6, 0.49, "Gent, Engineering with Rubber, 3rd ed. (2012), 50 to 75 Shore A (from memory)"),
  entry("ceramic tile", 40e9, 70e9, 0.2, "fired ceramic tiles, makers' data sheets (from memory)"),
  entry("concrete", 20e9, 35e9, 0.2, "EN 1992-1-1 (2004), table 3.1 (from memory)"),
  entry("wood", 0.4e9, 1.5e9, 0.3, "across the grain, Wood Handbook, USDA FPL-GTR-190 (2010), ch. 5 (from memory)"),
  entry("polyethylene", 0.5e9, 1.2e9, 0.42, "high density, makers' data sheets (from memory)"),
];

/**
 * The elastic data of a name: the user's first, then the standard ones.
 * @param field where the name stood, for the message
 */
export function findElastic(
  name: string,
  userMaterials: readonly ElasticMaterial[],
  field: string,
): Result<ElasticMaterial> {
  const all = [...userMaterials, ...elasticMaterials];
  const found = all.find((material) => material.name === name);
  if (found !== undefined) return success(found);
  const known = [...new Set(all.map((material) => material.name))].join(", ");
  return problem(
    "unknown-material",
    `${field}: no stiffness of "${name}" is known; give it under durability.materials, or use one of ${known}`,
    field,
  );
}
