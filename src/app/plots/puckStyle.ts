import { type Palette, type SeriesStyle, seriesStyle } from "../style/palette";

/** What everything is held against: grey, so that the candidates have the colours. */
const baselineStyle = 6;
const coloured = [0, 1, 2, 3, 4, 5, 7] as const;

/**
 * The style of a puck: candidate, baseline and pins in that order, the same in every plot and table. Beyond the palette
 * its colours come again with other dashes and markers.
 */
export function puckStyle(palette: Palette, index: number): SeriesStyle {
  if (index === 1) return { ...seriesStyle(palette, baselineStyle), dash: "dash" };
  const place = index === 0 ? 0 : index - 1;
  const round = Math.floor(place / coloured.length);
  const { color } = seriesStyle(palette, coloured[place % coloured.length]);
  const { dash, symbol, mark } = seriesStyle(palette, coloured[(place + 3 * round) % coloured.length]);
  return { color, dash, symbol, mark };
}
