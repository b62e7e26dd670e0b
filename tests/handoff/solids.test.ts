import fc from "fast-check";
import { strFromU8, unzipSync } from "fflate";
import NodeStl from "node-stl";
import { describe, expect, it } from "vitest";
import { mesh3mf } from "../../shared/jobs/handoff/mesh3mf";
import { meshStl } from "../../shared/jobs/handoff/meshStl";
import { meshVolume, puckMesh } from "../../shared/jobs/handoff/puckMesh";
import { grooveFigures } from "../../shared/jobs/puck/body/grooves";
import { outerMeridian } from "../../shared/jobs/puck/body/outerShape";
import type { PuckSpec } from "../../shared/jobs/puck/body/puckSpec";
import { revolve } from "../../shared/jobs/puck/body/solidFigures";
import { examplePuck, unwrap } from "../puck/examplePuck";

const sharp = { kind: "radius", edgeRadiusMetres: 0 } as const;
const axialGrooves = { kind: "axialGrooves", number: 24, widthMetres: 3e-3, depthMetres: 1.5e-3 } as const;
const recess = (side: "top" | "bottom" | "both") =>
  ({ kind: "recess", side, diameterMetres: 0.05, depthMetres: 0.002 }) as const;
const faceGrooves = (side: "top" | "bottom" | "both") =>
  ({
    kind: "radialGrooves",
    side,
    number: 12,
    widthMetres: 2e-3,
    depthMetres: 1e-3,
    innerRadiusMetres: 0.008,
    outerRadiusMetres: 0.03,
  }) as const;
const radiusOf = ({ edge }: PuckSpec) => (edge.kind === "radius" ? edge.edgeRadiusMetres : 0);
const ringAsWideAsRim = (spec: PuckSpec) =>
  ({
    kind: "ringGrooves",
    number: 1,
    widthMetres: spec.thicknessMetres - 2 * radiusOf(spec),
    depthMetres: 1e-3,
  }) as const;

const shapes: [string, PuckSpec][] = [
  ["rounded", examplePuck],
  ["bevelled", { ...examplePuck, edge: { kind: "bevel", radialMetres: 0.005, axialMetres: 0.003 } }],
  [
    "recessed both sides",
    { ...examplePuck, face: { kind: "recess", side: "both", diameterMetres: 0.05, depthMetres: 0.002 } },
  ],
  ["torus-edged", { ...examplePuck, edge: { kind: "radius", edgeRadiusMetres: 0.015 } }],
  [
    "rings round the rim",
    { ...examplePuck, rim: { kind: "ringGrooves", number: 3, widthMetres: 2e-3, depthMetres: 1e-3 } },
  ],
  ["one ring as wide as the rim", { ...examplePuck, rim: ringAsWideAsRim(examplePuck) }],
  ["grooves along the rim", { ...examplePuck, rim: axialGrooves }],
  ["grooves along a rim with sharp edges", { ...examplePuck, edge: sharp, rim: axialGrooves }],
  ["grooves along a sharp rim, recess on top", { ...examplePuck, edge: sharp, rim: axialGrooves, face: recess("top") }],
  ["grooves in the top face", { ...examplePuck, face: faceGrooves("top") }],
  ["grooves in both faces and along the rim", { ...examplePuck, face: faceGrooves("both"), rim: axialGrooves }],
  [
    "grooves in the bottom face that run out at its edge",
    { ...examplePuck, face: { ...faceGrooves("bottom"), outerRadiusMetres: 0.04 - radiusOf(examplePuck) } },
  ],
  [
    "grooves in both faces that run out over a sharp rim",
    { ...examplePuck, edge: sharp, face: { ...faceGrooves("both"), outerRadiusMetres: 0.04 } },
  ],
  [
    "a bevel along the face alone, grooves along the rim",
    { ...examplePuck, edge: { kind: "bevel", radialMetres: 0.003, axialMetres: 0 }, rim: axialGrooves },
  ],
];

/** Closed form: the turned solid less its grooves. */
const exactVolume = (spec: PuckSpec) => revolve(outerMeridian(spec)).volume - grooveFigures(spec).volume;

function edgeUse(triangles: ArrayLike<number>): Map<string, number> {
  const use = new Map<string, number>();
  for (let t = 0; t < triangles.length; t += 3) {
    for (const [a, b] of [
      [0, 1],
      [1, 2],
      [2, 0],
    ]) {
      const key = `${triangles[t + a]}>${triangles[t + b]}`;
      use.set(key, (use.get(key) ?? 0) + 1);
    }
  }
  return use;
}

