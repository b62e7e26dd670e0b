import type { LedgerNumber } from "./ledgerEntry";

const judge = ["engine/trust/applicability.ts"] as const;
const table = ["engine/trust/bandTable.ts"] as const;

/** Numbers that decide which errors stand for a section and when it counts as checked. No drag coefficient depends on them. */
export const TRUST_NUMBERS = {
  smoothWallReynolds: {
    name: "Re ks/D below which a wall counts as smooth, however smooth the checked ones were",
    symbol: "Re_ks",
    value: 20,
    unit: "1",
    kind: "chosen",
    restsOn: "judgement; beside the smoothWallLimit of 35 that transition is fitted with, here on the stream's speed",
    usedIn: judge,
  },
  sameLength: {
    name: "factor of length/height within which a shape counts as a checked one",
    symbol: "ratio",
    value: 1.1,
    unit: "1",
    kind: "chosen",
    restsOn: "judgement",
    usedIn: judge,
  },
  sameCorner: {
    name: "difference of corner radius/height within which a shape counts as a checked one",
    symbol: "r/H",
    value: 0.03,
    unit: "1",
    kind: "chosen",
    restsOn: "judgement",
    usedIn: judge,
  },
  rangeReach: {
    name: "factor beyond the last published value up to which a condition counts as inside",
    symbol: "ratio",
    value: 1.05,
    unit: "1",
    kind: "chosen",
    restsOn: "judgement",
    usedIn: judge,
  },
  smoothWallRoughness: {
    name: "ks/D up to which a wall belongs to the smooth family",
    symbol: "ks/D",
    value: 3e-5,
    unit: "1",
    kind: "chosen",
    restsOn: "between the polished 1e-5 and the 1e-4 of the first rough curve",
    usedIn: table,
  },
  sharpCorner: {
    name: "corner radius/height up to which a rectangle counts as sharp",
    symbol: "r/H",
    value: 0.025,
    unit: "1",
    kind: "chosen",
    restsOn: "judgement",
    usedIn: table,
  },
  smallDragCoefficient: {
    name: "drag coefficient below which a band has an absolute half-width",
    symbol: "Cd",
    value: 0.3,
    unit: "1",
    kind: "chosen",
    restsOn: "judgement",
    usedIn: table,
  },
  quietStreamTurbulence: {
    name: "turbulence up to which a stream counts as quiet for the error of a critical Re",
    symbol: "Tu",
    value: 0.007,
    unit: "1",
    kind: "chosen",
    restsOn: "that of the tunnel of the rough cylinders",
    usedIn: table,
  },
  sameEnd: {
    name: "factor of Re within which a point of a curve stands for the end of a band's range",
    symbol: "ratio",
    value: 1.1,
    unit: "1",
    kind: "chosen",
    restsOn: "judgement",
    usedIn: ["engine/trust/nearbyStates.ts"],
  },
} satisfies Record<string, LedgerNumber>;
