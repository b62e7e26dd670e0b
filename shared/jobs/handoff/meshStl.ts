import type { TriangleMesh } from "./meshBuilder";

const headerBytes = 80;
const triangleBytes = 50;

/**
 * A mesh as a binary STL file in mm: 80 bytes of header, the count, then per triangle its normal, three corners and two
 * unused bytes, all little-endian (the format's usual description since 1989). STL carries no unit: say mm with it.
 */
export function meshStl({ positions, triangles }: TriangleMesh): Uint8Array<ArrayBuffer> {
  const count = triangles.length / 3;
  const bytes = new Uint8Array(headerBytes + 4 + triangleBytes * count);
  const view = new DataView(bytes.buffer);
  // Must not begin with "solid", which marks the text form of the format.
  [..."binary STL, lengths in mm"].forEach((letter, i) => {
    bytes[i] = letter.charCodeAt(0);
  });
  view.setUint32(headerBytes, count, true);
  for (let t = 0; t < count; t++) {
    const corners = [0, 1, 2].map((k) => {
      const v = 3 * triangles[3 * t + k];
      return [1000 * positions[v], 1000 * positions[v + 1], 1000 * positions[v + 2]];
    });
    const numbers = [...normal(corners), ...corners.flat()];
    const start = headerBytes + 4 + triangleBytes * t;
    numbers.forEach((value, i) => {
      view.setFloat32(start + 4 * i, value, true);
    });
  }
  return bytes;
}

function normal([a, b, c]: readonly (readonly number[])[]): number[] {
  const u = b.map((value, i) => value - a[i]);
  const v = c.map((value, i) => value - a[i]);
  const cross = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
  const length = Math.hypot(...cross);
  return cross.map((value) => (length > 0 ? value / length : 0));
}
