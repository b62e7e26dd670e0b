import type { Plugin } from "vite";
import { defineConfig } from "vitest/config";

/** Lists the built files for the service worker, which keeps them for use without a network. */
function listFiles(): Plugin {
  return {
    name: "list-files",
    enforce: "post",
    generateBundle(_, bundle) {
      const files = Object.keys(bundle).filter((file) => file !== "offline.js" && !file.endsWith(".html"));
      this.emitFile({ type: "asset", fileName: "offline-files.json", source: JSON.stringify(files) });
    },
  };
}

export default defineConfig({
  base: "./",
  plugins: [listFiles()],
  worker: { format: "es" },
  build: {
    outDir: "dist/page",
    target: "es2022",
    sourcemap: false,
    chunkSizeWarningLimit: 6000,
    rollupOptions: {
      input: { index: "index.html", offline: "src/app/offline/offlineWorker.ts" },
      output: { entryFileNames: ({ name }) => (name === "offline" ? "offline.js" : "assets/[name]-[hash].js") },
    },
  },
  server: { host: "127.0.0.1" },
  preview: { host: "127.0.0.1", port: 4173 },
  test: {
    include: ["tests/**/*.test.ts", "src/**/*.test.ts"],
    environment: "node",
    // The browser's file waits more than it computes; with one worker it would hold up all others.
    maxWorkers: 2,
    setupFiles: ["tests/setup.ts"],
    testTimeout: 30_000,
    hookTimeout: 120_000,
  },
});
