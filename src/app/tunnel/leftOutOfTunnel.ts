import type { Design } from "../../../shared/case/design";

/**
 * What a design of the section view loses as the model of a tunnel test, as a sentence: a section spans the tunnel by
 * itself there, along the stream and without trips. Null when nothing is lost.
 */
export function leftOutOfTunnel({
  floorGap,
  incidence,
  trips,
}: Pick<Design, "floorGap" | "incidence" | "trips">): string | null {
  const parts = [
    ...(floorGap === null
      ? []
      : [floorGap === 0 ? "the floor it lies on" : `the floor ${short(1000 * floorGap)} mm below it`]),
    ...(incidence === 0 ? [] : [`its incidence of ${short((180 * incidence) / Math.PI)}°`]),
    ...(trips.length === 0 ? [] : [trips.length === 1 ? "its trip" : `its ${trips.length} trips`]),
  ];
  if (parts.length === 0) return null;
  return `Left out of the section view's design: ${parts.join(", ")}. In the tunnel a section stands by itself along the stream, so that its drag is another.`;
}

function short(value: number): string {
  return String(Number(value.toPrecision(3)));
}
