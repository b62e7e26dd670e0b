import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { viewTexts } from "../../../src/app/store/viewNames";
import { openPage, type Stage } from "../openPage";
import { eventually, openDetail, profileHash, waitForFigures } from "./pageParts";

/** Draws every plot of the shown view that has something to draw. @returns how many */
async function drawPlots(page: Page): Promise<number> {
  let drawn = 0;
  for (const plot of await page.locator("main:not([hidden]) ww-plot:has(figure)").all()) {
    if (!(await plot.isVisible())) continue;
    await plot.scrollIntoViewIfNeeded();
    await plot.locator(".main-svg").first().waitFor({ state: "attached", timeout: 60_000 });
    drawn++;
  }
  return drawn;
}

export function privacyScenarios(stage: () => Stage): void {
  test("no button of a chart's tool bar, in any view, asks another place for anything or opens a window", async () => {
    const { page, complaints } = await openPage(stage(), { hash: await profileHash() });
    await waitForFigures(page);
    await openDetail(page, "Layer");
    await page.getByLabel("Layer quantity").selectOption("all");
    await eventually(
      async () => (await page.locator("ww-plot-board ww-plot figure").count()) >= 3,
      "the plots have something to draw",
      60_000,
    );
    let plots = 0;
    const clicked: string[] = [];
    for (const view of Object.values(viewTexts)) {
      await page.getByRole("button", { name: view, exact: true }).click();
      await page.waitForTimeout(1500);
      plots += await drawPlots(page);
      for (const button of await page.locator("main:not([hidden]) .modebar-btn[data-title]").all()) {
        clicked.push((await button.getAttribute("data-title")) ?? "");
        await button.dispatchEvent("click");
      }
    }
    await page.waitForTimeout(500);
    expect(plots).toBeGreaterThanOrEqual(3);
    // Zoom, pan, in, out, whole, back; a plot that was drawn meanwhile has them as well.
    expect(new Set(clicked).size).toBe(6);
    expect(clicked.length).toBeGreaterThanOrEqual(6 * plots);
    // What was drawn was clicked on above; nothing of it may have been forbidden either.
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  test("the content policy is in force: the page can neither reach another place nor make code from text", async () => {
    const { page, complaints } = await openPage(stage(), { hash: await profileHash(), plots: false });
    await waitForFigures(page);
    const tried = await page.evaluate(async () => {
      const away = await fetch("https://wakewright.invalid/").then(
        () => "allowed",
        (error: unknown) => String(error),
      );
      const script = document.createElement("script");
      script.textContent = "document.title = 'made from text'";
      document.head.append(script);
      const button = document.createElement("div");
      button.setAttribute("onclick", "document.title = 'made from text'");
      button.click();
      return { away, title: document.title };
    });
    expect(tried.title).toBe("Wakewright");
    expect(tried.away).not.toBe("allowed");
    for (const what of ["connect-src https://wakewright.invalid", "script-src-elem inline", "script-src-attr inline"]) {
      await eventually(async () => complaints.some((text) => text.includes(what)), `the policy forbids ${what}`, 5000);
    }
    await page.context().close();
  });
}
