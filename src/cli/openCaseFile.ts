import { dirname, resolve } from "node:path";
import { readCase, readCaseDocument } from "../../shared/case/readCase";
import type { Case } from "../../shared/case/resolvedCase";
import { parseJson } from "../../shared/document/parseJson";
import { readRuleSet } from "../../shared/jobs/puck/rules/ruleSet";
import { problem, type Result, success } from "../../shared/result";
import { caseFileText } from "./caseFile";
import { inlineTables } from "./inlineTables";
import { shownInputName, standardInputName, standardInputText } from "./standardInput";

/** A case as it was read, and its document with the rules file put in place: plain data for worker threads. */
export interface OpenedCase {
  readonly theCase: Case;
  readonly document: unknown;
}

/**
 * Reads a case file, the rules file that it may name and the CSV files of its tables, which are looked for from the case
 * file's folder.
 */
export function openCaseFile(path: string, shownName: string): Result<OpenedCase> {
  const text = caseFileText(path, shownName);
  return text.ok ? openCaseText(text.value, dirname(path), shownName) : text;
}

/** A case by the name that was given for it: a file as seen from where the user stands, or "-" for standard input. */
export async function openNamedCase(name: string): Promise<Result<OpenedCase>> {
  if (name !== standardInputName) return openCaseFile(resolve(name), name);
  const text = await standardInputText();
  return text.ok ? openCaseText(text.value, process.cwd(), shownInputName(name)) : text;
}

/** @param folder where the files that the case names are looked for from */
function openCaseText(text: string, folder: string, shownName: string): Result<OpenedCase> {
  const json = parseJson(text);
  if (!json.ok) {
    const reading = readCase(text, shownName);
    return reading.ok ? success({ theCase: reading.value, document: null }) : reading;
  }
  const tables = inlineTables(json.value, folder, shownName);
  if (!tables.ok) return tables;
  const ruled = inlineRules(tables.value, folder, shownName);
  if (!ruled.ok) return ruled;
  const reading = readCaseDocument(ruled.value, shownName);
  return reading.ok ? success({ theCase: reading.value, document: ruled.value }) : reading;
}

function inlineRules(document: unknown, folder: string, shownName: string): Result<unknown> {
  const rulesPath = rulesPathOf(document);
  if (rulesPath === null) return success(document);
  const rulesText = caseFileText(resolve(folder, rulesPath), rulesPath, "a rules file");
  if (!rulesText.ok) return inRules(shownName, rulesText.problem.message);
  const rules = readRuleSet(rulesText.value, rulesPath);
  if (!rules.ok) return inRules(shownName, rules.problem.message);
  return success(withRules(document, rules.value));
}

function inRules(shownName: string, message: string) {
  return problem("rules", `${shownName}: puck.rules: ${message}`, "puck.rules");
}

function rulesPathOf(document: unknown): string | null {
  const rules = property(property(document, "puck"), "rules");
  return typeof rules === "string" && rules !== "" ? rules : null;
}

function withRules(document: unknown, rules: unknown): unknown {
  const puck = property(document, "puck");
  return { ...Object(document), puck: { ...Object(puck), rules } };
}

function property(value: unknown, key: string): unknown {
  return typeof value === "object" && value !== null ? Object.getOwnPropertyDescriptor(value, key)?.value : undefined;
}
