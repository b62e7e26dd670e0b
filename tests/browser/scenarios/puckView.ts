import { readFileSync } from "node:fs";
import { inflateRawSync } from "node:zlib";
import type { Download, Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import { readRuleSet } from "../../../shared/jobs/puck/rules/ruleSet";
import { openPage, type Stage } from "../openPage";
import { expectAccessible } from "./accessibility";
import { enter, eventually, profileHash } from "./pageParts";
import { openPuckView, openSmallCase } from "./puckParts";

function figure(page: Page, key: string, column: number): Promise<string | null> {
  return page.locator(`ww-puck-figures tr[data-figure=${key}] td`).nth(column).textContent();
}

function puckField(page: Page, key: string): Locator {
  return page.locator(`ww-puck-panel ww-quantity-field[data-key="${key}"]`);
}

async function bytesOf(page: Page, button: Locator): Promise<{ name: string; bytes: Buffer }> {
  const [download] = await Promise.all([page.waitForEvent("download") as Promise<Download>, button.click()]);
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}

export function puckViewScenarios(stage: () => Stage): void {
  test("puck view: opens, an edited dimension changes mass, drawing and a rule's verdict; an impossible one is told beside its field", async () => {
    const { page, complaints } = await openPage(stage(), { hash: await profileHash(), plots: false });
    await openSmallCase(page);
    await eventually(async () => (await figure(page, "diameterMetres", 4)) === "✓ pass", "the diameter is inside");
    const mass = await figure(page, "massKilograms", 0);
    await puckField(page, "whole.diameterMetres").locator("input").fill("84");
    await eventually(async () => (await figure(page, "diameterMetres", 4)) === "✗ fail", "a diameter of 84 mm fails");
    expect(await figure(page, "diameterMetres", 0)).toBe("84\u00a0mm");
    expect(await figure(page, "massKilograms", 0)).not.toBe(mass);
    await page.locator("ww-puck-drawing text", { hasText: "⌀ 84" }).waitFor();
    await page.locator("ww-puck-rules li[data-figure=diameterMetres]", { hasText: "84 mm is outside" }).waitFor();

    await puckField(page, "edge.edgeRadiusMetres").locator("input").fill("18");
    await puckField(page, "edge.edgeRadiusMetres")
      .locator(".error", { hasText: "exceeds half the thickness" })
      .waitFor();
    await page.locator("ww-puck-figures .state", { hasText: "Stale" }).waitFor();
    expect(await figure(page, "diameterMetres", 0)).toBe("84\u00a0mm");
    await page.getByRole("button", { name: "Undo" }).click();
    await eventually(
      async () => !((await page.locator("ww-puck-figures .state").textContent()) ?? "").includes("Stale"),
      "undo brings a puck back that can be made",
    );

    await puckField(page, "whole.diameterMetres").locator("input").fill("82.9");
    await eventually(
      async () => (await figure(page, "diameterMetres", 4)) === "△ only if made better",
      "82.9 mm within 0.3 mm reaches beyond 83 mm",
    );
    await page.locator("ww-puck-rules ww-quantity-field[data-key=diameterMetres] input").fill("0.05");
    await eventually(async () => (await figure(page, "diameterMetres", 4)) === "✓ pass", "a better tolerance passes");
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  test("puck view: the core is sized for a wanted mass; another rules file is read, a broken one is refused in words", async () => {
    const { page, complaints } = await openPage(stage(), { hash: await profileHash(), plots: false });
    await openSmallCase(page);
    const rules = page.locator("ww-puck-rules");
    await rules.getByLabel("Wanted mass").fill("1.21");
    await rules.getByRole("button", { name: "Size the core" }).click();
    await eventually(async () => (await figure(page, "massKilograms", 0)) === "1.21\u00a0kg", "the mass is 1.21 kg");
    const chooser = rules.locator("input[type=file]");
    const own = {
      wakewrightRules: 1,
      name: "Own rules",
      date: "2026-04-01",
      invented: true,
      ranges: { massKilograms: { to: 1.2 } },
    };
    expect(readRuleSet(JSON.stringify(own), "own").ok).toBe(true);
    await chooser.setInputFiles({
      name: "own.json",
      mimeType: "application/json",
      buffer: Buffer.from(JSON.stringify(own)),
    });
    await rules.getByText("Own rules").first().waitFor();
    await eventually(async () => (await figure(page, "massKilograms", 4)) === "✗ fail", "1.21 kg fails 1.2 kg");
    await chooser.setInputFiles({ name: "no.json", mimeType: "application/json", buffer: Buffer.from('{"name":1}') });
    await rules.locator("ul.error li").first().waitFor();
    expect(await rules.locator("ul.error").textContent()).toContain("wakewrightRules");
    await rules.getByText("Own rules").first().waitFor();
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  test("puck view: drag in every attitude names its area and its trust; index, motions and their plots appear", async () => {
    const { page, complaints } = await openPage(stage(), { hash: await profileHash() });
    await openPuckView(page);
    const drag = page.locator("ww-puck-drag");
    await drag.locator("tr[data-orientation=upright]").first().waitFor({ timeout: 60_000 });
    expect(await drag.locator("tr[data-orientation=upright]").first().textContent()).toMatch(
      /\(.* to .*\).*frontal area edge-on/s,
    );
    expect(await drag.locator("tr[data-orientation=faceOn]").first().textContent()).toContain("face area");
    expect(await drag.locator("tr[data-orientation=tilted]").count()).toBeGreaterThan(0);
    expect(await drag.locator(".notes").textContent()).toMatch(/No measured drag .* below length\/diameter 1/);
    expect(await drag.locator(".verdict").first().textContent()).toMatch(/band/);
    for (const id of ["plot-puck-drag", "plot-puck-slide", "plot-puck-flick", "plot-puck-sink"]) {
      const plot = page.locator(`#${id}`);
      await plot.scrollIntoViewIfNeeded();
      await plot.locator(".scatterlayer .trace").first().waitFor({ state: "attached", timeout: 60_000 });
      expect(await plot.locator(".xtitle").textContent()).toMatch(/\((m\/s|s|m)\)/);
    }
    const slide = page.locator("#plot-puck-slide");
    const distance = page
      .locator("ww-puck-motion table.results", { hasText: "distance to rest" })
      .locator("tbody tr td")
      .first();
    const before = await distance.textContent();
    expect(before).toMatch(/ m \(.* to .* m\)/);
    await enter(page, "Speed at the start", "2");
    await eventually(async () => (await distance.textContent()) !== before, "a slower slide is shorter");
    await page.getByRole("button", { name: "Add a slide" }).click();
    const second = page.locator("ww-puck-motion [data-motion]").last();
    await second.getByLabel("Speed at the start", { exact: true }).fill("4");
    await second.getByLabel("Speed at the start", { exact: true }).press("Enter");
    const secondDistance = second.locator("tr", { hasText: "distance to rest" }).locator("td").first();
    await secondDistance.waitFor({ timeout: 60_000 });
    const metres = async (cell: Locator) => Number.parseFloat((await cell.textContent()) ?? "");
    await eventually(
      async () => (await metres(secondDistance)) > (await metres(distance)),
      "the second slide is faster and longer",
    );
    await second.getByRole("button", { name: "Remove" }).click();
    await eventually(async () => (await secondDistance.count()) === 0, "the second slide is gone");
    await slide.getByRole("button", { name: "Table of" }).click();
    expect(await slide.locator("tbody tr").count()).toBeGreaterThan(100);
    await page.locator("ww-puck-cautions", { hasText: "Lead is poisonous" }).waitFor();
    await page.locator("ww-puck-cautions", { hasText: "injures" }).waitFor();
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  test("puck view: a trade-off runs, pauses, goes on after a reload, and is cancelled; another ends with its front, a verdict and sensitivities", async () => {
    const { page, complaints } = await openPage(stage(), { hash: await profileHash(), plots: false });
    await openSmallCase(page);
    const panel = page.locator("ww-puck-tradeoff");
    const status = panel.locator("[role=status]").first();
    const done = async () => Number.parseInt((await status.textContent()) ?? "", 10);
    await panel.getByRole("button", { name: "Start the search" }).click();
    await eventually(async () => (await done()) >= 2, "pucks come in", 90_000);
    await panel.getByRole("button", { name: "Pause" }).click();
    await status.filter({ hasText: "paused" }).waitFor();
    await page.waitForTimeout(2500);
    const paused = await done();
    await page.reload();
    await page.getByRole("button", { name: "Puck", exact: true }).click();
    await status.filter({ hasText: "paused" }).waitFor({ timeout: 30_000 });
    expect(await done()).toBeGreaterThanOrEqual(2);
    await panel.getByRole("button", { name: "Go on" }).click();
    await eventually(async () => (await done()) > paused, "the search goes on", 90_000);
    await panel.getByRole("button", { name: "Cancel the search" }).click();
    await status.filter({ hasText: "cancelled; the pucks so far are kept" }).waitFor();

    await panel.getByLabel("Pucks in a generation").fill("4");
    await panel.getByLabel("Generations").fill("1");
    await panel.getByRole("button", { name: "Start the search" }).click();
    await status.filter({ hasText: "done in" }).waitFor({ timeout: 90_000 });
    await panel.locator(".front tbody tr").first().waitFor();
    await panel.getByRole("button", { name: "Look at number 1", exact: false }).first().click();
    const verdict = panel.locator("ww-puck-member .verdict");
    await verdict.waitFor({ timeout: 90_000 });
    expect(await verdict.textContent()).toMatch(/baseline/);
    expect(await panel.locator("ww-puck-member thead").textContent()).toContain("made 0.5 mm smaller");
    expect(await panel.locator("ww-puck-member tbody tr").count()).toBeGreaterThan(5);
    await panel.getByRole("button", { name: "Work on it" }).click();
    await eventually(
      async () => ((await page.locator("ww-puck-figures thead").textContent()) ?? "").includes("Front 1"),
      "the member is worked on",
    );
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  test("puck view: every hand-off file is downloaded and holds the puck of the screen", async () => {
    const { page, complaints } = await openPage(stage(), { hash: await profileHash(), plots: false });
    await openSmallCase(page);
    await puckField(page, "whole.diameterMetres").locator("input").fill("81");
    await eventually(async () => (await figure(page, "diameterMetres", 0)) === "81\u00a0mm", "81 mm");
    const handoff = page.locator("ww-puck-handoff");
    const file = (kind: string) => bytesOf(page, handoff.locator(`button[data-ending="${kind}"]`));
    const csv = (await file("-profile.csv")).bytes.toString();
    const xs = csv
      .split("\n")
      .slice(1)
      .map((line) => Number(line.split(",")[0]))
      .filter(Number.isFinite);
    expect(Math.max(...xs)).toBeCloseTo(40.5, 6);
    expect((await file("-profile.dxf")).bytes.toString()).toContain("LWPOLYLINE");
    expect((await file("-profile.svg")).bytes.toString()).toMatch(/width="85mm"/);
    const stl = await file("-solid.stl");
    expect(stl.name).toMatch(/-solid\.stl$/);
    expect(stl.bytes.length).toBe(84 + 50 * stl.bytes.readUInt32LE(80));
    const model = await file("-solid.3mf");
    const at = model.bytes.indexOf("3D/3dmodel.model");
    const [packed, nameLength, extraLength] = [
      model.bytes.readUInt32LE(at - 12),
      model.bytes.readUInt16LE(at - 4),
      model.bytes.readUInt16LE(at - 2),
    ];
    const start = at + nameLength + extraLength;
    expect(inflateRawSync(model.bytes.subarray(start, start + packed)).toString()).toContain(
      '<model unit="millimeter"',
    );
    expect((await file("-drawing.svg")).bytes.toString()).toContain("⌀81 ± 0.3");
    const brief = (await file("-profile-brief.txt")).bytes.toString();
    expect(brief).toContain("profile section");
    expect(brief).toMatch(/First cell for y\+ 1/);
    const saved = await bytesOf(page, page.locator("ww-puck-case").getByRole("button", { name: "Save as a file" }));
    await puckField(page, "whole.diameterMetres").locator("input").fill("79");
    await eventually(async () => (await figure(page, "diameterMetres", 0)) === "79\u00a0mm", "79 mm");
    await page
      .locator("ww-puck-case input[type=file]")
      .setInputFiles({ name: "saved.json", mimeType: "application/json", buffer: saved.bytes });
    await eventually(async () => (await figure(page, "diameterMetres", 0)) === "81\u00a0mm", "the saved case is back");
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  test("puck view: axe-core finds nothing in the light and the dark theme, and nothing is wider than a phone of 360 px", async () => {
    const { page } = await openPage(stage(), { hash: await profileHash(), plots: false });
    await openSmallCase(page);
    await page.locator("ww-puck-drag tr[data-orientation=upright]").first().waitFor({ timeout: 60_000 });
    await page.getByLabel("Kind of faces").selectOption("radialGrooves");
    await page.locator("#plot-puck-drag").getByRole("button", { name: "Table of" }).click();
    await expectAccessible(page);
    await page.setViewportSize({ width: 360, height: 740 });
    const wider = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(wider).toBe(0);
    await page.context().close();
  });

  test("puck view: by keyboard alone a dimension is changed and undone, a motion's plot is read as a table, and the report is asked for", async () => {
    const { page } = await openPage(stage(), { hash: await profileHash(), plots: false });
    await openSmallCase(page);
    await page.evaluate(() => {
      window.print = () => document.body.setAttribute("data-printed", "");
    });
    const focused = () =>
      page.evaluate(() => {
        let element = document.activeElement;
        while (element?.shadowRoot?.activeElement) element = element.shadowRoot.activeElement;
        const outline = element === null ? "" : getComputedStyle(element).outlineStyle;
        return { text: element?.textContent?.trim() ?? "", id: element?.id ?? "", outline };
      });
    /** Tabs on until something that fits has the focus, visibly. */
    const tabTo = async (fits: (on: { text: string; id: string }) => boolean, what: string) => {
      for (let k = 0; k < 250; k++) {
        await page.keyboard.press("Tab");
        const on = await focused();
        if (!fits(on)) continue;
        expect(on.outline, `${what} shows its focus`).not.toBe("none");
        return;
      }
      expect.fail(`the Tab key never came to ${what}`);
    };
    const before = await figure(page, "diameterMetres", 0);
    await page.locator("ww-puck-panel #name").focus();
    await tabTo(({ id }) => id === "number", "the diameter");
    await page.keyboard.press("Control+a");
    await page.keyboard.type("81");
    await page.keyboard.press("Enter");
    await eventually(async () => (await figure(page, "diameterMetres", 0)) === "81\u00a0mm", "the diameter is 81 mm");
    await tabTo(({ id }) => id === "edge", "the kind of edge");
    await page.keyboard.press("Control+z");
    await eventually(async () => (await figure(page, "diameterMetres", 0)) === before, "the key undoes on the puck");

    await page.locator("ww-puck-drag table tbody tr").first().waitFor({ timeout: 100_000 });
    await tabTo(({ text }) => text.startsWith("Table of Slide"), "the table of the slide's plot");
    await page.keyboard.press("Enter");
    await page.locator("#plot-puck-slide tbody tr").first().waitFor();

    await page.getByRole("button", { name: "Undo" }).focus();
    await tabTo(({ text }) => text === "Print report", "the report");
    await page.keyboard.press("Enter");
    await page.locator("body[data-printed]").waitFor({ timeout: 60_000 });
    await page.context().close();
  });
}
