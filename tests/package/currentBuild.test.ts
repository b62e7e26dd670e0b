import { spawn } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, renameSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { sourceStamp } from "../../src/setup/currentBuild.mjs";

// Starts builds of its own, which a busy machine makes slowly.
vi.setConfig({ testTimeout: 300_000 });

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "wakewright-build-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("sourceStamp(root)", () => {
  it("changes with a source's content and name, and with nothing else", () => {
    const root = join(folder, "project");
    for (const inner of ["shared/engine", "src/cli", "src/setup"]) mkdirSync(join(root, inner), { recursive: true });
    const files = [
      "package.json",
      "package-lock.json",
      "src/setup/libraryBuild.mjs",
      "shared/engine/a.ts",
      "src/cli/b.ts",
    ];
    for (const file of files) writeFileSync(join(root, file), "1");
    const first = sourceStamp(root);
    utimesSync(join(root, "src/cli/b.ts"), 1e9, 1e9);
    writeFileSync(join(root, "src/setup/other.mjs"), "1");
    expect(sourceStamp(root)).toBe(first);
    for (const file of files) {
      writeFileSync(join(root, file), "2");
      expect(sourceStamp(root), file).not.toBe(first);
      writeFileSync(join(root, file), "1");
    }
    expect(sourceStamp(root)).toBe(first);
    renameSync(join(root, "src/cli/b.ts"), join(root, "src/cli/c.ts"));
    expect(sourceStamp(root)).not.toBe(first);
  });
});

describe("currentBuild()", () => {
  it("of two processes that start at once gives both the same whole build, and leaves nothing else", async () => {
    const kept = join(folder, "kept");
    const script = `
      const { currentBuild } = await import(${JSON.stringify(new URL("../../src/setup/currentBuild.mjs", import.meta.url).href)});
      process.stdout.write(await currentBuild(${JSON.stringify(kept)}));`;
    const build = () =>
      new Promise<string>((resolve, reject) => {
        const child = spawn(process.execPath, ["--input-type=module", "--eval", script], {
          stdio: ["ignore", "pipe", "inherit"],
        });
        let shown = "";
        child.stdout.on("data", (text) => {
          shown += text;
        });
        child.on("close", (status) => (status === 0 ? resolve(shown) : reject(new Error(`ended with ${status}`))));
      });
    const [one, other] = await Promise.all([build(), build()]);
    expect(one).toBe(other);
    expect(readdirSync(kept).map((name) => join(kept, name))).toEqual([one]);
    expect(readdirSync(one)).toEqual(expect.arrayContaining(["wakewright.js", "index.js"]));
  });
});
