import type { Page } from "playwright-core";
import { expect } from "vitest";

/** Waits until the open case has been run to its end. */
export async function waitForCase(page: Page): Promise<void> {
  await page.locator("ww-case-panel [role=status]", { hasText: /results/ }).waitFor({ timeout: 90_000 });
}

/** Waits until the present design is solved. */
export async function waitForFigures(page: Page): Promise<void> {
  await page.locator("ww-key-figures dd").first().waitFor({ timeout: 60_000 });
}

/** The drag coefficient on the screen. */
export async function shownDrag(page: Page): Promise<number> {
  const text = await page.locator("ww-key-figures .lead dd").first().textContent();
  return Number.parseFloat(text ?? "");
}

/** Enters a value in a quantity field, as a person would. */
export async function enter(page: Page, label: string, value: string): Promise<void> {
  const field = page.getByLabel(label, { exact: true }).first();
  await field.fill(value);
  await field.press("Enter");
}

/** Expects an asynchronous reading to become what is asked for. */
export async function eventually(read: () => Promise<boolean>, what: string, patience = 30_000): Promise<void> {
  const end = Date.now() + patience;
  while (Date.now() < end) {
    if (await read()) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  expect.fail(`still not so after ${patience / 1000} s: ${what}`);
}
