import { mean } from "../../statistics/sample";
import type { RunPoint } from "./runPoints";

/** Scatter of force about each point's mean, all points together, N. Source: JCGM 100:2008, 4.2.4 (pooled variance). */
export function pooledScatter(
  points: readonly RunPoint[],
): { readonly scatter: number; readonly degreesOfFreedom: number } | null {
  let squares = 0;
  let freedom = 0;
  for (const { readings } of points) {
    const middle = mean(readings.map(({ dragArea }) => dragArea));
    for (const { dragArea, dynamicPressure } of readings) squares += ((dragArea - middle) * dynamicPressure) ** 2;
    freedom += readings.length - 1;
  }
  return freedom > 0 ? { scatter: Math.sqrt(squares / freedom), degreesOfFreedom: freedom } : null;
}
