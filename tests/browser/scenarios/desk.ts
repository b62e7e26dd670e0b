import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { openPage, type Stage } from "../openPage";
import { eventually, fieldValue, profileHash, waitForFigures } from "./pageParts";

/** The part of an element that stands inside the first screen, 0 to 1. */
function shareInSight(page: Page, selector: string): Promise<number> {
  return page
    .locator(selector)
    .first()
    .evaluate((element) => {
      const { left, right, top, bottom } = element.getBoundingClientRect();
      const within = (low: number, high: number, most: number) => Math.max(0, Math.min(high, most) - Math.max(low, 0));
      const area = (right - left) * (bottom - top);
      return area > 0 ? (within(left, right, innerWidth) * within(top, bottom, innerHeight)) / area : 0;
    });
}

/** True once something was painted on an element's canvas. */
function isPainted(page: Page, selector: string): Promise<boolean> {
  return page.locator(`${selector} canvas`).evaluate((element) => {
    const canvas = element as HTMLCanvasElement;
    const blank = Object.assign(document.createElement("canvas"), { width: canvas.width, height: canvas.height });
    return canvas.width > 0 && canvas.toDataURL() !== blank.toDataURL();
  });
}

export function deskScenarios(stage: () => Stage): void {
  test("at 1280 x 720 answer, picture, drag curve, strip and ribbon stand inside the first screen and are painted; on a phone the answer does", async () => {
    const { page, complaints } = await openPage(stage(), { hash: await profileHash(), plots: false });
    await page.setViewportSize({ width: 1280, height: 720 });
    await waitForFigures(page);
    for (const part of ["ww-answer", "ww-flow-view", "ww-speed-strip", "ww-ribbon", "ww-drag-curve"]) {
      expect([part, await shareInSight(page, part)]).toEqual([part, 1]);
    }
    for (const part of ["ww-flow-view", "ww-speed-strip", "ww-ribbon", "ww-drag-curve"]) {
      await eventually(() => isPainted(page, part), `${part} is painted`);
    }
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(1280);
    await page.setViewportSize({ width: 390, height: 844 });
    await eventually(
      async () => (await shareInSight(page, "ww-answer")) === 1,
      "the answer is on a phone's first screen",
    );
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  test("the ring on the drag curve moves the speed, and the answer follows; the ribbon's best is used with a click", async () => {
    const { page } = await openPage(stage(), { hash: await profileHash(), plots: false });
    await waitForFigures(page);
    const answer = () => page.locator("ww-answer .sentence").textContent();
    const ring = page.locator('ww-drag-curve [data-handle="curve-speed"]');
    const box = (await ring.boundingBox())!;
    const before = await answer();
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width / 2 - 60, box.y + 10, { steps: 6 });
    await page.mouse.up();
    await eventually(async () => Number(await fieldValue(page, "Stream speed")) < 2.9, "the speed is lower");
    await eventually(async () => (await answer()) !== before, "the answer is another");
    const best = page.locator("ww-ribbon button.best");
    await best.waitFor({ timeout: 60_000 });
    await page.getByRole("combobox", { name: "Input of the ribbon" }).selectOption("edgeRadius");
    await eventually(async () => /mm: Cd/.test((await best.textContent()) ?? ""), "the ribbon is over the edge radius");
    await best.click();
    await eventually(async () => (await fieldValue(page, "Edge radius")) !== "6", "the best radius is used");
    await page.context().close();
  });
}
