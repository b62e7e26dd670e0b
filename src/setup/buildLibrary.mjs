// Builds what the package gives to others: the engine with its declarations, and the command.
import { spawnSync } from "node:child_process";
import { chmodSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { buildLibrary } from "./libraryBuild.mjs";

const root = join(dirname(fileURLToPath(import.meta.url)), "..", "..");
const folder = join(root, "dist", "lib");

await buildLibrary(folder);
chmodSync(join(folder, "wakewright.js"), 0o755);

const compiler = join(root, "node_modules", "typescript", "bin", "tsc");
const project = join(root, "src", "setup", "library.tsconfig.json");
const compiled = spawnSync(process.execPath, [compiler, "-p", project], { stdio: "inherit" });
if (compiled.status !== 0) process.exit(1);

// The sources import without file endings, as bundlers read them; a reader that follows Node's rules needs the endings.
for (const entry of readdirSync(join(folder, "types"), { recursive: true, withFileTypes: true })) {
  if (!entry.isFile()) continue;
  const file = join(entry.parentPath, entry.name);
  const text = readFileSync(file, "utf8");
  writeFileSync(file, text.replace(/((?:from|import\()\s*")(\.[^"]*)(")/g, "$1$2.js$3"));
}
