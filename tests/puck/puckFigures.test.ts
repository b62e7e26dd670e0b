import { describe, expect, it } from "vitest";
import { standardMaterials } from "../../shared/jobs/puck/body/materials";
import { puckFigures } from "../../shared/jobs/puck/body/puckFigures";
import type { PuckSpec } from "../../shared/jobs/puck/body/puckSpec";
import { examplePuck, unwrap } from "./examplePuck";

const water = { fluidDensity: 996.51 };

function figures(change: Partial<PuckSpec>) {
  return unwrap(puckFigures({ ...examplePuck, ...change }, water));
}

const sharp: Partial<PuckSpec> = { edge: { kind: "radius", edgeRadiusMetres: 0 }, core: { kind: "none" } };

describe("puckFigures(spec, setting)", () => {
  it("a sharp 80 x 30 mm puck of 1.3 kg weighs 11.28 N in water of 27 degrees: (m - rho V) g by hand", () => {
    const volume = Math.PI * 0.04 ** 2 * 0.03;
    const dense = { ...standardMaterials[0], name: "test metal", density: 1.3 / volume };
    const puck = { ...examplePuck, ...sharp, coatMaterial: "test metal" };
    const result = unwrap(puckFigures(puck, { ...water, userMaterials: [dense] }));
    expect(result.massKilograms).toBeCloseTo(1.3, 12);
    expect(result.meanDensityKilogramsPerCubicMetre).toBeCloseTo(8620.89, 2);
    expect(result.weightInFluidNewtons).toBeCloseTo(11.275, 3);
  });

  it("a sharp homogeneous puck has the cylinder's areas, inertias and a centre of mass at its middle", () => {
    const f = figures({ ...sharp, coatMaterial: "acetal" });
    const mass = 1410 * Math.PI * 0.04 ** 2 * 0.03;
    expect(f.massKilograms).toBeCloseTo(mass, 12);
    expect(f.momentOfInertiaAxisKilogramSquareMetres).toBeCloseTo((mass * 0.04 ** 2) / 2, 14);
    expect(f.momentOfInertiaDiameterKilogramSquareMetres).toBeCloseTo((mass * (3 * 0.04 ** 2 + 0.03 ** 2)) / 12, 14);
    expect(f.frontalAreaEdgeOnSquareMetres).toBeCloseTo(0.08 * 0.03, 14);
    expect(f.floorContactAreaSquareMetres).toBeCloseTo(Math.PI * 0.04 ** 2, 14);
    expect(f.centreOfMassMetres).toBeCloseTo(0, 14);
    expect(f.coverMetres).toBeNull();
  });

  it("rounding takes (4 - pi) r^2 from the edge-on frontal area", () => {
    const f = figures({});
    expect(f.frontalAreaEdgeOnSquareMetres).toBeCloseTo(0.08 * 0.03 - (4 - Math.PI) * 0.006 ** 2, 14);
    expect(f.floorContactAreaSquareMetres).toBeCloseTo(Math.PI * 0.034 ** 2, 14);
  });

  it("a lead core adds its volume times the density difference, and its height shifts the centre of mass", () => {
    const core = {
      kind: "disc",
      material: "lead",
      diameterMetres: 0.06,
      thicknessMetres: 0.01,
      heightMetres: 0.004,
    } as const;
    const f = figures({ core });
    const plain = figures({ core: { kind: "none" } });
    const added = (11340 - 1120) * Math.PI * 0.03 ** 2 * 0.01;
    expect(f.massKilograms - plain.massKilograms).toBeCloseTo(added, 12);
    expect(f.centreOfMassMetres).toBeCloseTo((added * 0.004) / f.massKilograms, 14);
    // Parallel axes: core about its own middle, moved to the common centre of mass, plus the homogeneous body moved.
    const own = (added * (3 * 0.03 ** 2 + 0.01 ** 2)) / 12;
    const c = f.centreOfMassMetres;
    const expected =
      plain.momentOfInertiaDiameterKilogramSquareMetres + plain.massKilograms * c * c + own + added * (0.004 - c) ** 2;
    expect(f.momentOfInertiaDiameterKilogramSquareMetres).toBeCloseTo(expected, 14);
  });

  it("cover is the smallest of the distances to face, rim and rounded edge", () => {
    expect(figures({}).coverMetres).toBeCloseTo(0.004, 12);
    const wide = { kind: "disc", material: "lead", diameterMetres: 0.076, thicknessMetres: 0.018 } as const;
    expect(figures({ core: wide }).coverMetres).toBeCloseTo(0.002, 12);
    const corner = { kind: "disc", material: "lead", diameterMetres: 0.072, thicknessMetres: 0.026 } as const;
    // From the core's corner (36, 13) to the arc about (34, 9) of radius 6: 6 - sqrt(4 + 16).
    expect(figures({ core: corner }).coverMetres).toBeCloseTo(0.006 - Math.hypot(0.002, 0.004), 12);
  });

  it("a core that follows the coat is everywhere just under it, for a radius and for a bevel", () => {
    const core = { kind: "underCoat", material: "lead", coatThicknessMetres: 0.003 } as const;
    expect(figures({ core }).coverMetres).toBeCloseTo(0.003, 9);
    const edge = { kind: "bevel", radialMetres: 0.008, axialMetres: 0.005 } as const;
    expect(figures({ core, edge }).coverMetres).toBeCloseTo(0.003, 9);
  });

  it("a recess takes its cylinder away and moves the centre of mass to the other side", () => {
    const face = { kind: "recess", side: "top", diameterMetres: 0.05, depthMetres: 0.002 } as const;
    const f = figures({ face, core: { kind: "none" } });
    const plain = figures({ core: { kind: "none" } });
    const taken = Math.PI * 0.025 ** 2 * 0.002;
    expect(plain.volumeCubicMetres - f.volumeCubicMetres).toBeCloseTo(taken, 14);
    expect(f.centreOfMassMetres).toBeCloseTo((-taken * 0.014) / f.volumeCubicMetres, 12);
    expect(f.floorContactAreaSquareMetres).toBeCloseTo(plain.floorContactAreaSquareMetres, 14);
    expect(f.frontalAreaEdgeOnSquareMetres).toBeCloseTo(plain.frontalAreaEdgeOnSquareMetres, 14);
  });
});

