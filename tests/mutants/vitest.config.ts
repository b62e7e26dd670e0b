import { defineConfig } from "vitest/config";

/** Test folders that pin each folder of the engine: quick ones alone, as every mutant runs all tests that reach it. */
const testsOf: Readonly<Record<string, readonly string[]>> = {
  roughness: ["roughness"],
  layer: ["layer", "axial"],
  wake: ["wake"],
  flow: ["flow"],
  solve: ["solve"],
};

const folder = process.env.MUTANT_FOLDER ?? "";
const tests = testsOf[folder];
if (tests === undefined) throw new Error(`MUTANT_FOLDER is "${folder}"; give ${Object.keys(testsOf).join(", ")}.`);

export default defineConfig({
  test: {
    include: tests.map((name) => `tests/${name}/**/*.test.ts`),
    environment: "node",
    setupFiles: ["tests/setup.ts"],
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
