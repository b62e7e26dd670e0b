import { playwright } from "@vitest/browser-playwright";
import { configDefaults, defineConfig } from "vitest/config";
import { contentPolicy } from "./src/setup/page/contentPolicy.js";
import { listFiles } from "./src/setup/page/listFiles.js";
import { findBrowser } from "./tests/browser/findBrowser.js";

/** Tests of single components, which run in a browser. */
const leaves = "tests/leaves/**/*.test.ts";

/** What the page imports of other packages, as it imports it. */
const usedPackages = [
  "@tarikjabiri/dxf",
  "comlink",
  "convert",
  "dopri",
  "@rgrove/parse-xml",
  "earcut",
  "fflate",
  "flatbush",
  "idb",
  "lit",
  "lit/decorators.js",
  "lit/directives/guard.js",
  "lit/directives/repeat.js",
  "ndarray",
  "papaparse",
  "pure-rand/distribution/uniformFloat64",
  "pure-rand/generator/xoroshiro128plus",
  "robust-predicates",
  "svg-pathdata",
  "zod",
];

/** The browser is looked for only when it is launched: neither a build nor the other tests need one. */
const launchOptions = {
  args: ["--no-sandbox"],
  get executablePath() {
    return findBrowser();
  },
};

export default defineConfig({
  base: "./",
  publicDir: "src/app/public",
  plugins: [contentPolicy(), listFiles()],
  worker: { format: "es" },
  build: {
    outDir: "dist/page",
    target: "es2022",
    sourcemap: false,
    chunkSizeWarningLimit: 6000,
    rollupOptions: {
      input: { index: "index.html", offline: "src/app/offline/offlineWorker.ts" },
      output: {
        entryFileNames: ({ name }) => (name === "offline" ? "offline.js" : "assets/[name]-[hash].js"),
        // How schemas are to be read is said beside the library, so that it is said before any schema is made.
        codeSplitting: { groups: [{ name: "schemas", test: /node_modules\/zod\/|plainSchemas/ }] },
      },
    },
  },
  server: { host: "127.0.0.1" },
  preview: { host: "127.0.0.1", port: 4173 },
  test: {
    testTimeout: 120_000,
    hookTimeout: 120_000,
    projects: [
      {
        extends: true,
        test: {
          name: "node",
          include: ["tests/**/*.test.ts", "src/**/*.test.ts"],
          exclude: [...configDefaults.exclude, leaves],
          environment: "node",
          // The browser's file waits more than it computes; with one worker it would hold up all others.
          maxWorkers: 2,
          sequence: { groupOrder: 0 },
          setupFiles: ["tests/setup.ts"],
        },
      },
      {
        extends: true,
        // Made ready before the first test: one that turned up later would load the page anew in the middle of a test.
        optimizeDeps: { include: usedPackages },
        test: {
          name: "browser",
          // After the others: groups whose numbers of workers differ cannot run at once.
          sequence: { groupOrder: 1 },
          include: [leaves],
          setupFiles: ["tests/leaves/setup.ts"],
          browser: {
            enabled: true,
            headless: true,
            screenshotFailures: false,
            provider: playwright({ launchOptions }),
            instances: [{ browser: "chromium" }],
            viewport: { width: 1280, height: 900 },
          },
        },
      },
    ],
  },
});
