import { bandText } from "../../tables/bandText";
import { type TextColumn, textTable } from "../../tables/textTable";
import type { PuckDragRow, PuckResult } from "./puckResult";

interface FloorLine {
  readonly name: string;
  readonly thickness: number;
  readonly row: PuckDragRow;
}

const columns: readonly TextColumn<FloorLine>[] = [
  { title: "puck", unit: "", isText: true, cell: ({ name }) => name },
  { title: "U", unit: "m/s", cell: ({ row }) => String(Number(row.speedMetresPerSecond.toPrecision(4))) },
  { title: "gap", unit: "mm", cell: ({ row }) => String(Number((1000 * (row.floorGapMetres ?? 0)).toPrecision(4))) },
  {
    title: "gap/thickness",
    unit: "",
    cell: ({ row, thickness }) => ((row.floorGapMetres ?? 0) / thickness).toFixed(2),
  },
  { title: "Cd", unit: "expected (band)", cell: ({ row }) => bandText(row.dragCoefficient, 2) },
  { title: "drag", unit: "N", cell: ({ row }) => row.dragNewtons.expected.toFixed(2) },
];

/** Drag of the pucks flat over the floor at the swept gaps, one table per turbulence; empty when no gap was swept. */
export function floorTables(pucks: readonly PuckResult[]): string[] {
  const lines = pucks.flatMap(({ name, figures, drag }) =>
    drag
      .filter(({ orientation }) => orientation === "overFloor")
      .map((row) => ({ name, thickness: figures.thicknessMetres, row })),
  );
  const turbulences = [...new Set(lines.map(({ row }) => row.turbulencePercent))];
  return turbulences.flatMap((turbulence) => {
    const own = lines.filter(({ row }) => row.turbulencePercent === turbulence);
    const title = `FLAT OVER THE FLOOR at turbulence ${turbulence} %. Cd on the frontal area edge-on.`;
    return ["", title, ...textTable(columns, own)];
  });
}
