import { readFileSync } from "node:fs";
import { relative } from "node:path";

/**
 * A checker for the mutation run that lets through only the mutants that were drawn. A range of code holds more than the
 * one that was drawn there, and to run all of them would take several times as long.
 *
 * The file that MUTANT_DRAW names holds the keys of those drawn, as `keyOf` in mutants.ts makes them.
 */
export const strykerPlugins = [
  {
    kind: "Checker",
    name: "drawn",
    factory: () => {
      const [root, keys] = JSON.parse(readFileSync(process.env.MUTANT_DRAW ?? "", "utf8"));
      const drawn = new Set(keys);
      return {
        init: async () => {},
        check: async (mutants) =>
          Object.fromEntries(
            mutants.map(({ id, fileName, location: { start, end }, replacement }) => {
              const place = [start.line + 1, start.column, end.line + 1, end.column];
              const key = [relative(root, fileName), ...place, replacement].join("|");
              return [id, drawn.has(key) ? { status: "passed" } : { status: "compileError", reason: "not drawn" }];
            }),
          ),
      };
    },
  },
];
