import { spawnSync } from "node:child_process";
import { chmodSync, cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

export const projectFolder = fileURLToPath(new URL("../../", import.meta.url));

/** The package as others get it: built, packed and unpacked in an empty folder, beside the packages that it asks for. */
export interface InstalledPackage {
  /** Where the package is installed. */
  readonly folder: string;
  /** Its files, from its own folder. */
  readonly files: readonly string[];
  remove(): void;
}

/**
 * Builds, packs and installs the package. The packages that it asks for are linked from the project's own, so that no
 * network is needed; none else can be found from where it lies.
 */
export function installPackage(): InstalledPackage {
  const folder = mkdtempSync(join(tmpdir(), "wakewright installed "));
  run(process.execPath, ["src/setup/buildLibrary.mjs"], projectFolder);
  const packed = run("npm", ["pack", "--ignore-scripts", "--json", "--pack-destination", folder], projectFolder);
  const [{ filename, files }]: [{ filename: string; files: { path: string }[] }] = JSON.parse(packed);
  const modules = join(folder, "node_modules");
  mkdirSync(modules);
  run("tar", ["-xzf", join(folder, filename), "-C", folder], folder);
  cpSync(join(folder, "package"), join(modules, "wakewright"), { recursive: true });
  rmSync(join(folder, "package"), { recursive: true });
  const { dependencies, bin } = JSON.parse(readFileSync(join(modules, "wakewright", "package.json"), "utf8"));
  for (const name of Object.keys(dependencies)) {
    mkdirSync(dirname(join(modules, name)), { recursive: true });
    symlinkSync(join(projectFolder, "node_modules", name), join(modules, name));
  }
  mkdirSync(join(modules, ".bin"));
  const program = join(modules, "wakewright", bin.wakewright);
  // As the package manager does with what `bin` names.
  if (existsSync(program)) chmodSync(program, 0o755);
  symlinkSync(program, join(modules, ".bin", "wakewright"));
  return {
    folder,
    files: files.map(({ path }) => path),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

/** Runs a program to its end and gives what it printed; anything but success throws with its complaint. */
export function run(program: string, args: readonly string[], cwd: string, env: NodeJS.ProcessEnv = {}): string {
  const end = spawnSync(program, [...args], {
    cwd,
    encoding: "utf8",
    env: { ...process.env, NODE_ENV: "production", VITEST: "", NODE_OPTIONS: "", ...env },
    shell: process.platform === "win32",
  });
  if (end.status !== 0)
    throw new Error(`${program} ${args.join(" ")} ended with ${end.status}:\n${end.stderr}${end.stdout}`);
  return end.stdout;
}
