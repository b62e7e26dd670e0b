import { problem, type Result, success } from "../../../result";

/** A material with its density and how far samples of it differ. Plain data; users add their own. */
export interface Material {
  readonly name: string;
  /** kg/m^3. */
  readonly density: number;
  /** Lowest and highest density sold under the name, kg/m^3. */
  readonly lowestDensity: number;
  readonly highestDensity: number;
  readonly source: string;
  /** What to keep in mind when it is handled. */
  readonly cautions: readonly string[];
}

export const leadCautions: readonly string[] = [
  "Lead is poisonous when dust, fume or residue is swallowed or breathed in, above all for children and in pregnancy. Cast, cut or sand it only where local rules and licensed practice for lead work are met.",
  "Keep lead fully sealed: a worn, cracked or holed coat is a reason to withdraw the puck. Wash hands after handling, and dispose of it as local rules for lead waste demand.",
  "Local rules may ban lead in sport or play goods. Ask before making, selling or using it.",
];

/** Densities of the usual puck materials. Your supplier's data sheet or a weighed sample beats every one of them. */
export const standardMaterials: readonly Material[] = [
  {
    name: "lead",
    density: 11340,
    lowestDensity: 10900,
    highestDensity: 11350,
    source: "pure lead 11340 kg/m³, CRC Handbook of Chemistry and Physics (from memory); antimonial lead is lighter",
    cautions: leadCautions,
  },
  {
    name: "brass",
    density: 8500,
    lowestDensity: 8400,
    highestDensity: 8600,
    source: "8400 to 8600 kg/m³, Gere, Mechanics of Materials, 5th ed. (2001), table H-1",
    cautions: ["Many brasses hold 1 to 4 % lead (common practice, no source): ask for a lead-free grade."],
  },
  {
    name: "stainless steel",
    density: 7900,
    lowestDensity: 7700,
    highestDensity: 8000,
    source: "grade 1.4301, 7900 kg/m³, EN 10088-1 (2014), annex E (from memory)",
    cautions: [],
  },
  {
    name: "tungsten compound",
    density: 11000,
    lowestDensity: 6000,
    highestDensity: 11000,
    source: "tungsten-filled thermoplastics, 6.0 to 11.0 times the density of water, Design News, 15 May 2000",
    cautions: ["Tungsten powder is a dust hazard: follow its safety data sheet when it is mixed or machined."],
  },
  {
    name: "acetal",
    density: 1410,
    lowestDensity: 1390,
    highestDensity: 1430,
    source: "acetal copolymer by ISO 1183, makers' data sheets (from memory)",
    cautions: ["Acetal gives off formaldehyde when it is overheated: mould and machine it with ventilation."],
  },
  {
    name: "polyurethane",
    density: 1120,
    lowestDensity: 1050,
    highestDensity: 1250,
    source: "cast polyurethane elastomers, makers' data sheets (from memory)",
    cautions: ["Casting resins hold isocyanates, which sensitise the lungs: follow their safety data sheets."],
  },
  {
    name: "rubber",
    density: 1130,
    lowestDensity: 960,
    highestDensity: 1300,
    source: "middle of 960 to 1300 kg/m³, Gere, Mechanics of Materials, 5th ed. (2001), table H-1",
    cautions: [],
  },
];

/**
 * The material of a name: the user's first, then the standard ones.
 * @param field where the name stood, for the message
 */
export function findMaterial(name: string, userMaterials: readonly Material[], field: string): Result<Material> {
  const all = [...userMaterials, ...standardMaterials];
  const found = all.find((material) => material.name === name);
  if (found === undefined) {
    const known = [...new Set(all.map((material) => material.name))].join(", ");
    return problem("unknown-material", `material "${name}" is not known; known are ${known}`, field);
  }
  if (!(found.density > 0 && found.density < 30000)) {
    return problem(
      "density",
      `density of ${name} is ${found.density} kg/m3; it must be above 0 and below 30000`,
      field,
    );
  }
  return success(found);
}
