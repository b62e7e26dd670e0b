import type { PuckSetting } from "./puckFigures";
import type { PuckSpec } from "./puckSpec";

/** A puck with what surrounds it: all that its figures depend on. */
export interface PuckDesign {
  readonly spec: PuckSpec;
  readonly setting: PuckSetting;
}

/** A number of a design that a maker can miss or a designer can vary. */
export type DimensionKey = keyof typeof dimensionTable;

interface DimensionAccess {
  readonly label: string;
  readonly unit: "m" | "";
  readonly get: (spec: PuckSpec) => number | null;
  readonly set: (spec: PuckSpec, value: number) => PuckSpec;
}

function edge(label: string, kind: "radius" | "bevel", key: string): DimensionAccess {
  return {
    label,
    unit: "m",
    get: ({ edge }) => (edge.kind === kind ? numberAt(edge, key) : null),
    set: (spec, value) => ({ ...spec, edge: { ...spec.edge, [key]: value } }),
  };
}

function core(label: string, key: string): DimensionAccess {
  return {
    label,
    unit: "m",
    get: ({ core }) => numberAt(core, key),
    set: (spec, value) => ({ ...spec, core: { ...spec.core, [key]: value } }),
  };
}

function face(label: string, key: string): DimensionAccess {
  return {
    label,
    unit: "m",
    get: ({ face }) => numberAt(face, key),
    set: (spec, value) => ({ ...spec, face: { ...spec.face, [key]: value } }),
  };
}

function rim(label: string, key: string): DimensionAccess {
  return {
    label,
    unit: "m",
    get: ({ rim }) => numberAt(rim, key),
    set: (spec, value) => ({ ...spec, rim: { ...spec.rim, [key]: value } }),
  };
}

function numberAt(part: object, key: string): number | null {
  const value: unknown = Object.getOwnPropertyDescriptor(part, key)?.value;
  return typeof value === "number" ? value : null;
}

export const dimensionTable = {
  diameterMetres: {
    label: "diameter",
    unit: "m",
    get: (spec) => spec.diameterMetres,
    set: (spec, value) => ({ ...spec, diameterMetres: value }),
  },
  thicknessMetres: {
    label: "thickness",
    unit: "m",
    get: (spec) => spec.thicknessMetres,
    set: (spec, value) => ({ ...spec, thicknessMetres: value }),
  },
  edgeRadiusMetres: edge("edge radius", "radius", "edgeRadiusMetres"),
  bevelRadialMetres: edge("bevel along the face", "bevel", "radialMetres"),
  bevelAxialMetres: edge("bevel along the rim", "bevel", "axialMetres"),
  coreDiameterMetres: core("core diameter", "diameterMetres"),
  coreThicknessMetres: core("core thickness", "thicknessMetres"),
  coreOuterDiameterMetres: core("core outer diameter", "outerDiameterMetres"),
  coreInnerDiameterMetres: core("core inner diameter", "innerDiameterMetres"),
  coreHeightMetres: core("height of the core's middle", "heightMetres"),
  coatThicknessMetres: core("coat thickness", "coatThicknessMetres"),
  recessDiameterMetres: face("recess diameter", "diameterMetres"),
  faceDepthMetres: face("depth of the face pattern", "depthMetres"),
  faceGrooveWidthMetres: face("width of the face grooves", "widthMetres"),
  rimDepthMetres: rim("depth of the rim grooves", "depthMetres"),
  rimGrooveWidthMetres: rim("width of the rim grooves", "widthMetres"),
} as const satisfies Record<string, DimensionAccess>;

export const dimensionKeys = Object.keys(dimensionTable) as DimensionKey[];

/** Value of a dimension; null when this puck has none, for instance the edge radius of a bevel. */
export function dimensionOf(spec: PuckSpec, key: DimensionKey): number | null {
  return dimensionTable[key].get(spec);
}

/** The spec with one dimension set; throws when this puck has no such dimension. */
export function withDimension(spec: PuckSpec, key: DimensionKey, value: number): PuckSpec {
  if (dimensionOf(spec, key) === null) throw new RangeError(`"${spec.name}" has no ${dimensionTable[key].label}.`);
  return dimensionTable[key].set(spec, value);
}
