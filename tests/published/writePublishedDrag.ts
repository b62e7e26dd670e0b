import { writeFileSync } from "node:fs";
import { publishedDrag } from "./publishedDrag";

// One group a line, so that a change of one value is one changed line.
const lines = publishedDrag().map((group) => JSON.stringify(group));
writeFileSync("src/app/reference/publishedDrag.json", `[\n${lines.join(",\n")}\n]\n`);
