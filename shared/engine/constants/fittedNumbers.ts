import type { LedgerNumber } from "./ledgerEntry";

/** Numbers fitted to measurements by `npm run calibrate`, never per shape. */
export const FITTED_NUMBERS = {
  afterbodyInterference: {
    name: "weakening of the base suction by the section behind separation",
    symbol: "c",
    value: 1.37,
    unit: "1",
    kind: "fitted",
    restsOn: "Cd of sharp rectangles of length/height 1 to 3 and of rounded squares",
    usedIn: ["engine/constants/calibrated.ts"],
  },
  detachmentFriction: {
    name: "skin friction at which a turbulent layer counts as separated",
    symbol: "Cf",
    value: 0.00103,
    unit: "1",
    kind: "fitted",
    restsOn: "transcritical Cd of smooth and rough cylinders",
    usedIn: ["engine/constants/calibrated.ts"],
  },
  reattachmentSlope: {
    name: "slope of the wedge into which a separated layer spreads after transition",
    symbol: "slope",
    value: 0.69,
    unit: "1",
    kind: "fitted",
    restsOn: "Reynolds number of the smooth cylinder's drag crisis at low turbulence",
    usedIn: ["engine/constants/calibrated.ts"],
  },
  reattachmentStress: {
    name: "shear stress / (rho Ue^2) of the turbulent layer that leaves a bubble",
    symbol: "C_tau",
    value: 0.1,
    unit: "1",
    kind: "fitted",
    restsOn: "lowest Cd of the smooth cylinder",
    usedIn: ["engine/constants/calibrated.ts"],
  },
  roughTransition: {
    name: "Re_theta at which a wall of ks = theta turns the layer",
    symbol: "Re_theta",
    value: 232,
    unit: "1",
    kind: "fitted",
    restsOn: "critical Re of rough cylinders, Achenbach (1977), Int. J. Heat Mass Transfer 20, 359",
    usedIn: ["engine/constants/calibrated.ts"],
  },
  smoothWallLimit: {
    name: "Ue ks / nu below which a wall does not bring transition forward",
    symbol: "Re_k",
    value: 35,
    unit: "1",
    kind: "fitted",
    restsOn: "Cd of the smooth cylinder above Re 2e6; trust counts a wall as smooth up to 20, see smoothWallReynolds",
    usedIn: ["engine/constants/calibrated.ts"],
  },
} satisfies Record<string, LedgerNumber>;
