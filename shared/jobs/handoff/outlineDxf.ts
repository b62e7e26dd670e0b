import { DxfWriter, LWPolylineFlags, point2d, Units } from "@tarikjabiri/dxf";
import type { Outline } from "./outline";

/** Outlines as a DXF drawing in mm: one closed polyline each, arcs kept as arcs (library @tarikjabiri/dxf). */
export function outlinesDxf(outlines: readonly Outline[]): string {
  const writer = new DxfWriter();
  writer.setUnits(Units.Millimeters);
  for (const { vertices } of outlines) {
    const points = vertices.map(({ x, y, bulge }) => ({ point: point2d(1000 * x, 1000 * y), bulge }));
    writer.addLWPolyline(points, { flags: LWPolylineFlags.Closed });
  }
  return writer.stringify();
}
