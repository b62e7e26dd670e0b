import type { Bounds } from "./quantity";

/** What a case file may ask for, so that no file can hang the program or leave the range the methods were made for. */

/** Bytes. A contour of 2000 points needs about 0.1 MB. */
export const largestCaseBytes = 5_000_000;

/** Rows that one case may yield, both branches counted. */
export const mostResults = 20_000;

export const mostSections = 200;

/** Sections after sweeps and incidences are written out. */
export const mostShapes = 1000;

export const lengthBounds: Bounds = { above: 0, to: 100, unit: "m" };
export const incidenceBounds: Bounds = { from: -180, to: 180, unit: "degrees" };
export const speedBounds: Bounds = { above: 0, to: 1000, unit: "m/s" };

/** Below it wakes are not turbulent in the way the closure assumes; above it no measurement is left to check against. */
export const reynoldsBounds: Bounds = { from: 1e3, to: 1e8, unit: "" };

/** ks / D: from a perfectly smooth wall to grains that are no longer small beside the section. */
export const roughnessRatioBounds: Bounds = { from: 0, to: 0.05, unit: "" };
export const roughnessHeightBounds: Bounds = { from: 0, to: 5, unit: "m" };
export const turbulenceBounds: Bounds = { from: 0, to: 20, unit: "%" };
