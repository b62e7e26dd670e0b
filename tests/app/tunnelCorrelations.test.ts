import { describe, expect, it } from "vitest";
import type { TunnelBlockDocument } from "../../shared/jobs/tunnel/tunnelBlockDocument";
import {
  addCorrelation,
  correlationsOf,
  enterCoefficient,
  enterPart,
  removeCorrelation,
} from "../../src/app/tunnel/correlationEdits";
import { tunnelBench } from "../../src/app/tunnel/tunnelBench";
import { readTunnelCase, tunnelCaseText } from "../../src/app/tunnel/tunnelCaseText";
import type { FieldEntry } from "../../src/app/tunnel/tunnelFields";
import { startTunnel } from "../../src/app/tunnel/tunnelInputs";

function taken(entry: FieldEntry): TunnelBlockDocument {
  if (!entry.ok) throw new Error(entry.message);
  return entry.block;
}

const stated: TunnelBlockDocument = {
  ...startTunnel.block,
  uncertainty: {
    stated: {
      balanceCalibrationPercent: { plusMinus: 1, kind: "rectangular" },
      dynamicPressurePercent: { plusMinus: 1, kind: "normal95" },
      otherPercent: { plusMinus: 1, kind: "standard" },
    },
  },
};

describe("editing correlations", () => {
  it("adds pairs of parts that are stated, each once, of coefficient 0 until one is typed", () => {
    const three = [1, 2, 3].reduce((block) => taken(addCorrelation(block)), stated);
    expect(correlationsOf(three)).toEqual([
      { between: ["dynamicPressurePercent", "otherPercent"], coefficient: 0 },
      { between: ["dynamicPressurePercent", "balanceCalibrationPercent"], coefficient: 0 },
      { between: ["otherPercent", "balanceCalibrationPercent"], coefficient: 0 },
    ]);
  });

  it("changes a part and a coefficient, a decimal comma as well, and removes the right one; the list goes with the last", () => {
    let block = taken(addCorrelation(taken(addCorrelation(stated))));
    block = taken(enterPart(block, 0, 1, "speedPercent"));
    block = taken(enterCoefficient(block, 0, " -0,75 "));
    expect(correlationsOf(block)[0]).toEqual({
      between: ["dynamicPressurePercent", "speedPercent"],
      coefficient: -0.75,
    });
    block = taken(removeCorrelation(block, 1));
    expect(correlationsOf(block)).toHaveLength(1);
    expect(taken(removeCorrelation(block, 0)).uncertainty).toEqual(stated.uncertainty);
  });

  it.each([
    ["1,01", "is 1.01; it must be a number from -1 to 1"],
    ["-2", "is -2; it must be a number from -1 to 1"],
    ["", 'Coefficient of correlation 1 is ""; it must be a number'],
    ["half", 'Coefficient of correlation 1 is "half"; it must be a number'],
  ])("refuses the coefficient %j and names the range", (typed, message) => {
    const entry = enterCoefficient(taken(addCorrelation(stated)), 0, typed);
    expect(entry.ok ? "accepted" : entry.message).toContain(message);
  });

  it("refuses a fifty-first", () => {
    const full = Array.from({ length: 50 }).reduce<TunnelBlockDocument>(
      (block) => taken(addCorrelation(block)),
      stated,
    );
    expect(new Set(correlationsOf(full).map(({ between }) => [...between].sort().join())).size).toBe(50);
    const entry = addCorrelation(full);
    expect(entry.ok ? "accepted" : entry.message).toContain("at most 50 correlations");
  });

  it("undo, redo and the case's text carry them, impossible ones as well", () => {
    tunnelBench.show({ title: "correlated", block: stated });
    for (const coefficient of ["0,9", "0,9", "-0,9"]) {
      const block = taken(addCorrelation(tunnelBench.present.block));
      tunnelBench.change({ block: taken(enterCoefficient(block, correlationsOf(block).length - 1, coefficient)) });
    }
    const reading = readTunnelCase(tunnelCaseText(tunnelBench.present));
    expect(reading.ok && reading.value).toEqual(tunnelBench.present);
    tunnelBench.undo();
    expect(correlationsOf(tunnelBench.present.block)).toHaveLength(2);
    tunnelBench.redo();
    expect(correlationsOf(tunnelBench.present.block).map(({ coefficient }) => coefficient)).toEqual([0.9, 0.9, -0.9]);
  });
});
