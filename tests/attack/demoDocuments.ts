import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { inlineTables } from "../../src/cli/inlineTables";

const folder = fileURLToPath(new URL("../../cases/", import.meta.url));

/** Every case file of the project, with the rows of the tables that it names in place. */
export function demoDocuments(): readonly unknown[] {
  const names = readdirSync(folder).filter((name) => /^[^.]+\.json$/.test(name));
  return names.map((name) => {
    const document = JSON.parse(readFileSync(join(folder, name), "utf8"));
    const rules = document.puck?.rules;
    if (typeof rules === "string") document.puck.rules = JSON.parse(readFileSync(join(folder, rules), "utf8"));
    const whole = inlineTables(document, folder, name);
    if (!whole.ok) throw new Error(whole.problem.message);
    return whole.value;
  });
}
