import { type TextColumn, textTable } from "../../tables/textTable";
import type { BatchCost, CostResult, PuckCost } from "./costResult";
import { costParts } from "./unitCost";

interface Line {
  readonly puck: PuckCost;
  readonly batch: BatchCost;
}

/** The cautions first, then one line per puck and batch. */
export function costTable({ currency, source, pucks, notes, cautions, draws }: CostResult): string {
  const money = (value: number) => value.toFixed(2);
  const columns: readonly TextColumn<Line>[] = [
    { title: "puck", unit: "", isText: true, cell: ({ puck }) => puck.name },
    { title: "accepted", unit: "%", cell: ({ puck }) => puck.acceptedPercent?.expected.toFixed(1) ?? "-" },
    { title: "batch", unit: "pucks", cell: ({ batch }) => String(batch.batchSize) },
    {
      title: "a puck",
      unit: currency,
      cell: ({ batch: { unitCost: unit } }) => `${money(unit.expected)} (${money(unit.low)}-${money(unit.high)})`,
    },
    ...costParts.map((part) => ({
      title: part,
      unit: "%",
      cell: ({ batch }: Line) => batch.sharesPercent[part].toFixed(0),
    })),
  ];
  const lines = pucks.flatMap((puck) => puck.batches.map((batch) => ({ puck, batch })));
  return [
    "",
    `COST in ${currency}: ${source}`,
    ...cautions.map((caution) => `Caution: ${caution}`),
    ...(lines.length === 0 ? [] : textTable(columns, lines)),
    ...pucks.flatMap(({ name, problem }) => (problem === null ? [] : [`${name}: ${problem}`])),
    "",
    ...notes,
    `${draws} draws.`,
    "",
  ].join("\n");
}
