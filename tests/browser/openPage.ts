import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Browser, chromium, type Page } from "playwright-core";
import { type PreviewServer, preview } from "vite";
import { findBrowser } from "./findBrowser";

/** The production build, served, and a browser for it. */
export interface Stage {
  readonly address: string;
  readonly browser: Browser;
  close(): Promise<void>;
}

/** Builds the page into a folder of its own, serves it on a free port and starts a headless browser. */
export async function openStage(): Promise<Stage> {
  const executablePath = findBrowser();
  const outDir = mkdtempSync(join(tmpdir(), "wakewright-page-"));
  buildPage(outDir);
  const server: PreviewServer = await preview({
    logLevel: "error",
    build: { outDir },
    preview: { port: 0, host: "127.0.0.1", open: false },
  });
  const browser = await chromium.launch({
    executablePath,
    args: [
      "--headless",
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
    ],
  });
  const bound = server.httpServer.address();
  if (bound === null || typeof bound === "string") throw new Error("The preview server has no port.");
  return {
    address: `http://127.0.0.1:${bound.port}/`,
    browser,
    close: async () => {
      await browser.close();
      await server.close();
      rmSync(outDir, { recursive: true, force: true });
    },
  };
}

/** Builds in a process of its own: the test runner's environment would make it a development build. */
function buildPage(outDir: string): void {
  const vite = join("node_modules", "vite", "bin", "vite.js");
  const built = spawnSync(
    process.execPath,
    [vite, "build", "--outDir", outDir, "--emptyOutDir", "--logLevel", "error"],
    {
      encoding: "utf8",
      env: { ...process.env, NODE_ENV: "production", VITEST: "" },
    },
  );
  if (built.status !== 0) throw new Error(`vite build failed:\n${built.stdout}${built.stderr}`);
}

/** All groups of inputs are open and all steps on one page, as a person who uses them all would have arranged it. */
const openInputs = `try {
  if (localStorage.getItem("wakewright-desk") === null) {
    const openGroups = ["shape", "stream", "turbulence", "finish", "trips", "layers", "case"];
    localStorage.setItem("wakewright-desk", JSON.stringify({ detail: null, openGroups, ribbonKey: "edgeRadius" }));
  }
  if (localStorage.getItem("wakewright-steps") === null) {
    localStorage.setItem("wakewright-steps", JSON.stringify({ puck: "all", tunnel: "all", compare: "all" }));
  }
} catch {}`;

/**
 * A page with everything it complained about: console errors, uncaught errors, failed requests, what its content policy
 * forbade, and every window or request that leads away from it.
 */
export interface WatchedPage {
  readonly page: Page;
  readonly complaints: string[];
}

export interface PageChoice {
  readonly hash?: string;
  /** False leaves the plot library out, as when it cannot be loaded: the rest of the page must work, and it is quicker. */
  readonly plots?: boolean;
  /** True lets the service worker keep the page for use without a network. */
  readonly offline?: boolean;
  /** A script that runs in the page before its own. */
  readonly early?: string;
}

/** The browser itself says nothing of a try that the library catches. */
const tellForbidden = `addEventListener("securitypolicyviolation", ({ violatedDirective, blockedURI, sourceFile }) =>
  console.error("forbidden by the content policy:", violatedDirective, blockedURI, sourceFile));`;

/** A fresh browser profile, so nothing is stored from another test. */
export async function openPage(
  stage: Stage,
  { hash = "", plots = true, offline = false, early }: PageChoice = {},
): Promise<WatchedPage> {
  const context = await stage.browser.newContext({
    viewport: { width: 1280, height: 900 },
    reducedMotion: "reduce",
    serviceWorkers: offline ? "allow" : "block",
  });
  if (!plots) await context.route("**/plotly*", (route) => route.abort());
  const page = await context.newPage();
  await page.addInitScript(tellForbidden);
  await page.addInitScript(openInputs);
  if (early !== undefined) await page.addInitScript(early);
  const complaints: string[] = [];
  const complain = (text: string) => {
    const isOwnDoing = (!plots && /plotly|ERR_FAILED/.test(text)) || /blocked by Playwright/.test(text);
    if (!isOwnDoing) complaints.push(text);
  };
  page.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning") complain(message.text());
  });
  page.on("pageerror", (error) => complain(error.message));
  page.on("requestfailed", (request) => complain(`${request.url()}: ${request.failure()?.errorText}`));
  page.on("request", (request) => {
    const { protocol, origin } = new URL(request.url());
    const isOwn = protocol === "data:" || protocol === "blob:" || origin === new URL(stage.address).origin;
    if (!isOwn) complain(`asked elsewhere: ${request.url()}`);
  });
  page.on("popup", (popup) => complain(`opened a window: ${popup.url()}`));
  await page.goto(stage.address + hash, { waitUntil: "load" });
  return { page, complaints };
}
