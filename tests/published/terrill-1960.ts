import { type CommonPart, type PublishedSource, published } from "./publishedValue";

/** Stations of the layer under U = 2 U0 sin(x/R). */
export interface SineStation {
  /** Degrees from the front. */
  readonly degrees: number;
  /** Wall shear in rho U0^2 / sqrt(U0 R / nu). */
  readonly wallShear: number;
  /** delta* and theta in R / sqrt(U0 R / nu). */
  readonly displacementThickness: number;
  readonly momentumThickness: number;
  readonly shapeFactor: number;
  /** theta by Thwaites's (1949) integral for the same speed. */
  readonly thwaitesMomentumThickness: number;
}

/** Boundary-layer equations marched with a box scheme for U = 2 U0 sin(x/R). */
export const sineStations: readonly SineStation[] = (
  [
    [10, 0.6012, 0.4609, 0.2079, 2.217, 0.1948],
    [30, 1.6349, 0.4841, 0.2175, 2.226, 0.2041],
    [50, 2.2048, 0.5384, 0.2394, 2.249, 0.2255],
    [60, 2.2531, 0.5835, 0.257, 2.271, 0.2427],
    [70, 2.1276, 0.648, 0.2811, 2.305, 0.2663],
    [80, 1.8255, 0.744, 0.3148, 2.364, 0.2993],
    [90, 1.3434, 0.8999, 0.3632, 2.478, 0.3464],
    [100, 0.6324, 1.2164, 0.437, 2.784, 0.4166],
    [104, 0.157, 1.55, 0.478, 3.24, 0.4545],
  ] as const
).map(([degrees, wallShear, displacementThickness, momentumThickness, shapeFactor, thwaitesMomentumThickness]) => ({
  degrees,
  wallShear,
  displacementThickness,
  momentumThickness,
  shapeFactor,
  thwaitesMomentumThickness,
}));

/** Separation, degrees: Terrill's exact x/R = 1.823, the project's own marching solution, and Thwaites's method. */
export const sineSeparationDegrees = { exact: 104.5, marched: 104.44, thwaites: 103.11 } as const;

const layer: CommonPart = {
  group: "boundary-layer flows",
  scatter: { relative: 0.015 },
  grade: "A",
  howObtained: "computed by an independent numerical solution",
};

export const terrill1960: PublishedSource = {
  name: "Terrill 1960",
  nature: "theory",
  citation:
    "R. M. Terrill (1960), Laminar boundary-layer flow near separation with and without suction, Phil. Trans. R. Soc. A 253, 55-100",
  remark: "Scatter is what an integral method is expected to hold: 1.5 degrees and 1.5 %.",
  values: [
    published(
      { ...layer, scatter: { absolute: 1.5 }, howObtained: "public copy" },
      { kind: "laminarSeparation", edgeSpeed: "sine" },
      sineSeparationDegrees.exact,
      "x/R 1.823 as quoted in a course text; own marching solution 104.4",
    ),
    ...sineStations.map((s) =>
      published(
        layer,
        { kind: "laminarMomentumThickness", edgeSpeed: "sine", station: s.degrees },
        s.momentumThickness,
        "Thwaites's integral starts 6.5 % thin at a plane stagnation point: 0.075 against the exact 0.0855",
      ),
    ),
  ],
};
