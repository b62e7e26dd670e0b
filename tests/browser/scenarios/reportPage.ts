import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { openPage, type Stage } from "../openPage";
import { printedReport, profileHash, shownDrag, waitForCase, waitForFigures } from "./pageParts";
import { openPuckView } from "./puckParts";

export function reportScenarios(stage: () => Stage): void {
  test("the report prints on one page with drawing, figures on their area, inputs and cautions", async () => {
    const { page } = await openPage(stage(), { hash: await profileHash() });
    await waitForFigures(page);
    const { totalPages, text } = await printedReport(page);
    expect(totalPages).toBe(1);
    expect(text).toContain((await shownDrag(page)).toFixed(3));
    for (const words of [
      "90 % band",
      "on the area D x span",
      "Edge radius",
      "fresh water at 27",
      "Pressure around the section",
      "Drag over Reynolds number",
      "Screening estimates",
      "Lead is poisonous",
      "1.3 kg",
    ]) {
      expect(text).toContain(words);
    }
    await page.context().close();
  });

  test("six pins and the first twelve rows of an opened case still print on one page", async () => {
    const { page } = await openPage(stage(), { hash: await profileHash([2, 4, 6, 8, 10, 12].map((mm) => mm / 1000)) });
    await waitForFigures(page);
    const cylinder = JSON.parse(readFileSync("cases/cylinder-smooth.json", "utf8"));
    const rows = { ...cylinder, panelCount: 80, reynoldsNumbers: { from: 2e4, to: 1e5, count: 15, spacing: "log" } };
    await page
      .locator("ww-case-panel input[type=file]")
      .setInputFiles({ name: "rows.json", mimeType: "application/json", buffer: Buffer.from(JSON.stringify(rows)) });
    await page.locator("ww-masthead .title", { hasText: cylinder.title }).waitFor({ timeout: 60_000 });
    await waitForCase(page);
    await page.locator("ww-pin-panel thead th", { hasText: "pin F" }).waitFor({ state: "attached", timeout: 90_000 });
    const { totalPages, text } = await printedReport(page);
    expect(totalPages).toBe(1);
    expect(text).toContain(`Results of the opened case: ${cylinder.title}`);
    expect(text).toMatch(/and \d+ more/);
    for (const words of ["pin F", "Changes are those of this design", "Inputs", "Lead is poisonous"]) {
      expect(text).toContain(words);
    }
    await page.context().close();
  });

  test("the puck's report prints on one page with figures, bands on their areas, index, inputs and cautions", async () => {
    const { page } = await openPage(stage(), { hash: await profileHash() });
    await openPuckView(page);
    await page.locator("ww-puck-drag table tbody tr").first().waitFor({ timeout: 100_000 });
    const { totalPages, text } = await printedReport(page);
    expect(totalPages).toBe(1);
    for (const words of [
      "Harbour League: candidate pucks",
      "moment of inertia",
      "frontal area",
      "Cd, expected",
      "Index:",
      "Slide along the floor",
      "Shares of play",
      "Lead is poisonous",
      "more than a kilogram",
    ]) {
      expect(text).toContain(words);
    }
    await page.context().close();
  });
}
