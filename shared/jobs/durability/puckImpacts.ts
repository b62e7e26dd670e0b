import type { CommonDraws } from "../../statistics/commonDraws";
import { drawnBand } from "../../statistics/drawnBand";
import { type PuckResult, puckAddedMass, standardGravity } from "../puck/public";
import { type ContactBodies, contactLaw, type SolvedCurves, type Stiffness } from "./contactLaw";
import { contactSite } from "./contactSite";
import type { DurabilityJob, ImpactSetup } from "./durabilityJob";
import type { ImpactResult } from "./durabilityResult";
import { type ElasticMaterial, findElastic } from "./elasticMaterials";
import { fallSpeed, impact, impactMass, sinkSpeed } from "./impact";
import { dragAreaAt, dragAreaBands } from "./puckDrag";

/** One impact of one puck in every draw, shape [draws] each. */
export interface ImpactDraws {
  readonly speed: Float64Array;
  readonly mass: Float64Array;
  readonly energy: Float64Array;
  /** N. */
  readonly peakForce: Float64Array;
  /** Pa. */
  readonly peakPressure: Float64Array;
  /** Greatest approach over the coat's thickness; null without a core. */
  readonly coatStrain: Float64Array | null;
  /** s. */
  readonly contactTime: Float64Array;
}

/** Share of the coat that an approach may take before linear elasticity has little to say: common practice, no source. */
const largestStrain = 0.3;

/** @returns why there is none where the puck sinks in water and has no drag, or floats */
export function impactDraws(
  result: PuckResult,
  setup: ImpactSetup,
  job: DurabilityJob,
  common: CommonDraws,
  curves: SolvedCurves,
): ImpactDraws | string {
  const { puck, figures } = result;
  const { draws } = job;
  const empty = () => new Float64Array(draws);
  const found = { speed: empty(), mass: empty(), energy: empty(), peakForce: empty(), peakPressure: empty() };
  const coatStrain = empty();
  const contactTime = empty();
  const added = addedMass(result, setup, job);
  const bodyMass = figures.massKilograms + added;
  const sinking = setup.start.kind === "drop" && setup.medium === "water";
  if (sinking && !(figures.weightInFluidNewtons > 0)) return "it floats, so it does not sink on anything";
  const coat = elasticOf(puck.coatMaterial, job);
  const core = puck.core.kind === "none" ? null : elasticOf(puck.core.material, job);
  const stiffness = (material: ElasticMaterial, draw: number): Stiffness => ({
    youngsModulus: common.value(`stiffness of ${material.name}`, material.youngsModulus, draw),
    poissonRatio: material.poissonRatio,
  });
  const isCoated = core !== null;
  for (let k = 0; k < draws; k++) {
    const site = contactSite(result, setup, common.value("sharp edges", job.sharpEdgeRadius, k));
    const bodies: ContactBodies = {
      coat: stiffness(coat, k),
      core: core === null ? null : stiffness(core, k),
      surface: stiffness(setup.onto, k),
    };
    const start = common.value(`start of ${setup.name}`, setup.start.range, k);
    const speed = speedOf(start, result, setup, job, bodyMass, common.normal("drag", k));
    if (speed === null) return "its drag is not known, so neither is its speed";
    const mass = impactMass(bodyMass, site.lever, figures.momentOfInertiaDiameterKilogramSquareMetres);
    const blow = impact(contactLaw(site, bodies, curves), mass, speed);
    found.speed[k] = speed;
    found.mass[k] = mass;
    found.energy[k] = blow.energy;
    found.peakForce[k] = blow.peakForce;
    found.peakPressure[k] = blow.peakPressure;
    coatStrain[k] = site.coatThickness === null ? 0 : blow.approach / site.coatThickness;
    contactTime[k] = blow.contactTime;
  }
  return { ...found, coatStrain: isCoated ? coatStrain : null, contactTime };
}

function elasticOf(name: string, { elastic }: DurabilityJob): ElasticMaterial {
  const found = findElastic(name, elastic, "durability.materials");
  if (!found.ok) throw new RangeError(found.problem.message);
  return found.value;
}

/** Water that moves along, kg; 0 in air. */
function addedMass({ puck, figures }: PuckResult, { medium, contact, tilt }: ImpactSetup, { fluid }: DurabilityJob) {
  if (medium === "air") return 0;
  const added = puckAddedMass(puck.diameterMetres, figures.volumeCubicMetres, fluid.density);
  if (!added.ok) return 0;
  return isFaceFirst(contact, tilt) ? added.value.faceOn : added.value.edgeOn;
}

/** Whether a puck comes down face first rather than edge first. */
function isFaceFirst(contact: ImpactSetup["contact"], tilt: number): boolean {
  return contact === "face" || (contact === "edge" && tilt < Math.PI / 4);
}

function speedOf(
  start: number,
  result: PuckResult,
  { start: { kind }, medium, contact, tilt }: ImpactSetup,
  { fluid }: DurabilityJob,
  mass: number,
  dragDraw: number,
): number | null {
  if (kind === "speed") return start;
  const free = fallSpeed(start, standardGravity);
  if (medium === "air") return free;
  const attitude = isFaceFirst(contact, tilt) ? "faceOn" : "upright";
  const weight = result.figures.weightInFluidNewtons;
  // The drag area goes by the speed that it leads to: from that of a free fall two steps settle it.
  let speed = free;
  for (let step = 0; step < 3; step++) {
    const bands = dragAreaBands(result, attitude, speed);
    if (bands.length === 0) return null;
    const area = bands.reduce((sum, band) => sum + dragAreaAt(band, dragDraw), 0) / bands.length;
    speed = sinkSpeed(start, weight, mass, area, fluid.density);
  }
  return speed;
}

export function impactResult({ name, contact, onto, medium }: ImpactSetup, found: ImpactDraws | string): ImpactResult {
  const base = { name, contact, onto: onto.name, medium };
  if (typeof found === "string") return { ...base, ...nothing, notes: [], problem: found };
  const strain = found.coatStrain === null ? null : drawnBand(found.coatStrain.map((share) => 100 * share));
  return {
    ...base,
    speedMetresPerSecond: drawnBand(found.speed),
    movingMassKilograms: drawnBand(found.mass),
    energyJoules: drawnBand(found.energy),
    peakForceNewtons: drawnBand(found.peakForce),
    peakPressurePascals: drawnBand(found.peakPressure),
    coatStrainPercent: strain,
    contactTimeSeconds: drawnBand(found.contactTime),
    notes:
      strain !== null && strain.high > 100 * largestStrain
        ? [
            `The coat is squeezed by more than ${100 * largestStrain} % in some draws: real coats stiffen there, so force and pressure are lower limits.`,
          ]
        : [],
    problem: null,
  };
}

const nothing = {
  speedMetresPerSecond: null,
  movingMassKilograms: null,
  energyJoules: null,
  peakForceNewtons: null,
  peakPressurePascals: null,
  coatStrainPercent: null,
  contactTimeSeconds: null,
};
