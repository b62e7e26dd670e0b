import { resolve } from "node:path";
import { exitDone, exitInterrupted, folderOf, refuse, runCommand } from "./command";
import { openCaseFile } from "./openCaseFile";
import { writeFolder } from "./outputFolder";
import { caseSheets } from "./sheetMakers";
import { type SheetsArguments, sheetsArguments, sheetsHelp } from "./sheetsArguments";

const startFolder = folderOf("sheets");

async function main(): Promise<number> {
  const args = sheetsArguments(process.argv.slice(2));
  if (!args.ok) return refuse(args.problem.message);
  if (args.value.wants === "help") {
    process.stdout.write(sheetsHelp);
    return exitDone;
  }
  return runFile(args.value);
}

function runFile(args: Extract<SheetsArguments, { wants: "run" }>): number {
  process.once("SIGINT", () => process.exit(exitInterrupted));
  process.once("SIGTERM", () => process.exit(143));
  process.once("SIGHUP", () => process.exit(129));
  const opened = openCaseFile(resolve(startFolder, args.file), args.file);
  if (!opened.ok) return refuse(opened.problem.message);
  const sheets = caseSheets(opened.value.theCase);
  if (!sheets.ok) return refuse(`${args.file}: ${sheets.problem.message}`);
  const files = sheets.value;
  if (files.length === 0) {
    return refuse(`${args.file}: has nothing to fill in; sheets need a tunnel test or a player trial`);
  }
  const written = writeFolder(resolve(startFolder, args.folder), args.folder, files, args.isReplacing);
  if (!written.ok) return refuse(written.problem.message);
  process.stdout.write(`${files.map(({ name }) => name).join("\n")}\n`);
  return exitDone;
}

await runCommand(main);
