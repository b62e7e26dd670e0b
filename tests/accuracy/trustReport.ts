import { CHECKED_ERRORS } from "../../shared/engine/trust/checkedErrors";
import type { AccuracyTable } from "./accuracyTable";
import { markdownTable } from "./markdownTable";
import type { ReliabilityBin } from "./trustJudgement";

/** How the error model holds what experiments that were left out measured, beside the bands of half-widths. */
export function trustSections(table: AccuracyTable): string[] {
  const { trust, levelData } = table;
  const all = trust.bands.find(({ name }) => name === "all")!;
  const below = trust.bands.find(({ name }) => name === "all, subcritical")!;
  const fall = 1 - all.score / all.bandsScore;
  const decided = trust.decided / trust.pairs;
  const right = trust.decidedRight / trust.decided;
  const share = all.covered / all.count;
  const verdict = (met: boolean) => (met ? "met" : "missed");
  return [
    "## The error model on experiments left out",
    `ln Cd = ln C(Re exp(e)) + level error + source bias + scatter: e the shift of a crisis, the level error a Gaussian process over regime, shape, Re, roughness, turbulence, length/height and corner radius, conditioned on ${levelData.length} values or means of neighbours away from a crisis. Every value is judged with its whole experiment left out, in a free stream where a tunnel's blockage is known; the parameters, fitted on ${CHECKED_ERRORS.fittedOn}, are common to all. The bands of half-widths are fitted without the experiment too.`,
    markdownTable(
      ["Asked", "Wanted", "Reached", "Verdict"],
      [
        [
          "values in the 90 % band of a measurement",
          "85 to 95 %",
          `${percent(share)} (half-widths: ${percent(all.bandsCovered / all.count)})`,
          verdict(share >= 0.85 && share <= 0.95),
        ],
        [
          "median full width of the subcritical band of the drag itself",
          "at most 0.40",
          `${below.dragWidth.toFixed(2)} (half-widths: ${below.bandsWidth.toFixed(2)})`,
          verdict(below.dragWidth <= 0.4),
        ],
        [
          "mean CRPS of ln Cd below that of the half-widths",
          "by 20 % or more",
          `${percent(fall)} (${all.score.toFixed(3)} against ${all.bandsScore.toFixed(3)})`,
          verdict(fall >= 0.2),
        ],
        ["pairs decided at 0.9 or more", "at least 55 %", percent(decided), verdict(decided >= 0.55)],
        ["decided pairs that are right", "at least 95 %", percent(right), verdict(right >= 0.95)],
        [
          "expected drag of the smooth circle as near as another tunnel",
          "in every range of Re",
          table.expectedTunnels
            .map(({ otherTunnels, engine }) => (engine !== null && engine <= otherTunnels! ? "yes" : "no"))
            .join(", "),
          verdict(
            table.expectedTunnels.every(({ otherTunnels, engine }) => engine !== null && engine <= otherTunnels!),
          ),
        ],
      ],
    ),
    markdownTable(
      [
        "Values",
        "Count",
        "Covered",
        "Half-widths cover",
        "Width, measurement",
        "Width, drag",
        "Half-widths",
        "CRPS",
        "CRPS, half-widths",
      ],
      trust.bands.map((part) => [
        part.name,
        String(part.count),
        percent(part.covered / part.count),
        percent(part.bandsCovered / part.count),
        part.measurementWidth.toFixed(2),
        part.dragWidth.toFixed(2),
        part.bandsWidth.toFixed(2),
        part.score.toFixed(3),
        part.bandsScore.toFixed(3),
      ]),
    ),
    "Pairs of one source, measured more than 10 % apart, by the probability given to the likelier order with the experiment left out.",
    markdownTable(
      ["Probability", "Pairs", "Mean probability", "Share right", "0 to 100 %"],
      trust.reliability.map((bin) => [
        `${bin.from} to ${bin.to}`,
        String(bin.pairs),
        percent(bin.meanProbability),
        percent(bin.right / bin.pairs),
        bar(bin),
      ]),
    ),
  ];
}

/** The share that was right as a bar, with a stroke where the probability would have it. */
function bar({ right, pairs, meanProbability }: ReliabilityBin): string {
  const length = 40;
  const filled = Math.round((length * right) / pairs);
  const expected = Math.round(length * meanProbability);
  return Array.from({ length }, (_, i) => (i === expected - 1 ? "+" : i < filled ? "#" : ".")).join("");
}

function percent(share: number): string {
  return Number.isFinite(share) ? `${(share * 100).toFixed(1)} %` : "-";
}
