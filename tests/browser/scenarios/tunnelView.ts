import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { runCase } from "../../../shared/case/caseSteps";
import { readRunTable } from "../../../shared/jobs/tunnel/runTable";
import type { TunnelResult } from "../../../shared/jobs/tunnel/tunnelResult";
import { readCsvTable } from "../../../shared/tables/csvTable";
import { openCaseFile } from "../../../src/cli/openCaseFile";
import { openPage, type PageChoice, type Stage, type WatchedPage } from "../openPage";
import { expectAccessible } from "./accessibility";
import { eventually, expectFitsAPhone, printedReport, profileHash, waitForFigures } from "./pageParts";
import { correlateParts, takeMappedTraverse } from "./tunnelParts";

/** A demo as the command line works it out. */
function commandLineResult(name: string): TunnelResult {
  const opened = openCaseFile(`cases/${name}`, name);
  if (!opened.ok) throw new Error(opened.problem.message);
  const { tunnel } = runCase(opened.value.theCase);
  if (tunnel === undefined) throw new Error("no tunnel result");
  return tunnel;
}

/** Opens the view on the demo of a puck and waits until its runs are reduced. */
async function openTunnelView(stage: Stage, choice: PageChoice = {}): Promise<WatchedPage> {
  const watched = await openPage(stage, { hash: await profileHash(), ...choice });
  await waitForFigures(watched.page);
  await showView(watched.page);
  await watched.page.locator("#points-table tbody tr").first().waitFor({ timeout: 60_000 });
  return watched;
}

async function showView(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Tunnel", exact: true }).click();
}

/** Drag coefficients and uncertainties of the table of points. */
async function shownPoints(page: Page): Promise<string[]> {
  const rows = await page.locator("#points-table tbody tr").all();
  return Promise.all(rows.map(async (row) => (await row.locator("td").allTextContents()).slice(3, 5).join(" ")));
}

function pointTexts({ reduction }: TunnelResult): string[] {
  return (reduction?.points ?? []).map(
    ({ dragCoefficient, firstOrder }) => `${dragCoefficient.toFixed(4)} ${firstOrder.expandedUncertainty.toFixed(4)}`,
  );
}

