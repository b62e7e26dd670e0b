import { expect, test } from "vitest";
import { openPage, type Stage } from "../openPage";
import { enter, eventually, profileHash, shownDrag, waitForFigures } from "./pageParts";

export function cancelScenarios(stage: () => Stage): void {
  test("Cancel ends a running case at once, keeps its rows, and the design is still solved afterwards", async () => {
    const { page, complaints } = await openPage(stage(), { hash: await profileHash(), plots: false });
    await waitForFigures(page);
    await page.getByLabel("Demo case").selectOption("cylinder-smooth.json");
    const status = page.locator("ww-case-panel [role=status]");
    await page.getByRole("button", { name: "Cancel" }).click();
    await eventually(
      async () => ((await status.textContent()) ?? "").startsWith("Cancelled"),
      "the case is cancelled",
      5_000,
    );
    const before = await shownDrag(page);
    await enter(page, "Stream speed", "0.4");
    await eventually(async () => (await shownDrag(page)) !== before, "a new drag coefficient at another speed");
    await page.waitForTimeout(500);
    expect((await status.textContent()) ?? "").toMatch(/^Cancelled/);
    expect(complaints).toEqual([]);
    await page.context().close();
  });
}
