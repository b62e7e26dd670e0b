import type { PuckFigures } from "./puckFigures";

/** A puck figure that is one number, and how people are shown it. */
export type FigureKey = keyof PuckFigures;

export interface FigureDescription {
  readonly label: string;
  /** Unit of the value in PuckFigures; the key carries it too. */
  readonly unit: string;
  /** Unit and factor in which people read it. */
  readonly shownUnit: string;
  readonly shownFactor: number;
}

function length(label: string): FigureDescription {
  return { label, unit: "m", shownUnit: "mm", shownFactor: 1e3 };
}

function area(label: string): FigureDescription {
  return { label, unit: "m2", shownUnit: "cm2", shownFactor: 1e4 };
}

function inertia(label: string): FigureDescription {
  return { label, unit: "kg m2", shownUnit: "kg cm2", shownFactor: 1e4 };
}

/** Every figure of a puck, in the order in which it is shown. */
export const figureCatalogue: Readonly<Record<FigureKey, FigureDescription>> = {
  diameterMetres: length("diameter"),
  thicknessMetres: length("thickness"),
  edgeRadiusMetres: length("edge radius"),
  massKilograms: { label: "mass", unit: "kg", shownUnit: "kg", shownFactor: 1 },
  coreMassKilograms: { label: "core mass", unit: "kg", shownUnit: "kg", shownFactor: 1 },
  weightInFluidNewtons: { label: "weight in the fluid", unit: "N", shownUnit: "N", shownFactor: 1 },
  volumeCubicMetres: { label: "displaced volume", unit: "m3", shownUnit: "cm3", shownFactor: 1e6 },
  meanDensityKilogramsPerCubicMetre: { label: "mean density", unit: "kg/m3", shownUnit: "kg/m3", shownFactor: 1 },
  centreOfMassMetres: length("height of the centre of mass"),
  momentOfInertiaAxisKilogramSquareMetres: inertia("moment of inertia about the axis"),
  momentOfInertiaDiameterKilogramSquareMetres: inertia("moment of inertia about a diameter"),
  frontalAreaEdgeOnSquareMetres: area("frontal area edge-on"),
  frontalAreaFaceOnSquareMetres: area("frontal area face-on"),
  surfaceAreaSquareMetres: area("surface"),
  floorContactAreaSquareMetres: area("floor contact area"),
  coverMetres: length("cover over the core"),
};

export const figureKeys = Object.keys(figureCatalogue) as FigureKey[];

/** A figure as people read it, for instance "80.2 mm". */
export function figureText(key: FigureKey, value: number): string {
  const { shownUnit, shownFactor } = figureCatalogue[key];
  return `${Number((value * shownFactor).toPrecision(5))} ${shownUnit}`;
}
