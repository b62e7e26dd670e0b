import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { runCase } from "../../../shared/case/caseSteps";
import { readCase } from "../../../shared/case/readCase";
import type { TrialResult } from "../../../shared/jobs/trial/trialResult";
import { openPage, type PageChoice, type Stage, type WatchedPage } from "../openPage";
import { expectAccessible } from "./accessibility";
import { eventually, expectFitsAPhone, printedReport, profileHash } from "./pageParts";

/** The demo's trial as the command line works it out. */
function commandLineTrial(): TrialResult {
  const reading = readCase(readFileSync("cases/harbour-trial.json", "utf8"), "demo");
  if (!reading.ok) throw new Error(reading.problem.message);
  return runCase(reading.value).trial!;
}

/** Opens the view on the demo trial and waits for its ranking. */
async function openTrialView(stage: Stage, choice: PageChoice = {}): Promise<WatchedPage> {
  const watched = await openPage(stage, { hash: await profileHash(), ...choice });
  await showView(watched.page);
  return watched;
}

async function showView(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Players", exact: true }).click();
  await ranked(page);
}

/** The ranking belongs to what is on the screen. */
async function ranked(page: Page): Promise<void> {
  await page.locator('ww-trial-ranking section[aria-busy="false"] [data-stale="false"]').waitFor({ timeout: 60_000 });
}

function cells(page: Page, table: string): Promise<string[]> {
  return page
    .locator(`ww-trial-ranking .screen ${table} tbody tr`)
    .evaluateAll((rows) =>
      rows.map((row) =>
        [...row.children].map((cell) => (cell.textContent ?? "").trim().replace(/\s+/g, " ")).join("|"),
      ),
    );
}

