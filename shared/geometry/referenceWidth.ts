import type { SectionNodes } from "./sectionNodes";

export function referenceWidth(nodes: SectionNodes, incidence: number): number {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < nodes.count; i++) {
    const across = -Math.sin(incidence) * nodes.x[i] + Math.cos(incidence) * nodes.y[i];
    low = Math.min(low, across);
    high = Math.max(high, across);
  }
  return high - low;
}
