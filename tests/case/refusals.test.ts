import { expect, test } from "vitest";
import { readCase } from "../../shared/case/readCase";
import { demoDocuments } from "../attack/demoDocuments";
import { mutatedJson } from "../attack/mutateJson";
import { refusalFaults } from "../attack/refusals";

/** The messages of a case of one circle with a change. */
function messages(change: object): string[] {
  const sections = [{ family: "circle", diameterMetres: 0.08 }];
  const text = JSON.stringify({
    wakewrightCase: 1,
    title: "a circle",
    sections,
    speedsMetresPerSecond: [3],
    ...change,
  });
  const reading = readCase(text, "case.json");
  return reading.ok ? [] : reading.problems.map(({ message }) => message);
}

test("a refusal repeats neither a long key nor a long value whole, nor anything that a terminal would obey", () => {
  const [long] = messages({ ["k".repeat(100_000)]: 1 });
  expect(long).toContain("kkk... is not a known key");
  expect(long.length).toBeLessThan(1000);
  const [red] = messages({ "a\u001b[31mb": 1 });
  expect(red).toContain("a\\u001b[31mb is not a known key");
  const title = messages({ title: "up\u001b[2Jside" });
  expect(title).toContain("title: it must be text without control characters");
  const [turned] = messages({ sections: [{ family: "\u202Eelcric" }] });
  expect(turned).not.toMatch(/\u202E/);
});

test("mutated case files: none crashes the reader, and every refusal names its key and says what would be right", () => {
  const originals = demoDocuments();
  const faults: string[] = [];
  for (let seed = 1; seed <= 300; seed++) {
    const reading = readCase(mutatedJson(originals, seed), "case.json");
    if (!reading.ok) faults.push(...refusalFaults(reading.problems).map((fault) => `seed ${seed}: ${fault}`));
  }
  expect(faults).toEqual([]);
});
