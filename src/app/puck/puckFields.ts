import type {
  FaceSide,
  PuckCore,
  PuckEdge,
  PuckFace,
  PuckSpec,
  RimTexture,
} from "../../../shared/jobs/puck/body/puckSpec";
import type { QuantityKind } from "../units/units";

/** The parts of a puck that come in kinds. */
export type PuckPart = "edge" | "face" | "rim" | "core";

/** One number of a puck as a field. */
export interface PuckField {
  readonly part: PuckPart | "whole";
  readonly key: string;
  readonly label: string;
  readonly kind: QuantityKind;
  readonly lowest: number;
  readonly aboveLowest: boolean;
  readonly highest?: number;
}

export interface PartKind {
  readonly label: string;
  readonly fields: readonly PuckField[];
}

const largestLength = 10;

function length(part: PuckField["part"], key: string, label: string, aboveLowest = true): PuckField {
  return { part, key, label, kind: "length", lowest: 0, aboveLowest, highest: largestLength };
}

function count(part: PuckField["part"], label: string): PuckField {
  return { part, key: "number", label, kind: "number", lowest: 1, aboveLowest: false, highest: 720 };
}

export const wholeFields: readonly PuckField[] = [
  length("whole", "diameterMetres", "Diameter"),
  length("whole", "thicknessMetres", "Thickness"),
];

export const edgeKinds: Readonly<Record<PuckEdge["kind"], PartKind>> = {
  radius: { label: "rounded", fields: [length("edge", "edgeRadiusMetres", "Edge radius", false)] },
  bevel: {
    label: "bevelled",
    fields: [
      length("edge", "radialMetres", "Bevel along the face", false),
      length("edge", "axialMetres", "Bevel along the rim", false),
    ],
  },
  profile: { label: "free profile", fields: [] },
};

export const faceKinds: Readonly<Record<PuckFace["kind"], PartKind>> = {
  flat: { label: "flat", fields: [] },
  recess: {
    label: "round recess",
    fields: [length("face", "diameterMetres", "Recess diameter"), length("face", "depthMetres", "Recess depth")],
  },
  radialGrooves: {
    label: "radial grooves",
    fields: [
      count("face", "Number of face grooves"),
      length("face", "widthMetres", "Groove width"),
      length("face", "depthMetres", "Groove depth"),
      length("face", "innerRadiusMetres", "Begin at radius"),
      length("face", "outerRadiusMetres", "End at radius"),
    ],
  },
};

export const rimKinds: Readonly<Record<RimTexture["kind"], PartKind>> = {
  plain: { label: "plain", fields: [] },
  rough: {
    label: "rough all over",
    fields: [length("rim", "sandGrainRoughnessMetres", "Rim roughness, ks", false)],
  },
  axialGrooves: {
    label: "grooves along the axis",
    fields: [
      count("rim", "Number of rim grooves"),
      length("rim", "widthMetres", "Rim groove width"),
      length("rim", "depthMetres", "Rim groove depth"),
    ],
  },
  ringGrooves: {
    label: "rings around the rim",
    fields: [
      count("rim", "Number of rings"),
      length("rim", "widthMetres", "Ring width"),
      length("rim", "depthMetres", "Ring depth"),
    ],
  },
};

export const coreKinds: Readonly<Record<PuckCore["kind"], PartKind>> = {
  none: { label: "none", fields: [] },
  disc: {
    label: "disc",
    fields: [
      length("core", "diameterMetres", "Core diameter"),
      length("core", "thicknessMetres", "Core thickness"),
      length("core", "edgeRadiusMetres", "Core edge radius", false),
      { ...length("core", "heightMetres", "Height of its middle", false), lowest: -largestLength },
    ],
  },
  ring: {
    label: "ring",
    fields: [
      length("core", "outerDiameterMetres", "Core outer diameter"),
      length("core", "innerDiameterMetres", "Core inner diameter"),
      length("core", "thicknessMetres", "Core thickness"),
      { ...length("core", "heightMetres", "Height of its middle", false), lowest: -largestLength },
    ],
  },
  underCoat: {
    label: "all under a coat",
    fields: [length("core", "coatThicknessMetres", "Coat thickness")],
  },
};

export const faceSides: readonly FaceSide[] = ["top", "bottom", "both"];

/** Value of a field; 0 where an optional number is left out. */
export function fieldOf(spec: PuckSpec, field: PuckField): number {
  const owner = field.part === "whole" ? spec : spec[field.part];
  const value: unknown = Object.getOwnPropertyDescriptor(owner, field.key)?.value;
  return typeof value === "number" ? value : 0;
}

/** The spec with one number replaced. The engine checks whether the result can be made. */
export function withField(spec: PuckSpec, field: PuckField, value: number): PuckSpec {
  if (field.part === "whole") return { ...spec, [field.key]: value };
  return { ...spec, [field.part]: { ...spec[field.part], [field.key]: value } };
}

/** The spec with an edge, face, rim or core of another kind, sized to fit. */
export function ofKind(spec: PuckSpec, part: PuckPart, kind: string): PuckSpec {
  const { diameterMetres: d, thicknessMetres: t } = spec;
  const material = spec.core.kind === "none" ? "lead" : spec.core.material;
  const choices: Readonly<Record<PuckPart, readonly (PuckEdge | PuckFace | RimTexture | PuckCore)[]>> = {
    edge: [
      { kind: "radius", edgeRadiusMetres: t / 5 },
      { kind: "bevel", radialMetres: t / 5, axialMetres: t / 5 },
      {
        kind: "profile",
        points: [
          [t / 5, 0],
          [t / 15, t / 15],
          [0, t / 5],
        ],
      },
    ],
    face: [
      { kind: "flat" },
      { kind: "recess", side: "both", diameterMetres: d / 4, depthMetres: t / 30 },
      {
        kind: "radialGrooves",
        side: "both",
        number: 12,
        widthMetres: d / 80,
        depthMetres: t / 60,
        innerRadiusMetres: d / 8,
        outerRadiusMetres: d / 3,
      },
    ],
    rim: [
      { kind: "plain" },
      { kind: "rough", sandGrainRoughnessMetres: d / 800 },
      { kind: "axialGrooves", number: 60, widthMetres: d / 80, depthMetres: d / 160 },
      { kind: "ringGrooves", number: 3, widthMetres: t / 30, depthMetres: d / 160 },
    ],
    core: [
      { kind: "none" },
      { kind: "disc", material, diameterMetres: 0.85 * d, thicknessMetres: 0.7 * t, edgeRadiusMetres: 0.1 * t },
      { kind: "ring", material, outerDiameterMetres: 0.85 * d, innerDiameterMetres: 0.2 * d, thicknessMetres: 0.7 * t },
      { kind: "underCoat", material, coatThicknessMetres: 0.1 * t },
    ],
  };
  const chosen = choices[part].find((choice) => choice.kind === kind);
  if (chosen === undefined) throw new RangeError(`There is no ${part} of kind ${kind}.`);
  return { ...spec, [part]: chosen };
}

/** The field as problems name it. */
export function fieldPath({ part, key }: PuckField): string {
  return part === "whole" ? key : `${part}.${key}`;
}

/** The part of a puck that a problem's field names. */
export function partOf(field: string | undefined): PuckPart | null {
  const [first] = (field ?? "").split(".");
  return first === "edge" || first === "face" || first === "rim" || first === "core" ? first : null;
}
