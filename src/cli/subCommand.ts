import { parseArgs } from "node:util";
import { problem, type Result, success } from "../../shared/result";

/** One option of a sub-command. */
export interface OptionSpec {
  /** What its value is called in the help text, for instance "PATH"; left out for a switch. */
  readonly value?: string;
  /** For the help text; each line up to about 90 characters. */
  readonly about: string;
  /** What its value must be, for messages: "the path of a file". */
  readonly must?: string;
  /** True when the sub-command cannot do without it. */
  readonly needed?: true;
}

/** Files that one call takes: more are a slip of the shell. */
const mostFiles = 1000;

type Options = Readonly<Record<string, OptionSpec>>;

/** What was given for each option: true or false for a switch, null for a value that was left out. */
export type OptionValues<O extends Options> = {
  readonly [Key in keyof O]: O[Key] extends { readonly value: string }
    ? O[Key] extends { readonly needed: true }
      ? string
      : string | null
    : boolean;
};

/** What a sub-command is made of: its arguments, read and explained in one place, and the work. */
export interface SubCommandSpec<O extends Options, Input> {
  readonly name: string;
  /** One line: what it does. */
  readonly about: string;
  /** Its arguments in short, after the name. */
  readonly usage: string;
  readonly files: {
    readonly about: string;
    /** A file for messages and nothing else. */
    readonly example: string;
  };
  readonly options: O;
  /** A switch that needs no file beside it. */
  readonly standsAlone?: keyof O & string;
  /** What follows the list of options in the help text. */
  readonly notes: string;
  /** Command lines without the program's name. */
  readonly examples: readonly string[];
  /** Checks what options mean together and gives the input of the work. */
  readonly understand: (files: readonly string[], values: OptionValues<O>) => Result<Input>;
  /** Does the work; loads what it needs by itself, so that help starts at once. Gives the exit status. */
  readonly run: (input: Input) => Promise<number>;
}

type Explained = Pick<
  SubCommandSpec<Options, unknown>,
  "name" | "about" | "usage" | "files" | "options" | "notes" | "examples"
>;

/** A sub-command of the program. */
export interface SubCommand<Input = unknown> {
  readonly help: string;
  /** Its arguments, without the program's and its own name; "help" when that was asked for. A problem is one line. */
  read(args: readonly string[]): Result<Input | "help">;
  /** Reads its arguments and does the work; gives the exit status, or the line that says why it cannot. */
  start(args: readonly string[]): Promise<Result<number | "help">>;
}

export function subCommand<const O extends Options, Input>(spec: SubCommandSpec<O, Input>): SubCommand<Input> {
  const read = (args: readonly string[]): Result<Input | "help"> => readArguments(spec, args);
  return {
    help: helpText(spec),
    read,
    async start(args) {
      const input = read(args);
      if (!input.ok) return input;
      return success(input.value === "help" ? "help" : await spec.run(input.value));
    },
  };
}

function readArguments<O extends Options, Input>(
  spec: SubCommandSpec<O, Input>,
  args: readonly string[],
): Result<Input | "help"> {
  const parsed = parse(spec.options, args);
  if (!parsed.ok) return parsed;
  const { values, positionals } = parsed.value;
  if (values.help === true) return success("help");
  const files = checkFiles(spec, positionals, spec.standsAlone !== undefined && values[spec.standsAlone] === true);
  if (files !== null) return files;
  const given: Record<string, string | boolean | null> = {};
  for (const [key, option] of Object.entries(spec.options)) {
    const value = values[key];
    if (option.value === undefined) {
      given[key] = value === true;
      continue;
    }
    const must = option.must ?? "given";
    if (option.needed && (value === undefined || value === "")) {
      return problem("arguments", `--${key} ${option.value} is missing; it must be ${must}`);
    }
    if (value === "") return problem("arguments", `--${key} is empty; it must be ${must}`);
    given[key] = typeof value === "string" ? value : null;
  }
  return spec.understand(positionals, given as OptionValues<O>);
}

function checkFiles({ name, files }: Pick<Explained, "name" | "files">, found: readonly string[], mayBeNone: boolean) {
  const hint = `for instance ${files.example} (wakewright ${name} --help tells more)`;
  if (found.length === 0 && !mayBeNone) return problem("arguments", `no case file was named; name one, ${hint}`);
  if (found.length > mostFiles) {
    return problem("arguments", `${found.length} case files were named; name at most ${mostFiles}, ${hint}`);
  }
  if (found.filter((file) => file === "-").length > 1) {
    return problem("arguments", "standard input (-) was named twice; name it once");
  }
  return null;
}

function parse(options: Options, args: readonly string[]) {
  const config: Record<string, { type: "boolean" | "string"; short?: string }> = {
    help: { type: "boolean", short: "h" },
  };
  for (const [key, { value }] of Object.entries(options)) {
    config[key] = { type: value === undefined ? "boolean" : "string" };
  }
  try {
    return success(parseArgs({ args: [...args], allowPositionals: true, options: config }));
  } catch (error) {
    const reason = error instanceof Error ? error.message.split(/[.\n]/)[0] : String(error);
    const names = Object.entries(options).map(([key, option]) => optionText(key, option));
    return problem("arguments", `${reason}; the options are ${names.join(", ")} and --help`);
  }
}

function optionText(key: string, { value }: OptionSpec): string {
  return value === undefined ? `--${key}` : `--${key} ${value}`;
}

function helpText({ name, about, usage, files, options, notes, examples }: Explained): string {
  const rows = [
    ["FILE", files.about],
    ...Object.entries(options).map(([key, option]) => [optionText(key, option), option.about]),
    ["--help", "this text"],
  ];
  const width = Math.max(...rows.map(([label]) => label.length));
  const list = rows.map(
    ([label, text]) => `  ${label.padEnd(width)}  ${text.replaceAll("\n", `\n${" ".repeat(width + 4)}`)}`,
  );
  const lines = examples.map((example) => `  wakewright ${example}`);
  return `${about}

  wakewright ${name} ${usage}

${list.join("\n")}

${examples.length === 1 ? "Example" : "Examples"}, from a checkout with "npm run --silent wakewright --" in place of "wakewright":
${lines.join("\n")}

${notes.trim()}
`;
}
