import { expect, test } from "vitest";
import { openPage, type Stage } from "../openPage";
import { eventually, fieldValue, profileHash, shownDrag, waitForFigures } from "./pageParts";

export function floorScenarios(stage: () => Stage): void {
  test("a floor below the section is drawn, moved by field and handle, noted, and carried by a link", async () => {
    const { page, complaints } = await openPage(stage(), { hash: await profileHash(), plots: false });
    await waitForFigures(page);
    const isSettled = () => page.locator("ww-pin-panel button", { hasText: "Pin this design" }).isEnabled();
    await eventually(async () => (await fieldValue(page, "Edge radius")) === "6", "the linked design is shown");
    await eventually(isSettled, "the linked design is solved");
    const open = await shownDrag(page);
    expect(open).toBeGreaterThan(0);
    const notes = page.locator("ww-floor-notes li");
    expect(await notes.count()).toBe(0);
    await page.getByLabel("A floor below the section").check();
    await page.locator("ww-flow-view .floor").waitFor({ state: "attached", timeout: 30_000 });
    expect(await fieldValue(page, "Gap to the floor")).toBe("15");
    await eventually(async () => (await shownDrag(page)) !== open, "a drag coefficient above the floor");
    expect((await notes.allTextContents()).join(" ")).toMatch(/mirror image.*Gap\/D 0\.5/);

    await page.locator('[data-handle="floorGap"]').focus();
    await page.keyboard.press("ArrowUp");
    const gap = page.locator("ww-section-panel ww-quantity-field[data-key=floorGap]");
    expect(Number(await gap.locator("input").inputValue())).toBeGreaterThan(15);
    await gap.locator("input").fill("0.2");
    await gap.locator(".error", { hasText: "at least 0.6 mm" }).waitFor({ timeout: 30_000 });
    await gap.locator("input").fill("0");
    await page.locator("ww-key-figures dd", { hasText: "not known" }).waitFor({ state: "attached", timeout: 30_000 });
    await notes.filter({ hasText: "lies on the floor" }).waitFor();

    await page.getByRole("button", { name: "Cases" }).click();
    await page.getByRole("button", { name: "Make a link" }).click();
    const link = await page.getByLabel("Link to this screen").inputValue();
    const other = await openPage(stage(), { hash: new URL(link).hash, plots: false });
    await other.page
      .locator("ww-key-figures dd", { hasText: "not known" })
      .waitFor({ state: "attached", timeout: 60_000 });
    expect(await fieldValue(other.page, "Gap to the floor")).toBe("0");
    await other.page.context().close();
    await page.keyboard.press("Escape");
    await page.getByLabel("A floor below the section").uncheck();
    await page.locator("ww-flow-view .floor").waitFor({ state: "detached", timeout: 30_000 });
    await eventually(isSettled, "the design without a floor is solved");
    expect(await shownDrag(page)).toBe(open);
    expect(await notes.count()).toBe(0);
    expect(complaints).toEqual([]);
    await page.context().close();
  });
}
