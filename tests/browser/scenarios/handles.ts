import { expect, test } from "vitest";
import { openPage, type Stage } from "../openPage";
import { eventually, fieldValue, profileHash, shownDrag, waitForFigures } from "./pageParts";

export function handleScenarios(stage: () => Stage): void {
  test("the edge radius follows the pointer and the arrow keys; a whole drag is one step of undo", async () => {
    const { page, complaints } = await openPage(stage(), { hash: await profileHash(), plots: false });
    await waitForFigures(page);
    const handle = page.locator('[data-handle="edgeRadius"]');
    await handle.scrollIntoViewIfNeeded();
    const before = Number(await fieldValue(page, "Edge radius"));
    const dragBefore = await shownDrag(page);
    const box = (await handle.boundingBox())!;
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    for (let k = 1; k <= 12; k++) await page.mouse.move(x + 2 * k, y + 2 * k);
    await page.mouse.up();
    const dragged = Number(await fieldValue(page, "Edge radius"));
    expect(dragged).toBeGreaterThan(before + 1);
    await eventually(async () => (await shownDrag(page)) !== dragBefore, "a new drag coefficient after the drag");
    await page.getByRole("button", { name: "Undo" }).click();
    expect(Number(await fieldValue(page, "Edge radius"))).toBe(before);
    await page.getByRole("button", { name: "Redo" }).click();
    expect(Number(await fieldValue(page, "Edge radius"))).toBe(dragged);
    await handle.focus();
    await page.keyboard.press("Control+z");
    expect(Number(await fieldValue(page, "Edge radius"))).toBe(before);
    await page.keyboard.press("Control+Shift+z");
    expect(Number(await fieldValue(page, "Edge radius"))).toBe(dragged);
    await page.keyboard.press("PageDown");
    expect(Number(await fieldValue(page, "Edge radius"))).toBeCloseTo(Math.round(dragged * 10) / 10 - 1, 6);
    await page.keyboard.press("Shift+ArrowUp");
    expect(Number(await fieldValue(page, "Edge radius"))).toBeCloseTo(Math.round(dragged * 10) / 10 - 0.99, 6);
    await page.locator('[data-handle="incidence"]').focus();
    for (let k = 0; k < 4; k++) await page.keyboard.press("ArrowUp");
    expect(Number(await fieldValue(page, "Incidence, nose up"))).toBeCloseTo(2, 6);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  test("a dimension that cannot be built is told beside its field with the allowed range; the last result stays, marked stale", async () => {
    const { page } = await openPage(stage(), { hash: await profileHash(), plots: false });
    await waitForFigures(page);
    const field = page.locator("ww-section-panel ww-quantity-field[data-key=edgeRadius]");
    await field.locator("input").fill("18");
    await field.locator(".error").waitFor();
    expect(await field.locator(".error").textContent()).toMatch(/edge radius 18 mm exceeds half the height, 15 mm/);
    expect(await page.locator("ww-answer .fault").textContent()).toMatch(/^\s*Stale/);
    expect(await shownDrag(page)).toBeGreaterThan(0);
    await field.locator("input").fill("abc");
    expect(await field.locator(".error").textContent()).toMatch(/"abc"; it must be a number/);
    await page.context().close();
  });
}
