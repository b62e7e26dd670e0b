import { afterAll, beforeAll, describe } from "vitest";
import { openStage, type Stage } from "./openPage";
import { cancelScenarios } from "./scenarios/cancel";
import { loadingScenarios } from "./scenarios/loading";

/** All browser tests share one production build and one browser; each opens a page of its own. */
describe("the page in a real browser", { timeout: 120_000 }, () => {
  let stage: Stage | null = null;
  const onStage = (): Stage => {
    if (stage === null) throw new Error("The stage is not open.");
    return stage;
  };

  beforeAll(async () => {
    stage = await openStage();
  }, 180_000);

  afterAll(async () => {
    await stage?.close();
  });

  loadingScenarios(onStage);
  cancelScenarios(onStage);
});
