import { describe, expect, test } from "vitest";
import type { Result } from "../../shared/result";
import { csvOutline } from "../../src/app/imports/csvOutline";
import { dxfOutline } from "../../src/app/imports/dxfOutline";
import type { Outline } from "../../src/app/imports/outline";
import { svgOutline } from "../../src/app/imports/svgOutline";

function area(points: Outline["points"]): number {
  let twice = 0;
  points.forEach(([x, y], i) => {
    const [nextX, nextY] = points[(i + 1) % points.length];
    twice += x * nextY - nextX * y;
  });
  return twice / 2;
}

function value(result: Result<Outline>): Outline {
  if (!result.ok) throw new Error(result.problem.message);
  return result.value;
}

function message(result: Result<Outline>): string {
  return result.ok ? "no problem" : result.problem.message;
}

const hexagon = "x_mm,y_mm\n10,0\n5,8.66\n-5,8.66\n-10,0\n-5,-8.66\n5,-8.66\n10,0\n";

describe("csvOutline", () => {
  test("a headed comma file gives points, unit and an area of 3/2 sqrt(3) a^2, to its digits", () => {
    const outline = value(csvOutline(hexagon));
    expect(outline.unitKey).toBe("mm");
    expect(outline.points).toHaveLength(6);
    expect(area(outline.points)).toBeCloseTo(1.5 * Math.sqrt(3) * 100, 0);
  });

  test("semicolons with decimal commas and tabs are read", () => {
    const semicolons = hexagon.replaceAll(",", ";").replaceAll(".", ",");
    expect(value(csvOutline(semicolons)).points).toEqual(value(csvOutline(hexagon)).points);
    expect(value(csvOutline(hexagon.replaceAll(",", "\t"))).points).toHaveLength(6);
  });

  test("a word in a row names the row", () => {
    expect(message(csvOutline("1,2\n3,abc\n"))).toBe('Row 2 is "3, abc"; both must be finite numbers.');
  });

  test("too few points, one column and equal points are refused", () => {
    expect(message(csvOutline("0,0\n1,0\n0,1\n"))).toMatch(/3 different points; at least 5/);
    expect(message(csvOutline("1\n2\n3\n"))).toMatch(/Row 1 has 1 column/);
    expect(message(csvOutline("1,1\n1,1\n1,1\n1,1\n1,1\n"))).toMatch(/the same/);
  });

  test("more than 2000 points are refused with both numbers", () => {
    const many = Array.from({ length: 2500 }, (_, i) => `${i},${i % 7}`).join("\n");
    expect(message(csvOutline(many))).toBe("The outline has 2500 points; at most 2000 can be used.");
  });
});

describe("svgOutline", () => {
  test("a circle of two arcs of radius 40 has the area pi r^2 within 0.1 %", () => {
    const outline = value(svgOutline('<svg><path id="a" d="M -40 0 A 40 40 0 0 1 40 0 A 40 40 0 0 1 -40 0 Z"/></svg>'));
    expect(Math.abs(area(outline.points)) / (Math.PI * 1600)).toBeCloseTo(1, 3);
  });

  test("a bare path text is read and y is turned up", () => {
    const outline = value(svgOutline("M0 0 L10 0 L12 5 L10 10 L0 10 Z"));
    expect(outline.points[2]).toEqual([12, -5]);
  });

  test("a second part and a transform are remarked", () => {
    const outline = value(svgOutline('<path transform="scale(2)" d="M0 0H9V4L5 6L0 4Z M1 1H2V2H1Z"/>'));
    expect(outline.remarks).toHaveLength(2);
  });

  test("a file without a path, a script and an unreadable path are refused", () => {
    expect(message(svgOutline("<svg><script>alert(1)</script></svg>"))).toMatch(/no <path>/);
    expect(message(svgOutline('<path d="L 1 2"/>'))).toMatch(/must start with M/);
    expect(message(svgOutline('<path d="M 0 0"/>'))).toMatch(/no length/);
  });
});

/** A stadium 40 x 20: two straight sides and two half circles (bulge 1). */
const stadiumDxf = [
  "0,SECTION,2,HEADER,9,$INSUNITS,70,4,0,ENDSEC,0,SECTION,2,ENTITIES",
  "0,LWPOLYLINE,8,0,90,4,70,1,10,-10,20,-10,10,10,20,-10,42,1,10,10,20,10,10,-10,20,10,42,1",
  "0,ENDSEC,0,EOF",
]
  .join(",")
  .replaceAll(",", "\n");

describe("dxfOutline", () => {
  test("a stadium with half-circle bulges has the area 20 x 20 + pi 10^2 within 0.5 % and its unit", () => {
    const outline = value(dxfOutline(stadiumDxf));
    expect(outline.unitKey).toBe("mm");
    expect(area(outline.points) / (400 + Math.PI * 100)).toBeCloseTo(1, 2);
    expect(Math.max(...outline.points.map(([x]) => x))).toBeCloseTo(20, 1);
  });

  test("a drawing without a polyline and a file that is no drawing are refused", () => {
    const line = "0\nSECTION\n2\nENTITIES\n0\nLINE\n8\n0\n10\n0\n20\n0\n11\n1\n21\n1\n0\nENDSEC\n0\nEOF";
    expect(message(dxfOutline(line))).toMatch(/no polyline/);
    expect(dxfOutline("hello").ok).toBe(false);
  });
});
