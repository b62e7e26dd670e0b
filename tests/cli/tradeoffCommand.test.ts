import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { TradeoffResults } from "../../shared/jobs/tradeoff/tradeoffResults";
import { tradeoffCommand } from "../../src/cli/commands/tradeoff";
import { readState, writeState } from "../../src/cli/tradeoffState";
import { caseWith } from "../case/caseDocuments";
import { type PlainObject, puckCaseDocument, rules, wantedMass } from "../puck/puckDocuments";
import { complaints, startCommand } from "./caseCommand";

vi.setConfig({ testTimeout: 300_000 });

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

  it("searches several cases, one of them from standard input, each as when it is alone, with one state", async () => {
    const path = fileOf();
    const wide = readFileSync(fileOf({ variables: [{ dimension: "diameterMetres", levels: 2 }] }), "utf8");
    fileOf();
    const state = join(folder, "state.json");
    const args = [path, "-", "--json", "--resume", state];
    const [both, alone] = await Promise.all([
      startCommand("trade-off", args, undefined, wide).end,
      run([path, "--json"]),
    ]);
    expect([complaints(both.stderr), both.status]).toEqual(["", 0]);
    const documents: (TradeoffResults & { file: string })[] = JSON.parse(both.stdout);
    const { file, ...first } = documents[0];
    expect(file).toBe(path);
    expect(first).toEqual(JSON.parse(alone.stdout));
    expect(documents.map((document) => [document.file, document.evaluated])).toEqual([
      [path, 3],
      ["standard input", 2],
    ]);
    expect(JSON.parse(readFileSync(state, "utf8")).searches).toHaveLength(2);
    const other = await run([path, "--resume", state]);
    expect([other.status, other.stderr]).toEqual([2, expect.stringContaining("belongs to another case")]);
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
      value: { files: ["a.json"], isJson: true, out: "b", state: "c" },
    });
    expect(tradeoffCommand.read(["-h"])).toEqual({ ok: true, value: "help" });
    expect(tradeoffCommand.help).toContain("--resume STATE");
  });

  it.each([
    [[], /no case file was named/],
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
  const path = () => join(folder, "state.json");
  const read = (...cases: readonly string[]) =>
    readState(path(), "STATE", new Map(cases.map((fingerprint) => [fingerprint, space])));

  it("is read as it was written, with a search for every case, and holds none where there is no file yet", () => {
    expect(read("one")).toEqual({ ok: true, value: new Map() });
    const runs = new Map([
      ["one", begun],
      ["two", { ...begun, points: { ...begun.points, points: [[0.25]] } }],
    ]);
    expect(writeState(path(), "STATE", runs, []).ok).toBe(true);
    expect(read("one", "two", "three")).toEqual({ ok: true, value: runs });
    expect(readdirSync(folder)).toEqual(["state.json"]);
  });

  it("of version 1, which held one search, is read too", () => {
    writeFileSync(path(), JSON.stringify({ wakewrightTradeoffState: 1, case: "one", run: begun }));
    expect(read("one")).toEqual({ ok: true, value: new Map([["one", begun]]) });
  });

  it.each([
    ["something else", "{}", ["one"], /is not the state of a trade-off/],
    ["no JSON", "state", ["one"], /is not the state of a trade-off/],
    ["another case", null, ["two"], /belongs to another case or another version/],
  ])("is refused when it is of %s", (_what, content, cases, message) => {
    writeState(path(), "STATE", new Map([["one", begun]]), []);
    if (content !== null) writeFileSync(path(), content);
    const result = read(...cases);
    if (result.ok) throw new Error("was accepted");
    expect(result.problem.message).toMatch(message);
    expect(result.problem.message).toMatch(/^--resume STATE: .*remove this one to begin anew$/);
  });

  it("never replaces a case file", () => {
    const own = join(folder, "case.json");
    writeFileSync(own, "{}");
    const written = writeState(own, "STATE", new Map([["one", begun]]), [own]);
    expect(written.ok ? "" : written.problem.message).toMatch(/^--resume STATE: is the case file itself/);
    expect(readFileSync(own, "utf8")).toBe("{}");
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
