import { extractText, getDocumentProxy } from "unpdf";
import { expect, test } from "vitest";
import { openPage, type Stage } from "../openPage";
import { profileHash, shownDrag, waitForFigures } from "./pageParts";

export function reportScenarios(stage: () => Stage): void {
  test("the report prints on one page with drawing, figures on their area, inputs and cautions", async () => {
    const { page } = await openPage(stage(), { hash: await profileHash() });
    await waitForFigures(page);
    await page.evaluate(() => {
      window.print = () => document.body.setAttribute("data-printed", "");
    });
    await page.getByRole("button", { name: "Print report" }).click();
    await page.locator("body[data-printed]").waitFor({ timeout: 60_000 });
    const paper = await page.pdf({ preferCSSPageSize: true, printBackground: true });
    const { totalPages, text } = await extractText(await getDocumentProxy(new Uint8Array(paper)), { mergePages: true });
    expect(totalPages).toBe(1);
    expect(text).toContain((await shownDrag(page)).toFixed(3));
    for (const words of [
      "90 % band",
      "on the area D x span",
      "Edge radius",
      "fresh water at 27",
      "Pressure around the section",
      "Drag over Reynolds number",
      "Screening estimates",
      "Lead is poisonous",
      "1.3 kg",
    ]) {
      expect(text).toContain(words);
    }
    await page.context().close();
  });
}
