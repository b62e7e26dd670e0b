import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { readCsvTable } from "../../../shared/tables/csvTable";
import { eventually } from "./pageParts";

/**
 * Gives the demo's traverse again as another logger writes it, 1.1 times as wide and with one wrong cell: columns, units
 * and decimal mark are asked for, the cell is told and put right, and the drag is 1.1 times as high.
 */
export async function takeMappedTraverse(page: Page, demoDrag: number): Promise<void> {
  const demo = readCsvTable(readFileSync("cases/harbour-tunnel-section-wake.csv", "utf8"));
  if (!demo.ok) throw new Error(demo.problem.message);
  const rows = demo.value.rows.map(([y, total, fixed]) =>
    [1100 * Number(y), total, fixed].join(";").replaceAll(".", ","),
  );
  const good = `Ort;Gesamt;Ruhe\r\n${rows.join("\r\n")}\r\n`;
  const survey = page.locator('ww-tunnel-table[of="wakeSurvey"]');
  await survey.locator("input[type=file]").setInputFiles({
    name: "traverse.csv",
    mimeType: "text/csv",
    buffer: Buffer.from(good.replace(";140,44", ";140.44")),
  });
  const errors = survey.locator(".reading .error");
  await errors.filter({ hasText: "no column holds positionMetres; the columns are Ort, Gesamt, Ruhe" }).waitFor();
  await survey.getByLabel("Position across the stream").first().selectOption("Ort");
  await survey.getByLabel("Unit of: Position across the stream").selectOption("mm");
  await survey.getByLabel("Total pressure over the stream's static pressure").first().selectOption("Gesamt");
  await survey.getByLabel("Static pressure over the stream's static pressure").first().selectOption("Ruhe");
  await errors.filter({ hasText: 'row 2, column Gesamt: "140.44" has a point' }).waitFor();
  expect(await survey.locator("td.is-wrong small").allTextContents()).toEqual([
    '"140.44" has a point, but the table\'s decimal mark is the comma',
  ]);
  const typed = survey.locator("textarea");
  expect(await typed.inputValue()).toContain("-605;140.44;0,43");
  await typed.fill(good);
  await typed.blur();
  await survey.locator(".reading", { hasText: `${rows.length} of ${rows.length} rows are used` }).waitFor();
  const drag = page.locator("#wake-table tbody td").first();
  await eventually(
    async () => Math.abs(Number(await drag.textContent()) / demoDrag - 1.1) < 0.001,
    "the mapped traverse is integrated",
  );
}

/** Adds correlations by hand: a wrong coefficient stays with its range, a right one counts, an impossible set is told and taken back. */
export async function correlateParts(page: Page): Promise<void> {
  const editor = page.locator("ww-tunnel-correlations");
  const coefficient = (index: number) => editor.locator(`#correlation-${index}`);
  const enter = async (index: number, text: string) => {
    await coefficient(index).fill(text);
    await coefficient(index).press("Enter");
  };
  const choose = async (index: number, one: string, other: string) => {
    await editor.getByRole("button", { name: "Add a correlation" }).click();
    expect(await editor.locator(`#correlation-${index}-0`).evaluate((field) => field === document.activeElement)).toBe(
      true,
    );
    await editor.locator(`#correlation-${index}-0`).selectOption(one);
    await editor.locator(`#correlation-${index}-1`).selectOption(other);
  };
  await choose(0, "balanceCalibrationPercent", "supportInterferencePercent");
  await enter(0, "2");
  await editor.locator(".error", { hasText: "is 2; it must be a number from -1 to 1" }).waitFor();
  expect(await coefficient(0).inputValue()).toBe("2");
  await enter(0, "0,5");
  const share = page.locator("#budget-table tbody tr", { hasText: "correlations" }).locator("td").first();
  await eventually(async () => Number(await share.textContent()) > 1, "the correlation counts in the budget");
  expect(await editor.locator(".error").count()).toBe(0);
  await choose(1, "balanceCalibrationPercent", "temperatureCelsius");
  await enter(1, "0,6");
  await choose(2, "temperatureCelsius", "supportInterferencePercent");
  await enter(2, "-0,9");
  const impossible = editor.locator(".error", { hasText: "These correlations are impossible" });
  await impossible.filter({ hasText: "correlation 3 must be from -0.392 to 0.992" }).waitFor();
  await editor.getByRole("button", { name: "Remove correlation 3" }).click();
  await impossible.waitFor({ state: "detached" });
  expect(await editor.getByRole("button", { name: "Add" }).evaluate((one) => one === document.activeElement)).toBe(
    true,
  );
  await page.getByRole("button", { name: "Undo" }).click();
  await impossible.waitFor();
  expect(await coefficient(2).inputValue()).toBe("-0.9");
}
