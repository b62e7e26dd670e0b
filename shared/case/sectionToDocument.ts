import type { SectionDocument } from "../document/sectionDocument";
import type { SectionSpec } from "../engine/geometry/sectionSpec";

/** A section as a case file writes it: the unit in every key that has one. */
export function sectionToDocument(spec: SectionSpec, name: string | null): SectionDocument {
  const named = name === null ? {} : { name };
  switch (spec.family) {
    case "circle":
      return { family: spec.family, ...named, diameterMetres: spec.diameter };
    case "ellipse":
    case "stadium":
      return { family: spec.family, ...named, ...overall(spec) };
    case "roundedRectangle":
      return { family: spec.family, ...named, ...overall(spec), edgeRadiusMetres: spec.edgeRadius };
    case "superellipse":
      return { family: spec.family, ...named, ...overall(spec), exponent: spec.exponent };
    case "bevelledRectangle":
      return {
        family: spec.family,
        ...named,
        ...overall(spec),
        bevelLengthMetres: spec.bevelLength,
        bevelHeightMetres: spec.bevelHeight,
        cornerRadiusMetres: spec.cornerRadius,
      };
    case "dShape":
      return {
        family: spec.family,
        ...named,
        ...overall(spec),
        noseLengthMetres: spec.noseLength,
        cornerRadiusMetres: spec.cornerRadius,
        flatSide: spec.flatSide,
      };
    case "roundedPolygon":
      return {
        family: spec.family,
        ...named,
        sides: spec.sides,
        inscribedDiameterMetres: spec.inscribedDiameter,
        cornerRadiusMetres: spec.cornerRadius,
        facing: spec.facing,
      };
    case "roundedTriangle":
      return {
        family: spec.family,
        ...named,
        ...overall(spec),
        cornerRadiusMetres: spec.cornerRadius,
        apex: spec.apex,
      };
    case "outline":
      return {
        family: spec.family,
        name: name ?? spec.name ?? "imported outline",
        sides: spec.sides.map(({ from, bulge, controls }) => ({
          fromMetres: [from[0], from[1]] as [number, number],
          ...(bulge === undefined ? {} : { bulge }),
          ...(controls === undefined ? {} : { controlsMetres: pair(controls) }),
        })),
        ...(spec.cornerRadius === undefined ? {} : { cornerRadiusMetres: spec.cornerRadius }),
      };
    case "freeContour":
      return {
        family: spec.family,
        name: name ?? spec.name ?? "imported contour",
        pointsMetres: spec.points.map(([x, y]): [number, number] => [x, y]),
      };
  }
}

type Place = readonly [number, number];

function pair([first, second]: readonly [Place, Place]): [[number, number], [number, number]] {
  return [
    [first[0], first[1]],
    [second[0], second[1]],
  ];
}

function overall(spec: { readonly length: number; readonly height: number }) {
  return { lengthMetres: spec.length, heightMetres: spec.height };
}
