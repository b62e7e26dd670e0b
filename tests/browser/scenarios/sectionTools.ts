import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { openPage, type Stage } from "../openPage";
import { enter, eventually, fieldValue, openDetail, profileHash, waitForFigures } from "./pageParts";

export function sectionToolScenarios(stage: () => Stage): void {
  test("all three layer quantities stand side by side; the choice and the surface pattern come back by link and reload, the pattern in use also by case file", async () => {
    const { page, complaints } = await openPage(stage(), { hash: await profileHash() });
    await waitForFigures(page);
    await openDetail(page, "Layer");
    const choice = page.getByLabel("Layer quantity");
    const plots = page.locator('ww-plot[id^="plot-layer-"]');
    expect(await plots.count()).toBe(1);
    await choice.selectOption("all");
    for (const quantity of ["momentumThickness", "shapeFactor", "skinFriction"]) {
      const plot = page.locator(`#plot-layer-${quantity}`);
      await plot.scrollIntoViewIfNeeded();
      await plot.locator(".scatterlayer .trace").first().waitFor({ state: "attached", timeout: 60_000 });
    }
    await page.getByText("Estimate ks from a surface pattern").click();
    await page.getByLabel("Pattern", { exact: true }).selectOption("dimples");
    await enter(page, "Pitch", "3.5");
    await page.getByRole("button", { name: "Use as the design's ks" }).click();
    await page.waitForTimeout(1200);

    await page.getByRole("button", { name: "Cases" }).click();
    await page.getByRole("button", { name: "Make a link" }).click();
    const link = await page.getByLabel("Link to this screen").inputValue();
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Download case file" }).click(),
    ]);
    const saved = readFileSync(await download.path(), "utf8");
    expect(JSON.parse(saved)).toMatchObject({ surfacePattern: { kind: "dimples", pitchMetres: 0.0035 } });
    expect(JSON.parse(saved)).not.toHaveProperty("sandGrainRoughnessMetres");
    const other = await openPage(stage(), { hash: new URL(link).hash, plots: false });
    expect(complaints).toEqual([]);
    await page.goto(stage().address);
    await page.reload();
    for (const shown of [other.page, page]) {
      await waitForFigures(shown);
      await eventually(async () => (await fieldValue(shown, "Pitch")) === "3.5", "the pattern is back");
      expect(await shown.getByLabel("Pattern", { exact: true }).inputValue()).toBe("dimples");
      await openDetail(shown, "Layer");
      expect(await shown.getByLabel("Layer quantity").inputValue()).toBe("all");
    }
    await page.getByText("Estimate ks from a surface pattern").click();
    await enter(page, "Pitch", "5");
    const file = { name: "pattern.json", mimeType: "application/json", buffer: Buffer.from(saved) };
    await page.locator("ww-case-panel input[type=file]").setInputFiles(file);
    await eventually(async () => (await fieldValue(page, "Pitch")) === "3.5", "the file's pattern is back");
    await other.page.context().close();
    await page.context().close();
  });
}
