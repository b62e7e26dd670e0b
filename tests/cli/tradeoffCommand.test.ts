import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { TradeoffResults } from "../../shared/jobs/tradeoff/tradeoffResults";
import { tradeoffCommand } from "../../src/cli/commands/tradeoff";
import { readState, writeState } from "../../src/cli/tradeoffState";
import { caseWith } from "../case/caseDocuments";
import { type PlainObject, puckCaseDocument, rules, wantedMass } from "../puck/puckDocuments";
import { startCommand } from "./caseCommand";

vi.setConfig({ testTimeout: 120_000 });

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "wakewright-tradeoff-"));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

const tradeoff = {
  variables: [{ dimension: "diameterMetres", levels: 3 }],
  goals: [
    { figure: "dragIndex", sense: "least" },
    { figure: "momentOfInertiaAxisKilogramSquareMetres", sense: "most" },
  ],
  method: { kind: "sweep" },
  reportedMembers: 1,
};

function fileOf(changes: PlainObject = {}, block: PlainObject = {}): string {
  const path = join(folder, "case.json");
  const document = puckCaseDocument({
    rules,
    wantedMass,
    play: { orientationShares: { upright: 1, flat: 1, faceOn: 1 }, flatPlace: "openWater" },
    tradeoff: { ...tradeoff, ...changes },
    ...block,
  });
  writeFileSync(path, JSON.stringify(document));
  return path;
}

function run(args: readonly string[]) {
  return startCommand("trade-off", args).end;
}

describe("the trade-off command", () => {
  it("--json gives front, members with sensitivities, and an honest verdict", async () => {
    const end = await run([fileOf(), "--json"]);
    expect(end.status).toBe(0);
    const results: TradeoffResults = JSON.parse(end.stdout);
    expect(results.evaluated).toBe(3);
    expect(results.front.length).toBeGreaterThan(0);
    const [member] = results.members;
    expect(member.figures.massKilograms).toBeCloseTo(1.23, 9);
    expect(member.comparison.overall.sentence).toMatch(/band/);
    expect(member.dragSensitivities.map(({ dimension }) => dimension)).toContain("edgeRadiusMetres");
    expect(
      member.sensitivities.some(({ figure, madeLarger }) => figure === "massKilograms" && madeLarger !== null),
    ).toBe(true);
    expect(results.verdict).toMatch(/by more than the band/);
    expect(results.cautions.join(" ")).toContain("Lead is poisonous");
  });

  it("interrupted, keeps its state, leaves no other file, and goes on to the same answer", async () => {
    const method = { kind: "latinHypercube", points: 8, seed: 3 };
    const path = fileOf({ method });
    const straight = await run([path, "--json"]);
    const state = join(folder, "state.json");
    const started = startCommand("trade-off", [path, "--json", "--out", join(folder, "out.json"), "--resume", state]);
    await waitUntil(() => existsSync(state) && /"violation"/.test(readFileSync(state, "utf8")));
    started.child.kill("SIGINT");
    const interrupted = await started.end;
    expect(interrupted.status).toBe(130);
    expect(interrupted.stderr).toContain("goes on from here");
    expect(readdirSync(folder).sort()).toEqual(["case.json", "state.json"]);
    const resumed = await run([path, "--json", "--resume", state]);
    expect(resumed.status).toBe(0);
    expect(JSON.parse(resumed.stdout)).toEqual(JSON.parse(straight.stdout));
  });

  it("says that no puck inside the rules was found, with status 1", async () => {
    const narrow = { ...rules, ranges: { ...rules.ranges, coverMetres: { from: 0.02 } } };
    const end = await run([fileOf({}, { rules: narrow })]);
    expect(end.stdout.trimEnd().split("\n").at(-1)).toMatch(/^No puck inside the rules was found/);
    expect(end.status).toBe(1);
  });

  it.each([
    ["an unknown option", () => [fileOf(), "--csv"], /--csv.*the options are --json, --out PATH, --resume STATE/],
    ["a case without a puck", () => [plainCase()], /puck is missing; a trade-off needs a case with a puck/],
    ["a case without a trade-off", () => [fileOf({}, { tradeoff: undefined })], /puck\.tradeoff is missing/],
    [
      "a dimension that the puck lacks",
      () => [fileOf({ variables: [{ dimension: "recessDiameterMetres", from: 0.01, to: 0.02 }] })],
      /case\.json: puck\.tradeoff\.variables\[0\]: .*has no recess diameter/,
    ],
    [
      "an output that cannot be written",
      () => [fileOf(), "--out", join(folder, "no", "out.json")],
      /--out .*no such file or directory/,
    ],
  ])("refuses %s on one line, with status 2 and no stack trace", async (_what, args, message) => {
    const end = await run(args());
    expect(end.stderr).toMatch(/^[^\n]+\n$/);
    expect(end.stderr).toMatch(message);
    expect(end.stderr).not.toMatch(/\bat .*:\d+:\d+|node:internal/);
    expect([end.stdout, end.status]).toEqual(["", 2]);
  });
});

