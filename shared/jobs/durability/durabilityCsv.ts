import type { DrawnBand } from "../../statistics/drawnBand";
import { csvRows } from "../../tables/csvRows";
import type { DurabilityResult } from "./durabilityResult";

/** One line per puck, part (the name of an impact, or "wear") and figure: low, expected and high. */
export function durabilityCsv({ pucks }: DurabilityResult): string {
  const rows = pucks.flatMap(({ name, impacts, wear }) => [
    ...impacts.flatMap(({ name: part, contact, onto, medium, problem, notes, ...figures }) =>
      lines(name, part, figures).map((line) => ({ ...line, contact, onto, medium, problem })),
    ),
    ...(wear === null
      ? []
      : [
          ...lines(name, "wear", wear),
          ...lines(name, "worn", wear.worn ?? {}),
          ...lines(name, "worn", { dragAreaChangePercent: exactly(wear.worn?.dragAreaChangePercent ?? null) }),
        ].map((line) => ({ ...line, contact: null, onto: null, medium: null, problem: null }))),
  ]);
  return csvRows(rows);
}

function exactly(value: number | null): DrawnBand | null {
  return value === null ? null : { low: value, expected: value, high: value };
}

/** Those of the figures that are bands. */
function lines(puck: string, part: string, figures: object) {
  return Object.entries(figures).flatMap(([figure, band]: [string, unknown]) =>
    isBand(band) ? [{ puck, part, figure, low: band.low, expected: band.expected, high: band.high }] : [],
  );
}

function isBand(value: unknown): value is DrawnBand {
  return typeof value === "object" && value !== null && "expected" in value;
}
