// Makes the API pages of the public list; fails on a public name that says nothing of itself. The generator needs a
// compiler with a programming interface, which the project's own does not have, so it lives in a folder of its own.
import { spawnSync } from "node:child_process";
import { copyFileSync, existsSync, mkdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, "..", "..");
const wanted = join(here, "api");
const tools = join(root, "node_modules", ".cache", "wakewright-api");

function run(command, args, cwd, shell = false) {
  const { status } = spawnSync(command, args, { cwd, stdio: "inherit", shell });
  if (status !== 0) process.exit(status ?? 1);
}

const lock = join(wanted, "package-lock.json");
const installedLock = join(tools, "node_modules", ".installed-lock.json");
if (!existsSync(installedLock) || !readFileSync(installedLock).equals(readFileSync(lock))) {
  mkdirSync(tools, { recursive: true });
  for (const file of ["package.json", "package-lock.json"]) copyFileSync(join(wanted, file), join(tools, file));
  run("npm", ["ci", "--no-audit", "--no-fund"], tools, process.platform === "win32");
  copyFileSync(lock, installedLock);
}
const generator = join(tools, "node_modules", "typedoc", "bin", "typedoc");
run(process.execPath, [generator, "--options", join(wanted, "typedoc.json")], root);
