// The command of a checkout: builds it when the sources have changed, then is it.
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { currentBuild } from "./currentBuild.mjs";

/** The scripts of package.json that start a command. */
const scripts = ["wakewright", "case", "tradeoff", "handoff", "sheets"];

const folder = await currentBuild();
// Paths are meant from where the user stands; `npm run` moves to the package's folder and keeps that place.
if (scripts.includes(process.env.npm_lifecycle_event ?? "") && process.env.INIT_CWD)
  process.chdir(process.env.INIT_CWD);
await import(pathToFileURL(join(folder, "wakewright.js")).href);
