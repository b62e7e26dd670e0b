import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { openPage, type Stage } from "../openPage";
import { profileHash, waitForFigures } from "./pageParts";

const csv = `x_mm;y_mm\n${Array.from({ length: 40 }, (_, i) => {
  const angle = (2 * Math.PI * i) / 40;
  return `${(30 * Math.cos(angle)).toFixed(4)};${(15 * Math.sin(angle)).toFixed(4)}`;
}).join("\n")}`;
const svgFile =
  '<svg xmlns="http://www.w3.org/2000/svg"><path d="M-40 0C-40 -22 40 -22 40 0C40 22 -40 22 -40 0Z"/></svg>';
const dxf = [
  "0,SECTION,2,HEADER,9,$INSUNITS,70,4,0,ENDSEC,0,SECTION,2,ENTITIES",
  "0,LWPOLYLINE,8,0,90,4,70,1,10,-25,20,-15,10,25,20,-15,42,1,10,25,20,15,10,-25,20,15,42,1",
  "0,ENDSEC,0,EOF",
]
  .join(",")
  .replaceAll(",", "\n");

async function offer(page: Page, name: string, text: string): Promise<void> {
  const chooser = page.locator("ww-import-dialog input[type=file]");
  await chooser.setInputFiles({ name, mimeType: "text/plain", buffer: Buffer.from(text) });
}

export function importScenarios(stage: () => Stage): void {
  test("a POLYLINE that never ends and a huge file leave the page alive, and the puck's own corners keep their height", async () => {
    const { page, complaints } = await openPage(stage(), { hash: await profileHash(), plots: false });
    await waitForFigures(page);
    const dialog = page.locator("ww-import-dialog");
    await page.getByRole("button", { name: "Import a contour" }).click();
    const vertices = "0,VERTEX,10,-40,20,-15,0,VERTEX,10,40,20,-15,0,VERTEX,10,40,20,15,0,VERTEX,10,-40,20,15";
    await offer(page, "endless.dxf", `0,SECTION,2,ENTITIES,0,POLYLINE,70,1,${vertices}`.replaceAll(",", "\n"));
    await dialog.locator("p", { hasText: /80 mm along the stream.*, 30 mm across/ }).waitFor();
    await offer(page, "huge.svg", `<svg>${"<path ".repeat(300_000)}`);
    await dialog.locator(".error", { hasText: /could not be read/ }).waitFor();
    const bevels = "-40,10\n-40,-10\n-35,-15\n35,-15\n40,-10\n40,10\n35,15\n-35,15";
    await offer(page, "bevels.csv", bevels);
    await dialog.locator("p", { hasText: /80 mm along the stream.*, 30 mm across/ }).waitFor();
    await dialog.locator("p", { hasText: /8 corners get a radius of 0.3 mm/ }).waitFor();
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  test("a contour comes in from CSV, SVG and DXF with preview and unit; broken ones are refused with the reason", async () => {
    const { page, complaints } = await openPage(stage(), { hash: await profileHash(), plots: false });
    await waitForFigures(page);
    const dialog = page.locator("ww-import-dialog");
    const title = page.locator("ww-section-panel .hint", { hasText: "sides" });
    for (const [name, text, preview] of [
      ["ellipse.csv", csv, /60 mm along the stream.*, 30 mm across/],
      ["lens.svg", svgFile, /80 mm along the stream/],
      ["slot.dxf", dxf, /80 mm along the stream.*, 30 mm across/],
    ] as const) {
      await page.getByRole("button", { name: "Import a contour" }).click();
      await offer(page, name, text);
      await dialog.locator("ww-outline-preview").waitFor();
      await dialog.locator("p", { hasText: preview }).waitFor();
      await dialog.getByRole("button", { name: "Use this contour" }).click();
      await title.filter({ hasText: name.slice(0, -4) }).waitFor();
      await waitForFigures(page);
      expect(await page.locator("ww-answer .fault").textContent()).not.toMatch(/Stale/);
    }
    await page.getByRole("button", { name: "Import a contour" }).click();
    const crossing = "0,0\n10,10\n20,0\n20,10\n10,0\n0,10\n-4,8\n-5,5\n";
    for (const [name, text, reason] of [
      ["bad.csv", "1,2\n3,x\n", /row 2/],
      ["bad.svg", "<svg></svg>", /no shape/],
      ["bad.dxf", "0\nSECTION\n2\nENTITIES\n0\nENDSEC\n0\nEOF", /lines, arcs, circles/],
      ["crossing.csv", crossing, /cross/],
    ] as const) {
      await offer(page, name, text);
      await dialog.locator(".error", { hasText: reason }).waitFor({ timeout: 10_000 });
    }
    expect(complaints).toEqual([]);
    await page.context().close();
  });
}
