import DxfParser from "dxf-parser";
import Papa from "papaparse";
import { svgPathProperties } from "svg-path-properties";
import { describe, expect, it } from "vitest";
import { buildContour } from "../../shared/engine/geometry/sectionFamilies";
import {
  contourOutline,
  type Outline,
  outlineArea,
  planOutline,
  profileOutline,
} from "../../shared/jobs/handoff/outline";
import { outlinesDxf } from "../../shared/jobs/handoff/outlineDxf";
import { outlineSvg } from "../../shared/jobs/handoff/outlineSvg";
import { pointsCsv } from "../../shared/jobs/handoff/pointsCsv";
import type { PuckSpec } from "../../shared/jobs/puck/body/puckSpec";
import { revolve } from "../../shared/jobs/puck/body/solidFigures";
import { examplePuck, unwrap } from "../puck/examplePuck";

const recessed: PuckSpec = {
  ...examplePuck,
  face: { kind: "recess", side: "top", diameterMetres: 0.05, depthMetres: 0.002 },
};
const exactArea = 0.08 * 0.03 - (4 - Math.PI) * 0.006 ** 2;

function polygonArea(points: readonly (readonly [number, number])[]): number {
  return points.reduce((sum, [x, y], i) => {
    const [nx, ny] = points[(i + 1) % points.length];
    return sum + (x * ny - nx * y) / 2;
  }, 0);
}

describe("outlines of a puck", () => {
  it("the profile's area is exact: d t - (4 - pi) r^2, less the recess", () => {
    expect(outlineArea(profileOutline(examplePuck))).toBeCloseTo(exactArea, 15);
    expect(outlineArea(profileOutline(recessed))).toBeCloseTo(exactArea - 0.05 * 0.002, 15);
  });

  it("the plan's area is pi d^2 / 4", () => {
    expect(outlineArea(planOutline(examplePuck))).toBeCloseTo(Math.PI * 0.04 ** 2, 15);
  });

  it("a bevelled profile has d t - 2 a b", () => {
    const bevelled: PuckSpec = { ...examplePuck, edge: { kind: "bevel", radialMetres: 0.005, axialMetres: 0.003 } };
    expect(outlineArea(profileOutline(bevelled))).toBeCloseTo(0.08 * 0.03 - 2 * 0.005 * 0.003, 15);
    expect(revolve([]).volume).toBe(0);
  });

  it("a contour's outline stays within its deviation: area to 1e-4", () => {
    const contour = unwrap(buildContour({ family: "roundedRectangle", length: 0.08, height: 0.03, edgeRadius: 0.006 }));
    const outline = contourOutline(contour, 1e-6);
    expect(Math.abs(outlineArea(outline) / contour.area - 1)).toBeLessThan(1e-4);
    expect(outline.vertices.length).toBeLessThan(1000);
  });
});

describe("round trips: what is exported has the same area when another program reads it", () => {
  const outlines: [string, Outline, number][] = [
    ["rounded profile", profileOutline(examplePuck), exactArea],
    ["recessed profile", profileOutline(recessed), exactArea - 0.05 * 0.002],
    ["plan", planOutline(examplePuck), Math.PI * 0.04 ** 2],
  ];

  it.each(outlines)("CSV, %s: within 2e-4", (_, outline, area) => {
    const parsed = Papa.parse<number[]>(pointsCsv(outline, 1e-6), { dynamicTyping: true });
    expect(parsed.data[0]).toEqual(["xMillimetres", "yMillimetres"]);
    const points = parsed.data.slice(1).map(([x, y]) => [x / 1000, y / 1000] as const);
    expect(Math.abs(polygonArea(points) / area - 1)).toBeLessThan(2e-4);
  });

  it.each(outlines)("DXF, %s: one closed polyline in mm, arcs kept, area to 1e-6", (_, outline, area) => {
    const drawing = new DxfParser().parseSync(outlinesDxf([outline]));
    expect(drawing?.header.$INSUNITS).toBe(4);
    expect(drawing?.entities).toHaveLength(1);
    const entity = drawing?.entities[0] as unknown as {
      type: string;
      shape: boolean;
      vertices: { x: number; y: number; bulge?: number }[];
    };
    expect(entity.type).toBe("LWPOLYLINE");
    expect(entity.shape).toBe(true);
    const vertices = entity.vertices.map(({ x, y, bulge }) => ({ x: x / 1000, y: y / 1000, bulge: bulge ?? 0 }));
    expect(Math.abs(outlineArea({ name: "read", vertices }) / area - 1)).toBeLessThan(1e-6);
  });

  it.each(outlines)("SVG, %s: a closed path in mm, area by a path library to 1e-4", (_, outline, area) => {
    const text = outlineSvg(outline);
    expect(text).toMatch(/width="[\d.]+mm"/);
    const path = / d="([^"]+)"/.exec(text)?.[1] ?? "";
    expect(path.endsWith("Z")).toBe(true);
    const properties = new svgPathProperties(path);
    const length = properties.getTotalLength();
    const points = Array.from({ length: 4000 }, (_unused, i) => {
      const { x, y } = properties.getPointAtLength((length * i) / 4000);
      return [x / 1000, -y / 1000] as const;
    });
    expect(Math.abs(polygonArea(points) / area - 1)).toBeLessThan(1e-4);
  });

  it("a name with markup in it stays text", () => {
    const text = outlineSvg({ ...planOutline(examplePuck), name: '<script>alert("x")</script>' });
    expect(text).not.toContain("<script>");
    expect(text).toContain("&lt;script&gt;");
  });
});
