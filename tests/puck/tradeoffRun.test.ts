import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { DesignSpace, Evaluation } from "../../shared/jobs/tradeoff/designSpace";
import {
  frontOf,
  isFinished,
  nextPoints,
  recordAnswer,
  runCounts,
  spreadMembers,
  startTradeoff,
  type TradeoffRun,
} from "../../shared/jobs/tradeoff/tradeoffRun";
import { plannedSearch } from "../../shared/jobs/tradeoff/tradeoffSearch";
import { unwrap } from "./examplePuck";
import { puckCaseDocument, readGood, rules, wantedMass } from "./puckDocuments";

const space: DesignSpace = {
  variables: [{ key: "x", lowest: -2, highest: 4 }],
  goals: [
    { key: "f", sense: "least" },
    { key: "g", sense: "least" },
  ],
};

/** Schaffer (1985), in Deb et al. (2002), table I: x^2 against (x - 2)^2; the front is x from 0 to 2. */
function schaffer(variables: readonly number[]): Evaluation {
  const [x] = variables;
  return { variables, goals: [x * x, (x - 2) ** 2], violation: 0, reason: null };
}

function document(method: unknown) {
  return { variables: [{ dimension: "diameterMetres" as const }], goals: [], method } as never;
}

const pareto = { kind: "paretoSearch", populationSize: 16, generations: 6, seed: 5 };

/** Works a run through with several answers under way at once, given back in an order of its own. */
function workThrough(
  first: TradeoffRun,
  underWay: number,
  pick: (count: number) => number,
  through = (run: TradeoffRun) => run,
) {
  let run = first;
  const out = new Map<number, readonly number[]>();
  while (!isFinished(run)) {
    for (const { index, variables } of nextPoints(run, underWay - out.size, new Set(out.keys())))
      out.set(index, variables);
    const chosen = [...out.keys()][pick(out.size)];
    run = through(recordAnswer(run, chosen, schaffer(out.get(chosen) ?? [])));
    out.delete(chosen);
  }
  return run;
}

describe("a trade-off run", () => {
  it("finds Schaffer's front (Deb et al. 2002, table I): every member between 0 and 2", () => {
    const run = workThrough(unwrap(startTradeoff(document(pareto), space)), 1, () => 0);
    expect(frontOf(run).length).toBeGreaterThan(8);
    for (const { variables } of frontOf(run)) {
      expect(variables[0]).toBeGreaterThan(-0.05);
      expect(variables[0]).toBeLessThan(2.05);
    }
    expect(runCounts(run)).toEqual({ done: 96, total: 96 });
  });

  it("has the same answer however many threads there are and in whatever order they answer", () => {
    const alone = workThrough(unwrap(startTradeoff(document(pareto), space)), 1, () => 0);
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 8 }),
        fc.array(fc.nat(), { minLength: 96, maxLength: 96 }),
        (threads, picks) => {
          let i = 0;
          const run = workThrough(
            unwrap(startTradeoff(document(pareto), space)),
            threads,
            (count) => picks[i++] % count,
          );
          expect(run).toEqual(alone);
        },
      ),
      { numRuns: 20 },
    );
  });

  it("goes on from a saved state with the same answer", () => {
    const straight = workThrough(unwrap(startTradeoff(document(pareto), space)), 3, () => 0);
    const saved = workThrough(
      unwrap(startTradeoff(document(pareto), space)),
      3,
      () => 0,
      (run) => JSON.parse(JSON.stringify(run)),
    );
    expect(saved).toEqual(straight);
  });

  it("a sweep has every level, a Latin hypercube its points", () => {
    const sweep = unwrap(
      startTradeoff(
        {
          ...(document({ kind: "sweep" }) as object),
          variables: [{ dimension: "diameterMetres", levels: 7 }],
        } as never,
        space,
      ),
    );
    expect(runCounts(workThrough(sweep, 2, () => 0))).toEqual({ done: 7, total: 7 });
    expect(frontOf(workThrough(sweep, 2, () => 0)).map(({ variables }) => variables[0])).toEqual([0, 1, 2]);
    const cube = unwrap(startTradeoff(document({ kind: "latinHypercube", points: 9, seed: 2 }), space));
    expect(runCounts(workThrough(cube, 2, () => 0)).total).toBe(9);
  });
});

describe("spreadMembers(front, goals, most)", () => {
  it("keeps the best of each goal and the front's order", () => {
    const front = [0, 0.1, 0.2, 1, 1.9, 2].map((x) => schaffer([x]));
    const members = spreadMembers(front, space.goals, 3);
    expect(members.map(({ variables }) => variables[0])).toEqual([0, 1, 2]);
    expect(spreadMembers(front, space.goals, 10)).toEqual(front);
  });
});

describe("plannedSearch(case)", () => {
  const goals = [{ figure: "massKilograms", sense: "least" }];
  const plan = (tradeoff: object, block: object = {}) =>
    plannedSearch(
      readGood(puckCaseDocument({ rules, tradeoff: { goals, method: { kind: "sweep" }, ...tradeoff }, ...block })).puck,
    );

  it("takes bounds from the rules and cuts the file's own to them", () => {
    const { space: found } = unwrap(
      plan({ variables: [{ dimension: "diameterMetres" }, { dimension: "thicknessMetres", from: 0.01, to: 0.03 }] }),
    );
    expect(found.variables).toEqual([
      { key: "diameterMetres", lowest: 0.077, highest: 0.083 },
      { key: "thicknessMetres", lowest: 0.027, highest: 0.03 },
    ]);
  });

  it.each([
    [
      "a dimension that the rules do not limit above",
      { variables: [{ dimension: "edgeRadiusMetres" }] },
      {},
      /needs from and to/,
    ],
    [
      "a dimension that the puck lacks",
      { variables: [{ dimension: "bevelAxialMetres", from: 0, to: 1 }] },
      {},
      /has no bevel/,
    ],
    [
      "the dimension that is sized",
      { variables: [{ dimension: "coatThicknessMetres", from: 0.002, to: 0.004 }] },
      { wantedMass },
      /sized for the wanted mass/,
    ],
    [
      "bounds outside the rules",
      { variables: [{ dimension: "diameterMetres", from: 0.05, to: 0.06 }] },
      {},
      /the first below the second/,
    ],
    [
      "one dimension twice",
      { variables: [{ dimension: "diameterMetres" }, { dimension: "diameterMetres" }] },
      {},
      /given twice/,
    ],
  ])("refuses %s", (_what, tradeoff, block, message) => {
    const found = plan(tradeoff, block);
    if (found.ok) throw new Error("was accepted");
    expect(found.problem.message).toMatch(message);
    expect(found.problem.message).toMatch(/^puck\.tradeoff/);
  });
});
