import { regimeInWords } from "../../../../shared/engine/section/regimeInWords";
import { isSealed } from "../../../../shared/engine/section/sealedSide";
import type { SectionState, SideSolution } from "../../../../shared/engine/solution";
import type { MeasuredCorrection } from "../../../../shared/jobs/evidence/carriedCorrection";
import { carriedFigure } from "../../compare/carriedFigures";
import { shortNumber } from "../../plots/curveRow";
import type { closures } from "../../reference/closures";
import { risingState, type Solved } from "../../section/solved";
import { quantityText, type UnitPreferences } from "../../units/units";
import { shedsRegularly } from "./shedsRegularly";

/** One figure as the page and the report print it. */
export interface KeyFigure {
  readonly name: string;
  readonly value: string;
  /** Reference area, band, condition or other small print. */
  readonly detail: string;
  readonly topic?: keyof typeof closures;
}

/**
 * The figures that a decision rests on, the drag coefficient first; empty when nothing converged.
 * @param correction a measured offset that is carried, shown beside the engine's own figure with its label; null for none
 */
export function keyFigures(
  solved: Solved,
  units: UnitPreferences,
  correction: MeasuredCorrection | null = null,
): KeyFigure[] {
  const { solution, fluid, design } = solved;
  const state = risingState(solution);
  if (state === null) return [];
  const width = solution.referenceWidth;
  const carried = correction === null ? null : carriedFigure(correction, solved);
  const sealed = isSealed(state.lower);
  const pressure = 0.5 * fluid.density * design.speed ** 2;
  return [
    {
      name: "Drag coefficient, Cd",
      value: state.dragCoefficient.toFixed(3),
      detail: `${bandText(solution.band)}on the area D x span, D = ${quantityText(width, "length", units)}; pressure ${state.pressureDragCoefficient.toFixed(3)}, friction ${state.frictionDragCoefficient.toFixed(4)}${otherBranch(solved, state)}`,
      topic: "referenceArea",
    },
    ...(carried === null ? [] : [{ name: "Cd with a measured offset", ...carried }]),
    {
      name: "Regime",
      value: regimeInWords(state) ?? "",
      detail: state.oneSided ? "one-sided: the two sides shed differently" : `${state.upper.state}`,
      topic: "transition",
    },
    {
      name: "Reynolds number, Re",
      value: shortNumber(solution.condition.reynolds),
      detail: `on D = ${quantityText(width, "length", units)}`,
    },
    {
      name: "Drag per metre of span",
      value: `${shortNumber(state.dragCoefficient * pressure * width)} N/m`,
      detail: `${fluid.name}, ${quantityText(design.speed, "speed", units)}`,
    },
    {
      name: "Strouhal number, S",
      ...sheddingText(solved, state.strouhal),
      topic: "basePressure",
    },
    {
      name: "Base pressure, Cpb",
      value: state.basePressureCoefficient.toFixed(3),
      detail: `lowest Cp ${state.minimumPressureCoefficient.toFixed(2)}`,
      topic: "wake",
    },
    {
      name: "Separation, upper",
      value: angleText(state.upper),
      detail: sideText(state.upper),
      topic: "separationAngle",
    },
    {
      name: "Separation, lower",
      ...(sealed
        ? { value: "none", detail: "the section lies on the floor" }
        : { value: angleText(state.lower), detail: sideText(state.lower) }),
      topic: "laminarLayer",
    },
    {
      name: "Lift coefficient, Cl",
      ...(sealed
        ? { value: "not known", detail: "nothing is computed of the water between section and floor" }
        : { value: noMinusZero(state.liftCoefficient.toFixed(3)), detail: "upward positive, same area" }),
    },
  ];
}

/** A floor that keeps the wake quiet leaves the Strouhal number without a meaning. */
function sheddingText({ solution, design }: Solved, strouhal: number): Pick<KeyFigure, "value" | "detail"> {
  if (!shedsRegularly(solution)) return { value: "none", detail: "so near a floor the wake does not shed regularly" };
  return {
    value: strouhal.toFixed(3),
    detail: `sheds at ${shortNumber((strouhal * design.speed) / solution.referenceWidth)} Hz`,
  };
}

/** The band and where it was checked, as a start of the small print. */
function bandText(band: Solved["solution"]["band"]): string {
  if (band === null) return "90 % band when the handle is let go; ";
  return `90 % band ${band.low.toFixed(2)} to ${band.high.toFixed(2)}${band.spansCrisis ? ", across a drag crisis" : ""} (${band.applicability}${band.reason === null ? "" : `; ${band.reason.replace(/\.$/, "")}`}); `;
}

function angleText(side: SideSolution): string {
  return `${((side.separationAngle * 180) / Math.PI).toFixed(1)}°`;
}

function sideText(side: SideSolution): string {
  const transition =
    side.transitionCause === null || side.transitionArc === null
      ? "laminar throughout"
      : `transition: ${side.transitionCause}, s/D ${side.transitionArc.toFixed(3)}`;
  return `s/D ${side.separationArc.toFixed(3)}; ${transition}`;
}

function otherBranch({ solution }: Solved, shown: SectionState): string {
  const { states, falling } = solution.outcome;
  if (falling === null || states[falling] === shown) return "";
  return `; ${states[falling].dragCoefficient.toFixed(3)} when the speed falls to this value`;
}

function noMinusZero(text: string): string {
  return Number(text) === 0 ? text.replace("-", "") : text;
}
