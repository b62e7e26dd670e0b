import { expect, test } from "vitest";
import { openPage, type Stage } from "../openPage";
import { enter, eventually, openDetail, profileHash, waitForFigures } from "./pageParts";

export function sweepScenarios(stage: () => Stage): void {
  test("a sweep of one input is drawn; one of two inputs is paused, goes on, and is cancelled with its points kept", async () => {
    const { page, complaints } = await openPage(stage(), { hash: await profileHash() });
    await waitForFigures(page);
    await openDetail(page, "Sweep");
    const panel = page.locator("ww-sweep-panel");
    const status = panel.locator("[role=status]");
    await panel.getByLabel("from", { exact: true }).fill("4");
    await panel.getByLabel("to", { exact: true }).fill("14");
    await panel.getByRole("button", { name: "Start sweep" }).click();
    await status.filter({ hasText: "15 of 15 points" }).waitFor({ timeout: 60_000 });
    await panel.scrollIntoViewIfNeeded();
    await panel.getByRole("button", { name: "Table of" }).click();
    expect(await panel.locator("tbody tr").count()).toBe(15);
    expect(await panel.locator(".xtitle").textContent()).toBe("edge radius (mm)");

    await panel.getByRole("button", { name: "Add a second input" }).click();
    await panel.locator(".count input").first().fill("41");
    await panel.locator(".count input").last().fill("41");
    await panel.locator(".count input").last().press("Tab");
    await panel.getByRole("button", { name: "Start sweep" }).click();
    await panel.getByRole("button", { name: "Pause" }).click();
    await status.filter({ hasText: "paused" }).waitFor();
    await page.waitForTimeout(800);
    const paused = await status.textContent();
    await page.waitForTimeout(500);
    expect(await status.textContent()).toBe(paused);
    await panel.getByRole("button", { name: "Go on" }).click();
    await eventually(async () => (await status.textContent()) !== paused, "the sweep goes on");
    await eventually(async () => Number.parseInt((await status.textContent()) ?? "", 10) >= 3, "points come in");
    await panel.getByRole("button", { name: "Cancel sweep" }).click();
    await status.filter({ hasText: "cancelled; the points so far are kept" }).waitFor();
    expect(Number.parseInt((await status.textContent()) ?? "", 10)).toBeGreaterThanOrEqual(3);
    await enter(page, "Edge radius", "9");
    expect(complaints).toEqual([]);
    await page.context().close();
  });
}
