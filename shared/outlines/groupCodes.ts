import { problem, type Result, success } from "../result";

/** A pair of lines of a DXF file: a group code and its value. Source: DXF Reference, Autodesk (2011), "Group Codes". */
export interface Group {
  readonly code: number;
  readonly value: string;
}

/** A record of a DXF file: what stands between one group 0 and the next. */
export interface DxfRecord {
  readonly type: string;
  readonly groups: readonly Group[];
}

/** The parts of a text DXF file that hold an outline. */
export interface DxfParts {
  /** $INSUNITS of the header; null when it is not given. */
  readonly unitCode: number | null;
  /** Of the section ENTITIES, in order. */
  readonly entities: readonly DxfRecord[];
}

/**
 * Reads a text DXF file in one pass over its lines: whatever is missing at its end, no more lines are looked at than it
 * has.
 */
export function readDxfParts(text: string): Result<DxfParts> {
  const lines = text.split(/\r\n|\n|\r/);
  let section = "";
  let unitCode: number | null = null;
  let variable = "";
  let current: { type: string; groups: Group[] } | null = null;
  const entities: DxfRecord[] = [];
  let sections = 0;
  for (let i = 0; i + 1 < lines.length; i += 2) {
    const codeText = lines[i].trim();
    if (codeText === "" && lines.slice(i, i + 4).every((line) => line.trim() === "")) break;
    if (!/^[+-]?\d{1,5}$/.test(codeText)) {
      const shown = JSON.stringify(codeText.slice(0, 30));
      return problem("outline", `line ${i + 1} of the DXF file is ${shown}; it must be a group code, a whole number`);
    }
    const code = Number(codeText);
    const value = lines[i + 1].trim();
    if (code === 0) {
      current = null;
      if (value === "SECTION" || value === "ENDSEC" || value === "EOF") section = "";
      if (value === "EOF") break;
      if (section === "ENTITIES") {
        current = { type: value, groups: [] };
        entities.push(current);
      }
    } else if (current !== null) current.groups.push({ code, value });
    else if (code === 2 && section === "") {
      section = value;
      sections++;
    } else if (section === "HEADER") {
      if (code === 9) variable = value;
      else if (variable === "$INSUNITS" && code === 70) unitCode = Number(value);
    }
  }
  if (sections === 0)
    return problem("outline", "the file is no text DXF drawing: it has no section (binary DXF is not read)");
  return success({ unitCode, entities });
}

/** The first value of a group as a number; the fallback where it is not given, NaN where it is no number. */
export function numberOf({ groups }: DxfRecord, code: number, fallback = Number.NaN): number {
  const group = groups.find((one) => one.code === code);
  if (group === undefined) return fallback;
  return group.value === "" ? Number.NaN : Number(group.value);
}

/** All values of a group, in order. */
export function numbersOf({ groups }: DxfRecord, code: number): number[] {
  return groups.filter((one) => one.code === code).map(({ value }) => (value === "" ? Number.NaN : Number(value)));
}
