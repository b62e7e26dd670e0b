import { describe, expect, it } from "vitest";
import { dragVerdict } from "../../shared/jobs/puck/drag/dragVerdict";

const exactly = (value: number) => ({ low: value, expected: value, high: value });

describe("sentences of dragVerdict(index, candidate)", () => {
  it("give changes in whole per cent with their sign, and none to what rounds to nothing", () => {
    const band = { low: 0.9, expected: 0.9996, high: 1.0004 };
    const { sentence } = dragVerdict({ index: band, indexWithCommonError: band, changePercent: exactly(0) }, "Twin");
    expect(sentence).toContain("expected estimate 0 %");
    expect(sentence).toContain("-10 % to 0 %");
    expect(sentence).not.toMatch(/[-+]0 %/);
    const more = dragVerdict(
      { index: exactly(1.05), indexWithCommonError: exactly(1.05), changePercent: exactly(5) },
      "A",
    );
    expect(more.sentence).toContain("+5 %");
  });
});