export function tunnelViewScenarios(stage: () => Stage): void {
  test("tunnel view: figures of both demos are the command line's; what is not allowed stays in its field; undo and a reload bring work back", async () => {
    const { page, complaints } = await openTunnelView(stage(), { plots: false });
    expect(await shownPoints(page)).toEqual(pointTexts(commandLineResult("harbour-tunnel.json")));
    expect(await page.locator("ww-tunnel-results").textContent()).toContain("Maskell (1963): outside its range");

    const roughness = page.locator("#tunnel-facility-turbulencePercent");
    await roughness.fill("55");
    await roughness.press("Enter");
    await page.locator("ww-tunnel-setup .error", { hasText: "is 55; it must be a number from 0 to 20 %" }).waitFor();
    expect(await roughness.inputValue()).toBe("55");
    await roughness.fill("1,0");
    await roughness.press("Enter");
    await eventually(
      async () => !(await page.locator("ww-tunnel-similarity").textContent())?.includes("a grid ahead of the model"),
      "the tunnel's turbulence matches",
    );
    await correlateParts(page);

    await page.getByRole("button", { name: "Demo: a section between walls" }).click();
    await page.locator("#wake-table").waitFor({ timeout: 60_000 });
    const section = commandLineResult("harbour-tunnel-section.json");
    await eventually(
      async () => (await shownPoints(page)).length === section.reduction?.points.length,
      "the section's points",
    );
    expect(await shownPoints(page)).toEqual(pointTexts(section));
    const wake = await page.locator("#wake-table tbody td").allTextContents();
    expect(wake[0]).toBe(section.wakeSurvey?.drags[0].dragCoefficient.toFixed(4));
    await page.getByRole("button", { name: "Undo" }).click();
    await eventually(async () => (await page.locator("#tunnel-title").inputValue()).includes("puck edge-on"), "undo");
    await page.getByRole("button", { name: "Redo" }).click();
    await page.waitForTimeout(800);
    await page.reload();
    await waitForFigures(page);
    await showView(page);
    await page.locator("#wake-table").waitFor({ timeout: 60_000 });
    await takeMappedTraverse(page, Number(wake[0]));
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  test("tunnel view: the run sheet comes back without a mapping, a bad table is told by row and column beside its cells and is not lost, another logger's table is mapped; a section is taken without its floor, which is said", async () => {
    const hash = await profileHash([], { floorGap: 0.005 });
    const { page, complaints } = await openTunnelView(stage(), { plots: false, hash });
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save the run sheet as CSV" }).click(),
    ]);
    const chunks: Buffer[] = [];
    for await (const chunk of await download.createReadStream()) chunks.push(chunk as Buffer);
    const sheet = Buffer.concat(chunks).toString("utf8");
    const lines = sheet.trimEnd().split("\r\n");
    // Filled in as by hand: speed as aimed at, force as speed squared.
    const filled = lines.map((line, i) => {
      if (i === 0) return line;
      const cells = line.split(",");
      const speed = Number(cells[3]);
      cells[6] = speed > 0 ? String(speed) : "";
      cells[11] = (0.001 * speed * speed).toFixed(4);
      return cells.join(",");
    });
    const parsed = readCsvTable(filled.join("\n"));
    if (!parsed.ok) throw new Error(parsed.problem.message);
    expect(readRunTable(parsed.value, {}, null).problems).toEqual([]);
    const file = page.locator("ww-tunnel-view .is-data input[type=file]");
    await file.setInputFiles({ name: "sheet.csv", mimeType: "text/csv", buffer: Buffer.from(filled.join("\r\n")) });
    await page
      .locator("ww-tunnel-view .is-data .reading", {
        hasText: `${lines.length - 1} of ${lines.length - 1} rows are used`,
      })
      .waitFor();
    expect(await page.locator("ww-tunnel-view .is-data .error").count()).toBe(0);

    const logger =
      "\uFEFFArt;Kraft [N];v (km/h);T [K]\r\nzero;0,01;;293,15\r\nmodel;0,81;108;293,15\r\nmodel;0.99;108;293,15\r\nmodel;0,80;108,5;x\r\n";
    await file.setInputFiles({ name: "logger.csv", mimeType: "text/csv", buffer: Buffer.from(logger) });
    const errors = page.locator("ww-tunnel-view .is-data .reading .error");
    await errors
      .filter({ hasText: "no column holds forceNewtons; the columns are Art, Kraft [N], v (km/h), T [K]" })
      .waitFor();
    await page.locator("#runs-map-forceNewtons").selectOption("Kraft [N]");
    await page.locator("#runs-map-kind").selectOption("Art");
    await errors.filter({ hasText: 'row 4, column Kraft [N]: "0.99" has a point' }).waitFor();
    await errors.filter({ hasText: 'row 5, column T [K]: "x" is not a number' }).waitFor();
    expect(await page.locator("#runs-preview td.is-wrong").count()).toBe(2);
    expect(await page.locator("#tunnel-runs").inputValue()).toContain("model;0.99;108;293,15");
    await page.locator("#tunnel-runs").fill(logger.slice(1).replace("0.99", "0,79").replace(";x", ";293,2"));
    await page.locator("#tunnel-runs").blur();
    await page
      .locator("ww-tunnel-view .is-data .reading", { hasText: "4 of 4 rows are used; decimal mark: comma" })
      .waitFor();
    await eventually(async () => (await shownPoints(page)).length === 1, "the mapped table is reduced");
    await page.getByLabel("Use row 4").uncheck();
    await page.locator("ww-tunnel-view .is-data .reading", { hasText: "Left out on purpose: row 4" }).waitFor();

    await page.locator("#tunnel-runs").fill("a,a\n1,2\n");
    await page.locator("#tunnel-runs").blur();
    await page.locator("ww-tunnel-view .is-data .error", { hasText: 'the column name "a" stands twice' }).waitFor();
    expect(await page.locator("#tunnel-runs").inputValue()).toBe("a,a\n1,2\n");

    const leftOut = page.locator("#tunnel-left-out");
    expect(await leftOut.textContent()).toBe("");
    await page.getByRole("button", { name: "Take the section view's design" }).click();
    await leftOut.filter({ hasText: "Left out of the section view's design: the floor 5 mm below it." }).waitFor();
    await page.getByRole("button", { name: "Undo" }).click();
    await eventually(async () => (await leftOut.textContent()) === "", "undo takes the words away with the section");
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  test("tunnel view: axe-core finds nothing in both themes, a phone shows it all, and the report has figures, budget and cautions", async () => {
    const { page } = await openTunnelView(stage());
    for (const plot of ["#plot-tunnel-drag", "#plot-tunnel-budget"]) {
      await page.locator(plot).scrollIntoViewIfNeeded();
      await page.locator(`${plot} .scatterlayer .trace`).first().waitFor({ state: "attached", timeout: 60_000 });
    }
    await page.locator("#plot-tunnel-drag").getByRole("button", { name: "Table of" }).click();
    await page.locator("ww-tunnel-view .is-data summary").click();
    await page.getByRole("button", { name: "Add a correlation" }).click();
    await expectAccessible(page);
    const [first] = await shownPoints(page);
    const { totalPages, text: words } = await printedReport(page);
    expect(totalPages).toBeLessThanOrEqual(6);
    for (const part of [
      "puck edge-on in a wind tunnel (invented data)",
      first.split(" ")[0],
      "Where the uncertainty comes from",
      "Drag of Harbour baseline in the tunnel",
      "A model that comes off its support is a projectile",
    ]) {
      expect(words).toContain(part);
    }
    expect(words).not.toContain("Choose a CSV file");
    await expectFitsAPhone(page);
    await page.context().close();
  });
}
