import type { LedgerNumber } from "./ledgerEntry";

/** Numbers of the search for states that decide which answers are given; steps and tolerances are not among them. */
export const SOLVER_NUMBERS = {
  largestJump: {
    name: "how far ahead of the assumed point a layer may separate and still have found it",
    symbol: "residual / D",
    value: 0.02,
    unit: "D",
    kind: "chosen",
    restsOn: "judgement; no data",
    usedIn: ["engine/solve/separationSearch.ts"],
  },
  oneSidedReach: {
    name: "how much sooner a bubble on one side alone may close than one on both sides",
    symbol: "ratio of Re",
    value: 1.6,
    unit: "1",
    kind: "chosen",
    restsOn: "judgement: bounds the search for one-sided states; no data",
    usedIn: ["engine/solve/solveCondition.ts"],
  },
  largestWaver: {
    name: "part of the drag by which a state may waver and still be called settled",
    symbol: "change of Cd / Cd",
    value: 0.01,
    unit: "1",
    kind: "chosen",
    restsOn: "jumps seen in random conditions when an input moves by 1e-6",
    usedIn: ["engine/solve/settled.ts"],
  },
  largestSeenChange: {
    name: "part of the drag by which the band of a state that is not settled is widened at most by its slopes",
    symbol: "change of Cd / Cd",
    value: 0.5,
    unit: "1",
    kind: "chosen",
    restsOn: "judgement: slopes say nothing of larger changes; no data",
    usedIn: ["engine/solve/settled.ts"],
  },
  leastWaveredDrag: {
    name: "drag coefficient under which wavering is judged as if it were this",
    symbol: "Cd",
    value: 0.02,
    unit: "1",
    kind: "chosen",
    restsOn: "judgement; no data",
    usedIn: ["engine/solve/settled.ts"],
  },
} satisfies Record<string, LedgerNumber>;
