// Keeps a build of the command line that fits the sources, so that its commands start without a compiler.
import { createHash } from "node:crypto";
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
} from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const root = join(dirname(fileURLToPath(import.meta.url)), "..", "..");
/** Builds of other sources are kept this long: a command that was started from one may still load a part of it. */
const keptMilliseconds = 24 * 3600 * 1000;

/** Everything that the build depends on. */
function sourceFiles(root) {
  const inside = (folder) =>
    readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name));
  const single = ["package.json", "package-lock.json", "src/setup/libraryBuild.mjs"].map((file) => join(root, file));
  return [...single, ...inside("shared"), ...inside("src/cli")].sort();
}

/**
 * A word for the contents of the sources in a project's folder: equal sources have equal words.
 * @param {string} root
 * @returns {string}
 */
export function sourceStamp(root) {
  const hash = createHash("sha256");
  for (const file of sourceFiles(root))
    hash
      .update(`${file.slice(root.length)}\0`)
      .update(readFileSync(file))
      .update("\0");
  return hash.digest("hex").slice(0, 16);
}

/**
 * The folder with a build of the sources as they are now; built first when there is none. A build is made aside and
 * appears whole, under a name made of its sources, so that commands that start at the same time do not disturb each other.
 * @param {string} kept where builds are kept
 * @returns {Promise<string>}
 */
export async function currentBuild(kept = join(root, "dist", "command")) {
  const folder = join(kept, sourceStamp(root));
  if (existsSync(folder)) return folder;
  const { buildLibrary } = await import("./libraryBuild.mjs");
  mkdirSync(kept, { recursive: true });
  const aside = mkdtempSync(join(kept, `making-${process.pid}-`));
  try {
    await buildLibrary(aside);
    // A folder for temporary use is closed to others; this one is as open as the checkout.
    chmodSync(aside, 0o777 & ~process.umask());
    renameSync(aside, folder);
  } catch (error) {
    rmSync(aside, { recursive: true, force: true });
    // Another process was quicker.
    if (!existsSync(folder)) throw error;
  }
  removeOld(kept, folder);
  return folder;
}

function removeOld(kept, current) {
  for (const name of readdirSync(kept)) {
    const folder = join(kept, name);
    if (folder === current) continue;
    const maker = /^making-(\d+)-/.exec(name);
    if (maker !== null && !isAtWork(Number(maker[1]))) rmSync(folder, { recursive: true, force: true });
    const age = Date.now() - (statSync(folder, { throwIfNoEntry: false })?.mtimeMs ?? Date.now());
    if (age > keptMilliseconds) rmSync(folder, { recursive: true, force: true });
  }
}

/** Whether a process of this number runs. */
function isAtWork(id) {
  try {
    process.kill(id, 0);
    return true;
  } catch (error) {
    return error.code === "EPERM";
  }
}
