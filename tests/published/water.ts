import { type PublishedSource, published } from "./publishedValue";

const group = "fluids";

/** Verification points without the critical term: temperature K, density kg/m^3, viscosity in micropascal seconds. */
const iapwsPoints: readonly (readonly [number, number, number])[] = [
  [298.15, 998, 889.7351],
  [298.15, 1200, 1437.649467],
  [373.15, 1000, 307.883622],
  [433.15, 1, 14.538324],
  [433.15, 1000, 217.685358],
  [873.15, 1, 32.619287],
  [873.15, 100, 35.802262],
  [873.15, 600, 77.430195],
  [1173.15, 1, 44.217245],
  [1173.15, 100, 47.640433],
  [1173.15, 400, 64.154608],
];

export const iapws2008: PublishedSource = {
  name: "IAPWS R12-08",
  nature: "theory",
  citation:
    "IAPWS R12-08 (2008), Release on the IAPWS formulation 2008 for the viscosity of ordinary water substance, table 4",
  remark: "Verification points, reproduced to the last digit by an independent program.",
  values: iapwsPoints.map(([temperatureKelvin, densityKgPerCubicMetre, micropascalSeconds]) =>
    published(
      { group, scatter: { relative: 1e-6 }, grade: "A", howObtained: "from memory, high confidence" },
      { kind: "waterDynamicViscosity", temperatureKelvin, densityKgPerCubicMetre },
      Number((micropascalSeconds * 1e-6).toPrecision(10)),
    ),
  ),
};

export const kell1975: PublishedSource = {
  name: "Kell 1975",
  nature: "measurement",
  citation:
    "G. S. Kell (1975), Density, thermal expansivity, and compressibility of liquid water from 0 to 150 C, J. Chem. Eng. Data 20, 97-105",
  values: (
    [
      [15, 999.1],
      [20, 998.204],
      [25, 997.045],
      [26, 996.784],
      [27, 996.513],
      [28, 996.234],
      [30, 995.647],
      [35, 994.032],
    ] as const
  ).map(([temperatureCelsius, value]) =>
    published(
      { group, scatter: { absolute: 0.02 }, grade: "A", howObtained: "computed from the stated formula" },
      { kind: "waterDensity", temperatureCelsius },
      value,
    ),
  ),
};

export const haar1984: PublishedSource = {
  name: "Haar et al. 1984",
  nature: "theory",
  citation: "L. Haar, J. S. Gallagher and G. S. Kell (1984), NBS/NRC Steam Tables, at 1 bar",
  values: (
    [
      [15, 999.14],
      [20, 998.23],
      [25, 997.06],
      [30, 995.65],
      [35, 994.03],
    ] as const
  ).map(([temperatureCelsius, value]) =>
    published(
      { group, scatter: { absolute: 0.05 }, grade: "A", howObtained: "public copy" },
      { kind: "waterDensity", temperatureCelsius },
      value,
    ),
  ),
};

export const korson1969: PublishedSource = {
  name: "Korson et al. 1969",
  nature: "measurement",
  citation:
    "L. Korson, W. Drost-Hansen and F. J. Millero (1969), Viscosity of water at various temperatures, J. Phys. Chem. 73, 34-39",
  remark: "Dynamic viscosity over Kell's density.",
  values: (
    [
      [15, 1.1382e-3, 999.1],
      [20, 1.002e-3, 998.204],
      [25, 0.8903e-3, 997.045],
      [30, 0.7975e-3, 995.647],
      [35, 0.7195e-3, 994.032],
    ] as const
  ).map(([temperatureCelsius, viscosity, density]) =>
    published(
      { group, scatter: { relative: 0.002 }, grade: "A", howObtained: "public copy" },
      { kind: "waterKinematicViscosity", temperatureCelsius },
      Number((viscosity / density).toPrecision(5)),
    ),
  ),
};
