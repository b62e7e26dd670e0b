import { describe, expect, it } from "vitest";
import { ProgressLine } from "../../src/cli/progressLine";

function recorder(isTTY: boolean, columns = 40) {
  const written: string[] = [];
  return { stream: { isTTY, columns, write: (text: string) => written.push(text) }, written };
}

describe("ProgressLine", () => {
  it("says nothing in the first second", () => {
    let time = 0;
    const { stream, written } = recorder(true);
    const line = new ProgressLine(stream, () => time);
    time = 999;
    line.update(1, 9, "circle");
    line.end();
    expect(written).toEqual([]);
  });

  it("redraws one line on a terminal, cut to its width, and clears it at the end", () => {
    let time = 0;
    const { stream, written } = recorder(true, 20);
    const line = new ProgressLine(stream, () => time);
    time = 1500;
    line.update(1, 9, "a rounded rectangle with a long name");
    time = 1510;
    line.update(2, 9, "circle");
    line.end();
    expect(written).toEqual(["\r1 of 9 steps, 2 s: \u001b[K", "\r2 of 9 steps, 2 s: \u001b[K", "\r\u001b[K"]);
  });

  it("writes a line every five seconds elsewhere, without control characters", () => {
    let time = 0;
    const { stream, written } = recorder(false);
    const line = new ProgressLine(stream, () => time);
    for (let done = 1; done <= 20; done++) {
      time = done * 1000;
      line.update(done, 20, "circle");
    }
    line.end();
    expect(written).toEqual([1, 6, 11, 16].map((done) => `${done} of 20 steps, ${done} s: circle\n`));
  });
});
