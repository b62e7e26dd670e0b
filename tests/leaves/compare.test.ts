import { expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import { demoDesign } from "../../shared/case/design";
import type { CauseSuggestion } from "../../shared/jobs/evidence/causeSteps";
import type { MeasuredSetInputs } from "../../src/app/compare/compareInputs";
import { designChoices } from "../../src/app/compare/designChoices";
import { emptyDraft, withTable } from "../../src/app/compare/importDraft";
import { publishedCurves, publishedSet } from "../../src/app/compare/publishedSets";
import { noAnswer, type SetAnswer } from "../../src/app/compare/setAnswer";
import "../../src/app/components/compare-carry/compare-carry";
import "../../src/app/components/compare-causes/compare-causes";
import "../../src/app/components/compare-import/compare-import";
import "../../src/app/components/compare-plots/compare-plots";
import "../../src/app/components/compare-sets/compare-sets";
import "../../src/app/components/compare-setup/compare-setup";
import "../../src/app/components/compare-tables/compare-tables";
import { demoPuck } from "../../src/app/puck/demoPuck";
import { initialTask } from "../../src/app/view/taskState";
import { measurementWork } from "../../workers/measurementWork";
import { drawn, heard, inside, mount, words } from "./mount";

const published = publishedSet(publishedCurves[0]);
const set: MeasuredSetInputs = { ...published, points: published.points?.slice(0, 5) };
const outcome = await measurementWork().compareSet(
  set as Parameters<ReturnType<typeof measurementWork>["compareSet"]>[0],
);
if (!outcome.ok) throw new Error(outcome.problems[0].message);
const known: SetAnswer = { ...noAnswer, answer: outcome.value };
const choices = designChoices({ sets: [set] }, demoDesign, demoPuck.candidate.spec);

test("ww-compare-sets shows how far each set is, and sends what is to be looked at, added or removed", async () => {
  const sets = await mount("ww-compare-sets", {
    sets: [set],
    selected: set,
    answers: new Map([[set, known]]),
    problem: "No demo.",
  });
  await expect.element(page.getByRole("alert")).toHaveTextContent("No demo.");
  const [selected, added, removed] = [
    heard(sets, "compare-select"),
    heard(sets, "compare-add"),
    heard(sets, "compare-remove"),
  ];
  const demos = heard(sets, "compare-demo");
  await userEvent.click(page.getByRole("button", { pressed: true }));
  await userEvent.click(page.getByRole("button", { name: `Add ${publishedCurves[0].name}` }));
  await userEvent.click(page.getByRole("button", { name: /Remove/ }));
  await userEvent.click(page.getByRole("button", { name: /demonstration/ }));
  expect([selected, added.length, removed, demos.length]).toEqual([[set.name], 1, [set], 1]);
  sets.answers = new Map();
  await drawn(sets);
  expect(words(sets)).toContain("being compared ...");
});

test("ww-compare-import reads what was pasted, names what is wrong, and sends the points", async () => {
  const part = await mount("ww-compare-import", {
    choices,
    draft: withTable(emptyDraft, "Re,Cd\n1e5,1.2\nfast,1.1\n", null),
  });
  const add = page.getByRole("button", { name: "Add these points" });
  await expect.element(add).toBeDisabled();
  expect(words(part)).toContain("fast");
  const [drafts, added] = [heard(part, "compare-draft"), heard(part, "compare-add")];
  part.draft = withTable(emptyDraft, "Re,Cd\n1e5,1.2\n2e5,1.1\n", null);
  await drawn(part);
  await expect.element(page.getByText("2 points read.")).toBeVisible();
  await userEvent.fill(page.getByRole("textbox", { name: "Name" }), "Rod");
  expect(drafts.at(-1)?.name).toBe("Rod");
  await userEvent.click(add);
  expect(added[0].table?.data).toMatchObject({ columns: ["Re", "Cd"] });
  expect(drafts.at(-1)).toBe(emptyDraft);
});

test("ww-compare-setup sends the set changed, and keeps a name or number that is not allowed", async () => {
  const setup = await mount("ww-compare-setup", { set, choices, names: [set.name, "Other"] });
  const sent = heard(setup, "compare-replace");
  const name = page.getByRole("textbox", { name: "Name" });
  await userEvent.fill(name, "Other");
  await userEvent.tab();
  await expect.element(page.getByRole("alert")).toHaveTextContent("name of another set");
  expect(sent).toEqual([]);
  const turbulence = page.getByRole("textbox", { name: "Turbulence of the stream" });
  await userEvent.fill(turbulence, "99");
  await userEvent.tab();
  await expect.element(page.getByRole("alert").last()).toHaveTextContent("0 to 20 %");
  await userEvent.fill(turbulence, "0,5");
  await userEvent.tab();
  expect(sent).toMatchObject([{ old: set, next: { turbulencePercent: 0.5 } }]);
});

test("ww-compare-plots draws measured and predicted drag, and tells why there is none", async () => {
  const plots = await mount("ww-compare-plots", { set, known });
  await expect.element(page.getByRole("figure", { name: `Measured and predicted drag, ${set.name}` })).toBeVisible();
  plots.known = { ...noAnswer, problems: [{ code: "crash", message: "The program stopped on this set." }] };
  await drawn(plots);
  await expect.element(page.getByRole("alert")).toHaveTextContent("The program stopped on this set.");
});

test("ww-compare-tables gives the verdict and the bias by regime; nothing without a result", async () => {
  const tables = await mount("ww-compare-tables");
  expect(words(tables)).toBe("");
  tables.result = outcome.value.result;
  await drawn(tables);
  expect(words(tables)).toContain(outcome.value.result.verdict);
  expect(inside(tables, "#bias-table tbody tr")).toHaveLength(outcome.value.result.biases.length);
});

test("ww-compare-causes starts, shows and stops a search, and sends the cause to be laid over the plot", async () => {
  const causes = await mount("ww-compare-causes", { set, known });
  const [searched, stopped, shown] = [
    heard(causes, "compare-search"),
    heard(causes, "compare-stop"),
    heard(causes, "compare-cause"),
  ];
  await userEvent.click(page.getByRole("button", { name: /Look for/ }));
  causes.known = {
    ...known,
    search: { ...initialTask, status: "pending", inputs: set, step: { done: 1, total: 3, label: "turbulence" } },
  };
  await drawn(causes);
  await expect.element(page.getByRole("status")).toHaveTextContent("turbulence");
  await userEvent.click(page.getByRole("button", { name: "Cancel" }));
  const cause: CauseSuggestion = {
    key: "turbulence",
    name: "turbulence",
    quantity: "turbulence of the stream",
    stated: 0.005,
    value: 0.018,
    low: 0.012,
    high: 0.02,
    explainedShare: 0.6,
    exceedingBefore: 3,
    exceedingAfter: 1,
    plausible: true,
    plausibleFrom: 0,
    plausibleTo: 0.05,
    plausibleSource: "a test",
    settings: {},
  } as CauseSuggestion;
  causes.known = {
    ...known,
    search: { ...initialTask, status: "complete", inputs: set, last: { inputs: set, result: [cause] } },
  };
  await drawn(causes);
  await userEvent.click(page.getByRole("button", { name: /^Show/ }));
  expect([searched, stopped.length, shown]).toEqual([[set], 1, [{ set, cause }]]);
});

test("ww-compare-carry offers the offset where there is one, and sends whose is carried", async () => {
  const carry = await mount("ww-compare-carry", { set, known });
  const sent = heard(carry, "compare-carry");
  const { correction, result } = outcome.value;
  if (correction === null) {
    expect(words(carry)).toContain(result.factorsLeftOut[0]);
    return;
  }
  await userEvent.click(page.getByRole("checkbox"));
  expect(sent).toEqual([set.name]);
});
