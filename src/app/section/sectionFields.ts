import { smallestRadiusRatio } from "../../../shared/engine/geometry/dimensionChecks";
import { outlineSides } from "../../../shared/engine/geometry/outlineSides";
import type { SectionFamily, SectionSpec } from "../../../shared/engine/geometry/sectionSpec";
import type { QuantityKind } from "../units/units";

/** One dimension of a section family as a field. */
export interface SectionField {
  readonly key: string;
  readonly label: string;
  readonly kind: QuantityKind;
  readonly aboveZero?: boolean;
}

/** A dimension that is chosen from words. */
export interface SectionChoice {
  readonly key: string;
  readonly label: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
}

export interface FamilyText {
  readonly label: string;
  readonly fields: readonly SectionField[];
  readonly choices: readonly SectionChoice[];
}

const length = (key: string, label: string): SectionField => ({ key, label, kind: "length", aboveZero: true });
const overall = [length("length", "Length, along the stream"), length("height", "Height, across it")];

/** The families in the order of the list, with the labels of their dimensions. */
export const familyTexts: Readonly<Record<SectionFamily, FamilyText>> = {
  roundedRectangle: {
    label: "Rounded rectangle",
    fields: [...overall, length("edgeRadius", "Edge radius")],
    choices: [],
  },
  circle: { label: "Circle", fields: [length("diameter", "Diameter")], choices: [] },
  ellipse: { label: "Ellipse", fields: overall, choices: [] },
  superellipse: {
    label: "Superellipse",
    fields: [...overall, { key: "exponent", label: "Exponent", kind: "number", aboveZero: true }],
    choices: [],
  },
  stadium: { label: "Stadium", fields: overall, choices: [] },
  bevelledRectangle: {
    label: "Bevelled rectangle",
    fields: [
      ...overall,
      length("bevelLength", "Bevel, along the stream"),
      length("bevelHeight", "Bevel, across it"),
      length("cornerRadius", "Corner radius"),
    ],
    choices: [],
  },
  dShape: {
    label: "D-shape",
    fields: [...overall, length("noseLength", "Nose length"), length("cornerRadius", "Corner radius")],
    choices: [
      {
        key: "flatSide",
        label: "Flat side",
        options: [
          { value: "rear", label: "at the rear" },
          { value: "front", label: "at the front" },
        ],
      },
    ],
  },
  roundedPolygon: {
    label: "Regular polygon",
    fields: [
      { key: "sides", label: "Number of sides", kind: "number", aboveZero: true },
      length("inscribedDiameter", "Inscribed diameter"),
      length("cornerRadius", "Corner radius"),
    ],
    choices: [
      {
        key: "facing",
        label: "Facing the stream",
        options: [
          { value: "flat", label: "a flat side" },
          { value: "corner", label: "a corner" },
        ],
      },
    ],
  },
  roundedTriangle: {
    label: "Triangle",
    fields: [...overall, length("cornerRadius", "Corner radius")],
    choices: [
      {
        key: "apex",
        label: "Apex",
        options: [
          { value: "forward", label: "against the stream" },
          { value: "rearward", label: "down the stream" },
        ],
      },
    ],
  },
  outline: { label: "Imported outline", fields: [length("cornerRadius", "Corner radius")], choices: [] },
  freeContour: { label: "Imported contour", fields: [], choices: [] },
};

/** A numeric dimension of a section by its key. */
export function dimension(section: SectionSpec, key: string): number {
  if (section.family === "outline" && key === "cornerRadius") return section.cornerRadius ?? leastCornerRadius(section);
  const value: unknown = Object.getOwnPropertyDescriptor(section, key)?.value;
  return typeof value === "number" ? value : Number.NaN;
}

/** The section with one dimension replaced. The engine checks whether the result can be built. */
export function withDimension(section: SectionSpec, key: string, value: number | string): SectionSpec {
  return { ...section, [key]: value } as SectionSpec;
}

/** Families that only a file gives. */
type ImportedFamily = "freeContour" | "outline";

export function isImported(family: SectionFamily): family is ImportedFamily {
  return family === "freeContour" || family === "outline";
}

/** The radius that the corners of an outline get when none is given, m. */
function leastCornerRadius(section: SectionSpec): number {
  return smallestRadiusRatio * Math.min(...sizeOf(section));
}

/** A section of another family with the size of this one. */
export function ofFamily(family: Exclude<SectionFamily, ImportedFamily>, like: SectionSpec): SectionSpec {
  const [long, high] = sizeOf(like);
  const small = Math.min(long, high);
  switch (family) {
    case "circle":
      return { family, diameter: long };
    case "ellipse":
      return { family, length: long, height: high };
    case "roundedRectangle":
      return { family, length: long, height: high, edgeRadius: 0.2 * small };
    case "superellipse":
      return { family, length: long, height: high, exponent: 4 };
    case "stadium":
      return { family, length: long, height: high };
    case "bevelledRectangle":
      return {
        family,
        length: long,
        height: high,
        bevelLength: 0.2 * small,
        bevelHeight: 0.2 * small,
        cornerRadius: 0.08 * small,
      };
    case "dShape":
      return {
        family,
        length: long,
        height: high,
        noseLength: Math.min(0.5 * high, 0.6 * long),
        cornerRadius: 0.1 * small,
        flatSide: "rear",
      };
    case "roundedPolygon":
      return { family, sides: 6, inscribedDiameter: high, cornerRadius: 0.1 * high, facing: "flat" };
    case "roundedTriangle":
      return { family, length: long, height: high, cornerRadius: 0.12 * small, apex: "forward" };
  }
}

/** Overall length and height, m. */
export function sizeOf(section: SectionSpec): readonly [number, number] {
  switch (section.family) {
    case "circle":
      return [section.diameter, section.diameter];
    case "roundedPolygon":
      return [section.inscribedDiameter, section.inscribedDiameter];
    case "freeContour":
      return extentOf(section.points);
    case "outline": {
      const outline = outlineSides(section.sides);
      return outline.ok
        ? [outline.value.length, outline.value.height]
        : extentOf(section.sides.map(({ from }) => from));
    }
    default:
      return [section.length, section.height];
  }
}

function extentOf(points: readonly (readonly [number, number])[]): readonly [number, number] {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
}
