import { describe, expect, it } from "vitest";
import { csvOutline } from "../../shared/outlines/csvOutline";
import { dxfOutline } from "../../shared/outlines/dxfOutline";
import { importOutline } from "../../shared/outlines/importOutline";
import type { Outline } from "../../shared/outlines/outline";
import { outlineFormat } from "../../shared/outlines/readOutline";
import { type SolvedOutline, solvedOutline } from "../../shared/outlines/solvedOutline";
import { svgOutline } from "../../shared/outlines/svgOutline";
import type { Result } from "../../shared/result";

const inMillimetres = { unit: "mm", scale: 1, quarterTurns: 0 } as const;

function solved(outline: Result<Outline>): SolvedOutline {
  if (!outline.ok) throw new Error(outline.problem.message);
  const result = solvedOutline(outline.value, inMillimetres, "trial");
  if (!result.ok) throw new Error(result.problem.message);
  return result.value;
}

function message(result: Result<unknown>): string {
  return result.ok ? "no problem" : result.problem.message;
}

function refusal(outline: Result<Outline>): string {
  return outline.ok ? message(solvedOutline(outline.value, inMillimetres, "trial")) : outline.problem.message;
}

/** A DXF drawing of group codes and values in turn. */
function dxf(entities: string, header = ""): string {
  const parts = ["0,SECTION,2,HEADER", header, "0,ENDSEC,0,SECTION,2,ENTITIES", entities, "0,ENDSEC,0,EOF"];
  return parts
    .filter((part) => part !== "")
    .join(",")
    .replaceAll(",", "\n");
}

/** Area between the sides of a corner and an arc of a radius that touches both: what rounding takes off. */
function roundedOff(turn: number, radius: number): number {
  return radius * radius * (Math.tan(turn / 2) - turn / 2);
}

const bevels = "-40,10\n-40,-10\n-35,-15\n35,-15\n40,-10\n40,10\n35,15\n-35,15\n";

describe("corners", () => {
  it("an 80 x 30 mm rectangle with 5 mm bevels given as 8 corners is solved 30 mm high, each corner with 0.3 mm", () => {
    const { height, length, area, deviation, corners, cornerRadius } = solved(csvOutline(bevels));
    expect(height).toBeCloseTo(0.03, 9);
    expect(length).toBeCloseTo(0.08, 9);
    expect(corners).toBe(8);
    expect(cornerRadius).toBeCloseTo(3e-4, 12);
    // An arc that touches both sides of a corner lies r (1 / cos(turn / 2) - 1) from it.
    expect(deviation).toBeCloseTo(3e-4 * (1 / Math.cos(Math.PI / 8) - 1), 8);
    expect(area * 1e6).toBeCloseTo(80 * 30 - 2 * 25 - 8 * roundedOff(Math.PI / 4, 0.3), 4);
  });

  it("four points are a rectangle, three a triangle", () => {
    const rectangle = solved(csvOutline("0 0\n80 0\n80 30\n0 30\n"));
    expect(rectangle.area * 1e6).toBeCloseTo(2400 - 4 * roundedOff(Math.PI / 2, 0.3), 4);
    expect(rectangle.corners).toBe(4);
    expect(solved(csvOutline("0,0\n60,-20\n60,20\n")).corners).toBe(3);
  });

  it("outlines that cross themselves, or whose sharp tip is lost, are refused with the place", () => {
    expect(refusal(csvOutline("0,0\n10,10\n10,0\n0,10\n-3,5\n"))).toMatch(/crosses itself near \(.*\) mm/);
    expect(refusal(csvOutline("0,0\n100,-3\n100,3\n"))).toMatch(/leaves the outline by up to .* must be at most 5 %/);
  });

  it("details smaller than the radius become a corner, and are counted", () => {
    const chamfered = solved(csvOutline("0,0\n79.9,0\n80,0.1\n80,30\n0,30\n"));
    expect(chamfered.corners).toBe(4);
    expect(chamfered.remarks.join(" ")).toMatch(/1 detail smaller than this radius became a corner/);
  });
});

