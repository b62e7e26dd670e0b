/**
 * Numbers of the physics that stand in their formula and not in the ledger, by file from `shared`, and what they are:
 *
 * - "published": constants of the source that the file names (author and year);
 * - "remembered": constants of the source that the file names, from memory; the ledger has them as one form;
 * - "resolution": steps, tolerances, sizes of tables and searches, guards against division by zero. The answer changes
 *   by less than its own tolerance when they are refined;
 * - "limit": ranges of input, sizes of pictures.
 *
 * `ledger.test.ts` fails on a number that is in neither place. A new number that was fitted, chosen or remembered goes
 * into `shared/engine/constants`; only what is truly of these four kinds goes here.
 */
export type NumberClass = "published" | "remembered" | "resolution" | "limit";

export const numbersInFormulas: Readonly<Record<string, Partial<Record<NumberClass, readonly number[] | "all">>>> = {
  "engine/geometry/arcPosition.ts": { resolution: "all" },
  "engine/geometry/bendsFromNose.ts": { resolution: "all" },
  "engine/geometry/bevelledRectangle.ts": { resolution: "all" },
  "engine/geometry/contourPoints.ts": { limit: [8, 2000, 1e-3], resolution: [1e-9] },
  "engine/geometry/dShape.ts": { limit: [0.1], resolution: [1e-12, 5] },
  "engine/geometry/dimensionChecks.ts": { limit: "all" },
  "engine/geometry/ellipse.ts": { resolution: "all" },
  "engine/geometry/freeContour.ts": { resolution: "all" },
  "engine/geometry/fullLength.ts": { resolution: [240, 1e-9] },
  "engine/geometry/gradedNodes.ts": { limit: "all" },
  "engine/geometry/gradingMap.ts": { resolution: "all" },
  "engine/geometry/joinedContour.ts": { resolution: "all" },
  "engine/geometry/lineArcContour.ts": { resolution: "all" },
  "engine/geometry/noseArc.ts": { resolution: "all" },
  "engine/geometry/outlineContour.ts": {
    resolution: [16, 200, 5e-3, 1e-5, 1e-6],
    limit: [1e-4, 0.3, 0.5],
  },
  "engine/geometry/outlineSides.ts": { limit: [2, 2000, 229, 1e-3], resolution: [48, 24, 1e-4] },
  "engine/geometry/mirrorSymmetry.ts": { resolution: "all" },
  "engine/geometry/panelCountForSection.ts": { resolution: "all" },
  "engine/geometry/parametricContour.ts": { resolution: "all" },
  "engine/geometry/referenceWidth.ts": { resolution: "all" },
  "engine/geometry/roundedCorner.ts": { resolution: "all" },
  "engine/geometry/roundedPolygon.ts": { limit: "all" },
  "engine/geometry/sidePath.ts": { published: [3] },
  "engine/geometry/superellipse.ts": { limit: [2, 20], resolution: [9] },

  "engine/layer/abuGhannamShaw.ts": { published: "all" },
  "engine/layer/lagEntrainment.ts": { remembered: "all" },
  "engine/layer/lagEntrainmentMarch.ts": {
    resolution: [0.01, 2e-4, 0.05, 6000, 1e-3, 1e-6, 1e-12, 0.7, 0.8, 0.004, 1.05, 0.009],
  },
  "engine/layer/lagEntrainmentPoint.ts": { remembered: [0.02, 0.8, 0.01, 2.8], resolution: [3, 1e-9] },
  "engine/layer/longBubble.ts": { published: [1.702], resolution: [0.999, 0.25] },
  "engine/layer/laminarLayer.ts": { resolution: [0.02, 4, 400, 0.5] },
  "engine/layer/layerProfile.ts": { resolution: [0, 1, 2] },
  "engine/layer/sideLayer.ts": { resolution: [1e-6] },
  "engine/layer/sideStations.ts": { resolution: [0.5, 1e-3] },
  "engine/layer/similarLayers.ts": { published: "all" },
  "engine/layer/textbook/head.ts": { published: "all" },
  "engine/layer/textbook/headMarch.ts": { resolution: [3.31, 0.01, 2e-4, 0.05, 1e-12] },
  "engine/layer/textbook/ludwiegTillmann.ts": { published: "all" },
  "engine/layer/textbook/michel.ts": { published: "all" },
  "engine/layer/textbook/thwaites.ts": {
    published: [0.09, 0.075, 0.45, 0.25, 0.62, 2, 4.14, 83.5, 854, 3337, 4576],
    resolution: [0.03],
  },
  "engine/layer/transition.ts": { resolution: [1e-4] },

  "engine/roughness/plateFriction.ts": { remembered: [0.01013, 1.02, 0.00075], resolution: [5] },
  "engine/roughness/roughnessFunction.ts": { published: "all" },

  "engine/wake/basePressure.ts": { resolution: [0.7, 40, 5, 24] },
  "engine/whole/baseBand.ts": { resolution: "all" },
  "engine/whole/bodyLayers.ts": { resolution: "all" },
  "engine/whole/conditionFlow.ts": { resolution: "all" },
  "engine/whole/edgeOnFlow.ts": { resolution: "all" },
  "engine/whole/harmonicSystem.ts": { resolution: "all" },
  "engine/whole/lineFriction.ts": { resolution: "all" },
  "engine/whole/lineStations.ts": { resolution: "all" },
  "engine/whole/meridianCurve.ts": { resolution: "all" },
  "engine/whole/meridianPanels.ts": { resolution: "all" },
  "engine/whole/meridianShape.ts": { resolution: "all" },
  "engine/whole/separationFamily.ts": { resolution: "all" },
  "engine/whole/streamGrid.ts": { resolution: "all" },
  "engine/whole/surfaceLines.ts": { resolution: "all" },
  "engine/whole/tiltedFlow.ts": { resolution: "all" },
  "engine/whole/toroidalFunctions.ts": { resolution: "all" },
  "engine/whole/wakeRow.ts": { resolution: "all" },
  "engine/whole/wholeBody.ts": { resolution: "all" },
  "engine/whole/wholeDrag.ts": { resolution: "all" },
  "engine/whole/wholeDraws.ts": { resolution: "all" },
  "engine/whole/wholeFlow.ts": { resolution: "all" },
  "engine/whole/wholeForces.ts": { resolution: "all" },
  "engine/whole/wholeStates.ts": { resolution: "all" },
  "engine/whole/wholeWake.ts": { resolution: "all" },

  "engine/trust/errorData.ts": { limit: [9] },
  "engine/trust/errorPoint.ts": { limit: [0.5] },
  "engine/trust/outcomesAround.ts": { resolution: [3] },
  "engine/trust/learnErrors.ts": { resolution: [4, 40, 41, 1e-4] },
  "engine/trust/shiftNodes.ts": { resolution: [21] },

  "engine/wake/vortexStreet.ts": { resolution: [1e-3, 440, 0.002, 0.458] },

  "engine/flow/floorImage.ts": { resolution: [4, 1024, -2, 6] },
  "engine/flow/floorPlane.ts": { resolution: [1e-3] },
  "engine/flow/surfaceOperator.ts": { resolution: [1300, 200] },

  "engine/solve/checkCondition.ts": { limit: [1e8, 0.05, 0.2, 1e-6, 0.1] },
  "engine/solve/prepareSection.ts": { resolution: [0.08, 0.985, 48] },
  "engine/solve/nearestApproach.ts": { resolution: [32, 8192] },
  "engine/solve/oneSidedFixedPoint.ts": { resolution: [26, 0.03, 0.62] },
  "engine/solve/restingFixedPoints.ts": { resolution: [64, 0.02, 0.97, 1] },
  "engine/solve/separationSearch.ts": { resolution: [2e-5, 1e-3, 40, 0.98, 0.02, 3] },
  "engine/solve/withBluntBase.ts": { resolution: [1e-3] },
  "engine/solve/intermittentState.ts": { resolution: [0.99] },
  "engine/solve/separatedFlow.ts": { resolution: [3, 0.05] },
  "engine/solve/separationTable.ts": { resolution: [27, 0.03, 0.81, 4] },
  "engine/solve/settleTogether.ts": { resolution: [0.05, 16, 10] },
  "engine/solve/settled.ts": { resolution: [1e-4, 3e-4, 0.3, 1e-3] },
  "engine/solve/symmetricFixedPoints.ts": { resolution: [8, 2, 1, 0.01] },
  "engine/solve/twoSidedFixedPoints.ts": { resolution: [0.01, 16, 400, 25, 0.1] },
  "engine/solve/twoSidedFlow.ts": { resolution: [3] },
  "engine/solve/zeroCurves.ts": { resolution: [1, 4, 0.15] },

  "engine/axial/axialFlow.ts": { resolution: [3] },
  "engine/axial/axialNodes.ts": { resolution: [8], limit: [124, 16] },

  "engine/pattern/equivalentRoughness.ts": { remembered: "all" },
  "engine/pattern/surfacePattern.ts": { resolution: [1.5] },

  "engine/trust/applicability.ts": { limit: [1e4, 0.01] },
  "engine/trust/insideHull.ts": { resolution: [1e-9] },
  "engine/trust/sectionDescription.ts": { resolution: [3e-3, 0.02, 1e-6] },

  "engine/section/contourExtent.ts": { resolution: [2000] },
  "engine/section/dragCrisis.ts": { resolution: [17, 16] },
  "engine/section/flowPicture.ts": { limit: "all" },
  "engine/section/liveCurves.ts": { resolution: [1.005] },
  "engine/section/prepareShape.ts": { resolution: [2, 5e-3] },

  "jobs/puck/drag/endRelief.ts": { published: "all" },
  "jobs/puck/drag/faceOnDrag.ts": { published: "all" },
  "jobs/puck/drag/faceOnFlow.ts": { resolution: [120, 1e10] },
  "jobs/puck/motion/slidingFriction.ts": { remembered: [0.15, 0.22, 0.3] },
  "jobs/puck/drag/solvedSections.ts": { resolution: [0.99] },
};
