import { expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import "../../src/app/components/choose-report/choose-report";
import "../../src/app/components/puck-choose/puck-choose";
import { nothingToChoose } from "../../src/app/puck/chooseInputs";
import { demoPuck } from "../../src/app/puck/demoPuck";
import { nothingKnown } from "../../src/app/puck/puckAnswers";
import type { PuckInputs } from "../../src/app/puck/puckInputs";
import { cancelledCode, initialTask } from "../../src/app/view/taskState";
import type { ChosenPucks } from "../../workers/choiceWork";
import { heard, inside, mount, words } from "./mount";

const band = (expected: number) => ({ low: 0.8 * expected, expected, high: 1.2 * expected });

const inputs: PuckInputs = {
  ...demoPuck,
  choose: {
    ...nothingToChoose,
    choice: {
      criteria: [
        { criterion: "dragInPlay", swing: 100 },
        { criterion: "mass", sense: "most", swing: { from: 20, to: 40 } },
      ],
    },
  },
};

const candidate = (name: string, probabilityFirst: number) => ({
  name,
  probabilityFirst,
  rankProbabilities: [probabilityFirst, 1 - probabilityFirst],
  winningWeights: probabilityFirst === 0 ? null : [band(0.6), band(0.4)],
  confidence: probabilityFirst === 0 ? null : 0.9,
  dominatedBy: probabilityFirst === 0 ? [{ name: "Round", probability: 0.7 }] : [],
  criteria: [
    { criterion: "drag", unit: "m2", ...band(1e-3), value: band(0.5) },
    { criterion: "mass", unit: "kg", ...band(1.2), value: band(0.5) },
  ],
});

/** Invented, as the worker would answer. */
const chosen: ChosenPucks = {
  durability: null,
  cost: {
    currency: "EUR",
    source: "invented",
    pucks: [
      {
        name: "Round",
        coreMassKilograms: 1,
        coatMassKilograms: 0.2,
        acceptedPercent: band(80),
        acceptedFrom: "the case",
        batches: [
          {
            batchSize: 10,
            unitCost: band(30),
            sharesPercent: { material: 30, labour: 30, scrap: 10, setup: 10, tooling: 20 },
          },
        ],
        problem: null,
      },
    ],
    draws: 500,
    seed: 1,
    notes: [],
    cautions: ["Lead: local codes first."],
  },
  choice: {
    candidates: [candidate("Round", 1), candidate("Square", 0)],
    criteria: (["dragInPlay", "mass"] as const).map((key) => ({
      key,
      name: key === "mass" ? "mass" : "drag",
      unit: "kg",
      sense: "least" as const,
      target: null,
      scale: "linear" as const,
      worst: 1,
      best: 0,
      weight: band(0.5),
    })),
    decides: {
      first: "Round",
      second: "Square",
      probabilityBetter: 1,
      criteria: [{ criterion: "drag", contribution: band(0.3), varianceSharePercent: 100, turningWeight: null }],
      sentence: "Round is better than Square in 100 of 100 draws.",
    },
    sentence: "Round is first in 100 of 100 of all weights and draws.",
    draws: 500,
    seed: 1,
    notes: ["How it is weighed."],
    cautions: ["Local codes and licensed practice come first."],
    problem: null,
  },
};
const known = {
  ...nothingKnown,
  choosing: { ...initialTask, status: "complete" as const, call: 1, last: { inputs, result: chosen } },
};

test("ww-puck-choose lets criteria in and out, and keeps swings from falling", async () => {
  const choose = await mount("ww-puck-choose", { inputs });
  const changes = heard(choose, "puck-change");
  await userEvent.click(page.getByRole("checkbox", { name: "frontal area edge-on" }));
  expect(changes[0].choose?.choice?.criteria.map(({ criterion }) => criterion)).toEqual([
    "dragInPlay",
    "mass",
    "frontalArea",
  ]);
  const from = page.getByRole("textbox", { name: "mass, from" });
  await userEvent.fill(from, "60");
  expect(changes.at(-1)?.choose?.choice?.criteria[1].swing).toEqual({ from: 60, to: 60 });
  await userEvent.click(page.getByRole("checkbox", { name: /Say how much each swing/ }));
  expect(changes.at(-1)?.choose?.choice?.criteria.every(({ swing }) => swing === undefined)).toBe(true);
});

test("ww-puck-choose offers only what the case holds, and says what it lacks", async () => {
  const choose = await mount("ww-puck-choose", { inputs });
  expect(inside(choose, ".criteria label").map((label) => words(label))).not.toContain("unit cost");
  await expect.element(page.getByText(/holds nothing on liking.*cost, durability/)).toBeVisible();
  const asked = heard(choose, "puck-choose");
  await userEvent.click(page.getByRole("button", { name: "Open the invented example" }));
  await userEvent.click(page.getByRole("button", { name: "Choose" }));
  expect(asked).toEqual(["demo", "start"]);
});

test("ww-puck-choose says the answer and its cautions first, then the evidence, and when it is old", async () => {
  const choose = await mount("ww-puck-choose", { inputs, known });
  const text = words(choose);
  expect(text.indexOf("Local codes and licensed practice come first")).toBeLessThan(text.indexOf("Round is first"));
  expect(text).toContain("Round is first in 100 of 100");
  expect(text).toContain("Square is no better than Round in any criterion");
  expect(text).not.toContain("have changed since");
  expect(inside(choose, "table")).toHaveLength(4);
  choose.inputs = { ...inputs };
  await choose.updateComplete;
  expect(words(choose)).toContain("The inputs have changed since.");
});

test("ww-puck-choose shows how far it is, can be cancelled, and lists what is wrong", async () => {
  const pending = { ...initialTask, status: "pending" as const, step: { done: 2, total: 8, label: "read mass" } };
  const choose = await mount("ww-puck-choose", { inputs, known: { ...nothingKnown, choosing: pending } });
  const asked = heard(choose, "puck-choose");
  await userEvent.click(page.getByRole("button", { name: "Cancel" }));
  expect(asked).toEqual(["cancel"]);
  const failed = (code: string, message: string) => ({
    ...nothingKnown,
    choosing: { ...initialTask, status: "error" as const, problems: [{ code, message }] },
  });
  choose.known = failed("choice", "liking needs a trial");
  await choose.updateComplete;
  expect(words(choose)).toContain("liking needs a trial");
  choose.known = failed(cancelledCode, "Cancelled.");
  await choose.updateComplete;
  expect(inside(choose, "[role=alert]")).toHaveLength(0);
});

test("ww-choose-report has two pages: cautions and decision, then the evidence", async () => {
  const report = await mount("ww-choose-report", { inputs, known });
  const pages = inside(report, ".page").map(words);
  expect(pages).toHaveLength(2);
  expect(pages[0].indexOf("Local codes")).toBeLessThan(pages[0].indexOf("Decision"));
  expect(pages[0]).toContain("What decides between Round and Square");
  expect(pages[1]).toContain("Cost and its parts");
  expect(pages[1]).toContain("How it is weighed.");
  const empty = await mount("ww-choose-report", { inputs });
  expect(inside(empty, ".page")).toHaveLength(0);
});
