import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, test } from "vitest";
import { viewNames } from "../../src/app/store/viewNames";

const root = resolve(import.meta.dirname, "../..");
const components = join(root, "src/app/components");

/** The page's shell and the views, which the scenarios of the whole page look at. */
const roots = new RegExp(`^(app|(${viewNames.join("|")})-view)$`);

test("every component of the page but its shell and its views has a test of its own in a browser", () => {
  const tests = readdirSync(join(root, "tests/leaves"))
    .filter((file) => file.endsWith(".test.ts"))
    .map((file) => readFileSync(join(root, "tests/leaves", file), "utf8"))
    .join("\n");
  const tags = readdirSync(components)
    .filter((folder) => !roots.test(folder))
    .flatMap((folder) => readdirSync(join(components, folder)).map((file) => join(components, folder, file)))
    .flatMap((file) => [...readFileSync(file, "utf8").matchAll(/@customElement\("([^"]+)"\)/g)].map(([, tag]) => tag));
  expect(tags.length).toBeGreaterThan(50);
  expect(tags.filter((tag) => !tests.includes(`test("${tag} `))).toEqual([]);
});
