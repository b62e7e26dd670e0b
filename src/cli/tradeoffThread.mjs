// A worker thread does not get the TypeScript loader of its parent: it registers its own, then does the work.
import { register } from "tsx/esm/api";

register();
await import("./tradeoffWork.ts");
