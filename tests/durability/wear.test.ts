import { describe, expect, it } from "vitest";
import { specificWear, wornDepth, wornVolume } from "../../shared/jobs/durability/archard";
import { faceDepthAfter, hoursToFaceDepth } from "../../shared/jobs/durability/faceWear";
import { lackingArea, wornShape } from "../../shared/jobs/durability/wornShape";
import type { PuckSpec } from "../../shared/jobs/puck/public";

describe("Archard's law", () => {
  it("Osara, University of Twente, tribology tutorial 3, exercise 2: a ring wears 40 um in 13.33e3 h", () => {
    const [k, load] = [1e-16, 100]; // 1e-7 mm3/(N m)
    const area = 2 * Math.PI * 0.03 * 0.02;
    const volume = 40e-6 * area;
    expect(1e9 * volume).toBeCloseTo(150.796, 3);
    const speed = (2 * Math.PI * 0.03 * 100) / 60;
    const seconds = 13.334e3 * 3600;
    expect(wornVolume(k, load, speed * seconds) / volume).toBeCloseTo(1, 3);
    expect(1e6 * wornDepth(k, load, speed * seconds, area)).toBeCloseTo(40, 2);
  });

  it("Hutchings & Shipway, Tribology, 2nd ed. (2017), ch. 5, problem of the brass annulus (answers worked by hand): K 6.7e-6 and 10 um", () => {
    const distance = 100 * 60 * 100 * Math.PI * 0.015;
    const K = ((20e-6 / 8500) * 0.8e9) / (10 * distance);
    expect(K).toBeCloseTo(6.66e-6, 8);
    const area = (Math.PI / 4) * (0.02 ** 2 - 0.01 ** 2);
    expect(1e6 * wornDepth(specificWear(K, 0.8e9), 10, distance, area)).toBeCloseTo(9.99, 2);
  });
});

describe("a face that wears", () => {
  const face = { volumePerHour: 1e-9, landArea: 2e-3, fullArea: 3e-3, patternDepth: 1e-4 };

  it("loses its lands first, then its whole area: depth and hours are each other's inverse, volume is kept", () => {
    for (const hours of [50, 200, 500, 1000]) {
      const depth = faceDepthAfter(face, hours);
      expect(hoursToFaceDepth(face, depth)).toBeCloseTo(hours, 9);
      const volume = Math.min(depth, 1e-4) * face.landArea + Math.max(0, depth - 1e-4) * face.fullArea;
      expect(volume).toBeCloseTo(hours * face.volumePerHour, 15);
    }
  });

  it("with a pattern is worn deeper by the area that the pattern takes away", () => {
    const plain = { ...face, landArea: 3e-3, patternDepth: 0 };
    expect(faceDepthAfter(face, 10) / faceDepthAfter(plain, 10)).toBeCloseTo(1.5, 12);
  });
});

describe("a worn edge", () => {
  it("lacks (1 - pi/4) r^2 when it is new, and nothing once a face has worn past the round", () => {
    expect(lackingArea(0.006, 0, 0)).toBeCloseTo((1 - Math.PI / 4) * 0.006 ** 2, 15);
    expect(lackingArea(0.006, 0.006, 0)).toBe(0);
    expect(lackingArea(0.006, 0.003, 0.003)).toBe(0);
  });

  it("lacks what a count of points finds", () => {
    const [r, face, rim] = [6, 0.5, 0.2];
    let inside = 0;
    const n = 1200;
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < n; j++) {
        const [x, y] = [(r * (i + 0.5)) / n, (r * (j + 0.5)) / n];
        if (x > rim && y > face && (r - x) ** 2 + (r - y) ** 2 > r * r) inside++;
      }
    }
    expect(lackingArea(r, face, rim)).toBeCloseTo((inside * r * r) / (n * n), 2);
  });

  const spec: PuckSpec = {
    name: "Round",
    diameterMetres: 0.08,
    thicknessMetres: 0.03,
    edge: { kind: "radius", edgeRadiusMetres: 0.006 },
    face: { kind: "flat" },
    rim: { kind: "plain" },
    core: { kind: "none" },
    coatMaterial: "polyurethane",
  };

  it("that nothing is worn off stays as it was; sliding on it takes its volume off both edges (Pappus)", () => {
    const same = wornShape(spec, { face: 0, rim: 0, edgeVolume: 0 });
    expect(same.ok && same.value.edge.kind === "radius" && same.value.edge.edgeRadiusMetres).toBeCloseTo(0.006, 12);
    const volume = 1e-7;
    const worn = wornShape(spec, { face: 0, rim: 0, edgeVolume: volume });
    if (!worn.ok || worn.value.edge.kind !== "radius") throw new Error("no radius");
    const more = (1 - Math.PI / 4) * (worn.value.edge.edgeRadiusMetres ** 2 - 0.006 ** 2);
    expect(2 * more * 2 * Math.PI * 0.04).toBeCloseTo(volume, 15);
  });

  it("gets sharper as faces and rim move in, and diameter and thickness lose both sides", () => {
    const worn = wornShape(spec, { face: 0.0005, rim: 0.0002, edgeVolume: 0 });
    if (!worn.ok || worn.value.edge.kind !== "radius") throw new Error("no radius");
    expect(worn.value.edge.edgeRadiusMetres).toBeLessThan(0.006);
    expect(worn.value.diameterMetres).toBeCloseTo(0.0796, 12);
    expect(worn.value.thicknessMetres).toBeCloseTo(0.029, 12);
  });
});
