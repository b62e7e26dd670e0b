import { test } from "vitest";
import { openPage, type Stage } from "../openPage";
import { enter, eventually, openDetail, profileHash, shownDrag, waitForFigures } from "./pageParts";

export function robustnessScenarios(stage: () => Stage): void {
  test("a killed worker is started again with a notice and solves the next design; it goes on without a network", async () => {
    const { page } = await openPage(stage(), { hash: await profileHash(), plots: false });
    await waitForFigures(page);
    for (const worker of page.workers()) await worker.evaluate(() => close()).catch(() => {});
    await page.locator("ww-notice-area", { hasText: "was started again" }).waitFor({ timeout: 20_000 });
    const before = await shownDrag(page);
    await enter(page, "Stream speed", "0.5");
    await eventually(async () => (await shownDrag(page)) !== before, "a result from the new worker");

    await page.context().setOffline(true);
    const online = await shownDrag(page);
    await enter(page, "Stream speed", "5.5");
    await eventually(async () => (await shownDrag(page)) !== online, "a result without a network");
    await page.context().close();
  });

  test("once visited, the page opens and solves without a network, plots included", async () => {
    const { page } = await openPage(stage(), { hash: await profileHash(), offline: true });
    await waitForFigures(page);
    await eventually(
      () => page.evaluate(async () => (await (await caches.open("wakewright-current")).keys()).length > 0),
      "the files are kept",
      60_000,
    );
    await page.waitForTimeout(1000);
    await page.context().setOffline(true);
    await page.reload();
    await waitForFigures(page);
    await openDetail(page, "Pressure");
    await page.locator("#plot-pressure").scrollIntoViewIfNeeded();
    await page.locator("#plot-pressure .scatterlayer .trace").first().waitFor({ state: "attached", timeout: 60_000 });
    await page.context().close();
  });
}
