import type { Page } from "playwright-core";
import { extractText, getDocumentProxy } from "unpdf";
import { expect } from "vitest";
import { type Design, demoDesign } from "../../../shared/case/design";
import { caseText } from "../../../src/app/files/caseText";
import { screenHash } from "../../../src/app/files/screenLink";

/** Waits until the open case has been run to its end. */
export async function waitForCase(page: Page): Promise<void> {
  await page.locator("ww-case-panel [role=status]", { hasText: /results/ }).waitFor({ timeout: 90_000 });
}

/** Waits until the present design is solved. */
export async function waitForFigures(page: Page): Promise<void> {
  await page.locator("ww-answer .sentence b").first().waitFor({ timeout: 60_000 });
}

/** Opens one of the parts below the desk, which shows one at a time. */
export async function openDetail(page: Page, label: string): Promise<void> {
  const tab = page.locator("ww-detail-tabs").getByRole("button", { name: label, exact: true });
  if ((await tab.getAttribute("aria-expanded")) !== "true") await tab.click();
}

/** The drag coefficient as computed, from the numbers below the desk. */
export async function shownDrag(page: Page): Promise<number> {
  const figure = page.locator("ww-key-figures .lead dd").first();
  return figure.evaluate((cell) => {
    const number = [...cell.childNodes].find(
      ({ nodeType, textContent }) => nodeType === Node.TEXT_NODE && textContent?.trim(),
    );
    return Number.parseFloat(number?.textContent ?? "");
  });
}

/** What a quantity field shows. */
export function fieldValue(page: Page, label: string): Promise<string> {
  return page.getByLabel(label, { exact: true }).first().inputValue();
}

/**
 * The part of an address that opens the page on a profile section of 80 x 30 mm, edge radius 6 mm, without any case.
 * @param pinnedRadii edge radii of designs that are pinned beside it, m
 * @param change what else its designs have
 */
export async function profileHash(pinnedRadii: readonly number[] = [], change: Partial<Design> = {}): Promise<string> {
  const profile = (edgeRadius: number) =>
    caseText({
      ...demoDesign,
      section: { family: "roundedRectangle", length: 0.08, height: 0.03, edgeRadius },
      ...change,
    });
  const screen = JSON.stringify({
    design: profile(0.006),
    pins: pinnedRadii.map(profile),
    positionMeasure: "angle",
  });
  const hash = await screenHash({ version: 1, view: "section", parts: { section: screen } });
  if (!hash.ok) throw new Error(hash.problem.message);
  return hash.value;
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

/** Prints the shown view's report to PDF. @returns its pages and text */
export async function printedReport(page: Page): Promise<{ readonly totalPages: number; readonly text: string }> {
  await page.evaluate(() => {
    window.print = () => document.body.setAttribute("data-printed", "");
  });
  await page.getByRole("button", { name: "Print report" }).click();
  await page.locator("body[data-printed]").waitFor({ timeout: 60_000 });
  const paper = await page.pdf({ preferCSSPageSize: true, printBackground: true });
  const { totalPages, text } = await extractText(await getDocumentProxy(new Uint8Array(paper)), { mergePages: true });
  return { totalPages, text: text.replace(/\s+/g, " ") };
}

/** Makes the page as narrow as a phone and waits until nothing is wider than it. */
export async function expectFitsAPhone(page: Page): Promise<void> {
  await page.setViewportSize({ width: 360, height: 740 });
  const wider = () => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  await eventually(async () => (await wider()) === 0, "nothing is wider than a phone");
}
