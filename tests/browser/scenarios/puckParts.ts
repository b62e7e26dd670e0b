import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";

/** Opens the puck view and waits until the candidate's figures are there. */
export async function openPuckView(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Puck", exact: true }).click();
  await page.locator("ww-puck-figures tbody tr").first().waitFor({ timeout: 60_000 });
}

/** A case of one candidate at two speeds: quick to solve, unlike the demo with its many pucks. */
export const smallCase = (() => {
  const demo = JSON.parse(readFileSync("cases/harbour-league-candidates.json", "utf8"));
  const { puck } = demo;
  const [candidate] = puck.candidates;
  return JSON.stringify({
    ...demo,
    title: "Small case",
    speedsMetresPerSecond: [1, 3],
    turbulencePercents: [1],
    puck: {
      ...puck,
      candidates: [candidate],
      play: { ...puck.play, indexSpeedsMetresPerSecond: [1, 3], tiltDegrees: [30] },
      solving: { panelCount: 80, chordRatios: [1] },
    },
  });
})();

/** Opens the puck view on the small case. */
export async function openSmallCase(page: Page): Promise<void> {
  await openPuckView(page);
  await page
    .locator("ww-puck-case input[type=file]")
    .setInputFiles({ name: "small.json", mimeType: "application/json", buffer: Buffer.from(smallCase) });
  await page.locator("ww-masthead .title", { hasText: "Small case" }).waitFor();
}
