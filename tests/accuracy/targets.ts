import { roughCriticalReynolds } from "../published/achenbach-1977";
import { blevins1984 } from "../published/blevins-1984";
import { delanySorensen1953 } from "../published/delany-sorensen-1953";
import { offshoreTranscriticalDrag } from "../published/dnv-rp-c205";
import { codeCornerFactor, codeCylinderDrag } from "../published/en-1991-1-4";
import { millsHangFriction, millsHangLeast } from "../published/mills-hang-1983";
import { munsonDragFigures } from "../published/munson-drag-figures";
import { roughPlate } from "../published/prandtl-schlichting-1934";
import type { PublishedSection, Quantity } from "../published/quantity";
import { schultzGrunow1940 } from "../published/schultz-grunow-1940";
import { rectangle, roughStream, sectionStream, smoothStream } from "../published/streams";
import { openTargets } from "./openTargets";
import { compact } from "./quantityText";
import { band, ordered, type Target, wholeSource, within } from "./target";

/** Within a fraction of the band that the published values of a rounded square span. */
function withinSquares(area: string, quantity: Quantity, cornerRadiusToHeight: number, fraction: number): Target {
  const measured = [blevins1984, delanySorensen1953, munsonDragFigures].flatMap(({ values }) =>
    values.flatMap(({ quantity: other, value }) =>
      other.kind === "dragCoefficient" &&
      other.reynolds === 1e5 &&
      other.section.shape === "rectangle" &&
      other.section.lengthToHeight === 1 &&
      Math.abs(other.section.cornerRadiusToHeight - cornerRadiusToHeight) <= sameCorner
        ? [value]
        : [],
    ),
  );
  const values = [...measured, codeSquareDrag * codeCornerFactor(cornerRadiusToHeight)];
  return within(area, quantity, fraction, Math.min(...values), Math.max(...values));
}

/** Corner radii / height that sources round to different digits. */
const sameCorner = 0.005;
/** Drag of the sharp square in EN 1991-1-4, figure 7.23. */
const codeSquareDrag = 2.1;

const smooth = smoothStream();

function smoothCylinder(): Target[] {
  const area = "smooth cylinder, Tu 0.1 %";
  const drag = (reynolds: number): Quantity => ({ kind: "dragCoefficient", ...smooth, reynolds });
  return [
    ...[1.5e4, 3e4, 6e4, 1e5, 1.5e5].map((reynolds) => within(area, drag(reynolds), 0.08, 1.2)),
    // Achenbach and Heinecke 1.06, Schewe 1.12, the offshore design curve 1.21.
    within(area, drag(2e5), 0.08, 1.06, 1.21),
    band(
      area,
      { kind: "reynoldsAtDrag", ...smooth, dragCoefficient: 0.7, reynoldsFrom: 1e5, reynoldsTo: 1e6 },
      // Achenbach and Heinecke, and the offshore design curve.
      2.7e5,
      4.1e5,
    ),
    band(area, { kind: "lowestDragCoefficient", ...smooth, reynoldsFrom: 2e5, reynoldsTo: 2e6 }, 0.2, 0.32),
    ...[3.5e6, 5e6, 7e6, 1e7].flatMap((reynolds) => [
      band(area, drag(reynolds), 0.6, 0.8),
      band(area, { kind: "strouhal", ...smooth, reynolds }, 0.25, 0.29),
    ]),
    ...(
      [
        [1e5, 78, 82],
        [8.5e5, 135, 147],
        [3.6e6, 105, 118],
      ] as const
    ).map(([reynolds, low, high]) => band(area, { kind: "separationAngle", ...smooth, reynolds }, low - 5, high + 5)),
    ...(
      [
        [1e5, -1.2, -1.2],
        [1.4e5, -1.21, -1.21],
        [4e5, -0.33, -0.2],
        [1e6, -0.33, -0.2],
        [8.4e6, -0.86, -0.8],
      ] as const
    ).map(([reynolds, low, high]) =>
      band(area, { kind: "basePressureCoefficient", ...smooth, reynolds }, low - 0.15, high + 0.15),
    ),
    {
      area,
      statement: "steady one-sided states are found in the critical range (largest lift coefficient)",
      allowed: "found",
      quantities: [{ kind: "largestOneSidedLift", ...smooth, reynoldsFrom: 2e5, reynoldsTo: 6e5 }],
      judge: ([{ value }]) => value !== null,
    },
  ];
}

