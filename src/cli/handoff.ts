import { resolve } from "node:path";
import { handoffFiles } from "../../shared/jobs/handoff/handoffFiles";
import type { PuckCase } from "../../shared/jobs/puck/puckcase/puckCase";
import { ownTolerances } from "../../shared/jobs/puck/puckcase/puckSteps";
import { judgePuck } from "../../shared/jobs/puck/rules/judgePuck";
import { exitDone, exitInterrupted, folderOf, refuse, runCommand } from "./command";
import { type HandoffArguments, handoffArguments, handoffHelp } from "./handoffArguments";
import { openCaseFile } from "./openCaseFile";
import { writeFolder } from "./outputFolder";

const startFolder = folderOf("handoff");

async function main(): Promise<number> {
  const args = handoffArguments(process.argv.slice(2));
  if (!args.ok) return refuse(args.problem.message);
  if (args.value.wants === "help") {
    process.stdout.write(handoffHelp);
    return exitDone;
  }
  return runFile(args.value);
}

function runFile(args: Extract<HandoffArguments, { wants: "run" }>): number {
  process.once("SIGINT", () => process.exit(exitInterrupted));
  process.once("SIGTERM", () => process.exit(143));
  process.once("SIGHUP", () => process.exit(129));
  const opened = openCaseFile(resolve(startFolder, args.file), args.file);
  if (!opened.ok) return refuse(opened.problem.message);
  const { puck: theCase } = opened.value.theCase;
  if (theCase === null) return refuse(`${args.file}: puck is missing; a hand-off needs a case with a puck`);
  const puck = theCase.pucks.find(({ spec }) => spec.name === args.puck);
  if (puck === undefined) {
    const names = theCase.pucks.map(({ spec }) => `"${spec.name}"`).join(", ");
    return refuse(`--puck ${args.puck}: no puck of ${args.file} has this name; it must be one of ${names}`);
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
  if (judgement?.ok === false) return refuse(`${args.file}: ${judgement.problem.message}`);
  const files = handoffFiles(puck, theCase, requestOf(theCase), judgement === null ? null : judgement.value);
  if (!files.ok) return refuse(`${args.file}: ${args.puck}: ${files.problem.message}`);
  const folder = resolve(startFolder, args.folder);
  const written = writeFolder(folder, args.folder, files.value, args.isReplacing);
  if (!written.ok) return refuse(written.problem.message);
  process.stdout.write(`${files.value.map(({ name }) => name).join("\n")}\n`);
  return exitDone;
}

/** What the case leaves out: the middle one of its speeds, its first turbulence, and today. */
function requestOf({ handoff, stream }: PuckCase) {
  return {
    speed: handoff.speedMetresPerSecond ?? stream.speeds[Math.floor(stream.speeds.length / 2)],
    turbulencePercent: handoff.turbulencePercent ?? stream.turbulencePercents[0],
    date: handoff.date ?? new Date().toISOString().slice(0, 10),
  };
}

await runCommand(main);
