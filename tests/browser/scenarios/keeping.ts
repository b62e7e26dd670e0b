import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { openPage, type Stage } from "../openPage";
import { enter, eventually, fieldValue, profileHash, shownDrag, waitForFigures } from "./pageParts";
import { openSmallCase, smallCase } from "./puckParts";

export function keepingScenarios(stage: () => Stage): void {
  test("a link reproduces the screen with its pin in another browser; a reload brings the design back; saved cases reopen", async () => {
    const { page } = await openPage(stage(), { hash: await profileHash(), plots: false });
    await waitForFigures(page);
    await enter(page, "Edge radius", "7");
    await eventually(
      async () => await page.locator("ww-pin-panel button", { hasText: "Pin this design" }).isEnabled(),
      "the design can be pinned",
    );
    await page.getByRole("button", { name: "Pin this design" }).first().click();
    await enter(page, "Edge radius", "11");
    await enter(page, "Stream speed", "2.5");
    await eventually(
      async () => await page.locator("ww-pin-panel button", { hasText: "Pin this design" }).isEnabled(),
      "the new design is solved",
    );
    const drag = await shownDrag(page);

    await page.getByRole("button", { name: "Cases" }).click();
    const cases = page.locator("ww-cases-dialog");
    await cases.getByLabel("Title").fill("Trial edge");
    await cases.getByLabel("Title").press("Enter");
    await cases.getByRole("button", { name: "Save in this browser" }).click();
    await cases.getByText("Saved in this browser as trial-edge.json").waitFor();
    await cases.getByRole("button", { name: "Make a link" }).click();
    const link = await cases.getByLabel("Link to this screen").inputValue();
    expect(link).toContain("#screen=");

    const other = await openPage(stage(), { hash: new URL(link).hash, plots: false });
    await waitForFigures(other.page);
    await eventually(
      async () => (await shownDrag(other.page)) === drag,
      "the linked screen has the same drag coefficient",
    );
    expect(await fieldValue(other.page, "Edge radius")).toBe("11");
    expect(await fieldValue(other.page, "Stream speed")).toBe("2.5");
    await other.page.locator("ww-pin-panel td", { hasText: "this design" }).first().waitFor({ state: "attached" });
    expect(other.complaints).toEqual([]);
    await other.page.context().close();

    await page.keyboard.press("Escape");
    await enter(page, "Stream speed", "3.25");
    await page.waitForTimeout(1200);
    await page.goto(stage().address);
    await page.reload();
    await waitForFigures(page);
    await eventually(async () => (await fieldValue(page, "Stream speed")) === "3.25", "the autosaved design is back");
    await page.getByRole("button", { name: "Cases" }).click();
    await cases.getByRole("button", { name: "Open Trial edge" }).first().click();
    await eventually(async () => (await fieldValue(page, "Stream speed")) === "2.5", "the saved case is open");
    await page.context().close();
  });

  test("a link made in the puck view opens there with its puck and the section; a save from there holds both and keeps the note", async () => {
    const { page } = await openPage(stage(), { hash: await profileHash(), plots: false });
    await openSmallCase(page);
    const thickness = (of: Page) =>
      of.locator('ww-puck-panel ww-quantity-field[data-key="whole.thicknessMetres"] input');
    await thickness(page).fill("29");
    await thickness(page).press("Enter");
    await page.getByRole("button", { name: "Undo" }).click();
    await eventually(async () => (await thickness(page).inputValue()) !== "29", "undo acts on the puck");
    await page.getByRole("button", { name: "Redo" }).click();
    await page.getByRole("button", { name: "Cases" }).click();
    const cases = page.locator("ww-cases-dialog");
    await cases.getByLabel("Title").fill("Link trial");
    await cases.getByLabel("Title").press("Enter");
    await cases.getByRole("button", { name: "Make a link" }).click();
    const link = await cases.getByLabel("Link to this screen").inputValue();

    const other = await openPage(stage(), { hash: new URL(link).hash, plots: false });
    await other.page.locator("ww-masthead .title", { hasText: "Link trial" }).waitFor({ timeout: 30_000 });
    await eventually(async () => (await thickness(other.page).inputValue()) === "29", "the linked puck is shown");
    await other.page.getByRole("button", { name: "Section", exact: true }).click();
    await waitForFigures(other.page);
    expect(await fieldValue(other.page, "Edge radius")).toBe("6");
    expect(other.complaints).toEqual([]);
    await other.page.context().close();

    await cases.getByRole("checkbox", { name: "Section" }).check();
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      cases.getByRole("button", { name: "Download case file" }).click(),
    ]);
    const saved = JSON.parse(readFileSync(await download.path(), "utf8"));
    expect(saved).toMatchObject({
      title: "Link trial",
      note: JSON.parse(smallCase).note,
      speedsMetresPerSecond: [1, 3],
      sections: [{ edgeRadiusMetres: 0.006 }],
      workingPoint: { speedMetresPerSecond: 3 },
      puck: { candidates: [{ puck: { thicknessMetres: 0.029 } }] },
    });
    await page.context().close();
  });

  test("where the browser keeps nothing, the page says so plainly and works on", async () => {
    const { page } = await openPage(stage(), { hash: await profileHash(), plots: false });
    await page.addInitScript(() => Object.defineProperty(window, "indexedDB", { value: undefined }));
    await page.reload();
    await waitForFigures(page);
    await enter(page, "Stream speed", "2");
    await page.locator("ww-notice-area", { hasText: "does not let this page keep data" }).waitFor({ timeout: 20_000 });
    await page.context().close();
  });

  test("where the browser's storage is full, autosave and saving say so and what is kept already still opens", async () => {
    const { page } = await openPage(stage(), { hash: await profileHash(), plots: false });
    await waitForFigures(page);
    await page.getByRole("button", { name: "Cases" }).click();
    const cases = page.locator("ww-cases-dialog");
    await cases.getByRole("button", { name: "Save in this browser" }).click();
    await cases.getByText("Saved in this browser as").waitFor();
    await page.addInitScript(() => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException("No room is left.", "QuotaExceededError");
      };
    });
    await page.reload();
    await waitForFigures(page);
    await enter(page, "Stream speed", "2");
    await page.locator("ww-notice-area", { hasText: "storage is full" }).waitFor({ timeout: 20_000 });
    await page.getByRole("button", { name: "Cases" }).click();
    await cases.getByRole("button", { name: "Save in this browser" }).click();
    await cases.getByText("Not saved").waitFor();
    await cases
      .getByRole("button", { name: /^Open / })
      .first()
      .click();
    await eventually(async () => (await fieldValue(page, "Stream speed")) !== "2", "the kept case is open");
    await page.context().close();
  });

  test("a damaged link and a broken case file are told in plain words and run no script", async () => {
    const { page } = await openPage(stage(), { hash: "#screen=not-a-screen", plots: false });
    await page.locator("ww-notice-area", { hasText: "link is damaged" }).waitFor();
    await waitForFigures(page);
    const chooser = page.locator("ww-case-panel input[type=file]");
    const hostile = '{"wakewrightCase":1,"title":"<img src=x onerror=document.title=1>","extra":1,"sections":[]}';
    await chooser.setInputFiles({ name: "hostile.json", mimeType: "application/json", buffer: Buffer.from(hostile) });
    const faults = page.locator("ww-case-panel ul.error li");
    await faults.first().waitFor();
    expect((await faults.allTextContents()).join("\n")).toMatch(/extra is not a known key/);
    await chooser.setInputFiles({ name: "no.json", mimeType: "application/json", buffer: Buffer.from("hello") });
    await page.locator("ww-case-panel ul.error li", { hasText: "not a JSON document" }).waitFor();
    expect(await page.title()).toBe("Wakewright");
    await page.context().close();
  });
}
