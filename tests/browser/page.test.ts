import { afterAll, beforeAll, describe } from "vitest";
import { openStage, type Stage } from "./openPage";
import { accessibilityScenarios } from "./scenarios/accessibility";
import { cancelScenarios } from "./scenarios/cancel";
import { compareViewScenarios } from "./scenarios/compareView";
import { deskScenarios } from "./scenarios/desk";
import { floorScenarios } from "./scenarios/floorView";
import { handleScenarios } from "./scenarios/handles";
import { importScenarios } from "./scenarios/imports";
import { keepingScenarios } from "./scenarios/keeping";
import { layerMethodScenarios } from "./scenarios/layerMethod";
import { loadingScenarios } from "./scenarios/loading";
import { privacyScenarios } from "./scenarios/privacy";
import { puckViewScenarios } from "./scenarios/puckView";
import { reportScenarios } from "./scenarios/reportPage";
import { robustnessScenarios } from "./scenarios/robustness";
import { sectionToolScenarios } from "./scenarios/sectionTools";
import { sweepScenarios } from "./scenarios/sweeping";
import { trialViewScenarios } from "./scenarios/trialView";
import { tunnelViewScenarios } from "./scenarios/tunnelView";

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
  deskScenarios(onStage);
  handleScenarios(onStage);
  floorScenarios(onStage);
  importScenarios(onStage);
  keepingScenarios(onStage);
  layerMethodScenarios(onStage);
  sweepScenarios(onStage);
  sectionToolScenarios(onStage);
  robustnessScenarios(onStage);
  reportScenarios(onStage);
  accessibilityScenarios(onStage);
  privacyScenarios(onStage);
  puckViewScenarios(onStage);
  tunnelViewScenarios(onStage);
  trialViewScenarios(onStage);
  compareViewScenarios(onStage);
});