describe("points on curves", () => {
  const ring = (count: number, a: number, b: number, digits: number) =>
    Array.from({ length: count }, (_, i) => {
      const angle = (2 * Math.PI * i) / count;
      return `${(a * Math.cos(angle)).toFixed(digits)};${(b * Math.sin(angle)).toFixed(digits)}`;
    }).join("\n");

  it("24 points of a circle are the circle", () => {
    const { area, corners } = solved(csvOutline(ring(24, 20, 20, 6)));
    expect(corners).toBe(0);
    expect(area * 1e6).toBeCloseTo(Math.PI * 400, 3);
  });

  it.each([2, 3, 6])(
    "2000 points of an ellipse with %i decimals: area within 1e-4, points within the tolerance that is told",
    (digits) => {
      const ellipse = solved(csvOutline(ring(2000, 40, 15, digits)));
      expect(Math.abs(ellipse.area / (Math.PI * 600e-6) - 1)).toBeLessThan(1e-4);
      expect(ellipse.deviation).toBeLessThan(Math.max(1.5 * 10 ** -digits, 1.2e-4) * 1e-3);
      expect(ellipse.remarks.join(" ")).toMatch(/2000 points read as curves .* fitted within/);
    },
  );

  it("heads, a line of units, spaces, tabs and decimal commas are read; the unit is that of the file", () => {
    const plain = solved(csvOutline(bevels)).area;
    for (const text of [
      `x_mm,y_mm\n${bevels}`,
      `x,y\nmm,mm\n${bevels}`,
      `"x (mm)";"y (mm)"\n${bevels.replaceAll(",", ";")}`,
      `# a remark\nx y\n[mm] [mm]\n${bevels.replaceAll(",", "   ")}`,
      bevels.replaceAll(",", "\t"),
      bevels.replaceAll(/(-?\d+),(-?\d+)/g, "$1,0;$2,0"),
    ]) {
      expect(solved(csvOutline(text)).area).toBeCloseTo(plain, 12);
    }
    const units = [
      "x_mm,y_mm",
      "x,y\nmm,mm",
      "xMillimetres,yMillimetres",
      "x (in),y (in)",
      "x [cm],y [cm]",
      "x/m,y/m",
      "x,y",
    ];
    const found = units.map((head) => csvOutline(`${head}\n${bevels}`)).map((one) => one.ok && one.value.unit);
    expect(found).toEqual(["mm", "mm", "mm", "in", "cm", "m", null]);
  });

  it("what is no point is told with its row", () => {
    expect(message(csvOutline("1,2\n3,abc\n"))).toBe('row 2 is "3, abc"; both must be finite numbers');
    expect(message(csvOutline("1\n2\n3\n"))).toMatch(/row 1 has 1 column .* two columns are needed/);
    expect(message(csvOutline("0,0\n1,0\n"))).toMatch(/2 different points; it must have 3 or more/);
    expect(refusal(csvOutline("0,0\n1,1\n2,2\n"))).toMatch(/encloses no area/);
    expect(message(csvOutline(Array.from({ length: 5001 }, (_, i) => `${i},${i % 7}`).join("\n")))).toMatch(
      /more than 5000/,
    );
  });
});