describe("puckMesh(spec, deviation)", () => {
  it.each(shapes)(
    "%s: closed and oriented (each edge once each way), volume within 0.1 %% of the exact solid",
    (_, spec) => {
      const mesh = unwrap(puckMesh(spec, 1e-5));
      const use = edgeUse(mesh.triangles);
      for (const [edge, count] of use) {
        expect(count).toBe(1);
        expect(use.get(edge.split(">").reverse().join(">"))).toBe(1);
      }
      expect(Math.abs(meshVolume(mesh) / exactVolume(spec) - 1)).toBeLessThan(1e-3);
    },
  );

  it.each(shapes.filter(([, spec]) => grooveFigures(spec).volume > 0))(
    "%s: what the grooves take away is their closed form, within 1 %%",
    (_, spec) => {
      const plain: PuckSpec = {
        ...spec,
        face: spec.face.kind === "radialGrooves" ? { kind: "flat" } : spec.face,
        rim: { kind: "plain" },
      };
      const volume = (one: PuckSpec) => meshVolume(unwrap(puckMesh(one, 2e-7)));
      expect(Math.abs((volume(plain) - volume(spec)) / grooveFigures(spec).volume - 1)).toBeLessThan(0.01);
    },
  );

  it("any grooves that fit give a closed, oriented mesh with the volume of the closed form, within 0.2 %", () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    const counts = fc.integer({ min: 3, max: 60 });
    fc.assert(
      fc.property(counts, counts, fc.tuple(share, share, share, share, share), (faces, rims, [a, b, c, d, e]) => {
        const inner = 0.004 + 0.02 * a;
        const spec: PuckSpec = {
          ...examplePuck,
          edge: { kind: "radius", edgeRadiusMetres: 0.005 },
          face: {
            kind: "radialGrooves",
            side: "both",
            number: faces,
            widthMetres: 2 * inner * Math.sin(Math.PI / faces) * (0.05 + 0.9 * b),
            depthMetres: 0.0002 + 0.004 * c,
            innerRadiusMetres: inner,
            outerRadiusMetres: inner + (0.035 - inner) * (0.1 + 0.9 * d),
          },
          rim: {
            kind: "axialGrooves",
            number: rims,
            widthMetres: 2 * 0.038 * Math.tan(Math.PI / rims) * (0.05 + 0.85 * e) * (rims < 8 ? 0.3 : 1),
            depthMetres: 0.002,
          },
        };
        const mesh = unwrap(puckMesh(spec, 2e-5));
        const use = edgeUse(mesh.triangles);
        for (const [edge, count] of use) {
          if (count !== 1 || use.get(edge.split(">").reverse().join(">")) !== 1) return false;
        }
        return Math.abs(meshVolume(mesh) / exactVolume(spec) - 1) < 2e-3;
      }),
      { numRuns: 60 },
    );
  });

  it("comes closer with a smaller deviation", () => {
    const exact = revolve(outerMeridian(examplePuck)).volume;
    const error = (deviation: number) => Math.abs(meshVolume(unwrap(puckMesh(examplePuck, deviation))) - exact);
    expect(error(2e-6)).toBeLessThan(error(2e-5) / 5);
  });

  it("says that the core is left out and refuses a deviation of 0", () => {
    expect(unwrap(puckMesh(examplePuck, 1e-5)).notes.join(" ")).toContain("the core is not a body of its own");
    expect(puckMesh(examplePuck, 0).ok).toBe(false);
  });
});

describe("round trips of solids", () => {
  it.each(shapes)("STL, %s: another reader finds the same volume within 1e-5, watertight, extents in mm", (_, spec) => {
    const mesh = unwrap(puckMesh(spec, 1e-5));
    const read = new NodeStl(Buffer.from(meshStl(mesh)));
    expect(Math.abs((read.volume * 1e-6) / meshVolume(mesh) - 1)).toBeLessThan(1e-5);
    expect(read).toMatchObject({ isWatertight: true });
    const [x, y, z] = read.boundingBox;
    // A groove that runs out over a sharp rim takes some of the extent.
    for (const extent of [x, y]) {
      expect(extent).toBeLessThan(80.0001);
      expect(extent).toBeGreaterThan(79.9);
    }
    expect(z).toBeCloseTo(30, 4);
  });

  it("3MF: unzips to a model in millimetres with the same volume within 1e-6, the same bytes every time", () => {
    const mesh = unwrap(puckMesh({ ...examplePuck, name: 'A & B "<1>"' }, 1e-5));
    const bytes = mesh3mf(mesh);
    expect(mesh3mf(mesh)).toEqual(bytes);
    const files = unzipSync(bytes);
    const model = strFromU8(files["3D/3dmodel.model"]);
    expect(model).toContain('unit="millimeter"');
    expect(model).toContain("A &amp; B &quot;&lt;1&gt;&quot;");
    const positions = Float64Array.from(
      [...model.matchAll(/<vertex x="([^"]+)" y="([^"]+)" z="([^"]+)"/g)].flatMap(([, x, y, z]) => [x, y, z]),
      (value) => Number(value) / 1000,
    );
    const triangles = Uint32Array.from(
      [...model.matchAll(/<triangle v1="(\d+)" v2="(\d+)" v3="(\d+)"/g)].flatMap(([, a, b, c]) =>
        [a, b, c].map(Number),
      ),
    );
    expect(Math.abs(meshVolume({ positions, triangles }) / meshVolume(mesh) - 1)).toBeLessThan(1e-6);
    expect(Object.keys(files).sort()).toEqual(["3D/3dmodel.model", "[Content_Types].xml", "_rels/.rels"]);
  });
});
