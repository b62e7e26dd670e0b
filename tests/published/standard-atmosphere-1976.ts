import { type PublishedSource, published } from "./publishedValue";

export const standardAtmosphere1976: PublishedSource = {
  name: "US Standard Atmosphere 1976",
  nature: "theory",
  citation: "US Standard Atmosphere (1976), eq. 51 (Sutherland) and the perfect-gas law at 101325 Pa",
  remark: "Constants from memory, high confidence.",
  values: (
    [
      [15, 1.7894e-5, 1.225],
      [20, 1.8134e-5, 1.2041],
      [25, 1.8372e-5, 1.1839],
    ] as const
  ).flatMap(([temperatureCelsius, viscosity, density]) => {
    const common = {
      group: "fluids",
      scatter: { relative: 0.001 },
      grade: "A",
      howObtained: "computed from the stated formula",
    } as const;
    return [
      published(common, { kind: "airDynamicViscosity", temperatureCelsius }, viscosity),
      published(common, { kind: "airDensity", temperatureCelsius }, density),
    ];
  }),
};
