/** One published drag curve: Reynolds number on the diameter, drag coefficient on the frontal area. */
export interface PublishedDragCurve {
  /** For legends. */
  readonly name: string;
  /** Author, year, publication; who digitised it. */
  readonly source: string;
  /** What to keep in mind when a computed curve is held against it. */
  readonly remark: string;
  /** Pairs of Reynolds number and drag coefficient, Reynolds number rising. */
  readonly points: readonly (readonly [number, number])[];
}

/** Goettingen wind tunnel, long smooth cylinders; the crisis is gradual and late because of the tunnel's finish. */
export const wieselsberger1922: PublishedDragCurve = {
  name: "Wieselsberger 1922, measured",
  source:
    "C. Wieselsberger (1922), New data on the laws of fluid resistance, NACA TN 121 (companion to TN 84); digitised by A. Paolino (2022)",
  remark: "Within 5 % below Re 1.6e5; above that the slope of the crisis belongs to the tunnel of 1921.",
  points: [
    [3.18, 4.87],
    [8.01, 2.94],
    [17.7, 2.12],
    [31.7, 1.73],
    [63.6, 1.48],
    [196, 1.27],
    [356, 1.15],
    [892, 0.964],
    [2.27e3, 0.886],
    [5.15e3, 0.944],
    [9.18e3, 1.06],
    [1.5e4, 1.14],
    [3.03e4, 1.16],
    [6.55e4, 1.17],
    [1.07e5, 1.17],
    [1.61e5, 1.18],
    [1.76e5, 1.17],
    [2.2e5, 1.06],
    [2.56e5, 0.985],
    [2.93e5, 0.91],
    [3.29e5, 0.827],
    [3.65e5, 0.726],
    [3.91e5, 0.649],
    [4.27e5, 0.547],
    [4.56e5, 0.454],
    [4.9e5, 0.337],
    [5.03e5, 0.302],
    [5.63e5, 0.309],
    [6.28e5, 0.318],
    [6.83e5, 0.328],
    [7.35e5, 0.34],
    [8.1e5, 0.355],
  ],
};

/** The smooth-cylinder curve that offshore engineers design with. */
export const offshoreDesignCurve: PublishedDragCurve = {
  name: "DNV-RP-C205, design curve",
  source:
    "DNV-RP-C205, Environmental conditions and environmental loads (edition 2025-04); digitised by M. Seidl (2025)",
  remark: "A design curve: a fair summary of measurements, not a measurement.",
  points: [
    [1.02e4, 1.208],
    [2.44e4, 1.208],
    [6.09e4, 1.211],
    [1.18e5, 1.211],
    [2.15e5, 1.212],
    [2.31e5, 1.201],
    [2.72e5, 1.169],
    [2.97e5, 1.112],
    [3.25e5, 1.009],
    [3.62e5, 0.894],
    [4.1e5, 0.709],
    [4.75e5, 0.532],
    [5.25e5, 0.408],
    [5.79e5, 0.327],
    [6.38e5, 0.284],
    [7.44e5, 0.297],
    [8.53e5, 0.323],
    [1.07e6, 0.389],
    [1.39e6, 0.47],
    [1.83e6, 0.539],
    [2.26e6, 0.584],
    [2.9e6, 0.629],
    [3.66e6, 0.648],
    [4.94e6, 0.678],
  ],
};

/** The published curves that a computed one is held against. */
export const publishedSmoothCylinderCurves: readonly PublishedDragCurve[] = [wieselsberger1922, offshoreDesignCurve];
