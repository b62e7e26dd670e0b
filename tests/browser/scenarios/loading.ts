import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { runCase } from "../../../shared/case/caseSteps";
import { readCase } from "../../../shared/case/readCase";
import { openPage, type Stage } from "../openPage";
import { eventually, openDetail, profileHash, waitForCase, waitForFigures } from "./pageParts";

const demoFile = "harbour-league-puck.json";

export function loadingScenarios(stage: () => Stage): void {
  test("the first visit runs the demo case; every plot names its axes with units; drag coefficients equal the engine's in Node to five digits; plots are exported", async () => {
    const reading = readCase(readFileSync(`cases/${demoFile}`, "utf8"), demoFile);
    if (!reading.ok) throw new Error(reading.problem.message);
    const expected = runCase(reading.value).results.map((row) => row.dragCoefficient);
    const { page, complaints } = await openPage(stage());
    await waitForCase(page);
    // What stood in until the demo was read is no step to go back to.
    expect(await page.getByRole("button", { name: "Undo" }).isDisabled()).toBe(true);

    const plot = page.locator("ww-plot-board ww-plot");
    for (const detail of ["Pressure", "Separation over roughness", "Layer", "Shedding", "Drag curve with table"]) {
      await openDetail(page, detail);
      expect(await plot.count()).toBe(1);
      await plot.scrollIntoViewIfNeeded();
      await plot.locator(".scatterlayer .trace").first().waitFor({ state: "attached", timeout: 60_000 });
      expect(await plot.locator(".xtitle").textContent()).toMatch(/\((–|degrees)\)/);
      expect(await plot.locator(".ytitle").textContent()).toMatch(/\((–|degrees)\)/);
    }

    const dragPlot = page.locator("#plot-drag");
    await dragPlot.getByRole("button", { name: "Table of" }).click();
    const rows = await dragPlot.locator("tbody tr").allInnerTexts();
    const shown = rows.map((row) => row.split("\t")).filter(([curve]) => curve.startsWith("case:"));
    expect(shown).toHaveLength(expected.length);
    const sorted = (values: readonly (number | null)[]) => values.map(Number).sort((a, b) => a - b);
    const onScreen = sorted(shown.map((cells) => Number(cells[2])));
    for (const [i, drag] of sorted(expected).entries()) expect(Math.abs(onScreen[i] / drag - 1)).toBeLessThan(5.1e-5);
    for (const format of ["CSV", "PNG", "SVG"]) {
      const download = page.waitForEvent("download");
      await dragPlot.getByRole("button", { name: `${format} of` }).click();
      expect((await download).suggestedFilename()).toBe(`wakewright-drag-curve.${format.toLowerCase()}`);
    }
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  test("a plot whose place changes its width while it is out of sight has the new width when it is seen again", async () => {
    const { page } = await openPage(stage(), { hash: await profileHash() });
    await waitForFigures(page);
    await openDetail(page, "Shedding");
    const plot = page.locator("#plot-strouhal");
    const widths = () =>
      plot.evaluate((element) =>
        ["figure .plot-area", ".main-svg"].map((one) => element.querySelector(one)!.clientWidth),
      );
    await plot.scrollIntoViewIfNeeded();
    await plot.locator(".scatterlayer .trace").first().waitFor({ state: "attached", timeout: 60_000 });
    await page.evaluate(() => scrollTo(0, 0));
    await page.setViewportSize({ width: 600, height: 500 });
    await page.waitForTimeout(700);
    await plot.scrollIntoViewIfNeeded();
    await eventually(async () => new Set(await widths()).size === 1, "the picture is as wide as its place");
    await page.context().close();
  });
}
