import { expect, test } from "vitest";
import { demoDesign } from "../../shared/case/design";
import { type PublishedGroup, publishedFor } from "../../src/app/desk/publishedFor";
import written from "../../src/app/reference/publishedDrag.json";
import { publishedDrag } from "./publishedDrag";

test("the page's published points are those of this folder; npx tsx tests/published/writePublishedDrag.ts writes them", () => {
  expect(written).toEqual(JSON.parse(JSON.stringify(publishedDrag())));
});

test("a smooth circle, a rough one, an ellipse and a rounded rectangle each have their own published points", () => {
  const groups = written as unknown as PublishedGroup[];
  const sources = (change: object) => publishedFor({ ...demoDesign, ...change }, groups).map(({ source }) => source);
  const circle = { section: { family: "circle", diameter: 0.1 }, turbulenceIntensity: 0.001, sandGrainRoughness: 1e-6 };
  expect(sources(circle)).toContain("Delany and Sorensen 1953");
  const rough = sources({ ...circle, sandGrainRoughness: 5e-4 });
  expect(rough.length).toBeGreaterThan(0);
  expect(rough).not.toContain("Delany and Sorensen 1953");
  expect(sources({ section: { family: "ellipse", length: 0.06, height: 0.03 } })).toContain("Delany and Sorensen 1953");
  expect(sources({ section: { family: "roundedRectangle", length: 0.06, height: 0.03, edgeRadius: 0.005 } })).toContain(
    "Blevins 1984",
  );
  expect(sources({ section: { family: "stadium", length: 0.3, height: 0.03 } })).toEqual([]);
  expect(sources({ ...circle, incidence: 0.1 })).toEqual([]);
});