describe("the arguments of trade-off", () => {
  it("of a file and its options asks for a run", () => {
    expect(tradeoffCommand.read(["a.json", "--json", "--out", "b", "--resume=c"])).toEqual({
      ok: true,
      value: { file: "a.json", isJson: true, out: "b", state: "c" },
    });
    expect(tradeoffCommand.read(["-h"])).toEqual({ ok: true, value: "help" });
    expect(tradeoffCommand.help).toContain("--resume STATE");
  });

  it.each([
    [[], /no case file was named/],
    [["a.json", "b.json"], /2 case files were named/],
    [["a.json", "--resume="], /--resume is empty/],
    [["a.json", "--out="], /--out is empty/],
  ])("of %j is a problem of one line", (args, message) => {
    const result = tradeoffCommand.read(args);
    if (result.ok) throw new Error("was accepted");
    expect(result.problem.message).toMatch(message);
  });
});

describe("the state of a trade-off", () => {
  const space = { variables: [{ key: "x", lowest: 0, highest: 1 }], goals: [{ key: "f", sense: "least" as const }] };
  const begun = { kind: "points" as const, points: { space, points: [[0.5]], evaluations: [null] } };
  const read = (fingerprint = "one") => readState(join(folder, "state.json"), "STATE", fingerprint, space);

  it("is read as it was written, and is null where there is none yet", () => {
    expect(read()).toEqual({ ok: true, value: null });
    expect(writeState(join(folder, "state.json"), "STATE", "one", begun, []).ok).toBe(true);
    expect(read()).toEqual({ ok: true, value: begun });
    expect(readdirSync(folder)).toEqual(["state.json"]);
  });

  it.each([
    ["something else", "{}", "one", /is not the state of a trade-off/],
    ["no JSON", "state", "one", /is not the state of a trade-off/],
    ["another case", null, "two", /belongs to another case or another version/],
  ])("is refused when it is of %s", (_what, content, fingerprint, message) => {
    writeState(join(folder, "state.json"), "STATE", "one", begun, []);
    if (content !== null) writeFileSync(join(folder, "state.json"), content);
    const result = read(fingerprint);
    if (result.ok) throw new Error("was accepted");
    expect(result.problem.message).toMatch(message);
    expect(result.problem.message).toMatch(/^--resume STATE: .*remove this one to begin anew$/);
  });

  it("never replaces the case file", () => {
    const path = join(folder, "case.json");
    writeFileSync(path, "{}");
    const written = writeState(path, "STATE", "one", begun, [path]);
    expect(written.ok ? "" : written.problem.message).toMatch(/^--resume STATE: is the case file itself/);
    expect(readFileSync(path, "utf8")).toBe("{}");
  });
});

function plainCase(): string {
  const path = join(folder, "plain.json");
  writeFileSync(path, JSON.stringify(caseWith({})));
  return path;
}

async function waitUntil(holds: () => boolean): Promise<void> {
  while (!holds()) await new Promise((resolve) => setTimeout(resolve, 20));
}
