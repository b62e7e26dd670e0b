import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, describe, expect, it } from "vitest";
import { publicNames, undocumentedNames } from "./undocumented";

const listFile = fileURLToPath(new URL("../../shared/engine/index.ts", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "wakewright-list-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("the public list of the engine", () => {
  it("has no name and no property that says nothing of itself", () => {
    const names = publicNames(listFile);
    expect([...names.values()].flat()).toEqual(expect.arrayContaining(["solveSection", "SectionState", "Result"]));
    expect([...names].flatMap(([file, own]) => undocumentedNames(file, own))).toEqual([]);
  });

  it("is watched by a check that finds a bare name, a bare property and a name that is not there", () => {
    const file = join(folder, "bare.ts");
    writeFileSync(
      file,
      `/** Said. */
export interface Said {
  /** m */
  readonly length: number;
  readonly width: number;
}
// A comment for readers of the source alone.
export const bare = 1;
/** Said. */
export function told(): void {}
`,
    );
    expect(undocumentedNames(file, ["Said", "bare", "told", "absent"])).toEqual([
      "Said: readonly width: number;",
      "bare",
      `absent is not declared in ${file}`,
    ]);
  });
});
