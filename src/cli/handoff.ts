import { resolve } from "node:path";
import { handoffFiles } from "../../shared/jobs/handoff/handoffFiles";
import type { PuckCase } from "../../shared/jobs/puck/puckCase";
import { ownTolerances } from "../../shared/jobs/puck/puckSteps";
import { judgePuck } from "../../shared/jobs/puck/rules/judgePuck";
import { fractionOf } from "../../shared/numerics/degreesAndPercent";
import { problem, type Result } from "../../shared/result";
import { type CaseFiles, inCaseFolders } from "./caseFolders";
import { endOnSignals, refuse, unwritten } from "./command";
import type { HandoffInput } from "./commandInputs";
import { openNamedCase } from "./openCaseFile";
import { type NamedContent, writeFolder } from "./outputFolder";
import { shownInputName } from "./standardInput";
import { print } from "./standardOutput";

export async function runHandoff(input: HandoffInput): Promise<number> {
  endOnSignals();
  const cases: CaseFiles[] = [];
  for (const file of input.files) {
    const opened = await openNamedCase(file);
    if (!opened.ok) return refuse(opened.problem.message);
    const made = puckFiles(opened.value.theCase.puck, input.puck, shownInputName(file));
    if (!made.ok) return refuse(made.problem.message);
    cases.push({ file, made: made.value });
  }
  const files = inCaseFolders(cases);
  if (!files.ok) return refuse(files.problem.message);
  const written = writeFolder(resolve(input.folder), input.folder, files.value, input.isReplacing);
  if (!written.ok)
    return written.problem.code === "unwritten" ? unwritten(written.problem.message) : refuse(written.problem.message);
  return print(`${files.value.map(({ name }) => name).join("\n")}\n`);
}

/** The files of one puck of a case; messages name the case. */
function puckFiles(theCase: PuckCase | null, name: string, shown: string): Result<readonly NamedContent[]> {
  if (theCase === null) return problem("puck", `${shown}: puck is missing; a hand-off needs a case with a puck`);
  const puck = theCase.pucks.find(({ spec }) => spec.name === name);
  if (puck === undefined) {
    const names = theCase.pucks.map(({ spec }) => `"${spec.name}"`).join(", ");
    return problem("puck", `--puck ${name}: no puck of ${shown} has this name; it must be one of ${names}`);
  }
  const judgement =
    theCase.rules === null
      ? null
      : judgePuck(
          { spec: puck.spec, setting: theCase.setting },
          theCase.rules,
          ownTolerances(puck, theCase),
          theCase.sampling,
        );
  if (judgement?.ok === false) return problem("rules", `${shown}: ${judgement.problem.message}`);
  const files = handoffFiles(puck, theCase, requestOf(theCase), judgement === null ? null : judgement.value);
  return files.ok ? files : problem("puck", `${shown}: ${name}: ${files.problem.message}`);
}

/** What the case leaves out: the middle one of its speeds, its first turbulence, and today. */
function requestOf({ handoff, stream }: PuckCase) {
  return {
    speed: handoff.speedMetresPerSecond ?? stream.speeds[Math.floor(stream.speeds.length / 2)],
    turbulenceIntensity:
      handoff.turbulencePercent === undefined ? stream.turbulenceIntensities[0] : fractionOf(handoff.turbulencePercent),
    date: handoff.date ?? new Date().toISOString().slice(0, 10),
  };
}
