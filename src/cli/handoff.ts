import { resolve } from "node:path";
import { handoffFiles } from "../../shared/jobs/handoff/handoffFiles";
import type { PuckCase } from "../../shared/jobs/puck/puckCase";
import { ownTolerances } from "../../shared/jobs/puck/puckSteps";
import { judgePuck } from "../../shared/jobs/puck/rules/judgePuck";
import { fractionOf } from "../../shared/numerics/degreesAndPercent";
import { endOnSignals, exitDone, refuse } from "./command";
import type { HandoffInput } from "./commandInputs";
import { openNamedCase } from "./openCaseFile";
import { writeFolder } from "./outputFolder";
import { shownInputName } from "./standardInput";

export async function runHandoff(input: HandoffInput): Promise<number> {
  endOnSignals();
  const shown = shownInputName(input.file);
  const opened = await openNamedCase(input.file);
  if (!opened.ok) return refuse(opened.problem.message);
  const { puck: theCase } = opened.value.theCase;
  if (theCase === null) return refuse(`${shown}: puck is missing; a hand-off needs a case with a puck`);
  const puck = theCase.pucks.find(({ spec }) => spec.name === input.puck);
  if (puck === undefined) {
    const names = theCase.pucks.map(({ spec }) => `"${spec.name}"`).join(", ");
    return refuse(`--puck ${input.puck}: no puck of ${shown} has this name; it must be one of ${names}`);
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
  if (judgement?.ok === false) return refuse(`${shown}: ${judgement.problem.message}`);
  const files = handoffFiles(puck, theCase, requestOf(theCase), judgement === null ? null : judgement.value);
  if (!files.ok) return refuse(`${shown}: ${input.puck}: ${files.problem.message}`);
  const folder = resolve(input.folder);
  const written = writeFolder(folder, input.folder, files.value, input.isReplacing);
  if (!written.ok) return refuse(written.problem.message);
  process.stdout.write(`${files.value.map(({ name }) => name).join("\n")}\n`);
  return exitDone;
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
