import type { SubCommand } from "./subCommand";

/** A sub-command by name, loaded only when it is called for. */
interface ListedCommand {
  readonly name: string;
  /** For the program's own help text. */
  readonly about: string;
  readonly load: () => Promise<SubCommand>;
}

/** Every sub-command: one line here and one file. */
export const subCommands: readonly ListedCommand[] = [
  { name: "case", about: "run case files", load: async () => (await import("./commands/case")).caseCommand },
  { name: "next", about: "say what to test next", load: async () => (await import("./commands/next")).nextCommand },
  {
    name: "trade-off",
    about: "search the dimensions of a puck",
    load: async () => (await import("./commands/tradeoff")).tradeoffCommand,
  },
  {
    name: "hand-off",
    about: "write the files for workshop and flow computation",
    load: async () => (await import("./commands/handoff")).handoffCommand,
  },
  {
    name: "sheets",
    about: "write run sheets and score sheets to fill in",
    load: async () => (await import("./commands/sheets")).sheetsCommand,
  },
  {
    name: "outline",
    about: "read outlines of sections from drawings and points",
    load: async () => (await import("./commands/outline")).outlineCommand,
  },
];
