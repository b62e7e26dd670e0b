import { csvRows } from "../../tables/csvRows";
import type { CostResult } from "./costResult";

/** One line per puck and batch size. */
export function costCsv({ pucks, currency }: CostResult): string {
  return csvRows(
    pucks.flatMap(({ name, acceptedPercent, batches, problem }) =>
      batches.map(({ batchSize, unitCost, sharesPercent }) => ({
        puck: name,
        batchSize,
        currency,
        unitCostLow: unitCost.low,
        unitCostExpected: unitCost.expected,
        unitCostHigh: unitCost.high,
        materialPercent: sharesPercent.material,
        labourPercent: sharesPercent.labour,
        scrapPercent: sharesPercent.scrap,
        setupPercent: sharesPercent.setup,
        toolingPercent: sharesPercent.tooling,
        acceptedPercent: acceptedPercent?.expected ?? null,
        problem,
      })),
    ),
  );
}
