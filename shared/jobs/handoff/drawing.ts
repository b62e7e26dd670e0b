import { edgeReach, type MakingTolerances, type PuckFigures, type PuckSpec } from "../puck/public";
import { centreLine, horizontalDimension, label, thinLine, verticalDimension, view } from "./drawingMarks";
import { detailLines, edgeText, textBlock, titleBlock, titleSize, withTolerance } from "./drawingText";
import { grooveProfileOutline, planLines } from "./grooveOutlines";
import { coreOutlines, planOutline, profileOutline } from "./outline";
import { svgText } from "./svgText";

export interface DrawingInput {
  readonly spec: PuckSpec;
  readonly figures: PuckFigures;
  /** Plus and minus, m; a dimension without one is drawn without. */
  readonly tolerances: MakingTolerances;
  /** Day of the drawing, year-month-day. */
  readonly date: string;
  readonly notes: readonly string[];
}

/** A4 landscape, mm. Source: ISO 216. */
const sheet = { width: 297, height: 210 };

/** Reductions and the true size, as 1 : n or n : 1. Source: ISO 5455 (1979). */
const scales = [10, 5, 2, 1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01];

/** Widest that the profile may be drawn, mm. */
const viewWidth = 110;

/** Upper left corner of the title block, and where text may stand, mm. */
const title = { x: sheet.width - 5 - titleSize.width, y: sheet.height - 5 - titleSize.height };
const detailArea = { x: 12, top: 138, bottom: 172, width: 130 };
const noteAreas = [
  { x: 150, top: 138, bottom: title.y - 2, width: 137 },
  { x: 12, top: 174, bottom: sheet.height - 7, width: 130 },
];

/**
 * A drawing of a puck on one A4 sheet as SVG: profile in section and plan, dimensions in mm with their tolerances, grooves
 * in the profile and whatever lies under material dashed.
 */
export function puckDrawing({ spec, figures, tolerances, date, notes }: DrawingInput): string {
  const d = 1000 * spec.diameterMetres;
  const t = 1000 * spec.thicknessMetres;
  const scale = scales.find((candidate) => candidate * d <= viewWidth && candidate * t <= viewWidth) ?? viewWidth / d;
  const [w, h] = [scale * d, scale * t];
  const profile = { x: 78, y: 75 };
  const plan = { x: 215, y: 75 };
  const reach = edgeReach(spec);
  const grooved = grooveProfileOutline(spec);
  const inset = { radial: 1000 * scale * reach.radial, axial: 1000 * scale * reach.axial };
  const edgeAt = { x: profile.x + w / 2 - 0.3 * inset.radial, y: profile.y - h / 2 + 0.3 * inset.axial };
  const body = [
    ...coreOutlines(spec).map((core) => view(profile, scale, core, { fill: "#ddd", isHidden: true })),
    view(profile, scale, profileOutline(spec), {}),
    ...(grooved === null ? [] : [view(profile, scale, grooved, { isHidden: true })]),
    view(plan, scale, planOutline(spec), {}),
    ...planLines(spec).map(({ outline, isHidden }) => view(plan, scale, outline, { isHidden, isThin: true })),
    centreLine(profile.x, profile.y - h / 2 - 6, profile.x, profile.y + h / 2 + 6),
    centreLine(plan.x - w / 2 - 6, plan.y, plan.x + w / 2 + 6, plan.y),
    centreLine(plan.x, plan.y - w / 2 - 6, plan.x, plan.y + w / 2 + 6),
    horizontalDimension(
      profile,
      w,
      profile.y + h / 2 - inset.axial,
      profile.y + h / 2 + 14,
      `\u2300${withTolerance(d, tolerances.diameterMetres)}`,
    ),
    verticalDimension(
      profile,
      h,
      profile.x - w / 2 + inset.radial,
      profile.x - w / 2 - 12,
      withTolerance(t, tolerances.thicknessMetres),
    ),
    thinLine(edgeAt.x, edgeAt.y, edgeAt.x + 5, edgeAt.y - 7),
    label(edgeAt.x + 5, edgeAt.y - 8, edgeText(spec, tolerances), "start"),
    label(profile.x, profile.y - h / 2 - 14, "PROFILE, section through the axis"),
    label(plan.x, plan.y - w / 2 - 14, "PLAN"),
    ...textBlock(detailLines(spec, figures, tolerances), [detailArea], furtherText),
    ...textBlock(["Notes", ...notes], noteAreas, furtherText),
    titleBlock(spec.name, date, scale, title),
  ];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${sheet.width}mm" height="${sheet.height}mm" viewBox="0 0 ${sheet.width} ${sheet.height}" font-family="sans-serif" font-size="3.2">`,
    `  <title>${svgText(`${spec.name}, drawing`)}</title>`,
    `  <rect x="0" y="0" width="${sheet.width}" height="${sheet.height}" fill="white"/>`,
    `  <rect x="5" y="5" width="${sheet.width - 10}" height="${sheet.height - 10}" fill="none" stroke="black" stroke-width="0.5"/>`,
    ...body.map((line) => `  ${line}`),
    "</svg>",
    "",
  ].join("\n");
}

const furtherText = "More in the text file handed over with this drawing: read it.";