describe("grooves", () => {
  // Midpoint sums over the plan, an independent way to the same integrals.
  function planSums(inside: (x: number, y: number) => boolean, reach: number) {
    const n = 1500;
    const step = (2 * reach) / n;
    let area = 0;
    let polar = 0;
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < n; j++) {
        const x = -reach + (i + 0.5) * step;
        const y = -reach + (j + 0.5) * step;
        if (!inside(x, y)) continue;
        area += step * step;
        polar += (x * x + y * y) * step * step;
      }
    }
    return { area, polar };
  }

  it("radial face grooves: volume and axis inertia agree with a brute-force plan sum within 0.5 %", () => {
    const face = {
      kind: "radialGrooves",
      side: "both",
      number: 12,
      widthMetres: 0.003,
      depthMetres: 0.0015,
      innerRadiusMetres: 0.01,
      outerRadiusMetres: 0.03,
    } as const;
    const plain = figures({ core: { kind: "none" }, coatMaterial: "acetal" });
    const f = figures({ core: { kind: "none" }, coatMaterial: "acetal", face });
    const pitch = (2 * Math.PI) / 12;
    const sums = planSums((x, y) => {
      const radius = Math.hypot(x, y);
      const turned = Math.atan2(y, x) - pitch * Math.round(Math.atan2(y, x) / pitch);
      return radius >= 0.01 && radius <= 0.03 && Math.abs(radius * Math.sin(turned)) <= 0.0015;
    }, 0.031);
    const taken = plain.volumeCubicMetres - f.volumeCubicMetres;
    expect(Math.abs(taken / (2 * 0.0015 * sums.area) - 1)).toBeLessThan(5e-3);
    const inertia = plain.momentOfInertiaAxisKilogramSquareMetres - f.momentOfInertiaAxisKilogramSquareMetres;
    expect(Math.abs(inertia / (1410 * 2 * 0.0015 * sums.polar) - 1)).toBeLessThan(5e-3);
    expect(plain.floorContactAreaSquareMetres - f.floorContactAreaSquareMetres).toBeCloseTo(taken / 0.003, 12);
  });

  it("axial rim grooves agree with a brute-force plan sum within 1 %", () => {
    const rim = { kind: "axialGrooves", number: 24, widthMetres: 0.004, depthMetres: 0.002 } as const;
    const plain = figures({ core: { kind: "none" } });
    const f = figures({ core: { kind: "none" }, rim });
    const pitch = (2 * Math.PI) / 24;
    const sums = planSums((x, y) => {
      const radius = Math.hypot(x, y);
      const turned = Math.atan2(y, x) - pitch * Math.round(Math.atan2(y, x) / pitch);
      return radius <= 0.04 && radius * Math.cos(turned) >= 0.038 && Math.abs(radius * Math.sin(turned)) <= 0.002;
    }, 0.0401);
    expect(Math.abs((plain.volumeCubicMetres - f.volumeCubicMetres) / (sums.area * 0.018) - 1)).toBeLessThan(1e-2);
  });

  it("ring grooves take pi (R^2 - (R - depth)^2) width each", () => {
    const rim = { kind: "ringGrooves", number: 3, widthMetres: 0.002, depthMetres: 0.001 } as const;
    const plain = figures({ core: { kind: "none" } });
    const taken = plain.volumeCubicMetres - figures({ core: { kind: "none" }, rim }).volumeCubicMetres;
    expect(taken).toBeCloseTo(3 * Math.PI * (0.04 ** 2 - 0.039 ** 2) * 0.002, 14);
  });

  it("cover counts the floor of a groove", () => {
    const rim = { kind: "ringGrooves", number: 3, widthMetres: 0.002, depthMetres: 0.0035 } as const;
    expect(figures({ rim }).coverMetres).toBeCloseTo(0.0025, 12);
  });
});

