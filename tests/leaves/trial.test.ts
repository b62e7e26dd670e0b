import { expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import "../../src/app/components/trial-drag/trial-drag";
import "../../src/app/components/trial-order/trial-order";
import "../../src/app/components/trial-plan/trial-plan";
import "../../src/app/components/trial-power/trial-power";
import "../../src/app/components/trial-ranking/trial-ranking";
import "../../src/app/components/trial-scores/trial-scores";
import "../../src/app/components/trial-setup/trial-setup";
import { trialBlock } from "../../src/app/trial/trialBlock";
import { cellKey, newTrial, type TrialInputs } from "../../src/app/trial/trialInputs";
import { cancelledCode, initialTask } from "../../src/app/view/taskState";
import { trialWork } from "../../workers/trialWork";
import { drawn, heard, inside, mount, words } from "./mount";

/** Every player likes the second puck better, by two points. */
const inputs: TrialInputs = {
  ...newTrial,
  cells: Object.fromEntries(
    newTrial.players.flatMap(({ id: player }, i) =>
      newTrial.pucks.map(({ id: puck }) => [
        cellKey({ activity: 1, repeat: 1, player, puck }),
        { typed: String(puck === 2 ? 6 + (i % 3) : 4 + (i % 3)), position: null, comment: null },
      ]),
    ),
  ),
};
const answer = await trialWork().analyseTrial(trialBlock(inputs), [], async () => {});
if (!answer.ok) throw new Error(answer.problems[0].message);
const result = answer.value;
const key = cellKey({ activity: 1, repeat: 1, player: 1, puck: 1 });

test("ww-trial-setup sends what is allowed and keeps what is not, with the reason beside the field", async () => {
  const setup = await mount("ww-trial-setup", { inputs: newTrial, problem: "The demo is gone." });
  await expect.element(page.getByText("The demo is gone.")).toBeVisible();
  const [changes, shown, demos] = [
    heard(setup, "trial-change"),
    heard(setup, "trial-show"),
    heard(setup, "trial-demo"),
  ];
  const code = page.getByRole("textbox", { name: "Code of Puck A" });
  await userEvent.fill(code, "592");
  await userEvent.tab();
  await expect.element(page.getByRole("alert").last()).toHaveTextContent("name or code of another puck");
  expect(changes).toEqual([]);
  await userEvent.fill(code, "777");
  await userEvent.tab();
  expect(changes[0].pucks?.map((puck) => puck.code)).toEqual(["777", "592"]);
  await userEvent.click(page.getByRole("button", { name: "Add four" }));
  expect(changes[1].players).toHaveLength(newTrial.players.length + 4);
  await userEvent.click(page.getByRole("button", { name: "New trial" }));
  await userEvent.click(page.getByRole("button", { name: /demonstration/ }));
  expect([shown.length, demos.length]).toEqual([1, 1]);
});

test("ww-trial-setup hides names behind codes once there are scores, until the key is opened", async () => {
  const setup = await mount("ww-trial-setup", { inputs });
  expect(inside<HTMLInputElement>(setup, "input").map(({ value }) => value)).not.toContain("Puck A");
  await userEvent.click(page.getByRole("button", { name: "Show the key to plan with" }));
  await expect.element(page.getByRole("textbox", { name: "Name of puck 1" })).toHaveValue("Puck A");
});

test("ww-trial-power sends assumptions and start, and tells a cancelled run from a failed one", async () => {
  const power = await mount("ww-trial-power", { inputs: newTrial });
  const [changes, started, stopped] = [
    heard(power, "trial-change"),
    heard(power, "trial-simulate"),
    heard(power, "trial-stop"),
  ];
  const wanted = page.getByRole("textbox", { name: "Wanted power" });
  await userEvent.fill(wanted, "2");
  await userEvent.tab();
  await expect.element(page.getByRole("alert")).toHaveTextContent("from 0.05 to 0.999");
  await userEvent.fill(wanted, "0,9");
  await userEvent.tab();
  expect(changes).toMatchObject([{ power: { wantedPower: 0.9 } }]);
  await userEvent.click(page.getByRole("button", { name: "Simulate" }));
  power.power = { ...initialTask, status: "pending", inputs: newTrial, step: { done: 1, total: 4, label: "" } };
  await drawn(power);
  await userEvent.click(page.getByRole("button", { name: "Cancel" }));
  expect([started.length, stopped.length]).toEqual([1, 1]);
  for (const [code, look] of [
    [cancelledCode, "hint"],
    ["crash", "error"],
  ]) {
    power.power = { ...initialTask, status: "error", inputs: newTrial, problems: [{ code, message: "It ended." }] };
    await drawn(power);
    await expect.element(page.getByRole("status")).toHaveClass(look);
  }
});

test("ww-trial-plan tells how even the plan is and lists every player's order", async () => {
  const plan = await mount("ww-trial-plan", { inputs: newTrial });
  await expect.element(page.getByRole("status")).not.toBeEmptyDOMElement();
  expect(inside(plan, "tbody tr")).toHaveLength(newTrial.players.length);
});

test("ww-trial-scores sends every key of a score, marks what is none, and reads an import before it is taken", async () => {
  const bad = { ...inputs, cells: { ...inputs.cells, [key]: { typed: "12", position: null, comment: null } } };
  const scores = await mount("ww-trial-scores", { inputs: bad });
  const cell = page.getByRole("textbox", { name: "P01, Passing, 384" });
  await expect.element(cell).toHaveAttribute("aria-invalid", "true");
  await expect.element(page.getByText("1 of them cannot be read")).toBeVisible();
  const [typed, imports, changes] = [
    heard(scores, "trial-score"),
    heard(scores, "trial-import"),
    heard(scores, "trial-change"),
  ];
  await userEvent.fill(cell, "7");
  expect(typed).toEqual([{ key, typed: "7" }]);
  await userEvent.click(page.getByRole("textbox", { name: /paste its rows/ }));
  await userEvent.paste();
  scores.importText = "player,activity,code,score\nP01,Passing,384,3\nP99,Passing,384,3\n";
  await drawn(scores);
  await expect.element(page.getByText(/1 score has a place/)).toBeVisible();
  expect(words(scores)).toContain("P99");
  await userEvent.click(page.getByRole("button", { name: "Take these scores" }));
  expect(changes[0].cells?.[key].typed).toBe("3");
  await userEvent.click(page.getByRole("button", { name: "Clear" }));
  expect(imports.at(-1)).toBe("");
});

test("ww-trial-ranking says what the scores show, which is blind until a person unblinds it", async () => {
  const ranking = await mount("ww-trial-ranking", {
    inputs,
    ranking: { ...initialTask, status: "complete", last: { inputs, result } },
  });
  // Of 8 players all prefer one of two pucks: the two-sided sign test gives 2 / 2^8 = 0.0078.
  expect(words(ranking)).toMatch(/0\.008|0\.0078/);
  const changes = heard(ranking, "trial-change");
  await userEvent.click(page.getByRole("button", { name: "Unblind: show names and drag" }));
  expect(changes).toEqual([{ isUnblinded: true }]);
  ranking.ranking = {
    ...ranking.ranking,
    status: "error",
    problems: [{ code: "crash", message: "The ranking stopped." }],
  };
  await drawn(ranking);
  await expect.element(page.getByRole("alert")).toHaveTextContent("The ranking stopped.");
});

test("ww-trial-order says what the order did and how far the players agree; nothing without a result", async () => {
  const order = await mount("ww-trial-order");
  expect(words(order)).toBe("");
  order.result = result;
  await drawn(order);
  await expect.element(page.getByRole("heading", { name: "Agreement of the players" })).toBeVisible();
  expect(inside(order, ".judges tbody tr")).toHaveLength(newTrial.players.length);
});

test("ww-trial-drag shows no drag before the trial is unblinded, then takes the puck view's by name", async () => {
  const drag = await mount("ww-trial-drag", { inputs, result, puckDrags: () => new Map([["puck b", 0.8]]) });
  expect(inside(drag, "input")).toEqual([]);
  drag.inputs = { ...inputs, isUnblinded: true };
  await drawn(drag);
  const changes = heard(drag, "trial-change");
  await userEvent.click(page.getByRole("button", { name: "Take drags from the puck view" }));
  expect(changes[0].pucks?.map((puck) => puck.drag)).toEqual([null, 0.8]);
  await expect.element(page.getByRole("status")).toHaveTextContent("Taken: Puck B.");
  const field = page.getByRole("textbox", { name: /Puck A/ });
  await userEvent.fill(field, "-1");
  await userEvent.tab();
  await expect.element(page.getByRole("alert")).toHaveTextContent("above 0");
});
