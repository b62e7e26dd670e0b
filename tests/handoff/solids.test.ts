import { strFromU8, unzipSync } from "fflate";
import NodeStl from "node-stl";
import { describe, expect, it } from "vitest";
import { mesh3mf } from "../../shared/handoff/mesh3mf";
import { meshStl } from "../../shared/handoff/meshStl";
import { meshVolume, puckMesh } from "../../shared/handoff/puckMesh";
import { outerMeridian } from "../../shared/puck/outerShape";
import type { PuckSpec } from "../../shared/puck/puckSpec";
import { revolve } from "../../shared/puck/solidFigures";
import { examplePuck, unwrap } from "../puck/examplePuck";

const shapes: [string, PuckSpec][] = [
  ["rounded", examplePuck],
  ["bevelled", { ...examplePuck, edge: { kind: "bevel", radialMetres: 0.005, axialMetres: 0.003 } }],
  [
    "recessed both sides",
    { ...examplePuck, face: { kind: "recess", side: "both", diameterMetres: 0.05, depthMetres: 0.002 } },
  ],
  ["torus-edged", { ...examplePuck, edge: { kind: "radius", radiusMetres: 0.015 } }],
];

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
      const exact = revolve(outerMeridian(spec)).volume;
      expect(Math.abs(meshVolume(mesh) / exact - 1)).toBeLessThan(1e-3);
    },
  );

  it("comes closer with a smaller deviation", () => {
    const exact = revolve(outerMeridian(examplePuck)).volume;
    const error = (deviation: number) => Math.abs(meshVolume(unwrap(puckMesh(examplePuck, deviation))) - exact);
    expect(error(2e-6)).toBeLessThan(error(2e-5) / 5);
  });

  it("says that grooves are left out and refuses a deviation of 0", () => {
    const grooved: PuckSpec = {
      ...examplePuck,
      rim: { kind: "ringGrooves", number: 2, widthMetres: 0.001, depthMetres: 0.001 },
    };
    expect(unwrap(puckMesh(grooved, 1e-5)).notes.join(" ")).toContain("grooves of the rim are not");
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
    expect(x).toBeCloseTo(80, 1);
    expect(y).toBeCloseTo(80, 1);
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
