import type { DragState } from "../../engine/trust/dragInterval";
import { bandText } from "../../tables/bandText";
import { type TextColumn, textTable } from "../../tables/textTable";
import type { PuckDragRow, PuckResult } from "./puckResult";

interface StateLine {
  readonly name: string;
  readonly row: PuckDragRow;
  readonly state: DragState;
}

/** The states of the pucks upright, each with the parts of its drag coefficient; nothing where sections stand in. */
export function statesTables(pucks: readonly PuckResult[]): string[] {
  const lines = pucks.flatMap(({ name, drag }) =>
    drag
      .filter(({ orientation }) => orientation === "upright")
      .flatMap((row) => row.states.map((state): StateLine => ({ name, row, state }))),
  );
  if (lines.length === 0) return [];
  return [
    "",
    "STATES upright: how the flow may pass the puck, Cd on the frontal area edge-on and its parts. Rim: laminar below its crisis, turned above. Edge: kept, suction lost to a bubble on the face, or open.",
    ...textTable(columns, lines),
  ];
}

const columns: readonly TextColumn<StateLine>[] = [
  { title: "puck", unit: "", isText: true, cell: ({ name }) => name },
  { title: "Tu", unit: "%", cell: ({ row }) => String(Number(row.turbulencePercent.toPrecision(3))) },
  { title: "U", unit: "m/s", cell: ({ row }) => String(Number(row.speedMetresPerSecond.toPrecision(4))) },
  { title: "rim", unit: "", isText: true, cell: ({ state }) => state.rimState },
  { title: "edge", unit: "", isText: true, cell: ({ state }) => state.edgeState },
  { title: "share", unit: "%", cell: ({ state }) => (100 * state.share).toFixed(0) },
  {
    title: "rim leaves",
    unit: "deg",
    cell: ({ state }) =>
      state.rimSeparationDegrees === null
        ? "-"
        : `${state.rimSeparationDegrees.toFixed(0)}${state.settled ? "" : ", not settled"}`,
  },
  { title: "Cd", unit: "expected (band)", cell: ({ state }) => bandText(state.dragCoefficient, 2) },
  { title: "forebody", unit: "", cell: ({ state }) => state.parts.forebody.expected.toFixed(2) },
  { title: "lost suction", unit: "", cell: ({ state }) => state.parts.lostSuction.expected.toFixed(2) },
  { title: "base", unit: "", cell: ({ state }) => state.parts.base.expected.toFixed(2) },
  { title: "friction", unit: "", cell: ({ state }) => state.parts.friction.expected.toFixed(3) },
  {
    title: "crisis",
    unit: "m/s",
    cell: ({ row }) => (row.crisisSpeedMetresPerSecond === null ? "-" : row.crisisSpeedMetresPerSecond.toFixed(2)),
  },
  {
    title: "Cd by sections",
    unit: "comparison",
    cell: ({ row }) => (row.twoSectionDragCoefficient === null ? "-" : bandText(row.twoSectionDragCoefficient, 2)),
  },
];
