import { describe, expect, it } from "vitest";
import { parseJson } from "../../shared/document/parseJson";

describe("parseJson(text)", () => {
  it("reads JSON, with or without a byte-order mark", () => {
    expect(parseJson('{"a": [1, 2]}')).toEqual({ ok: true, value: { a: [1, 2] } });
    expect(parseJson('\uFEFF{"a": 1}')).toEqual({ ok: true, value: { a: 1 } });
  });

  it.each([
    ["", /empty/],
    ["  \n ", /empty/],
    ["hello", /not a JSON document/],
    ['{"a": 1,}', /not a JSON document/],
    ['{\n  "a": 1\n  "b": 2\n}', /line 3, column 3/],
    ['{"diameterMetres": NaN}', /diameterMetres is NaN; it must be a finite number/],
    ['{"to": -Infinity}', /to is -Infinity; it must be a finite number/],
  ])("of %j tells where it stops being JSON, on one line", (text, message) => {
    const result = parseJson(text);
    if (result.ok) throw new Error("was read");
    expect(result.problem.message).toMatch(message);
    expect(result.problem.message).not.toContain("\n");
  });

  it("names the key of a number that is not finite", () => {
    expect(parseJson('{"diameterMetres": NaN}')).toMatchObject({ problem: { field: "diameterMetres" } });
  });
});