describe("puckFigures(spec, setting) refuses", () => {
  const refused: [string, Partial<PuckSpec>, string][] = [
    [
      "an edge radius above half the thickness",
      { edge: { kind: "radius", edgeRadiusMetres: 0.018 } },
      "edge radius 18 mm exceeds half the thickness, 15 mm",
    ],
    ["a negative diameter", { diameterMetres: -0.08 }, "diameter -80 mm"],
    ["a thickness that is not a number", { thicknessMetres: Number.NaN }, "thickness NaN mm"],
    ["an unknown material", { coatMaterial: "unobtainium" }, 'material "unobtainium" is not known'],
    [
      "a core through the surface",
      { core: { kind: "disc", material: "lead", diameterMetres: 0.081, thicknessMetres: 0.02 } },
      "reaches through",
    ],
    [
      "a profile that turns back",
      {
        edge: {
          kind: "profile",
          points: [
            [0.004, 0],
            [0.005, 0.002],
            [0, 0.004],
          ],
        },
      },
      "turns back at point 2",
    ],
    [
      "grooves that meet",
      {
        face: {
          kind: "radialGrooves",
          side: "top",
          number: 40,
          widthMetres: 0.003,
          depthMetres: 0.001,
          innerRadiusMetres: 0.01,
          outerRadiusMetres: 0.03,
        },
      },
      "groove width 3 mm",
    ],
  ];
  it.each(refused)("%s", (_, change, words) => {
    const result = puckFigures({ ...examplePuck, ...change }, water);
    expect(result.ok).toBe(false);
    if (!result.ok) expect(result.problem.message).toContain(words);
  });
});

describe("standardMaterials", () => {
  it("each density lies within its own range, and lead carries cautions", () => {
    for (const material of standardMaterials) {
      expect(material.lowestDensity).toBeLessThanOrEqual(material.density);
      expect(material.highestDensity).toBeGreaterThanOrEqual(material.density);
      expect(material.source.length).toBeGreaterThan(10);
    }
    expect(standardMaterials.find((material) => material.name === "lead")?.cautions.length).toBeGreaterThan(1);
  });
});

describe("grooves that run into each other", () => {
  const rim = { kind: "axialGrooves", number: 12, widthMetres: 0.002, depthMetres: 0.008 } as const;
  const face = {
    kind: "radialGrooves",
    side: "top",
    number: 6,
    widthMetres: 0.002,
    innerRadiusMetres: 0.01,
    outerRadiusMetres: 0.033,
  } as const;

  it("are refused between face and rim, in words that say where; shallower ones are not", () => {
    const core = { kind: "none" } as const;
    const deep = puckFigures({ ...examplePuck, core, rim, face: { ...face, depthMetres: 0.007 } }, { fluidDensity: 0 });
    expect(deep.ok ? "" : deep.problem.message).toContain("run into the grooves of the face, which reach radius 33 mm");
    expect(
      puckFigures({ ...examplePuck, core, rim, face: { ...face, depthMetres: 0.005 } }, { fluidDensity: 0 }).ok,
    ).toBe(true);
  });

  it("are refused side by side: a width at which neighbours meet", () => {
    const widthMetres = 2 * (0.04 - 0.002) * Math.tan(Math.PI / 12);
    const touching = { ...examplePuck, rim: { ...rim, depthMetres: 0.002, widthMetres } };
    expect(puckFigures(touching, { fluidDensity: 0 }).ok).toBe(false);
  });
});
