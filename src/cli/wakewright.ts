#!/usr/bin/env node
import { version } from "../../package.json";
import { refuse, runCommand } from "./command";
import { print } from "./standardOutput";
import { subCommands } from "./subCommands";

function helpText(): string {
  const width = Math.max(...subCommands.map(({ name }) => name.length));
  return `Wakewright ${version} judges the drag of blunt sections before anyone pays for a tunnel or a big flow computation.

  wakewright SUB-COMMAND ...

${subCommands.map(({ name, about }) => `  ${name.padEnd(width)}  ${about}`).join("\n")}

  wakewright SUB-COMMAND --help  its options, with an example
  wakewright --version           the version, and nothing else
  wakewright --help              this text

A case file named "-" is read from standard input.
Results are screening estimates: shortlist with them, then measure. They prove neither safety nor compliance.
`;
}

async function main(): Promise<number> {
  const [name, ...args] = process.argv.slice(2);
  if (name === "--help" || name === "-h") {
    return print(helpText());
  }
  if (name === "--version") {
    return print(`${version}\n`);
  }
  const listed = subCommands.find((command) => command.name === name);
  if (listed === undefined) {
    const found = name === undefined ? "no sub-command was named" : `"${name}" is not a sub-command`;
    const names = subCommands.map((command) => command.name);
    return refuse(`${found}; name one of ${names.join(", ")} (wakewright --help tells more)`);
  }
  const command = await listed.load();
  const end = await command.start(args);
  if (!end.ok) return refuse(end.problem.message);
  if (end.value !== "help") return end.value;
  return print(command.help);
}

await runCommand(main);
