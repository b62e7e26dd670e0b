import {
  type FigureKey,
  figureCatalogue,
  figureKeys,
  figureText,
} from "../../../shared/jobs/puck/body/figureCatalogue";
import type { PuckFigures } from "../../../shared/jobs/puck/body/puckFigures";
import type { PuckJudgement, RuleVerdict } from "../../../shared/jobs/puck/rules/judgePuck";

/** One figure of the candidate as the table prints it. */
export interface FigureRow {
  readonly figure: FigureKey;
  readonly label: string;
  readonly candidate: string;
  readonly baseline: string;
  /** Candidate over baseline less 1, as text; empty where that says nothing. */
  readonly change: string;
  /** The rule about it; null where the rules have none. */
  readonly rule: { readonly allowed: string; readonly verdict: RuleVerdict; readonly message: string } | null;
}

/** A verdict in words, with a mark that does not depend on colour. */
export const verdictTexts: Readonly<Record<RuleVerdict, string>> = {
  pass: "✓ pass",
  fail: "✗ fail",
  onlyIfMadeBetter: "△ only if made better",
  notDetermined: "? not determined",
};

export function figureRows(
  candidate: PuckFigures,
  baseline: PuckFigures,
  judgement: PuckJudgement | null,
): FigureRow[] {
  return figureKeys.flatMap((figure): FigureRow[] => {
    const own = candidate[figure];
    const other = baseline[figure];
    const rule = judgement?.rules.find((one) => one.figure === figure);
    if (own === null && other === null && rule === undefined) return [];
    return [
      {
        figure,
        label: figureCatalogue[figure].label,
        candidate: own === null ? "–" : shownFigure(figure, own),
        baseline: other === null ? "–" : shownFigure(figure, other),
        change: own === null || other === null ? "" : changeText(own, other),
        rule:
          rule === undefined
            ? null
            : {
                allowed: allowedText(figure, rule.from, rule.to),
                verdict: rule.verdict,
                message: sentence(rule.message),
              },
      },
    ];
  });
}

/** "+3.2 %", "-0.5 %", "equal". */
export function changeText(value: number, base: number): string {
  if (base === 0) return value === 0 ? "equal" : "";
  const percent = 100 * (value / base - 1);
  if (Math.abs(percent) < 0.05) return "equal";
  return `${percent > 0 ? "+" : "−"}${Number(Math.abs(percent).toPrecision(Math.abs(percent) < 1 ? 1 : 3))}\u00a0%`;
}

/** A figure as the page prints it: raised exponents, and no break before the unit. */
export function shownFigure(figure: FigureKey, value: number): string {
  return withRaisedExponents(figureText(figure, value)).replaceAll(" ", "\u00a0");
}

/** "cm2" as "cm²", "kg/m3" as "kg/m³". */
export function withRaisedExponents(text: string): string {
  return text.replace(/(m)2\b/g, "$1²").replace(/(m)3\b/g, "$1³");
}

function allowedText(figure: FigureKey, from: number | null, to: number | null): string {
  if (from === null) return `up to ${shownFigure(figure, to ?? 0)}`;
  return to === null
    ? `from ${shownFigure(figure, from)}`
    : `${shownFigure(figure, from)} to ${shownFigure(figure, to)}`;
}

function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}
