import { describe, expect, test } from "vitest";
import {
  addedMotion,
  firstMotions,
  type MotionInput,
  motionDocument,
  motionInputs,
} from "../../src/app/puck/motionInputs";

describe("motions of the puck view", () => {
  test("several of a kind with their marks and longest times come back from a case file", () => {
    const motions: MotionInput[] = [
      { ...firstMotions.slide, markDistances: [0.5, 1, 2], longestSeconds: 20 },
      { ...firstMotions.slide, name: "hard slide" } as MotionInput,
      { ...firstMotions.sink, name: "on edge" } as MotionInput,
    ];
    expect(motionInputs(motions.map(motionDocument))).toEqual(motions);
  });

  test("motions of a file without names, or with one name twice, get names of their own", () => {
    const slide = { kind: "slide", startSpeedMetresPerSecond: 2 } as const;
    const named = motionInputs([slide, slide, { ...slide, name: "push" }, { ...slide, name: "push" }]);
    expect(named.map(({ name }) => name)).toEqual(["slide", "slide 2", "push", "push 2"]);
  });

  test("an added motion is like the last of its kind, under a free name", () => {
    const fast = { ...firstMotions.slide, name: "slide 2", startSpeed: 7 } as MotionInput;
    expect(addedMotion("slide", [firstMotions.slide, fast, firstMotions.sink])).toEqual({ ...fast, name: "slide 3" });
    expect(addedMotion("flick", [fast])).toEqual(firstMotions.flick);
  });
});
