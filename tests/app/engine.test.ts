import { describe, expect, test } from "vitest";
import { remembered } from "../../src/app/components/plot-board/remembered";
import { readQuantity } from "../../src/app/components/quantity-field/readQuantity";
import { fieldText, quantityText, unitChoices, unitFor } from "../../src/app/units/units";
import { transferables } from "../../workers/transferables";

describe("remembered", () => {
  test("computes again only when an argument is replaced", () => {
    let computed = 0;
    const sum = remembered((a: number, b: number) => {
      computed++;
      return { sum: a + b };
    });
    const first = sum(1, 2);
    expect(sum(1, 2)).toBe(first);
    expect(sum(1, 3)).toEqual({ sum: 4 });
    expect(computed).toBe(2);
  });
});

describe("transferables", () => {
  test("finds every buffer once, in lists and nested objects", () => {
    const shared = new Float64Array(4);
    const found = transferables({
      a: shared,
      b: [{ c: shared.subarray(1) }, { c: new Uint8Array(2) }],
      d: "text",
      e: null,
    });
    expect(found).toHaveLength(2);
    expect(found).toContain(shared.buffer);
  });
});

describe("readQuantity", () => {
  const mm = unitFor("length", {});

  test("takes a decimal comma and converts to SI", () => {
    expect(readQuantity(" 12,5 ", "Length", mm, { lowest: 0, aboveLowest: true })).toEqual({ ok: true, value: 0.0125 });
  });

  test("says value, unit and allowed range", () => {
    const low = readQuantity("0", "Length", mm, { lowest: 0, highest: 0.1, aboveLowest: true });
    expect(!low.ok && low.problem.message).toBe("Length is 0 mm; it must be above 0 mm to 100 mm.");
    const text = readQuantity("x", "Speed", unitFor("speed", { speed: "kn" }), { highest: 514.4444444444445 });
    expect(!text.ok && text.problem.message).toBe('Speed is "x"; it must be a number at most 1000 kn.');
  });
});

describe("units", () => {
  test("every unit converts there and back within 1e-12", () => {
    for (const choices of Object.values(unitChoices)) {
      for (const unit of choices) expect(unit.toSi(unit.fromSi(12.34)) / 12.34).toBeCloseTo(1, 12);
    }
  });

  test("knots are 1852 m per hour (international nautical mile) and 25.4 mm are an inch", () => {
    expect(unitFor("speed", { speed: "kn" }).toSi(1)).toBeCloseTo(1852 / 3600, 12);
    expect(unitFor("length", { length: "in" }).toSi(1)).toBeCloseTo(0.0254, 12);
    expect(unitFor("temperature", { temperature: "F" }).toSi(212)).toBeCloseTo(100, 9);
  });

  test("fields show no noise of the conversion", () => {
    expect(fieldText(0.0123, unitFor("length", {}))).toBe("12.3");
    expect(quantityText(0.1, "angle", {})).toBe("5.73°");
  });
});
