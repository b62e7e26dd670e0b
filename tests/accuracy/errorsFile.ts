import type { ErrorParameters } from "../../shared/engine/trust/errorCovariance";
import { measuredLines } from "../../shared/engine/trust/errorData";
import type { LevelDatum } from "../../shared/engine/trust/levelProcess";

/** The text of shared/engine/trust/checkedErrors.ts, formatted as the linter wants it. */
export function errorsFile(fittedOn: string, parameters: ErrorParameters, data: readonly LevelDatum[]): string {
  return [
    'import type { ErrorData } from "./errorData";',
    "",
    "/**",
    " * What the engine's errors against published drag coefficients are known from. The errors are written by",
    " * `npm run accuracy`, the parameters by `npm run trust`; a test fails when the errors are out of date.",
    " */",
    "export const CHECKED_ERRORS: ErrorData = {",
    `  fittedOn: "${fittedOn}",`,
    "  parameters: {",
    ...lines(parameters, "    "),
    "  },",
    "  measured: `",
    measuredLines(data),
    "`,",
    "};",
    "",
  ].join("\n");
}

function lines(value: object, indent: string): string[] {
  return Object.entries(value).flatMap(([name, each]) => {
    const key = /^\w+$/.test(name) ? name : `"${name}"`;
    if (typeof each === "number") return [`${indent}${key}: ${Number(each.toPrecision(4))},`];
    const numbers = Object.entries(each).filter((entry): entry is [string, number] => typeof entry[1] === "number");
    const inside = numbers.map(([inner, number]) => `${inner}: ${Number(number.toPrecision(4))}`).join(", ");
    const oneLine = `${indent}${key}: { ${inside} },`;
    if (numbers.length === Object.keys(each).length && oneLine.length <= lineWidth) return [oneLine];
    return [`${indent}${key}: {`, ...lines(each, `${indent}  `), `${indent}},`];
  });
}

const lineWidth = 120;
