import { cpus } from "node:os";
import { parseArgs } from "node:util";
import type { DragFigures } from "../browser/dragBenchmark";
import { denseSolve } from "./denseSolve";
import { dragCurve60x4, newBody, newShape200 } from "./engineBench";

const { values } = parseArgs({ options: { json: { type: "boolean" } } });

/** Largest resident memory of this process so far, MB; Node and the compiler of the scripts take part of it. */
function peakMegabytes(): number {
  return process.resourceUsage().maxRSS / 1024;
}

const memoryAtStart = peakMegabytes();
const shape = newShape200();
const curve = dragCurve60x4();
const body = newBody();
const memoryOfEngine = peakMegabytes();
const solves = {
  denseSolve200: denseSolve(200),
  denseSolve400: denseSolve(400),
  denseSolve800: denseSolve(800),
  denseSolve1600: denseSolve(1600),
};

/** Medians over that of one 200-panel solve by the library's LU, in the same run: what compares between machines. */
const timesOfLibrarySolve200 = {
  newShape200: shape.medianMilliseconds / solves.denseSolve200.libraryMilliseconds,
  dragCurve60x4: curve.medianMilliseconds / solves.denseSolve200.libraryMilliseconds,
  newBody: body.medianMilliseconds / solves.denseSolve200.libraryMilliseconds,
};

/** The page in a real browser, or in words why there is none. */
async function pageFigures(): Promise<DragFigures | string> {
  try {
    // Loaded only now: the browser driver and the build tool would count in the engine's peak memory.
    const { measureDragging } = await import("../browser/dragBenchmark");
    return await measureDragging();
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

const memoryAtEnd = peakMegabytes();
const page = await pageFigures();

const report = {
  machine: { node: process.version, processor: cpus()[0]?.model ?? "unknown", cores: cpus().length },
  newShape200: shape,
  dragCurve60x4: curve,
  newBody: body,
  timesOfLibrarySolve200,
  ...solves,
  pageDragging: page,
  peakMemoryMegabytes: {
    atStart: memoryAtStart,
    afterShapeAndDragCurve: memoryOfEngine,
    withDenseSolvesAndLibrary: memoryAtEnd,
  },
};

if (values.json === true) {
  process.stdout.write(`${JSON.stringify(report, null, 2)}\n`);
} else {
  const milliseconds = (time: number) => `${time.toFixed(2)} ms`.padStart(12);
  const lines = [
    `Node ${report.machine.node}, ${report.machine.processor}, ${report.machine.cores} cores; one thread; medians`,
    "",
    ...[
      ["newShape200", shape] as const,
      ["dragCurve60x4", curve] as const,
      ["newBody", body] as const,
      ...Object.entries(solves),
    ].map(
      ([name, timing]) =>
        `${name.padEnd(15)}${milliseconds(timing.medianMilliseconds)}  (${timing.fastestMilliseconds.toFixed(2)} to ${timing.slowestMilliseconds.toFixed(2)}, ${timing.repeats} runs)  ${timing.what}`,
    ),
    `${"".padEnd(15)}${milliseconds(curve.sweepsOnlyMilliseconds)}  of dragCurve60x4 without preparing the circle`,
    "",
    `In solves of a 200 x 200 system by the library's LU (${solves.denseSolve200.libraryMilliseconds.toFixed(2)} ms): newShape200 ${timesOfLibrarySolve200.newShape200.toFixed(2)}, dragCurve60x4 ${timesOfLibrarySolve200.dragCurve60x4.toFixed(1)}, newBody ${timesOfLibrarySolve200.newBody.toFixed(0)}`,
    "",
    ...Object.entries(solves).map(
      ([name, solve]) =>
        `${name.padEnd(15)} ${solve.timesFasterThanLibrary.toFixed(1).padStart(6)} times faster than the library's LU (${solve.libraryMilliseconds.toFixed(1)} ms); our own LU ${solve.ownFactorizationMilliseconds.toFixed(1)} ms; difference ${solve.differenceFromLibrary.toExponential(1)}`,
    ),
    "",
    `Peak memory: ${memoryAtStart.toFixed(0)} MB at start, ${memoryOfEngine.toFixed(0)} MB after the shape and the drag curve, ${report.peakMemoryMegabytes.withDenseSolvesAndLibrary.toFixed(0)} MB with the dense solves and the library`,
    "",
    typeof page === "string"
      ? `Page: not measured. ${page}`
      : `Page, edge radius dragged at 160 panels: ${page.solutionsPerSecond.toFixed(1)} complete solutions a second, ${page.longTasks} tasks of 50 ms or more on the main thread (longest ${page.longestMainThreadTask.toFixed(0)} ms); first paint ${page.firstPaint.toFixed(0)} ms, first key figures ${page.firstFigures.toFixed(0)} ms`,
    "",
  ];
  process.stdout.write(lines.join("\n"));
}