function roughCylinder(): Target[] {
  const area = "rough cylinder";
  const roughnesses = [1e-5, 1e-4, 1e-3, 1e-2];
  const drag = (ratio: number, reynolds: number): Quantity => ({
    kind: "dragCoefficient",
    ...roughStream(ratio),
    reynolds,
  });
  return [
    ...[1e-3, 3e-3, 1e-2].map((ratio) =>
      within(
        area,
        { kind: "reynoldsAtLowestDrag", ...roughStream(ratio), reynoldsFrom: 2e4, reynoldsTo: 1e6 },
        0.2,
        roughCriticalReynolds(ratio),
      ),
    ),
    ...roughnesses.map((ratio) => {
      const middle = (codeCylinderDrag(3e6, ratio) + offshoreTranscriticalDrag(ratio)) / 2;
      return band(area, drag(ratio, 3e6), middle - 0.1, middle + 0.1);
    }),
    ordered(
      area,
      "lowest Cd over ks/D 1e-5, 1e-4, 1e-3, 1e-2",
      roughnesses.map((ratio) => ({
        kind: "lowestDragCoefficient" as const,
        ...roughStream(ratio),
        reynoldsFrom: 2e4,
        reynoldsTo: 2e6,
      })),
      "rising",
    ),
    ...[3e6, 5e6, 1e7].map((reynolds) =>
      ordered(
        area,
        `fully turbulent, smooth is lowest: Cd over ks/D 1e-5, 1e-4, 1e-3, 1e-2 at Re ${compact(reynolds)}`,
        roughnesses.map((ratio) => drag(ratio, reynolds)),
        "rising",
      ),
    ),
  ];
}

function turbulence(): Target[] {
  const area = "turbulence";
  const ratio = (turbulence: number, reference: number): Quantity => ({
    kind: "criticalReynoldsRatio",
    ...smoothStream(turbulence),
    dragCoefficient: 0.7,
    referenceTurbulenceIntensity: reference,
    reynoldsFrom: 2e4,
    reynoldsTo: 1e6,
  });
  return [
    within(area, ratio(0.0085, 0.0005), 0.25, 2.7 / 3.85),
    within(area, ratio(0.025, 0.0005), 0.25, 1.3 / 3.85),
    within(area, ratio(0.02, 0.01), 0.25, 2 ** -1.34),
    band(area, { kind: "dragCoefficient", ...smoothStream(0.045), reynolds: 1e5 }, 0, 0.7),
  ];
}

function shapes(): Target[] {
  const area = "shapes";
  const drag = (section: PublishedSection, reynolds = 1e5): Quantity => ({
    kind: "dragCoefficient",
    ...sectionStream(section),
    reynolds,
  });
  const ellipse: PublishedSection = { shape: "ellipse", lengthToHeight: 2 };
  const peakRatios = [0.4, 0.5, 0.62, 0.8, 1];
  return [
    within(area, drag(ellipse, 5e4), 0.2, 0.6),
    within(area, drag(ellipse, 1e6), 0.2, 0.2),
    within(area, drag(rectangle(1)), 0.12, 2.1),
    withinSquares(area, drag(rectangle(1, 0.17)), 0.17, 0.12),
    withinSquares(area, drag(rectangle(1, 0.33)), 0.33, 0.12),
    within(area, drag(rectangle(0.5)), 0.15, 2.5),
    within(area, drag(rectangle(0.62)), 0.15, 2.4, 2.9),
    within(area, drag(rectangle(2)), 0.15, 1.6, 1.8),
    within(area, drag(rectangle(3)), 0.15, 1.3),
    {
      area,
      statement: `sharp rectangles: the largest Cd of length/height ${peakRatios.join(", ")} is near 0.62`,
      allowed: "at 0.5, 0.62 or 0.8",
      quantities: peakRatios.map((ratio) => drag(rectangle(ratio))),
      judge: (predictions) => {
        const values = predictions.map(({ value }) => value!);
        const peak = values.indexOf(Math.max(...values));
        return peak > 0 && peak < peakRatios.length - 1;
      },
    },
    ordered(
      area,
      "rounded squares: Re half way down the crisis, r/H 0.167, 0.25, 0.333",
      (
        [
          [0.167, 0.925],
          [0.25, 0.8],
          [0.333, 0.675],
        ] as const
      ).map(([ratio, dragCoefficient]) => ({
        kind: "reynoldsAtDrag" as const,
        ...sectionStream(rectangle(1, ratio)),
        dragCoefficient,
        reynoldsFrom: 5e4,
        reynoldsTo: 2e6,
      })),
      "falling",
    ),
  ];
}

function layers(): Target[] {
  const area = "boundary layers";
  return [
    within(area, { kind: "laminarSeparation", edgeSpeed: "howarth" }, 0.015, 0.1199),
    band(area, { kind: "laminarSeparation", edgeSpeed: "sine" }, 103, 106),
    band(area, { kind: "laminarSeparation", edgeSpeed: "hiemenz" }, 78.5, 81.5),
    wholeSource(area, "measured friction of a smooth plate (Schultz-Grunow 1940)", schultzGrunow1940, 0.03),
    ...roughPlate.map(({ lengthToRoughness, localFriction }) => {
      const sources = [localFriction];
      if (lengthToRoughness >= millsHangLeast) sources.push(millsHangFriction(lengthToRoughness));
      const quantity = { kind: "roughPlateFriction", lengthToRoughness } as const;
      return within(area, quantity, 0.05, Math.min(...sources), Math.max(...sources));
    }),
  ];
}

/** Every target, in the order of the report. */
export function allTargets(): Target[] {
  return [...smoothCylinder(), ...roughCylinder(), ...turbulence(), ...shapes(), ...layers(), ...openTargets()];
}
