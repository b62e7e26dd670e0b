import { type Palette, type SeriesStyle, seriesStyle } from "../style/palette";

/** The style of the n-th puck: beyond the palette its colours come again with other dashes and markers. */
export function puckStyle(palette: Palette, index: number): SeriesStyle {
  const round = Math.floor(index / palette.series.length);
  const { color } = seriesStyle(palette, index);
  const { dash, symbol, mark } = seriesStyle(palette, index + 3 * round);
  return { color, dash, symbol, mark };
}