export function trialViewScenarios(stage: () => Stage): void {
  test("trial view: rankings are the command line's; scores go in by keyboard, wrong ones stay beside their message, and all of it outlives a reload", async () => {
    const { page, complaints } = await openTrialView(stage(), { plots: false });
    const expected = commandLineTrial();
    for (const ranking of expected.rankings) {
      const name = ranking.activity ?? "Overall";
      await page.getByRole("group", { name: "Ranking of" }).getByRole("button", { name, exact: true }).click();
      await page.locator(`[data-ranking="${name}"]`).waitFor();
      const standings = await cells(page, ".standings");
      ranking.standings.forEach((one, i) => {
        expect(standings[i]).toContain(`${one.code} `);
        expect(standings[i]).toContain(one.meanRank!.toFixed(2));
        expect(standings[i]).toContain(`${one.strengthLow!.toFixed(3)} to ${one.strengthHigh!.toFixed(3)}`);
      });
      const pairs = await cells(page, ".pairs");
      ranking.pairs.forEach((pair, i) => {
        expect(pairs[i]).toMatch(new RegExp(`^${pair.better} over ${pair.worse}\\|${pair.preferBetter}\\|`));
      });
      const said = await page.locator("ww-trial-ranking .screen .verdict").textContent();
      for (const sentence of ranking.conclusions) expect(said).toContain(sentence);
    }

    const grid = page.locator("ww-trial-scores table input");
    await page.getByRole("group", { name: "Activity" }).getByRole("button", { name: "Passing" }).click();
    await grid.first().click();
    const before = [await grid.nth(0).inputValue(), await grid.nth(1).inputValue()];
    await page.keyboard.press("Control+A");
    await page.keyboard.type("9");
    await page.keyboard.press("Enter");
    await page.keyboard.type("12");
    await page.keyboard.press("ArrowDown");
    expect(await grid.nth(5).evaluate((cell) => cell === document.activeElement)).toBe(true);
    expect(await grid.nth(0).inputValue()).toBe("9");
    const wrong = page.locator("ww-trial-scores td", { hasText: "12 is not on the scale" });
    await wrong.locator('input[aria-invalid="true"]').waitFor();
    await page.locator("ww-trial-scores [role=status]", { hasText: "1 of them cannot be read" }).waitFor();
    await ranked(page);
    await page.waitForTimeout(800);
    await page.reload();
    await showView(page);
    expect(await grid.nth(0).inputValue()).toBe("9");
    expect(await grid.nth(1).inputValue()).toBe("12");
    await grid.nth(1).fill(before[1]);
    await grid.nth(0).fill(before[0]);
    await ranked(page);
    await page.getByRole("button", { name: "Undo" }).click();
    expect(await grid.nth(0).inputValue()).toBe("9");
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  test("trial view: a bad table is told by row and column and not lost, its good rows can be taken; blind it shows codes only; power by simulation can be cancelled", async () => {
    const { page, complaints } = await openTrialView(stage(), { plots: false });
    const file = page.locator("ww-trial-scores input[type=file]");
    const table = "\uFEFFplayer;activity;code;score\nP01;Passing;657;8\nP02;Passing;999;5\nP03;Passing;657;good\n";
    await file.setInputFiles({ name: "scores.csv", mimeType: "text/csv", buffer: Buffer.from(table) });
    const errors = page.locator("ww-trial-scores .reading .error");
    await errors.filter({ hasText: 'row 3, column code: "999" is not known' }).waitFor();
    expect(await errors.textContent()).toContain('row 4, column score: "good" is not a number');
    await page.getByRole("button", { name: "Take these scores" }).click();
    expect(await page.locator("#trial-table").inputValue()).toContain("P02;Passing;999;5");
    expect(await page.getByLabel("P01, Passing, 657").inputValue()).toBe("8");
    expect(await page.getByLabel("P03, Passing, 657").inputValue()).toBe("good");
    await page.getByRole("button", { name: "Clear" }).click();

    await page.getByRole("button", { name: "Unblinded: hide the names" }).click();
    await ranked(page);
    await eventually(
      async () => !/Pebble|Barnacle/.test((await page.locator("ww-trial-view").textContent()) ?? ""),
      "no name is shown",
    );
    await page.locator("ww-trial-drag", { hasText: "shown once the trial is unblinded" }).waitFor();
    await page.getByRole("button", { name: "Unblind: show names and drag" }).click();
    await page.locator("ww-trial-ranking .standings", { hasText: "Pebble, round edge" }).first().waitFor();
    await page.locator("ww-trial-drag", { hasText: /cannot show a connection at/ }).waitFor();
    await page.getByRole("button", { name: "Take drags from the puck view" }).click();
    await page.locator("ww-trial-drag [role=status]", { hasText: /Taken|not solved|No puck/ }).waitFor();

    await page.locator("#power-players").fill("100 200");
    await page.locator("#power-players").press("Enter");
    await page.getByRole("button", { name: "Simulate" }).click();
    await page.locator("ww-trial-power").getByRole("button", { name: "Cancel" }).click();
    await page.locator("ww-trial-power", { hasText: "The simulation was cancelled." }).waitFor();
    await page.locator("#power-players").fill("8 1");
    await page.locator("#power-players").press("Enter");
    await page.locator("ww-trial-power .error", { hasText: "whole numbers from 2 to 200" }).waitFor();
    expect(await page.locator("#power-players").inputValue()).toBe("8 1");
    await page.locator("#power-players").fill("8 40");
    await page.locator("#power-players").press("Enter");
    await page.getByRole("button", { name: "Simulate" }).click();
    await page.locator("ww-trial-power .verdict").waitFor({ timeout: 60_000 });
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  test("trial view: axe-core finds nothing in both themes, a phone shows it all, and report and score sheets print with their cautions", async () => {
    const { page } = await openTrialView(stage());
    for (const plot of ["#plot-trial-ranking", "#plot-trial-drag"]) {
      await page.locator(plot).scrollIntoViewIfNeeded();
      await page.locator(`${plot} .scatterlayer .trace`).first().waitFor({ state: "attached", timeout: 60_000 });
    }
    await page.locator("#plot-trial-ranking").getByRole("button", { name: "Table of" }).click();
    await page.locator("#trial-table").fill("player,score\nP01,1\n");
    await page.locator("ww-trial-plan summary").click();
    await expectAccessible(page);
    const said = await page.locator("ww-trial-ranking .screen .verdict p").first().textContent();
    const { totalPages, text: words } = await printedReport(page);
    expect(totalPages).toBeLessThanOrEqual(3);
    for (const part of [
      said!.trim(),
      "Flicking: the scores of 12 players",
      "Holding: the scores of 12 players",
      "lead is toxic",
      "can injure head, hands and feet",
      "Effects of the order",
      "after 483 Breakwater, wide and thin",
      "Agreement of the players",
      "4 pucks cannot show a connection at 5 %",
    ]) {
      expect(words).toContain(part);
    }
    expect(words).not.toContain("Import a table");

    const download = page.waitForEvent("download");
    await page.getByRole("button", { name: "Save them as a page" }).click();
    const sheets = readFileSync(await (await download).path(), "utf8");
    expect(sheets).toContain("nobody scores alone");
    expect(sheets).not.toMatch(/Pebble|Barnacle/);
    await expectFitsAPhone(page);
    await page.context().close();
  });
}