describe("dxfOutline", () => {
  const stadium = "0,LWPOLYLINE,8,0,90,4,70,1,10,-10,20,-10,10,10,20,-10,42,1,10,10,20,10,10,-10,20,10,42,1";

  it("bulges stay arcs: a stadium has the area 20 x 20 + pi 10^2, and its file's unit", () => {
    const read = dxfOutline(dxf(stadium, "9,$INSUNITS,70,4"));
    expect(read.ok && read.value.unit).toBe("mm");
    expect(solved(read).area * 1e6).toBeCloseTo(400 + Math.PI * 100, 6);
    expect(solved(read).corners).toBe(0);
  });

  it("a POLYLINE is read with and without its SEQEND, also at the end of a file that is cut off", () => {
    const vertices = "0,VERTEX,10,-40,20,-15,0,VERTEX,10,40,20,-15,0,VERTEX,10,40,20,15,0,VERTEX,10,-40,20,15";
    for (const text of [
      dxf(`0,POLYLINE,70,1,${vertices},0,SEQEND`),
      dxf(`0,POLYLINE,70,1,${vertices}`),
      `0,SECTION,2,ENTITIES,0,POLYLINE,70,1,${vertices}`.replaceAll(",", "\n"),
    ]) {
      expect(solved(dxfOutline(text)).height).toBeCloseTo(0.03, 9);
    }
  });

  it("LINE and ARC chains in any order and direction are put together", () => {
    // A rounded rectangle 80 x 30 with radius 6, two of its lines drawn backwards.
    const lines =
      "0,LINE,10,-34,20,15,11,34,21,15,0,LINE,10,-34,20,-15,11,34,21,-15,0,LINE,10,40,20,-9,11,40,21,9,0,LINE,10,-40,20,9,11,-40,21,-9";
    const arc = (x: number, y: number, from: number) => `0,ARC,10,${x},20,${y},40,6,50,${from},51,${from + 90}`;
    const arcs = [arc(34, 9, 0), arc(-34, -9, 180), arc(-34, 9, 90), arc(34, -9, 270)].join(",");
    const { area, corners } = solved(dxfOutline(dxf(`${lines},${arcs}`)));
    expect(area * 1e6).toBeCloseTo(2400 - (4 - Math.PI) * 36, 5);
    expect(corners).toBe(0);
  });

  it("CIRCLE and ELLIPSE have the areas of their formulas", () => {
    expect(solved(dxfOutline(dxf("0,CIRCLE,10,5,20,5,40,20"))).area * 1e6).toBeCloseTo(Math.PI * 400, 6);
    const ellipse = solved(dxfOutline(dxf("0,ELLIPSE,10,0,20,0,11,40,21,0,40,0.375,41,0,42,6.283185307179586")));
    expect(Math.abs(ellipse.area / (Math.PI * 600e-6) - 1)).toBeLessThan(1e-6);
  });

  it("a SPLINE with weights is the circle that it stands for (Piegl & Tiller 1997, ex. 7.2: nine controls)", () => {
    const half = Math.SQRT1_2;
    const controls = [
      [1, 0],
      [1, 1],
      [0, 1],
      [-1, 1],
      [-1, 0],
      [-1, -1],
      [0, -1],
      [1, -1],
      [1, 0],
    ];
    const knots = [0, 0, 0, 0.25, 0.25, 0.5, 0.5, 0.75, 0.75, 1, 1, 1].map((knot) => `40,${knot}`);
    const weights = controls.map((_, i) => `41,${i % 2 === 0 ? 1 : half}`);
    const points = controls.map(([x, y]) => `10,${20 * x},20,${20 * y}`);
    const { area } = solved(dxfOutline(dxf(`0,SPLINE,70,12,71,2,${[...knots, ...weights, ...points].join(",")}`)));
    expect(Math.abs(area / (Math.PI * 400e-6) - 1)).toBeLessThan(1e-5);
  });

  it("a drawing without an outline, a file that is no drawing and a broken number are refused", () => {
    expect(message(dxfOutline(dxf("0,LINE,10,0,20,0,11,1,21,0")))).toMatch(/no outline that encloses an area/);
    expect(message(dxfOutline(dxf("0,INSERT,2,block")))).toMatch(/1 INSERT; .* explode the blocks/);
    expect(message(dxfOutline("hello\nworld"))).toMatch(/line 1 of the DXF file is "hello"/);
    expect(message(dxfOutline(dxf("0,CIRCLE,10,5,20,5,40,x")))).toMatch(/entity 1 .*CIRCLE/);
  });
});

