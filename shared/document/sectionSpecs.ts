import type { SectionSpec } from "../engine/geometry/sectionSpec";
import { expandSweep, type Sweep } from "./expandSweep";
import type { SectionDocument } from "./sectionDocument";

/** One section of a sweep. */
export interface SweptSpec {
  readonly spec: SectionSpec;
  /** The key that is swept and its value here; null without a sweep. */
  readonly sweep: { readonly key: string; readonly value: number } | null;
  /** Gap to a floor below, m; null without a floor. */
  readonly floorGap: number | null;
}

/** The keys of a section that are lists or ranges. */
export function sweptKeys(document: SectionDocument): string[] {
  return Object.entries(document).flatMap(([key, value]) =>
    typeof value === "object" && key !== "pointsMetres" && key !== "sides" ? [key] : [],
  );
}

/** The specifications that a section of a case file stands for: one, or one for every value of the key that it sweeps. */
export function sectionSpecs(document: SectionDocument): SweptSpec[] {
  const keys = sweptKeys(document);
  if (keys.length > 1) throw new RangeError(`${keys.length} keys are swept (${keys.join(", ")}); at most 1 can be.`);
  const sweep = keys.length === 0 ? undefined : Object.entries(document).find(([key]) => key === keys[0])?.[1];
  if (!isSweep(sweep))
    return [{ spec: specFrom(document, Number.NaN), sweep: null, floorGap: floorGap(document, Number.NaN) }];
  return expandSweep(sweep).map((value) => ({
    spec: specFrom(document, value),
    sweep: { key: keys[0], value },
    floorGap: floorGap(document, value),
  }));
}

function isSweep(value: unknown): value is Sweep {
  return typeof value === "object" && value !== null;
}

function floorGap({ floorGapMetres }: SectionDocument, swept: number): number | null {
  if (floorGapMetres === undefined) return null;
  return typeof floorGapMetres === "number" ? floorGapMetres : swept;
}

/** The specification with `swept` in place of the one list or range. */
function specFrom(document: SectionDocument, swept: number): SectionSpec {
  const pick = (value: number | Sweep): number => (typeof value === "number" ? value : swept);
  const { family } = document;
  switch (family) {
    case "circle":
      return { family, diameter: pick(document.diameterMetres) };
    case "ellipse":
    case "stadium":
      return { family, length: pick(document.lengthMetres), height: pick(document.heightMetres) };
    case "roundedRectangle":
      return {
        family,
        length: pick(document.lengthMetres),
        height: pick(document.heightMetres),
        edgeRadius: pick(document.edgeRadiusMetres),
      };
    case "superellipse":
      return {
        family,
        length: pick(document.lengthMetres),
        height: pick(document.heightMetres),
        exponent: pick(document.exponent),
      };
    case "bevelledRectangle":
      return {
        family,
        length: pick(document.lengthMetres),
        height: pick(document.heightMetres),
        bevelLength: pick(document.bevelLengthMetres),
        bevelHeight: pick(document.bevelHeightMetres),
        cornerRadius: pick(document.cornerRadiusMetres),
      };
    case "dShape":
      return {
        family,
        length: pick(document.lengthMetres),
        height: pick(document.heightMetres),
        noseLength: pick(document.noseLengthMetres),
        cornerRadius: pick(document.cornerRadiusMetres),
        flatSide: document.flatSide,
      };
    case "roundedPolygon":
      return {
        family,
        sides: document.sides,
        inscribedDiameter: pick(document.inscribedDiameterMetres),
        cornerRadius: pick(document.cornerRadiusMetres),
        facing: document.facing,
      };
    case "roundedTriangle":
      return {
        family,
        length: pick(document.lengthMetres),
        height: pick(document.heightMetres),
        cornerRadius: pick(document.cornerRadiusMetres),
        apex: document.apex,
      };
    case "outline":
      return {
        family,
        sides: document.sides.map(({ fromMetres, bulge, controlsMetres }) => ({
          from: fromMetres,
          ...(bulge === undefined ? {} : { bulge }),
          ...(controlsMetres === undefined ? {} : { controls: controlsMetres }),
        })),
        ...(document.cornerRadiusMetres === undefined ? {} : { cornerRadius: pick(document.cornerRadiusMetres) }),
        ...(document.name === undefined ? {} : { name: document.name }),
      };
    case "freeContour":
      return {
        family,
        points: document.pointsMetres,
        ...(document.name === undefined ? {} : { name: document.name }),
      };
  }
}
