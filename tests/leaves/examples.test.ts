import { expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";
import "../../src/app/components/gallery/gallery";
import "../../src/app/components/tour/tour";
import type { TourState } from "../../src/app/tour/tourState";
import { tourStart, tourStops } from "../../src/app/tour/tourStops";
import { createSolver } from "../../workers/solverApi";
import { heard, mount, words } from "./mount";

const solver = createSolver();
const request = { section: { family: "circle", diameter: 0.1 }, panelCount: 80, reynolds: 5e4, ...tourStart } as const;
const curve = await solver.sketchCurve(request, [1e4, 1e5, 6e5]);
const flow = await solver.solveNow(request, "quick");
if (!curve.ok || !flow.ok) throw new Error("the cylinder is not solved");

test("ww-gallery opens an example and the tour with one click each", async () => {
  const gallery = await mount("ww-gallery");
  const [opened, dialogs] = [heard(gallery, "gallery-open"), heard(gallery, "open-dialog")];
  await userEvent.click(page.getByRole("button", { name: /blind player trial/ }));
  await userEvent.click(page.getByRole("button", { name: /in six stops/ }));
  expect([opened, dialogs]).toEqual([["harbour-trial.json"], ["tour"]]);
});

test("ww-tour tells a stop with its computed figures, moves by button and key, and sends its sliders", async () => {
  const tour: TourState = {
    stream: tourStart,
    stop: 0,
    curve: curve.value,
    flows: tourStops.map((_, i) => (i === 0 ? flow.value : null)),
  };
  const element = await mount("ww-tour", { tour });
  expect(words(element)).toMatch(/Laminar separation\..*leaves at \d+°.*Cd \d\.\d\d/);
  const [stops, streams] = [heard(element, "tour-stop"), heard(element, "tour-stream")];
  const next = page.getByRole("button", { name: "Stop 2" }).first();
  await userEvent.click(next);
  await userEvent.keyboard("{ArrowRight}4");
  expect(stops).toEqual([1, 1, 3]);
  const slider = page.getByRole("slider", { name: /Turbulence/ });
  (slider.element() as HTMLInputElement).value = "0.01";
  slider.element().dispatchEvent(new Event("input"));
  expect(streams).toEqual([{ ...tourStart, turbulenceIntensity: 0.01 }]);
});
