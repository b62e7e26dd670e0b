import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve, sep } from "node:path";
import { describe, expect, test } from "vitest";

const root = resolve(import.meta.dirname, "../..");
const layers = ["shared", "workers", "src"] as const;

function sourceFiles(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(ts|mjs)$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name));
}

/** Every import of a file, as written; `isType` when only types are taken. */
function importsOf(file: string): { target: string; isType: boolean }[] {
  const text = readFileSync(file, "utf8");
  const pattern = /(?:import|export)\s+(type\s+)?(?:[^"';]*?\sfrom\s+)?["']([^"']+)["']|import\(\s*["']([^"']+)["']/g;
  return [...text.matchAll(pattern)].map((match) => ({ target: match[2] ?? match[3], isType: match[1] !== undefined }));
}

function layerOf(path: string): string {
  return relative(root, path).split(sep)[0];
}

describe("imports run one way: shared <- workers <- src", () => {
  const files = layers.flatMap(sourceFiles);

  test("every layer has files", () => {
    for (const layer of layers) expect(sourceFiles(layer).length).toBeGreaterThan(0);
  });

  test("no file imports from a later layer, and src takes only types from workers", () => {
    const wrong = files.flatMap((file) =>
      importsOf(file)
        .filter(({ target }) => target.startsWith("."))
        .filter(({ target, isType }) => {
          const from = layers.indexOf(layerOf(file) as (typeof layers)[number]);
          const targetLayer = layerOf(resolve(dirname(file), target));
          if (targetLayer === "cases") return from === 0;
          const to = layers.indexOf(targetLayer as (typeof layers)[number]);
          if (to < 0 || to > from) return true;
          const byUrl = target.includes("?worker");
          return from === 2 && to === 1 && !isType && !byUrl;
        })
        .map(({ target }) => `${relative(root, file)} imports ${target}`),
    );
    expect(wrong).toEqual([]);
  });

  test("the engine imports nothing of Node", () => {
    const wrong = sourceFiles("shared").filter((file) =>
      importsOf(file).some(({ target }) => target.startsWith("node:")),
    );
    expect(wrong.map((file) => relative(root, file))).toEqual([]);
  });

  test("no folder has a barrel file", () => {
    expect(files.filter((file) => /[\\/]index\.ts$/.test(file)).map((file) => relative(root, file))).toEqual([]);
  });
});
