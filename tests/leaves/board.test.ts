import { expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import "../../src/app/components/puck-board/puck-board";
import "../../src/app/components/step-nav/step-nav";
import { demoPuck } from "../../src/app/puck/demoPuck";
import { measurePuck } from "../../src/app/puck/measurePuck";
import { nothingKnown, type PuckAnswers } from "../../src/app/puck/puckAnswers";
import type { StudiedPuck } from "../../src/app/puck/puckBoard";
import { heard, mount } from "./mount";

const measured = measurePuck(demoPuck);
if (!measured.ok) throw new Error(measured.problem.message);

const studied = (expected: number, probabilityBest: number): StudiedPuck => ({
  comparison: {
    change: { low: expected - 15, expected, high: expected + 20 },
    probabilityLess: expected < 0 ? 0.93 : 0.2,
    decided: expected < 0 ? "less" : "not decided",
  },
  probabilityBest,
  profileCrisis: { low: 2, mid: 2.6, high: 3.4 },
  planCrisis: null,
});

const pin = (id: number, name: string) => ({
  id,
  make: { ...demoPuck.candidate, spec: { ...demoPuck.candidate.spec, name } },
  result: null,
  solvedFor: null,
});

const known: PuckAnswers = {
  ...nothingKnown,
  measured: measured.value,
  pins: [pin(1, "Pebble"), pin(2, "Skimmer")],
  board: {
    inputs: demoPuck,
    judgements: {},
    studies: {
      [demoPuck.baseline.spec.name]: { ...studied(0, 0.01), comparison: null },
      [demoPuck.candidate.spec.name]: studied(4, 0.1),
      Pebble: studied(-19, 0.5),
      Skimmer: studied(-8, 0.39),
    },
  },
};

test("ww-puck-board sorts by drag, keeps the baseline on top, tells probabilities, and sends what to work on", async () => {
  const board = await mount("ww-puck-board", { inputs: demoPuck, known });
  const names = () =>
    [...board.renderRoot.querySelectorAll("tbody tr")].map((row) => (row as HTMLElement).dataset.puck);
  expect(names()).toEqual([demoPuck.baseline.spec.name, "Pebble", "Skimmer", demoPuck.candidate.spec.name]);
  await expect.element(page.getByRole("row", { name: /Pebble.*−19 % less drag.*less in 93 of 100/ })).toBeVisible();
  await userEvent.click(page.getByRole("button", { name: "Outline" }));
  expect(names()).toEqual([demoPuck.baseline.spec.name, demoPuck.candidate.spec.name, "Pebble", "Skimmer"]);
  const [swaps, gone] = [heard(board, "puck-swap"), heard(board, "puck-unpin")];
  await userEvent.click(page.getByRole("button", { name: "work on it" }).first());
  await userEvent.click(page.getByRole("button", { name: "Remove Skimmer" }));
  expect([swaps, gone]).toEqual([[1], [2]]);
});

test("ww-step-nav marks the step that is shown and asks for another", async () => {
  const nav = await mount("ww-step-nav", {
    label: "Steps of the puck",
    steps: [
      { key: "candidates", label: "Candidates" },
      { key: "shape", label: "Shape", note: "new" },
    ],
    step: "candidates",
  });
  const chosen = heard(nav, "step-choose");
  await expect.element(page.getByRole("button", { name: "1 Candidates" })).toHaveAttribute("aria-current", "step");
  await userEvent.click(page.getByRole("button", { name: /2 Shape/ }));
  expect(chosen).toEqual(["shape"]);
});
