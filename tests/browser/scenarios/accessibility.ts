import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { openPage, type Stage } from "../openPage";
import { openDetail, profileHash, waitForFigures } from "./pageParts";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** WCAG 2.2 at levels A and AA, target size included, and what axe-core calls best practice. */
const rules = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

interface AxeWindow extends Window {
  axe: {
    run(
      options: object,
    ): Promise<{ violations: { id: string; nodes: { target: unknown; failureSummary?: string }[] }[] }>;
  };
}

function violations(page: Page): Promise<string[]> {
  return page.evaluate(async (values) => {
    const options = { runOnly: { type: "tag", values } };
    const { violations: found } = await (window as unknown as AxeWindow).axe.run(options);
    return found.flatMap(({ id, nodes }) =>
      nodes.map((node) => `${id}: ${JSON.stringify(node.target)} ${node.failureSummary}`),
    );
  }, rules);
}

/** Expects that axe-core finds nothing on the page as it is, in the light and in the dark theme. */
export async function expectAccessible(page: Page): Promise<void> {
  // Not as a script of the page, which its content policy would forbid.
  await page.evaluate(axe);
  for (const theme of ["light", "dark"] as const) {
    await page.getByLabel("Theme").selectOption(theme);
    expect(await violations(page)).toEqual([]);
  }
}

export function accessibilityScenarios(stage: () => Stage): void {
  test("axe-core finds nothing in either theme: workbench with plots, a table, and every dialog", async () => {
    const { page } = await openPage(stage(), { hash: await profileHash() });
    await waitForFigures(page);
    await openDetail(page, "Pressure");
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
