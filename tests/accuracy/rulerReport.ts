import type { AccuracyTable } from "./accuracyTable";
import { readStoredAnswers } from "./before";
import { markdownTable } from "./markdownTable";
import { compact } from "./quantityText";
import type { LevelFigures, RulerFigures } from "./rulerFigures";
import { circleCrisis } from "./sectionDrags";

/** The figures that sum up how an engine stands against all published values, beside those of an earlier one. */
export function rulerSections(table: AccuracyTable): string[] {
  const { date, engine } = readStoredAnswers();
  return [
    "## Before and now",
    `"Before" is ${engine}, its answers to these same values stored on ${date}. Drag errors leave out what was read on circles between Re ${compact(circleCrisis[0])} and ${compact(circleCrisis[1])}, and bounds.`,
    headlines(table),
    levelTable(table),
    "## Pairs ranked right",
    "Two drags of one source at one Reynolds number that were measured more than 10 % apart; a pair without an answer is not right. The ratio's error is ln(engine's ratio / published ratio).",
    rankingTable(table),
    "## Another tunnel or the engine",
    "The smooth circle: how well the mean curve of the other experiments, and the engine, foretell each point of an experiment. Root mean square of ln Cd, every experiment with the same weight, at points that another experiment covers. The expected drag is that of the error model with the experiment left out, in its tunnel where the blockage is known.",
    tunnelTable(table),
  ];
}

/** Wanted of the engine, as parts of what it did before. */
const wantedRmsRatio = 0.75;
const wantedWrongRatio = 0.5;
const wantedLengthRanking = 0.97;

function headlines(table: AccuracyTable): string {
  const { before, figures: now, targets, targetsBefore } = table;
  const rms = (figures: RulerFigures) => level(figures, "all")!.rmsError;
  const rmsLog = (figures: RulerFigures) => level(figures, "all")!.rmsLogError;
  const ranking = (figures: RulerFigures, differs: string) => figures.ranking.find((part) => part.differs === differs)!;
  const share = (figures: RulerFigures, differs: string) => {
    const { right, pairs } = ranking(figures, differs);
    return right / pairs;
  };
  const wantedShare = 1 - wantedWrongRatio * (1 - share(before, "all"));
  const verdict = (met: boolean) => (met ? "met" : "missed");
  return markdownTable(
    ["Figure", "Before", "Now", "Wanted", "Verdict"],
    [
      ["counted values answered", ...[before, now].map((f) => `${f.answered} of ${f.counted}`), "-", "-"],
      ["inside the source's scatter", ...[before, now].map((f) => `${f.insideScatter} of ${f.counted}`), "-", "-"],
      [
        "targets met",
        ...[targetsBefore, targets].map((t) => `${t.filter(({ met }) => met === true).length} of ${t.length}`),
        "-",
        "-",
      ],
      [
        "Cd, rms error outside the crisis",
        percent(rms(before)),
        percent(rms(now)),
        `at most ${percent(wantedRmsRatio * rms(before))}`,
        verdict(rms(now) <= wantedRmsRatio * rms(before)),
      ],
      ["Cd, rms of ln level", rmsLog(before).toFixed(3), rmsLog(now).toFixed(3), "-", "-"],
      [
        "pairs ranked right",
        percent(share(before, "all")),
        percent(share(now, "all")),
        `at least ${percent(wantedShare)}`,
        verdict(share(now, "all") >= wantedShare),
      ],
      [
        "pairs, rms of ln ratio",
        ranking(before, "all").rmsRatioError.toFixed(3),
        ranking(now, "all").rmsRatioError.toFixed(3),
        "-",
        "-",
      ],
      [
        "pairs of different length/height ranked right",
        percent(share(before, "length/height")),
        percent(share(now, "length/height")),
        `at least ${percent(wantedLengthRanking)}`,
        verdict(share(now, "length/height") >= wantedLengthRanking),
      ],
    ],
  );
}

function level(figures: RulerFigures, part: LevelFigures["part"]): LevelFigures | undefined {
  return figures.levels.find((each) => each.group === "all" && each.part === part);
}

function levelTable({ before, figures }: AccuracyTable): string {
  return markdownTable(
    [
      "Cd of sections",
      "Part",
      "Values",
      "No answer",
      "Mean before",
      "Mean",
      "RMS before",
      "RMS",
      "RMS ln before",
      "RMS ln",
    ],
    figures.levels.map((now) => {
      const then = before.levels.find(({ group, part }) => group === now.group && part === now.part);
      return [
        now.group,
        now.part,
        String(now.count),
        String(now.missing),
        signed(then?.meanError),
        signed(now.meanError),
        percent(then?.rmsError),
        percent(now.rmsError),
        decimal(then?.rmsLogError),
        decimal(now.rmsLogError),
      ];
    }),
  );
}

function rankingTable({ before, figures }: AccuracyTable): string {
  return markdownTable(
    ["What differs", "Pairs", "Right before", "Right", "Share before", "Share", "RMS ln ratio before", "RMS ln ratio"],
    figures.ranking.map((now) => {
      const then = before.ranking.find(({ differs }) => differs === now.differs);
      return [
        now.differs,
        String(now.pairs),
        then === undefined ? "-" : String(then.right),
        String(now.right),
        then === undefined ? "-" : percent(then.right / then.pairs),
        percent(now.right / now.pairs),
        decimal(then?.rmsRatioError),
        decimal(now.rmsRatioError),
      ];
    }),
  );
}

function tunnelTable({ before, figures, expectedTunnels }: AccuracyTable): string {
  return markdownTable(
    ["Re", "Tunnels", "Points", "Another tunnel", "Engine before", "Engine", "Expected drag"],
    figures.tunnels.map((now, i) => [
      `${compact(now.range[0])} to ${compact(now.range[1])}`,
      String(now.tunnels),
      String(now.points),
      decimal(now.otherTunnels),
      decimal(before.tunnels[i].engine),
      decimal(now.engine),
      decimal(expectedTunnels[i].engine),
    ]),
  );
}

function decimal(value: number | null | undefined): string {
  return value === null || value === undefined || !Number.isFinite(value) ? "-" : value.toFixed(3);
}

function percent(value: number | undefined): string {
  return value === undefined || !Number.isFinite(value) ? "-" : `${(value * 100).toFixed(1)} %`;
}

function signed(value: number | undefined): string {
  return value !== undefined && value > 0 ? `+${percent(value)}` : percent(value);
}
