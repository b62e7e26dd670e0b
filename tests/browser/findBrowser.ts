import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { homedir, platform } from "node:os";
import { join } from "node:path";

/**
 * Path of a Chromium-family browser for the browser tests: the one named by WAKEWRIGHT_BROWSER, else one at a usual
 * place, else (as root on a Debian-like system) the package `chromium`, installed with apt-get.
 * @throws Error with the one thing to do when there is none
 */
export function findBrowser(): string {
  const named = process.env.WAKEWRIGHT_BROWSER;
  if (named) {
    if (existsSync(named)) return named;
    throw new Error(`WAKEWRIGHT_BROWSER names ${named}, which does not exist.`);
  }
  const found = usualPlaces().find((place) => existsSync(place)) ?? installedByPackage();
  if (found) return found;
  throw new Error(
    "The browser tests need Chromium, Chrome or Edge and found none. Install one, or set WAKEWRIGHT_BROWSER to its program file.",
  );
}

function usualPlaces(): string[] {
  if (platform() === "darwin") {
    return ["/Applications", join(homedir(), "Applications")].flatMap((folder) => [
      `${folder}/Chromium.app/Contents/MacOS/Chromium`,
      `${folder}/Google Chrome.app/Contents/MacOS/Google Chrome`,
      `${folder}/Microsoft Edge.app/Contents/MacOS/Microsoft Edge`,
    ]);
  }
  if (platform() === "win32") {
    return [process.env.PROGRAMFILES, process.env["PROGRAMFILES(X86)"], process.env.LOCALAPPDATA]
      .filter((folder) => folder !== undefined)
      .flatMap((folder) => [
        join(folder, "Google", "Chrome", "Application", "chrome.exe"),
        join(folder, "Chromium", "Application", "chrome.exe"),
        join(folder, "Microsoft", "Edge", "Application", "msedge.exe"),
      ]);
  }
  const names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "microsoft-edge"];
  return ["/usr/bin", "/usr/local/bin", "/snap/bin"].flatMap((folder) => names.map((name) => `${folder}/${name}`));
}

function installedByPackage(): string | null {
  const isRootOnDebian = process.getuid?.() === 0 && existsSync("/etc/debian_version");
  if (!isRootOnDebian) return null;
  console.error("No browser found: installing the package chromium with apt-get ...");
  const options = { stdio: "ignore", env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" } } as const;
  spawnSync("apt-get", ["update"], options);
  spawnSync("apt-get", ["install", "-y", "--no-install-recommends", "chromium"], options);
  return existsSync("/usr/bin/chromium") ? "/usr/bin/chromium" : null;
}
