// Runs before every npm script, so it may use nothing but Node itself.
// Installs the locked packages when they are missing or older than the lock file; silent when there is nothing to do.
import { spawnSync } from "node:child_process";
import { copyFileSync, existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const root = join(dirname(fileURLToPath(import.meta.url)), "..", "..");
const [major, minor] = process.versions.node.split(".").map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`Node ${process.versions.node} is too old: version 20.19 or newer is needed.`);
  process.exit(1);
}

const lock = join(root, "package-lock.json");
const installedLock = join(root, "node_modules", ".wakewright-lock.json");
const isCurrent = existsSync(installedLock) && readFileSync(installedLock).equals(readFileSync(lock));
if (!isCurrent) {
  console.error("Installing the locked packages (npm ci) ...");
  const install = spawnSync("npm", ["ci", "--no-audit", "--no-fund"], {
    cwd: root,
    stdio: ["ignore", process.stderr, process.stderr],
    shell: process.platform === "win32",
    // The command may itself run under `npm run --silent`, which would hide why an install failed.
    env: { ...process.env, npm_config_loglevel: "error" },
  });
  if (install.status !== 0) {
    console.error("npm ci failed, so nothing was run. Check the network or the npm registry setting, then try again.");
    process.exit(1);
  }
  copyFileSync(lock, installedLock);
}
