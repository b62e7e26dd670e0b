import { expect, test } from "vitest";
import { darkPalette, lightPalette } from "../../src/app/style/palette";

type Colour = readonly [number, number, number];

function linear(hex: string): Colour {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  });
  return [r, g, b];
}

/** Vienot, Brettel & Mollon (1999), Color Research & Application 24, 243-252: what dichromats see, linear RGB (from memory). */
const seenBy: Readonly<Record<string, (colour: Colour) => Colour>> = {
  "normal sight": (colour) => colour,
  protanopes: ([r, g, b]) => {
    const mixed = 0.11238 * r + 0.88762 * g;
    return [mixed, mixed, 0.00401 * r - 0.00401 * g + b];
  },
  deuteranopes: ([r, g, b]) => {
    const mixed = 0.29275 * r + 0.70725 * g;
    return [mixed, mixed, -0.02234 * r + 0.02234 * g + b];
  },
};

/** CIE 1976 L*a*b* of linear sRGB, white D65. */
function lab([r, g, b]: Colour): Colour {
  const f = (t: number) => (t > 0.008856 ? Math.cbrt(t) : 7.787 * t + 16 / 116);
  const x = f((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505);
  const y = f(0.2126 * r + 0.7152 * g + 0.0722 * b);
  const z = f((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

for (const [theme, palette] of [
  ["light", lightPalette],
  ["dark", darkPalette],
] as const) {
  for (const [who, seen] of Object.entries(seenBy)) {
    test(`curves of the ${theme} theme differ by 12 or more in CIE 1976 units for ${who}`, () => {
      const colours = palette.series.map(({ color }) => lab(seen(linear(color))));
      for (const [i, one] of colours.entries()) {
        for (const other of colours.slice(0, i)) {
          expect(Math.hypot(one[0] - other[0], one[1] - other[1], one[2] - other[2])).toBeGreaterThan(12);
        }
      }
    });
  }
}
