import type { InventedTest } from "./inventedTest";

/** Seed of the invented tunnel data. */
export const tunnelDemoSeed = 20261125;

/** The puck test: the truth behind cases/harbour-tunnel.json. */
export const inventedPuckTest: InventedTest = {
  drag: { below: 0.58, above: 0.36, rising: 1.3e5, falling: 1.12e5, width: 0.07 },
  blockage: "maskell",
  supportDragArea: 9e-5,
  noise: 0.004,
  zero: 0.012,
  zeroDrift: 8e-5,
  temperature: 20.4,
  warming: 0.012,
  staticPressure: 101_180,
  humidity: 46,
  minutesPerRun: 3,
};

/** The section test: the truth behind cases/harbour-tunnel-section.json. */
export const inventedSectionTest: InventedTest = {
  drag: { below: 1.17, above: 0.36, rising: 2.9e5, falling: 2.5e5, width: 0.05 },
  blockage: "allenVincenti",
  supportDragArea: 1.2e-3,
  noise: 0.03,
  zero: -0.05,
  zeroDrift: 4e-4,
  temperature: 18.9,
  warming: 0.02,
  staticPressure: 100_640,
  humidity: 51,
  minutesPerRun: 3,
};

/** The wake traverse: speed / stream = 1 - depth exp(-(y/width)^2), no pressure left in the wake, y in m. */
export const inventedWake = {
  dragCoefficient: 1.17,
  depth: 0.34,
  halfTraverse: 0.55,
  stations: 45,
  noisePascals: 0.4,
  dynamicPressure: 140,
};

/** Width of the deficit, m, that gives the drag: Cd D = 2 width sqrt(pi) (depth - depth^2 / sqrt 2). */
export function inventedWakeWidth(referenceLength: number): number {
  const { dragCoefficient, depth } = inventedWake;
  return (dragCoefficient * referenceLength) / (2 * Math.sqrt(Math.PI) * (depth - depth ** 2 / Math.SQRT2));
}

/** The taps: the engine's own pressures, the base lower by this much, with noise. */
export const inventedTaps = { baseOffset: -0.06, noise: 0.01, everyDegrees: 10, reynolds: 2e5 };
