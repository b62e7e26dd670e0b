import { openPage, openStage } from "./openPage";
import { profileHash, waitForFigures } from "./scenarios/pageParts";

/** What a person gets while a handle is dragged in the production build. */
export interface DragFigures {
  /** Complete solutions drawn per second, at 160 panels; aim 20 or more. */
  readonly solutionsPerSecond: number;
  /** Longest task of the main thread during the drag, ms; 0 when none took 50 ms or more (the browser reports no shorter ones). Aim: none. */
  readonly longestMainThreadTask: number;
  /** Tasks of 50 ms or more during the drag. */
  readonly longTasks: number;
  /** First contentful paint of the page, ms. */
  readonly firstPaint: number;
  /** First frame with the key figures of the linked design, ms from the start of navigation; aim 2000 or less. */
  readonly firstFigures: number;
}

const dragMilliseconds = 4000;

/** Notes when the answer is first drawn, by looking for its figures frame by frame. */
const noteFirstFigures = `{
  const hasFigures = (root) => [...root.querySelectorAll("*")].some(
    ({ localName, shadowRoot }) =>
      shadowRoot !== null && (localName === "ww-answer" ? shadowRoot.querySelector("b") !== null : hasFigures(shadowRoot)),
  );
  const look = () => {
    if (hasFigures(document)) requestAnimationFrame(() => { window.firstFigures = performance.now(); });
    else requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
}`;

/** Drags the edge radius to and fro in a headless browser, the whole desk in sight, and counts. */
export async function measureDragging(): Promise<DragFigures> {
  const stage = await openStage();
  try {
    const { page } = await openPage(stage, { hash: await profileHash(), early: noteFirstFigures });
    await waitForFigures(page);
    await page.waitForTimeout(4000);
    const box = await page.locator('[data-handle="edgeRadius"]').boundingBox();
    if (box === null) throw new Error("The handle of the edge radius is not on the page.");
    await page.evaluate(() => {
      const tasks: number[] = [];
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries()) tasks.push(entry.duration);
      }).observe({ type: "longtask" });
      Object.assign(window, { longTaskDurations: tasks });
    });
    const solveCount = async () =>
      Number(await page.locator("ww-flow-view [data-solve-count]").getAttribute("data-solve-count"));
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    const before = await solveCount();
    const start = Date.now();
    for (let k = 0; Date.now() - start < dragMilliseconds; k++) {
      const away = 12 * Math.sin(k / 12);
      await page.mouse.move(x + away, y + away);
      await page.waitForTimeout(8);
    }
    const seconds = (Date.now() - start) / 1000;
    const drawn = (await solveCount()) - before;
    const tasks = await page.evaluate(() => (window as unknown as { longTaskDurations: number[] }).longTaskDurations);
    await page.mouse.up();
    const firstPaint = await page.evaluate(
      () => performance.getEntriesByName("first-contentful-paint")[0]?.startTime ?? 0,
    );
    const firstFigures = await page.evaluate(() => (window as unknown as { firstFigures: number }).firstFigures);
    return {
      solutionsPerSecond: drawn / seconds,
      longestMainThreadTask: tasks.length > 0 ? Math.max(...tasks) : 0,
      longTasks: tasks.length,
      firstPaint,
      firstFigures,
    };
  } finally {
    await stage.close();
  }
}
