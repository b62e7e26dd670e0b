import { type CommonPart, type PublishedSource, published } from "./publishedValue";

/** Stations of the layer under U = U0 (1 - x/L). */
export interface HowarthStation {
  /** x / L */
  readonly x: number;
  /** Wall shear in rho U0^2 / sqrt(U0 L / nu). */
  readonly wallShear: number;
  /** delta* and theta in L / sqrt(U0 L / nu). */
  readonly displacementThickness: number;
  readonly momentumThickness: number;
  readonly shapeFactor: number;
  /** theta by Thwaites's (1949) integral for the same speed. */
  readonly thwaitesMomentumThickness: number;
}

/** Boundary-layer equations marched with a box scheme for U = U0 (1 - x/L). */
export const howarthStations: readonly HowarthStation[] = (
  [
    [0.0125, 2.742, 0.1989, 0.0758, 2.623, 0.0767],
    [0.025, 1.7722, 0.2916, 0.1096, 2.66, 0.1109],
    [0.05, 1.0107, 0.447, 0.1624, 2.753, 0.1644],
    [0.075, 0.6116, 0.6036, 0.2089, 2.89, 0.2115],
    [0.1, 0.3138, 0.7955, 0.2544, 3.127, 0.2571],
    [0.1125, 0.1617, 0.9339, 0.2776, 3.365, 0.2801],
    [0.11875, 0.0518, 1.054, 0.2894, 3.64, 0.2918],
  ] as const
).map(([x, wallShear, displacementThickness, momentumThickness, shapeFactor, thwaitesMomentumThickness]) => ({
  x,
  wallShear,
  displacementThickness,
  momentumThickness,
  shapeFactor,
  thwaitesMomentumThickness,
}));

/** Separation x / L: exact (Howarth 0.120; Hartree and Leigh 0.1199; own solution 0.1198) and by Thwaites's method. */
export const howarthSeparation = { exact: 0.1199, thwaites: 0.12314 } as const;

const layer: CommonPart = {
  group: "boundary-layer flows",
  scatter: { relative: 0.015 },
  grade: "A",
  howObtained: "computed by an independent numerical solution",
};

export const howarth1938: PublishedSource = {
  name: "Howarth 1938",
  nature: "theory",
  citation:
    "L. Howarth (1938), On the solution of the laminar boundary layer equations, Proc. R. Soc. A 164, 547-579; separation also Hartree (1939), Leigh (1955)",
  remark: "Scatter is what a one-equation integral method is expected to hold, not the error of the solution.",
  values: [
    published(
      { ...layer, howObtained: "from memory, high confidence" },
      { kind: "laminarSeparation", edgeSpeed: "howarth" },
      howarthSeparation.exact,
      "own marching solution 0.1198; Thwaites's method itself gives 0.1231, 2.7 % late",
    ),
    ...howarthStations.map((s) =>
      published(layer, { kind: "laminarMomentumThickness", edgeSpeed: "howarth", station: s.x }, s.momentumThickness),
    ),
  ],
};
