import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { join, relative, resolve } from "node:path";
import { type ModuleItem, parseSync } from "@swc/core";
import { describe, expect, test } from "vitest";
import { ledgerNumbers } from "../../shared/engine/constants/ledger";
import { LEDGER_FORMS } from "../../shared/engine/constants/ledgerForms";
import { numbersInFormulas } from "./physicsNumbers";

const shared = resolve(import.meta.dirname, "../../shared");

/**
 * Folders and files whose numbers decide a drag coefficient, its state or its band. Not among them: fluids, which are
 * published equations of state, and published curves.
 */
const physics = [
  ...readdirSync(join(shared, "engine"), { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && !["constants", "fluid", "reference"].includes(entry.name))
    .map((entry) => `engine/${entry.name}`),
  ...["faceOnFlow", "faceOnDrag", "edgeOnDrag", "endRelief", "profileStrip", "solvedSections", "sectionDrag"].map(
    (file) => `jobs/puck/drag/${file}.ts`,
  ),
  ...["drag/tiltedDrag", "motion/slidingFriction", "drag/puckFlow", "drag/puckSurface", "drag/orientationDrag"].map(
    (file) => `jobs/puck/${file}.ts`,
  ),
];
/** Written by `npm run accuracy` and `npm run trust`. */
const generated = new Set(["engine/trust/checkedBands.ts", "engine/trust/checkedErrors.ts"]);

/** Weights of sums and differences, powers, units and roundings: too plain to be looked at inside a formula. */
const rounding = 1e-9;
const plainValues = new Set([0, 1, 2, 3, 4, 0.5, 6, 8, 10, 12, 100, 180, 360, 1000]);
const isPlain = (value: number) => plainValues.has(value) || value <= rounding;

type Node = { readonly type?: string; readonly [key: string]: unknown };

function codeFiles(path: string): string[] {
  const full = join(shared, path);
  if (statSync(full).isFile()) return [path];
  return readdirSync(full, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(".ts"))
    .map((entry) => relative(shared, join(entry.parentPath, entry.name)))
    .filter((file) => !generated.has(file));
}

function parsed(code: string): readonly ModuleItem[] {
  return parseSync(code, { syntax: "typescript" }).body;
}

function walk(node: unknown, visit: (node: Node) => void): void {
  if (Array.isArray(node)) for (const each of node) walk(each, visit);
  else if (typeof node === "object" && node !== null) {
    visit(node as Node);
    for (const value of Object.values(node)) if (typeof value === "object") walk(value, visit);
  }
}

/** Value of a number with its sign; null of anything else. */
function numberOf(node: Node | undefined): number | null {
  if (node?.type === "NumericLiteral") return node.value as number;
  if (node?.type !== "UnaryExpression" || node.operator !== "-") return null;
  const inner = numberOf(node.argument as Node);
  return inner === null ? null : -inner;
}

/** All numbers of a file that are not plain, and those that a name is given to at its top, plain or not. */
function numbersIn(code: string): number[] {
  const found = new Set<number>();
  for (const item of parsed(code) as unknown as readonly Node[]) {
    walk(item, (node) => {
      const value = node.type === "NumericLiteral" ? Math.abs(node.value as number) : 0;
      if (!isPlain(value)) found.add(value);
    });
    const declaration = (item.type === "ExportDeclaration" ? item.declaration : item) as Node;
    if (declaration.type !== "VariableDeclaration") continue;
    for (const { init } of declaration.declarations as readonly { readonly init?: Node }[]) {
      const value = numberOf(init);
      if (value !== null && Math.abs(value) > rounding) found.add(Math.abs(value));
    }
  }
  return [...found];
}

/** Keys of the ledger that a file reads, as `SOME_NUMBERS.key.value`. */
function ledgerKeysIn(code: string): Set<string> {
  const keys = new Set<string>();
  walk(parsed(code), (node) => {
    if (node.type !== "MemberExpression" || (node.property as Node).value !== "value") return;
    const inner = node.object as Node;
    if (inner.type !== "MemberExpression") return;
    if (/_NUMBERS$/.test(String((inner.object as Node).value))) keys.add(String((inner.property as Node).value));
  });
  return keys;
}

const codeOf = (file: string) => readFileSync(join(shared, file), "utf8");

describe("the ledger", () => {
  test.each(ledgerNumbers)("%s is read by the files that it names", (key, { usedIn }) => {
    for (const file of usedIn) expect(ledgerKeysIn(codeOf(file)), file).toContain(key);
  });

  test("every number that a file reads from the constants is in the ledger under that file", () => {
    const places = new Map<string, readonly string[]>(ledgerNumbers.map(([key, { usedIn }]) => [key, usedIn]));
    const missing = ["engine", "jobs"]
      .flatMap(codeFiles)
      .flatMap((file) =>
        [...ledgerKeysIn(codeOf(file))]
          .filter((key) => !places.get(key)?.includes(file))
          .map((key) => `${key} in ${file}`),
      );
    expect(missing).toEqual([]);
  });

  test.each(LEDGER_FORMS.map((form) => [form.name, form] as const))(
    "form: %s stands where it says",
    (_, { usedIn }) => {
      for (const place of usedIn) {
        const [file, name] = place.split("#");
        expect(existsSync(join(shared, file)), file).toBe(true);
        expect(codeOf(file)).toMatch(new RegExp(`(function|const|class) ${name}\\b`));
      }
    },
  );

  test("no number of the physics is in neither the ledger nor the list of numbers in formulas", () => {
    const unknown = physics.flatMap(codeFiles).flatMap((file) => {
      const classes = Object.values(numbersInFormulas[file] ?? {});
      if (classes.includes("all")) return [];
      const known = new Set(classes.flatMap((numbers) => (Array.isArray(numbers) ? numbers.map(Math.abs) : [])));
      return numbersIn(codeOf(file))
        .filter((value) => !known.has(value))
        .map((value) => `${value} in ${file}`);
    });
    expect(
      unknown,
      "put them into shared/engine/constants, or into physicsNumbers.ts if they are of its kinds",
    ).toEqual([]);
  });

  test("the list of numbers in formulas names files and numbers that are there", () => {
    const gone = Object.entries(numbersInFormulas).flatMap(([file, classes]) => {
      if (!existsSync(join(shared, file))) return [file];
      const present = new Set<number>();
      walk(parsed(codeOf(file)), (node) => {
        if (node.type === "NumericLiteral") present.add(Math.abs(node.value as number));
      });
      // Steps and tolerances come and go.
      return [classes.published, classes.remembered]
        .flatMap((numbers) => (Array.isArray(numbers) ? numbers : []))
        .filter((value) => !present.has(Math.abs(value)))
        .map((value) => `${value} in ${file}`);
    });
    expect(gone).toEqual([]);
  });

  test.each(Object.entries(numbersInFormulas))(
    "%s names the source of its published and remembered numbers",
    (file, classes) => {
      const code = codeOf(file);
      const forms = LEDGER_FORMS.filter(({ usedIn }) => usedIn.some((place) => place.startsWith(`${file}#`)));
      if (classes.published !== undefined) expect(code).toMatch(/\b(18|19|20)\d\d\b/);
      // What a file says is from memory, the ledger says too.
      if (classes.published !== undefined && code.includes("from memory")) expect(forms).not.toEqual([]);
      if (classes.remembered !== undefined) expect(forms.map(({ kind }) => kind)).toContain("remembered");
    },
  );

  test("a number named in a physics file, and one in a formula, would be seen", () => {
    expect(numbersIn("export const A = 2;\nconst B = -0.25;\nfunction f(x: number) { return 2 * x + 0.37; }")).toEqual([
      2, 0.25, 0.37,
    ]);
    expect([...ledgerKeysIn("const A = WAKE_NUMBERS.cornerSpeed.value;")]).toEqual(["cornerSpeed"]);
  });

  test("fitted numbers are those that the calibration moves", async () => {
    const { CALIBRATED } = await import("../../shared/engine/constants/calibrated");
    const fitted = ledgerNumbers.filter(([, { kind }]) => kind === "fitted").map(([key, { value }]) => [key, value]);
    expect(Object.fromEntries(fitted)).toEqual(CALIBRATED);
  });
});
