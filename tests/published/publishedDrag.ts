import { allSources } from "./allSources";
import { scatterRange } from "./publishedValue";

/** Published drag of one section in one stream by one source, as the page lays it beside a curve. */
export interface PublishedDrag {
  readonly source: string;
  readonly citation: string;
  readonly shape: "circle" | "ellipse" | "rectangle";
  readonly lengthToHeight: number;
  readonly cornerRadiusToHeight: number;
  readonly sandGrainRoughnessRatio: number;
  readonly turbulenceIntensity: number;
  /** Reynolds number, Cd, lowest and highest by the source's own scatter. */
  readonly points: readonly (readonly [number, number, number, number])[];
}

const digits = (value: number) => Number(value.toPrecision(4));

/** Every published drag coefficient of circles, ellipses and rectangles, by source, section and stream. */
export function publishedDrag(): PublishedDrag[] {
  const groups = new Map<string, { head: Omit<PublishedDrag, "points">; points: [number, number, number, number][] }>();
  for (const { name, citation, values } of allSources) {
    for (const one of values) {
      const { quantity } = one;
      if (quantity.kind !== "dragCoefficient") continue;
      const { section, sandGrainRoughnessRatio, turbulenceIntensity, reynolds } = quantity;
      if (section.shape !== "circle" && section.shape !== "ellipse" && section.shape !== "rectangle") continue;
      const head = {
        source: name,
        citation,
        shape: section.shape,
        lengthToHeight: section.shape === "circle" ? 1 : digits(section.lengthToHeight),
        cornerRadiusToHeight: section.shape === "rectangle" ? digits(section.cornerRadiusToHeight) : 0.5,
        sandGrainRoughnessRatio: digits(sandGrainRoughnessRatio),
        turbulenceIntensity: digits(turbulenceIntensity),
      };
      const key = JSON.stringify(head);
      const group = groups.get(key) ?? { head, points: [] };
      const [low, high] = scatterRange(one);
      group.points.push([reynolds, one.value, low, high].map(digits) as [number, number, number, number]);
      groups.set(key, group);
    }
  }
  return [...groups.values()].map(({ head, points }) => ({ ...head, points: points.sort((a, b) => a[0] - b[0]) }));
}
