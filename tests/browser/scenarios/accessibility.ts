import { createRequire } from "node:module";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { openPage, type Stage } from "../openPage";
import { profileHash, waitForFigures } from "./pageParts";

const axePath = createRequire(import.meta.url).resolve("axe-core/axe.min.js");

interface AxeWindow extends Window {
  axe: { run(): Promise<{ violations: { id: string; nodes: { target: unknown; failureSummary?: string }[] }[] }> };
}

function violations(page: Page): Promise<string[]> {
  return page.evaluate(async () => {
    const { violations: found } = await (window as unknown as AxeWindow).axe.run();
    return found.flatMap(({ id, nodes }) =>
      nodes.map((node) => `${id}: ${JSON.stringify(node.target)} ${node.failureSummary}`),
    );
  });
}

/** Expects that axe-core finds nothing on the page as it is, in the light and in the dark theme. */
export async function expectAccessible(page: Page): Promise<void> {
  await page.addScriptTag({ path: axePath });
  for (const theme of ["light", "dark"] as const) {
    await page.getByLabel("Theme").selectOption(theme);
    expect(await violations(page)).toEqual([]);
  }
}

export function accessibilityScenarios(stage: () => Stage): void {
  test("axe-core finds nothing in either theme: workbench with plots, a table, and every dialog", async () => {
    const { page } = await openPage(stage(), { hash: await profileHash() });
    await waitForFigures(page);
    const plot = page.locator("#plot-pressure");
    await plot.scrollIntoViewIfNeeded();
    await plot.locator(".scatterlayer .trace").first().waitFor({ state: "attached", timeout: 60_000 });
    await plot.getByRole("button", { name: "Table of" }).click();
    await expectAccessible(page);
    for (const theme of ["light", "dark"] as const) {
      await page.getByLabel("Theme").selectOption(theme);
      for (const name of ["Cases", "Glossary", "Guide", "Import a contour"]) {
        await page.getByRole("button", { name }).first().click();
        await page.locator("dialog[open]").waitFor();
        expect(await violations(page)).toEqual([]);
        await page.keyboard.press("Escape");
      }
    }
    await page.context().close();
  });
}
