import type { CommonDraws } from "../../statistics/commonDraws";
import { type DrawnBand, drawnBand } from "../../statistics/drawnBand";
import { edgeReach, findMaterial, type PuckResult, prepareHeldPuck, puckFigures } from "../puck/public";
import { wornVolume } from "./archard";
import { faceCover, rimCover } from "./contactSite";
import type { DurabilityJob, WearSetup } from "./durabilityJob";
import type { WearResult, WornResult } from "./durabilityResult";
import { faceDepthAfter, hoursToFaceDepth, patternDepth, type WearingFace } from "./faceWear";
import { type WornOff, wornShape } from "./wornShape";

/** The wear of one puck in every draw, shape [draws] each. */
export interface WearDraws {
  readonly pressure: Float64Array;
  readonly facePerHour: Float64Array;
  readonly rimPerHour: Float64Array;
  /** null without a core. */
  readonly hoursToLeastCover: Float64Array | null;
  readonly wornOff: readonly WornOff[];
}

/**
 * A puck that lies on a face slides on its lands, each face half of the time: a pattern takes area away and raises the
 * pressure and the depth worn off, not the volume. On the rim it wears evenly all round.
 */
export function wearDraws(result: PuckResult, wear: WearSetup, draws: number, common: CommonDraws): WearDraws {
  const { puck, figures } = result;
  const { face, rim, edge } = wear.shares;
  const landArea = figures.floorContactAreaSquareMetres;
  const fullArea = Math.PI * (puck.diameterMetres / 2 - edgeReach(puck).radial) ** 2;
  const rimArea = Math.PI * puck.diameterMetres * Math.max(puck.thicknessMetres - 2 * edgeReach(puck).axial, leastRim);
  const hasCore = puck.core.kind !== "none";
  const empty = () => new Float64Array(draws);
  const found = { pressure: empty(), facePerHour: empty(), rimPerHour: empty() };
  const hoursToLeastCover = empty();
  const wornOff: WornOff[] = [];
  for (let k = 0; k < draws; k++) {
    const load = Math.max(0, figures.weightInFluidNewtons) + common.value("press", wear.press, k);
    const distance = common.value("sliding", wear.slidingPerHour, k);
    const perHour = wornVolume(common.value("wear coefficient", wear.wearCoefficient, k), load, distance);
    const wearing: WearingFace = {
      volumePerHour: (perHour * face) / 2,
      landArea,
      fullArea,
      patternDepth: patternDepth(puck),
    };
    const rimPerHour = (perHour * rim) / rimArea;
    found.pressure[k] = load / landArea;
    found.facePerHour[k] = wearing.volumePerHour / landArea;
    found.rimPerHour[k] = rimPerHour;
    hoursToLeastCover[k] = Math.min(
      hoursToFaceDepth(wearing, faceCover(puck) - wear.leastCover),
      Math.max(0, rimCover(puck) - wear.leastCover) / rimPerHour,
      longestHours,
    );
    wornOff.push({
      face: faceDepthAfter(wearing, wear.playedHours),
      rim: rimPerHour * wear.playedHours,
      edgeVolume: perHour * edge * wear.playedHours,
    });
  }
  return { ...found, hoursToLeastCover: hasCore ? hoursToLeastCover : null, wornOff };
}

/** Width of the rim of a full round that touches, m. */
const leastRim = 1e-3;

/** More hours than any puck is played, and a bound where nothing wears. */
const longestHours = 1e6;

export function wearResult(result: PuckResult, wear: WearSetup, found: WearDraws, job: DurabilityJob): WearResult {
  const worn = wornResult(result, wear, found, job);
  return {
    contactAreaSquareMetres: result.figures.floorContactAreaSquareMetres,
    contactPressurePascals: drawnBand(found.pressure),
    faceMetresPerHour: drawnBand(found.facePerHour),
    rimMetresPerHour: drawnBand(found.rimPerHour),
    hoursToLeastCover: found.hoursToLeastCover === null ? null : drawnBand(found.hoursToLeastCover),
    worn: typeof worn === "string" ? null : worn,
    notes: typeof worn === "string" ? [`No worn shape is given: ${worn}.`] : [],
  };
}

function wornResult(
  result: PuckResult,
  { playedHours }: WearSetup,
  { wornOff }: WearDraws,
  job: DurabilityJob,
): WornResult | string {
  const { puck, figures } = result;
  const setting = { fluidDensity: job.fluid.density, userMaterials: job.userMaterials };
  const coat = findMaterial(puck.coatMaterial, job.userMaterials, "coatMaterial");
  if (!coat.ok) return coat.problem.message;
  const columns = ["diameter", "thickness", "edgeRadius", "mass"] as const;
  const drawn = Object.fromEntries(columns.map((key) => [key, new Float64Array(wornOff.length)])) as Record<
    (typeof columns)[number],
    Float64Array
  >;
  for (const [k, off] of wornOff.entries()) {
    const shape = wornShape(puck, off);
    if (!shape.ok) return shape.problem.message;
    const own = puckFigures(shape.value, setting);
    if (!own.ok) return own.problem.message;
    const { edge } = shape.value;
    drawn.diameter[k] = shape.value.diameterMetres;
    drawn.thickness[k] = shape.value.thicknessMetres;
    drawn.edgeRadius[k] = edge.kind === "radius" ? edge.edgeRadiusMetres : 0;
    drawn.mass[k] =
      figures.massKilograms - coat.value.density * (figures.volumeCubicMetres - own.value.volumeCubicMetres);
  }
  const band = (key: (typeof columns)[number]): DrawnBand => drawnBand(drawn[key]);
  return {
    hours: playedHours,
    diameterMetres: band("diameter"),
    thicknessMetres: band("thickness"),
    edgeRadiusMetres: band("edgeRadius"),
    massKilograms: band("mass"),
    dragAreaChangePercent: dragChange(result, meanWear(wornOff), job),
  };
}

function meanWear(wornOff: readonly WornOff[]): WornOff {
  const mean = (part: keyof WornOff) => wornOff.reduce((sum, off) => sum + off[part], 0) / wornOff.length;
  return { face: mean("face"), rim: mean("rim"), edgeVolume: mean("edgeVolume") };
}

/** Drag area edge-on in open water of the worn shape over the new one, less 1, per cent, at the middle of the speeds. */
function dragChange(result: PuckResult, off: WornOff, { fluid }: DurabilityJob): number | null {
  const { puck, drag } = result;
  const rows = drag.filter(({ orientation }) => orientation === "upright");
  const row = rows[Math.floor(rows.length / 2)];
  const worn = wornShape(puck, off);
  if (row === undefined || !worn.ok) return null;
  const area = (spec: typeof puck): number | null => {
    const figures = puckFigures({ ...spec, core: { kind: "none" } }, { fluidDensity: fluid.density });
    if (!figures.ok) return null;
    const held = prepareHeldPuck({ attitude: "edgeOn", spec, figures: figures.value });
    if (!held.ok) return null;
    const stream = {
      turbulenceIntensity: row.turbulencePercent / 100,
      sandGrainRoughness: result.sandGrainRoughnessMetres,
      withBands: false,
    };
    const solved = held.value.solve(stream, [
      (row.speedMetresPerSecond * spec.diameterMetres) / fluid.kinematicViscosity,
    ]);
    return solved.ok ? solved.value[0].drag.dragArea.expected : null;
  };
  const [before, after] = [area(puck), area(worn.value)];
  return before === null || after === null ? null : 100 * (after / before - 1);
}
