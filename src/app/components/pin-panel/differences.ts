import { isSealed } from "../../../../shared/engine/section/sealedSide";
import { shortNumber } from "../../plots/curveRow";
import { type Pin, risingState, type Solved } from "../../section/solved";
import { shedsRegularly } from "../key-figures/shedsRegularly";
import { presentName } from "../plot-board/boardFigures";

/** One figure of all candidates, the present design first. */
export interface DifferenceRow {
  readonly figure: string;
  readonly cells: readonly { readonly value: string; readonly change: string }[];
}

export interface DifferenceTable {
  readonly names: readonly string[];
  readonly rows: readonly DifferenceRow[];
}

interface Compared {
  readonly figure: string;
  /** null where the figure has no meaning. */
  readonly of: (solved: Solved) => number | null;
  readonly digits: number;
  /** Angles and near-zero figures are compared by difference, the others by percentage. */
  readonly byDifference?: boolean;
}

const degrees = 180 / Math.PI;
const state = (solved: Solved) => risingState(solved.solution)!;
const dynamicPressure = ({ fluid, design }: Solved) => 0.5 * fluid.density * design.speed ** 2;

const compared: readonly Compared[] = [
  { figure: "Reference width D (mm)", of: (solved) => solved.solution.referenceWidth * 1000, digits: 4 },
  { figure: "Reynolds number Re", of: (solved) => solved.solution.condition.reynolds, digits: 3 },
  { figure: "Drag coefficient Cd (on D x span)", of: (solved) => state(solved).dragCoefficient, digits: 4 },
  {
    figure: "Drag per metre of span (N/m)",
    of: (solved) => state(solved).dragCoefficient * dynamicPressure(solved) * solved.solution.referenceWidth,
    digits: 4,
  },
  {
    figure: "Strouhal number S",
    of: (solved) => (shedsRegularly(solved.solution) ? state(solved).strouhal : null),
    digits: 3,
  },
  { figure: "Base pressure Cpb", of: (solved) => state(solved).basePressureCoefficient, digits: 3, byDifference: true },
  { figure: "Lowest Cp", of: (solved) => state(solved).minimumPressureCoefficient, digits: 3, byDifference: true },
  {
    figure: "Separation, upper (degrees)",
    of: (solved) => state(solved).upper.separationAngle * degrees,
    digits: 4,
    byDifference: true,
  },
  {
    figure: "Separation, lower (degrees)",
    of: (solved) => (isSealed(state(solved).lower) ? null : state(solved).lower.separationAngle * degrees),
    digits: 4,
    byDifference: true,
  },
  {
    figure: "Lift coefficient Cl",
    of: (solved) => (isSealed(state(solved).lower) ? null : state(solved).liftCoefficient),
    digits: 3,
    byDifference: true,
  },
];

/** The present design against every pin that is solved: each figure, and how the present design differs from the pin. */
export function differenceTable(present: Solved, pins: readonly Pin[]): DifferenceTable {
  const solved = pins.flatMap((pin) =>
    pin.solved === null || risingState(pin.solved.solution) === null ? [] : [{ ...pin, solved: pin.solved }],
  );
  return {
    names: [presentName, ...solved.map((pin) => pin.name)],
    rows: compared.map((one) => {
      const own = one.of(present);
      return {
        figure: one.figure,
        cells: [
          { value: text(own, one.digits), change: "" },
          ...solved.map((pin) => {
            const other = one.of(pin.solved);
            return { value: text(other, one.digits), change: changeText(own, other, one) };
          }),
        ],
      };
    }),
  };
}

function text(value: number | null, digits: number): string {
  if (value === null) return "–";
  const shown = Math.abs(value) < 5e-7 ? 0 : value;
  return Math.abs(shown) >= 1e4 ? shortNumber(shown) : String(Number(shown.toPrecision(digits)));
}

function changeText(own: number | null, other: number | null, { byDifference }: Compared): string {
  if (own === null || other === null) return "";
  if (byDifference) {
    const change = own - other;
    return Math.abs(change) < 5e-4 ? "same" : `${change > 0 ? "+" : ""}${Number(change.toPrecision(3))}`;
  }
  const share = (100 * (own - other)) / other;
  return Math.abs(share) < 0.05 ? "same" : `${share > 0 ? "+" : ""}${share.toFixed(1)} %`;
}
