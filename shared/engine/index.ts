export { buildContour } from "./geometry/sectionFamilies";
export { prepareShape } from "./section/prepareShape";
export { solveCondition } from "./solve/solveCondition";
