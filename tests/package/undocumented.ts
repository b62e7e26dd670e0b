import { readFileSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { parseSync } from "vite";

type Parsed = ReturnType<typeof parseSync>;
type Statement = Parsed["program"]["body"][number];

/** The names that a file of re-exports gives on, by the file that each comes from. */
export function publicNames(listFile: string): Map<string, string[]> {
  const names = new Map<string, string[]>();
  for (const statement of parse(listFile).program.body) {
    if (statement.type !== "ExportNamedDeclaration" || statement.source === null) {
      throw new Error(`${listFile}: holds something other than re-exports by name`);
    }
    const file = `${resolve(dirname(listFile), statement.source.value)}.ts`;
    names.set(file, [...(names.get(file) ?? []), ...statement.specifiers.map(({ exported }) => nameOf(exported))]);
  }
  return names;
}

/** Which of the names of a file have no comment of their own, and which properties of its interfaces among them. */
export function undocumentedNames(file: string, names: readonly string[]): string[] {
  const parsed = parse(file);
  const text = readFileSync(file, "utf8");
  const isDocumented = ({ start }: { readonly start: number }) =>
    parsed.comments.some(
      ({ type, value, end }) =>
        type === "Block" && value.startsWith("*") && end <= start && text.slice(end, start).trim() === "",
    );
  return names.flatMap((name) => {
    const statement = parsed.program.body.find((one) => declaredName(one) === name);
    if (statement === undefined) return [`${name} is not declared in ${file}`];
    const properties = propertiesOf(statement).filter((property) => !isDocumented(property));
    const own = isDocumented(statement) ? [] : [name];
    return [...own, ...properties.map(({ start, end }) => `${name}: ${text.slice(start, end)}`)];
  });
}

function parse(file: string): Parsed {
  const parsed = parseSync(file, readFileSync(file, "utf8"));
  if (parsed.errors.length > 0) throw new Error(`${file}: ${parsed.errors[0].message}`);
  return parsed;
}

function declaredName(statement: Statement): string | null {
  if (statement.type !== "ExportNamedDeclaration" || statement.declaration === null) return null;
  const { declaration } = statement;
  if (declaration.type === "VariableDeclaration") {
    const { id } = declaration.declarations[0];
    return id.type === "Identifier" ? id.name : null;
  }
  return "id" in declaration && declaration.id?.type === "Identifier" ? declaration.id.name : null;
}

function propertiesOf(statement: Statement): readonly { readonly start: number; readonly end: number }[] {
  if (statement.type !== "ExportNamedDeclaration") return [];
  const { declaration } = statement;
  return declaration?.type === "TSInterfaceDeclaration" ? declaration.body.body : [];
}

function nameOf(exported: { readonly type: string; readonly name?: string; readonly value?: unknown }): string {
  return exported.name ?? String(exported.value);
}
