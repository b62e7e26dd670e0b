import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";

test("nothing on the page moves by itself, so reduced motion takes nothing away: no style sheet animates or scrolls smoothly", () => {
  const moving = readdirSync("src/app", { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(css|ts)$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
    .filter((file) => /^\s*(animation|transition|scroll-behavior)[\w-]*:\s[^"]*;$/m.test(readFileSync(file, "utf8")));
  expect(moving).toEqual([]);
});
