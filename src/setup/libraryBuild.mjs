// What is built of the engine and the command line: plain ES modules, with the packages left out as imports.
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "vite";

const root = join(dirname(fileURLToPath(import.meta.url)), "..", "..");

/** The files that others start or import, by their name in the build. */
const entries = {
  index: "shared/engine/index.ts",
  wakewright: "src/cli/wakewright.ts",
  tradeoffThread: "src/cli/tradeoffThread.ts",
};

/**
 * Builds into a folder, which is emptied first.
 * @param {string} folder
 */
export async function buildLibrary(folder) {
  await build({
    root,
    configFile: false,
    logLevel: "warn",
    publicDir: false,
    build: {
      ssr: true,
      outDir: folder,
      emptyOutDir: true,
      target: "es2022",
      minify: false,
      rolldownOptions: {
        input: Object.fromEntries(Object.entries(entries).map(([name, file]) => [name, join(root, file)])),
        output: { entryFileNames: "[name].js", chunkFileNames: "[name]-[hash].js" },
      },
    },
  });
}
