import { type PublishedSource, published } from "./publishedValue";

/** A circle with two surface sources behind its separation points, separation and base pressure given. */
export interface WakeSourceCircle {
  readonly separationDegrees: number;
  readonly basePressureCoefficient: number;
  readonly pressureDrag: number;
  readonly lowestPressure: number;
  readonly lowestPressureDegrees: number;
  /** Pressure coefficient at 30, 45, 60 and 70 degrees from the front. */
  readonly pressureAt30_45_60_70: readonly [number, number, number, number];
}

export const wakeSourceCircles: readonly WakeSourceCircle[] = (
  [
    [80, -0.96, 1.0477, -1.199, 71.2, [0.248, -0.448, -1.027, -1.197]],
    [80, -1.2, 1.2567, -1.308, 72.8, [0.232, -0.484, -1.093, -1.296]],
    [85, -1.1, 1.1375, -1.389, 74.0, [0.221, -0.509, -1.14, -1.366]],
    [103, -0.86, 0.7969, -1.841, 79.7, [0.159, -0.65, -1.395, -1.724]],
    [110, -0.38, 0.3346, -1.914, 80.7, [0.149, -0.671, -1.432, -1.776]],
    [115, -0.76, 0.6675, -2.187, 83.3, [0.111, -0.757, -1.582, -1.977]],
    [120, -0.38, 0.3357, -2.244, 83.8, [0.103, -0.774, -1.612, -2.017]],
    [140, -0.2, 0.3152, -2.723, 87.9, [0.037, -0.918, -1.86, -2.348]],
  ] as const
).map(
  ([
    separationDegrees,
    basePressureCoefficient,
    pressureDrag,
    lowestPressure,
    lowestPressureDegrees,
    pressureAt30_45_60_70,
  ]) => ({
    separationDegrees,
    basePressureCoefficient,
    pressureDrag,
    lowestPressure,
    lowestPressureDegrees,
    pressureAt30_45_60_70,
  }),
);

/** The same model on a plate across the stream: Cp at y / (half width) = 0, 0.25, 0.5, 0.75, 0.9. */
export const wakeSourcePlates: readonly {
  readonly basePressureCoefficient: number;
  readonly pressureDrag: number;
  readonly frontPressure: readonly [number, number, number, number, number];
}[] = [
  { basePressureCoefficient: -1.38, pressureDrag: 2.134, frontPressure: [1, 0.976, 0.891, 0.672, 0.311] },
  { basePressureCoefficient: -1.0, pressureDrag: 1.7786, frontPressure: [1, 0.978, 0.899, 0.7, 0.38] },
];

export const parkinsonJandali1970: PublishedSource = {
  name: "Parkinson and Jandali 1970",
  nature: "theory",
  citation:
    "G. V. Parkinson and T. Jandali (1970), A wake source model for bluff body potential flow, J. Fluid Mech. 40, 577-594",
  remark:
    "Values computed from the model's equations, which are from memory with high confidence. Two point sources there, a spread outflow here: their drag should agree to the scatter given; where the outflow sits moves the lowest pressure, so that is shown, not a gate.",
  values: wakeSourceCircles.flatMap((row) => {
    const given = {
      separationDegrees: row.separationDegrees,
      basePressureCoefficient: row.basePressureCoefficient,
    };
    const common = {
      group: "wake closure",
      grade: "A",
      howObtained: "computed from the stated formula",
    } as const;
    return [
      published({ ...common, scatter: { relative: 0.08 } }, { kind: "wakeSourceDrag", ...given }, row.pressureDrag),
      published(
        { ...common, grade: "B", scatter: { absolute: 0.1 } },
        { kind: "wakeSourceLowestPressure", ...given },
        row.lowestPressure,
      ),
    ];
  }),
};