describe("svgOutline", () => {
  const inside = (shape: string) => svgOutline(`<svg xmlns="http://www.w3.org/2000/svg">${shape}</svg>`);

  it("rect with rx, circle, ellipse and polygon have the areas of their formulas", () => {
    expect(solved(inside('<rect width="80" height="30" rx="6"/>')).area * 1e6).toBeCloseTo(
      2400 - (4 - Math.PI) * 36,
      5,
    );
    const elliptical = solved(inside('<rect width="80" height="30" rx="6" ry="3"/>')).area * 1e6;
    expect(elliptical / (2400 - (4 - Math.PI) * 18)).toBeCloseTo(1, 6);
    expect(solved(inside('<circle cx="9" r="20"/>')).area * 1e6).toBeCloseTo(Math.PI * 400, 6);
    expect(solved(inside('<ellipse rx="40" ry="15"/>')).area / (Math.PI * 600e-6)).toBeCloseTo(1, 6);
    const polygon = solved(inside(`<polygon points="${bevels.trim().replaceAll("\n", " ")}"/>`));
    expect(polygon.area).toBeCloseTo(solved(csvOutline(bevels)).area, 12);
  });

  it("arcs and curves of a path: half circles, and a parabola's segment of two thirds of its box", () => {
    const circle = solved(svgOutline("M -40 0 A 40 40 0 0 1 40 0 A 40 40 0 0 1 -40 0 Z"));
    expect(circle.area * 1e6).toBeCloseTo(Math.PI * 1600, 5);
    // The quadratic curve to (40, 0) with its control at (20, 40) has its top at 20: Archimedes' two thirds of 40 x 20.
    const parabola = solved(svgOutline("M 0 0 Q 20 40 40 0 Z"));
    const corner = Math.PI - Math.atan(2);
    expect(parabola.area * 1e6).toBeCloseTo((2 / 3) * 40 * 20 - 2 * roundedOff(corner, 0.2), 1);
  });

  it("transformations and the drawing's own size are applied, y is turned up", () => {
    const turned = solved(
      inside('<g transform="translate(5 5) rotate(90)"><rect width="40" height="15" transform="scale(2)"/></g>'),
    );
    expect([turned.length, turned.height].map((size) => size * 1000)).toEqual([
      expect.closeTo(30, 6),
      expect.closeTo(80, 6),
    ]);
    const sized = svgOutline(
      '<svg width="8cm" height="3cm" viewBox="0 0 800 300"><rect width="800" height="300"/></svg>',
    );
    expect(sized.ok && [sized.value.unit, sized.value.sides[2].from]).toEqual(["cm", [8, -3]]);
  });

  it("the largest outline is read and others are counted; what is hidden or only defined is not", () => {
    const many = inside('<defs><circle r="500"/></defs><circle r="9" display="none"/><circle r="2"/><circle r="5"/>');
    expect(many.ok && many.value.remarks).toEqual(["The drawing has 2 closed outlines; the largest was read."]);
    expect(solved(many).height * 1000).toBeCloseTo(10, 4);
  });

  it("what is no outline is refused", () => {
    expect(message(svgOutline("<svg><script>alert(1)</script></svg>"))).toMatch(/no shape/);
    expect(message(inside('<path d="L 1 2 frog"/>'))).toMatch(/could not be read|no shape/);
    expect(message(svgOutline("<svg><path"))).toMatch(/could not be read/);
    expect(message(inside('<rect width="80" height="30" x="1e999"/>'))).toMatch(/not a finite number|no shape/);
  });

  it("two million characters of unfinished paths are refused and not searched for ever", () => {
    expect(svgOutline(`<svg>${"<path ".repeat(300_000)}`).ok).toBe(false);
    expect(outlineFormat("", " ".repeat(1_900_000))).toBe("csv");
  });
});

describe("importOutline(question)", () => {
  const question = {
    text: bevels,
    fileName: "part.csv",
    format: null,
    unit: null,
    scale: 1,
    quarterTurns: 0,
    name: "part",
    cornerRadius: null,
  } as const;

  it("takes millimetres where the file names no unit and says so; turns, scales and rounds as it is told", () => {
    const plain = importOutline(question);
    if (!plain.ok) throw new Error(plain.problem.message);
    expect([plain.value.unit, plain.value.unitFrom]).toEqual(["mm", "assumed"]);
    const other = importOutline({ ...question, unit: "in", scale: 0.5, quarterTurns: 1, cornerRadius: 0.005 });
    if (!other.ok) throw new Error(other.problem.message);
    // An inch is 25.4 mm by definition (1959).
    expect(other.value.solved.height * 1000).toBeCloseTo(80 * 25.4 * 0.5, 5);
    expect(other.value.solved.cornerRadius).toBe(0.005);
    expect(other.value.panelCount).toBeGreaterThanOrEqual(160);
  });

  it("a scale out of range is refused with its range", () => {
    expect(message(importOutline({ ...question, scale: 0 }))).toMatch(/scale is 0; it must be above 0/);
  });
});
