import type { DrawnBand } from "../../statistics/drawnBand";
import { type TextColumn, textTable } from "../../tables/textTable";
import type { DurabilityResult, ImpactResult, WearResult } from "./durabilityResult";

/** A mean with its band, for instance "5.2 (3.1-8.8)", in another unit. */
export function drawnText(band: DrawnBand | null, factor: number, digits: number): string {
  if (band === null) return "-";
  const text = (value: number) => String(Number((value * factor).toPrecision(digits)));
  return `${text(band.expected)} (${text(band.low)}-${text(band.high)})`;
}

interface ImpactLine {
  readonly puck: string;
  readonly impact: ImpactResult;
}

const impactColumns: readonly TextColumn<ImpactLine>[] = [
  { title: "puck", unit: "", isText: true, cell: ({ puck }) => puck },
  { title: "speed", unit: "m/s", cell: ({ impact }) => drawnText(impact.speedMetresPerSecond, 1, 3) },
  { title: "energy", unit: "J", cell: ({ impact }) => drawnText(impact.energyJoules, 1, 2) },
  { title: "peak force", unit: "kN", cell: ({ impact }) => drawnText(impact.peakForceNewtons, 1e-3, 2) },
  { title: "on the surface", unit: "MPa", cell: ({ impact }) => drawnText(impact.peakPressurePascals, 1e-6, 2) },
  { title: "coat squeezed", unit: "%", cell: ({ impact }) => drawnText(impact.coatStrainPercent, 1, 2) },
  { title: "contact", unit: "ms", cell: ({ impact }) => drawnText(impact.contactTimeSeconds, 1e3, 2) },
  { title: "", unit: "", isText: true, cell: ({ impact }) => impact.problem ?? impact.notes.join(" ") },
];

interface WearLine {
  readonly puck: string;
  readonly wear: WearResult;
}

const wearColumns: readonly TextColumn<WearLine>[] = [
  { title: "puck", unit: "", isText: true, cell: ({ puck }) => puck },
  { title: "contact", unit: "cm2", cell: ({ wear }) => (1e4 * wear.contactAreaSquareMetres).toFixed(1) },
  { title: "pressure", unit: "kPa", cell: ({ wear }) => drawnText(wear.contactPressurePascals, 1e-3, 2) },
  { title: "off a face", unit: "um/h", cell: ({ wear }) => drawnText(wear.faceMetresPerHour, 1e6, 2) },
  { title: "off the rim", unit: "um/h", cell: ({ wear }) => drawnText(wear.rimMetresPerHour, 1e6, 2) },
  { title: "to least cover", unit: "h", cell: ({ wear }) => drawnText(wear.hoursToLeastCover, 1, 2) },
  { title: "worn D", unit: "mm", cell: ({ wear }) => drawnText(wear.worn?.diameterMetres ?? null, 1e3, 4) },
  { title: "worn edge", unit: "mm", cell: ({ wear }) => drawnText(wear.worn?.edgeRadiusMetres ?? null, 1e3, 3) },
  { title: "mass", unit: "kg", cell: ({ wear }) => drawnText(wear.worn?.massKilograms ?? null, 1, 4) },
  {
    title: "drag",
    unit: "%",
    cell: ({ wear }) => {
      const change = wear.worn?.dragAreaChangePercent ?? null;
      return change === null ? "-" : `${change > 0 ? "+" : ""}${change.toFixed(1)}`;
    },
  },
];

/** Cautions first, then one table per impact and one for wear. */
export function durabilityTable({ pucks, cautions, notes, draws }: DurabilityResult): string {
  const impacts = pucks.flatMap(({ name, impacts: own }) => own.map((impact) => ({ puck: name, impact })));
  const titles = [...new Set(impacts.map(({ impact }) => impact.name))];
  const wears = pucks.flatMap(({ name, wear }) => (wear === null ? [] : [{ puck: name, wear }]));
  const hours = wears.find(({ wear }) => wear.worn !== null)?.wear.worn?.hours;
  return [
    "",
    "DURABILITY",
    ...cautions.map((caution) => `Caution: ${caution}`),
    ...titles.flatMap((title) => {
      const lines = impacts.filter(({ impact }) => impact.name === title);
      const { contact, onto, medium } = lines[0].impact;
      return ["", `IMPACT: ${title} (${contact} onto ${onto}, in ${medium})`, ...textTable(impactColumns, lines)];
    }),
    ...(wears.length === 0
      ? []
      : [
          "",
          `WEAR${hours === undefined ? "" : `; worn shape and drag edge-on after ${hours} h of play`}`,
          ...textTable(wearColumns, wears),
          ...new Set(wears.flatMap(({ puck, wear }) => wear.notes.map((note) => `${puck}: ${note}`))),
        ]),
    "",
    ...notes,
    `${draws} draws.`,
    "",
  ].join("\n");
}
