import { expect, test } from "vitest";
import { openPage, type Stage } from "../openPage";
import { eventually, profileHash, shownDrag, waitForFigures } from "./pageParts";

export function layerMethodScenarios(stage: () => Stage): void {
  test("textbook layers are chosen beside the stream: the drag changes, its band says that it was not checked, and undo and a link bring them back", async () => {
    const { page, complaints } = await openPage(stage(), { hash: await profileHash(), plots: false });
    await waitForFigures(page);
    const own = await shownDrag(page);
    const choice = page.getByRole("combobox", { name: "Boundary layers" });
    expect(await choice.inputValue()).toBe("integral");
    await choice.selectOption("textbook");
    await eventually(async () => (await shownDrag(page)) !== own, "the textbook drag is shown");
    const textbook = await shownDrag(page);
    await page.locator("ww-key-figures", { hasText: "Drag with textbook layers" }).waitFor({ state: "attached" });

    await page.getByRole("button", { name: "Cases" }).click();
    await page.getByRole("button", { name: "Make a link" }).click();
    const link = await page.getByLabel("Link to this screen").inputValue();
    const other = await openPage(stage(), { hash: new URL(link).hash, plots: false });
    await waitForFigures(other.page);
    expect(await other.page.getByRole("combobox", { name: "Boundary layers" }).inputValue()).toBe("textbook");
    expect(await shownDrag(other.page)).toBe(textbook);
    await other.page.getByRole("combobox", { name: "Boundary layers" }).selectOption("integral");
    await eventually(async () => (await shownDrag(other.page)) === own, "the engine's own drag is back");
    await other.page.getByRole("button", { name: "Undo" }).click();
    await eventually(async () => (await shownDrag(other.page)) === textbook, "undo brings the textbook drag back");
    expect([...complaints, ...other.complaints]).toEqual([]);
    await other.page.context().close();
    await page.context().close();
  });
}
