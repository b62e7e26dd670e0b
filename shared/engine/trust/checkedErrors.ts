import type { ErrorData } from "./errorData";

/**
 * What the engine's errors against published drag coefficients are known from. The errors are written by
 * `npm run accuracy`, the parameters by `npm run trust`; a test fails when the errors are out of date.
 */
export const CHECKED_ERRORS: ErrorData = {
  fittedOn: "2026-11-30",
  parameters: {
    levelDeviation: { subcritical: 0.1359, other: 0.2367 },
    correlationLengths: {
      logReynolds: 1.533,
      logRoughness: 0.9227,
      turbulence: 1.51,
      logLengthToHeight: 1.047,
      cornerRadiusToHeight: 0.19,
    },
    regimeCorrelation: 0.3106,
    shapeCorrelation: 0.3296,
    sourceDeviation: { subcritical: 0.05655, supercritical: 0.2459, transcritical: 0.1353 },
    singleDeviation: 0.03003,
    crisisShift: {
      "circle in a quiet stream": { mean: -0.05665, deviation: 0.1456 },
      "circle in a turbulent stream": { mean: 0.09361, deviation: 0.4368 },
      "other section": { mean: 0.06078, deviation: 0.2438 },
    },
  },
  measured: `
subcritical circle 11.5129 -5 2.0794 0 0.5 -0.1881 0.0912 Achenbach 1968
transcritical circle 12.031 -2.9586 2.0794 0 0.5 -0.3042 0.0729 Achenbach 1971
transcritical circle 14.4487 -2.9586 2.0794 0 0.5 -0.1272 0.0729 Achenbach 1971
transcritical circle 11.3402 -2.3468 2.0794 0 0.5 -0.3331 0.0729 Achenbach 1971
transcritical circle 14.4487 -2.3468 2.0794 0 0.5 -0.1427 0.0729 Achenbach 1971
transcritical circle 10.9948 -2.0458 2.0794 0 0.5 -0.3357 0.0729 Achenbach 1971
transcritical circle 14.4487 -2.0458 2.0794 0 0.5 -0.0956 0.0729 Achenbach 1971
supercritical circle 12.979 -5 1.9459 0 0.5 0.4332 0.0257 Achenbach and Heinecke 1981
supercritical circle 13.2359 -5 1.9459 0 0.5 0.4513 0.0342 Achenbach and Heinecke 1981
transcritical circle 13.9609 -5 1.9459 0 0.5 0.1456 0.0203 Achenbach and Heinecke 1981
transcritical circle 14.3188 -5 1.9459 0 0.5 0.2128 0.0193 Achenbach and Heinecke 1981
transcritical circle 14.5859 -5 1.9459 0 0.5 0.1118 0.0184 Achenbach and Heinecke 1981
transcritical circle 14.8884 -5 1.9459 0 0.5 0.0534 0.018 Achenbach and Heinecke 1981
transcritical circle 15.2427 -5 1.9459 0 0.5 -0.0375 0.0271 Achenbach and Heinecke 1981
supercritical circle 12.7218 -5 1.0986 0 0.5 0.0296 0.0793 Bearman 1969
subcritical rectangle 10.8198 -5 0.6931 -0.478 0.01 0.0643 0.0426 Bearman and Trueman 1972
subcritical rectangle 10.8198 -5 0.6931 0 0.01 0.0353 0.0426 Bearman and Trueman 1972
subcritical rectangle 11.5129 -5 0.6931 -0.6931 0.01 -0.0278 0.0475 NACA TN 3038
subcritical rectangle 11.5129 -5 0.6931 -0.6931 0.021 -0.0543 0.0729 NACA TN 3038
subcritical rectangle 11.5129 -5 0.6931 -0.6931 0.083 0.0858 0.0584 NACA TN 3038
subcritical rectangle 11.5129 -5 0.6931 -0.6931 0.25 0.0928 0.0729 NACA TN 3038
subcritical rectangle 11.5129 -5 0.6931 0 0.01 0.082 0.032 NACA TN 3038
subcritical rectangle 11.5129 -5 0.6931 0 0.021 0.0415 0.0584 NACA TN 3038
subcritical rectangle 11.5129 -5 0.6931 0 0.167 -0.0636 0.0494 NACA TN 3038
subcritical rectangle 11.5129 -5 0.6931 0 0.333 -0.1003 0.0494 NACA TN 3038
subcritical rectangle 11.5129 -5 0.6931 0.6931 0.01 0.0288 0.0475 NACA TN 3038
subcritical rectangle 11.5129 -5 0.6931 0.6931 0.042 0.0396 0.0729 NACA TN 3038
subcritical rectangle 11.5129 -5 0.6931 0.6931 0.167 -0.3493 0.0584 NACA TN 3038
subcritical circle 11.8494 -5 1.9459 0 0.5 0.0291 0.0295 Cantwell and Coles 1983
supercritical circle 12.4915 -5 1.6094 0 0.5 0.2004 0.1105 Cheung and Melbourne 1983
supercritical circle 11.1563 -5 3.8286 0 0.5 0.4076 0.1081 Cheung and Melbourne 1983
transcritical circle 12.434 -5 4.5109 0 0.5 -0.2521 0.1057 Cheung and Melbourne 1983
subcritical circle 11.5518 -5 0.6931 0 0.5 -0.0474 0.033 NACA TN 3038
subcritical other 11.5129 -5 0.6931 0 0.2929 -0.1647 0.0912 NACA TN 3038
subcritical other 11.5129 -5 0.6931 0 0.0619 -0.0976 0.0912 NACA TN 3038
subcritical other 13.4588 -5 0.6931 0 0.0619 -0.0946 0.0912 NACA TN 3038
subcritical ellipse 11.5129 -5 0.6931 0.6931 0.25 0.0862 0.0645 NACA TN 3038
subcritical ellipse 11.5129 -5 0.6931 -0.6931 0.125 0.0611 0.0912 NACA TN 3038
subcritical other 11.5129 -5 0.6931 -0.1184 0.0833 0.0227 0.0645 NACA TN 3038
subcritical other 11.5129 -5 0.6931 -0.1374 0.0208 -0.0963 0.0645 NACA TN 3038
subcritical other 13.4588 -5 0.6931 -0.1374 0.0208 -0.0937 0.0645 NACA TN 3038
subcritical other 11.5129 -5 0.6931 0 0.0071 -0.2651 0.0608 NACA TN 3038
subcritical other 11.5129 -5 0.6931 -0.1408 0.01 -0.1858 0.043 NACA TN 3038
critical other 11.5129 -5 0.6931 0 0.01 0.5009 0.0608 NACA TN 3038
subcritical circle 9.4758 -5 0.6931 0 0.5 -0.1685 0.0295 NACA TN 3038
subcritical circle 10.2776 -5 0.6931 0 0.5 -0.0865 0.0158 NACA TN 3038
subcritical circle 10.6271 -5 0.6931 0 0.5 -0.0899 0.0138 NACA TN 3038
subcritical circle 10.9395 -5 0.6931 0 0.5 -0.0684 0.0191 NACA TN 3038
subcritical circle 11.2637 -5 0.6931 0 0.5 -0.0646 0.019 NACA TN 3038
supercritical circle 13.2183 -5 0.6931 0 0.5 -0.0373 0.0202 NACA TN 3038
supercritical circle 13.5109 -5 0.6931 0 0.5 -0.0523 0.046 NACA TN 3038
transcritical circle 14.3577 -5 0.6931 0 0.5 -0.0949 0.0235 NACA TN 3038
supercritical ellipse 12.434 -5 0.6931 0.6931 0.25 1.0518 0.152 NACA TN 3038
subcritical rectangle 14.5087 -5 0.6931 0 0.021 0.0418 0.0912 NACA TN 3038
supercritical rectangle 13.5277 -5 0.6931 0 0.167 0.2806 0.152 NACA TN 3038
supercritical rectangle 13.0672 -5 0.6931 0 0.333 0.0787 0.152 NACA TN 3038
subcritical circle 9.2301 -5 0.6931 0 0.5 -0.013 0.0486 DNV-RP-C205
subcritical circle 10.1023 -5 0.6931 0 0.5 -0.0041 0.0486 DNV-RP-C205
subcritical circle 11.017 -5 0.6931 0 0.5 0.0044 0.0486 DNV-RP-C205
subcritical circle 11.6784 -5 0.6931 0 0.5 0.0073 0.0486 DNV-RP-C205
subcritical circle 12.3143 -5 0.6931 0 0.5 0.0056 0.0344 DNV-RP-C205
supercritical circle 13.2193 -5 0.6931 0 0.5 0.3247 0.0954 DNV-RP-C205
supercritical circle 13.5198 -5 0.6931 0 0.5 0.0208 0.0486 DNV-RP-C205
transcritical circle 14.4198 -5 0.6931 0 0.5 0.1745 0.0486 DNV-RP-C205
transcritical circle 14.6309 -5 0.6931 0 0.5 0.0454 0.0486 DNV-RP-C205
transcritical circle 14.8802 -5 0.6931 0 0.5 0.0596 0.0486 DNV-RP-C205
transcritical circle 15.203 -5 0.6931 0 0.5 0.0687 0.0527 DNV-RP-C205
transcritical circle 15.4129 -5 0.6931 0 0.5 0.0988 0.0486 DNV-RP-C205
transcritical circle 15.3122 -4 0.6931 0 0.5 -0.1147 0.0935 DNV-RP-C205
transcritical circle 15.3698 -3.5229 0.6931 0 0.5 -0.0846 0.0816 DNV-RP-C205
transcritical circle 15.3122 -3 0.6931 0 0.5 -0.065 0.0715 DNV-RP-C205
transcritical circle 15.3698 -2.5229 0.6931 0 0.5 -0.0466 0.0643 DNV-RP-C205
transcritical circle 15.3122 -2.3468 0.6931 0 0.5 -0.0358 0.062 DNV-RP-C205
transcritical circle 15.3122 -2 0.6931 0 0.5 -0.0055 0.0579 DNV-RP-C205
supercritical circle 13.1224 -5 0.6931 0 0.5 0.4101 0.152 EN 1991-1-4
transcritical circle 14.9141 -5 0.6931 0 0.5 -0.0012 0.1022 EN 1991-1-4
transcritical circle 16.1181 -5 0.6931 0 0.5 0.0844 0.0886 EN 1991-1-4
transcritical circle 13.8155 -4 0.6931 0 0.5 -0.0341 0.0921 EN 1991-1-4
transcritical circle 14.9141 -4 0.6931 0 0.5 0.0337 0.0814 EN 1991-1-4
transcritical circle 16.1181 -4 0.6931 0 0.5 0.0972 0.0747 EN 1991-1-4
transcritical circle 12.6115 -3 0.6931 0 0.5 -0.1416 0.0816 EN 1991-1-4
transcritical circle 13.1224 -3 0.6931 0 0.5 -0.1241 0.0769 EN 1991-1-4
transcritical circle 13.8155 -3 0.6931 0 0.5 -0.0829 0.0724 EN 1991-1-4
transcritical circle 14.9141 -3 0.6931 0 0.5 -0.0116 0.0677 EN 1991-1-4
transcritical circle 16.1181 -3 0.6931 0 0.5 0.0417 0.0645 EN 1991-1-4
transcritical circle 12.6115 -2 0.6931 0 0.5 -0.1008 0.0625 EN 1991-1-4
transcritical circle 13.1224 -2 0.6931 0 0.5 -0.0732 0.0611 EN 1991-1-4
transcritical circle 13.8155 -2 0.6931 0 0.5 -0.0426 0.0596 EN 1991-1-4
transcritical circle 14.9141 -2 0.6931 0 0.5 -0.0071 0.0579 EN 1991-1-4
transcritical circle 16.1181 -2 0.6931 0 0.5 0.0164 0.0568 EN 1991-1-4
subcritical rectangle 11.5129 -5 0.6931 -1.6094 0.01 -0.0694 0.0608 EN 1991-1-4
subcritical rectangle 11.5129 -5 0.6931 -0.5108 0.01 -0.1472 0.0608 EN 1991-1-4
subcritical rectangle 11.5129 -5 0.6931 -0.3567 0.01 -0.084 0.0608 EN 1991-1-4
subcritical rectangle 11.5129 -5 0.6931 0 0.01 0.0355 0.0608 EN 1991-1-4
subcritical rectangle 11.5129 -5 0.6931 0.6931 0.01 0.0596 0.0608 EN 1991-1-4
supercritical rectangle 11.5129 -5 0.6931 1.6094 0.01 0.0527 0.0608 EN 1991-1-4
supercritical rectangle 11.5129 -5 0.6931 2.3026 0.01 0.0449 0.0608 EN 1991-1-4
subcritical rectangle 11.5129 -5 0.6931 0 0.05 0.0667 0.0912 EN 1991-1-4
subcritical rectangle 11.5129 -5 0.6931 0 0.1 0.0641 0.0912 EN 1991-1-4
subcritical rectangle 11.5129 -5 0.6931 0 0.2 -0.191 0.0912 EN 1991-1-4
subcritical rectangle 11.5129 -5 0.6931 -2.3026 0.01 0.0833 0.0304 Fage and Johansen 1927
subcritical rectangle 11.5129 -5 0.6931 -2.3026 0.01 0.1157 0.0608 Jancauskas 1983
subcritical rectangle 11.5129 -5 0.6931 -0.4308 0.01 0.1077 0.0608 Jancauskas 1983
subcritical rectangle 11.5129 -5 0.6931 0.6931 0.01 0.0288 0.0608 Jancauskas 1983
subcritical rectangle 11.5129 -5 0.6931 1.3863 0.01 0.1542 0.0608 Jancauskas 1983
subcritical rectangle 11.5129 -5 0.6931 -2.3026 0.01 -0.0309 0.0608 NACA TN 3038
subcritical rectangle 11.5129 -5 0.6931 -0.4308 0.01 0.0738 0.0608 NACA TN 3038
subcritical rectangle 11.5129 -5 0.6931 1.0986 0.01 -0.0132 0.0608 NACA TN 3038
subcritical rectangle 11.5129 -5 0.6931 0 0.02 0.0372 0.0608 NACA TN 3038
subcritical rectangle 11.5129 -5 0.6931 0 0.17 -0.0999 0.0608 NACA TN 3038
subcritical rectangle 11.5129 -5 0.6931 0 0.33 -0.1618 0.0608 NACA TN 3038
subcritical rectangle 10.8198 -5 0.6931 -2.3026 0.01 0.0203 0.0426 Nakaguchi et al. 1968
subcritical rectangle 10.8198 -5 0.6931 -0.4055 0.01 -0.0269 0.0426 Nakaguchi et al. 1968
subcritical rectangle 10.8198 -5 0.6931 0 0.01 -0.0135 0.0426 Nakaguchi et al. 1968
transcritical circle 14.4105 -5 0.6931 0 0.5 -0.0541 0.0425 Roshko 1961
transcritical circle 14.6108 -5 0.6931 0 0.5 -0.0657 0.0351 Roshko 1961
transcritical circle 15.1127 -5 0.6931 0 0.5 0.1434 0.0184 Roshko 1961
transcritical circle 15.4473 -5 0.6931 0 0.5 0.1418 0.0182 Roshko 1961
transcritical circle 15.8444 -5 0.6931 0 0.5 0.1093 0.0185 Roshko 1961
subcritical circle 10.6653 -5 0.6931 0 0.5 -0.1065 0.0109 Schewe 1983
subcritical circle 11.1036 -5 0.6931 0 0.5 -0.0701 0.0105 Schewe 1983
subcritical circle 11.43 -5 0.6931 0 0.5 -0.0778 0.009 Schewe 1983
subcritical circle 11.7817 -5 0.6931 0 0.5 -0.0895 0.0058 Schewe 1983
subcritical circle 12.2235 -5 0.6931 0 0.5 -0.156 0.0077 Schewe 1983
supercritical circle 13.171 -5 0.6931 0 0.5 -0.2391 0.0553 Schewe 1983
supercritical circle 13.5449 -5 0.6931 0 0.5 -0.315 0.0389 Schewe 1983
transcritical circle 14.2936 -5 0.6931 0 0.5 -0.356 0.0262 Schewe 1983
transcritical circle 14.5399 -5 0.6931 0 0.5 -0.4064 0.0229 Schewe 1983
transcritical circle 14.999 -5 0.6931 0 0.5 -0.2957 0.0183 Schewe 1983
transcritical circle 15.378 -5 0.6931 0 0.5 -0.1942 0.0161 Schewe 1983
transcritical circle 15.7429 -5 0.6931 0 0.5 -0.2155 0.0163 Schewe 1983
subcritical ellipse 9.8782 -5 0.6931 0.6931 0.25 -0.0152 0.0912 Elliptic cylinder with wires 2020
subcritical ellipse 10.3735 -5 0.6931 0.6931 0.25 -0.0057 0.0912 Elliptic cylinder with wires 2020
subcritical ellipse 10.8198 -5 0.6931 0.6931 0.25 0.0011 0.0912 White, tables 7.2 and 7.3
transcritical ellipse 13.8155 -5 0.6931 0.6931 0.25 0.1635 0.0912 White, tables 7.2 and 7.3
critical ellipse 10.8198 -5 0.6931 1.3863 0.125 0.2279 0.0912 White, tables 7.2 and 7.3
transcritical ellipse 13.8155 -5 0.6931 1.3863 0.125 0.5572 0.0912 White, tables 7.2 and 7.3
subcritical rectangle 11.5129 -5 0.6931 -2.3026 0.01 -0.0309 0.0608 White, tables 7.2 and 7.3
subcritical rectangle 11.5129 -5 0.6931 -0.9163 0.01 0.0058 0.0608 White, tables 7.2 and 7.3
subcritical rectangle 11.5129 -5 0.6931 -0.3567 0.01 0.0338 0.0608 White, tables 7.2 and 7.3
subcritical rectangle 11.5129 -5 0.6931 0.1823 0.01 0.1189 0.0608 White, tables 7.2 and 7.3
subcritical rectangle 11.5129 -5 0.6931 0.6931 0.01 0.1466 0.0608 White, tables 7.2 and 7.3
subcritical rectangle 11.5129 -5 0.6931 0.9163 0.01 -0.0172 0.0608 White, tables 7.2 and 7.3
subcritical rectangle 11.5129 -5 0.6931 1.0986 0.01 -0.0132 0.0608 White, tables 7.2 and 7.3
subcritical other 11.5129 -5 0.6931 -0.6931 0.01 -0.1473 0.0608 White, tables 7.2 and 7.3
subcritical other 11.5129 -5 0.6931 0 0.01 -0.0752 0.0608 White, tables 7.2 and 7.3
supercritical other 11.5129 -5 0.6931 0.6931 0.01 0.0689 0.0608 White, tables 7.2 and 7.3
supercritical other 11.5129 -5 0.6931 1.3863 0.01 0.0111 0.0608 White, tables 7.2 and 7.3
supercritical other 11.5129 -5 0.6931 1.7918 0.01 -0.0621 0.0608 White, tables 7.2 and 7.3
subcritical circle 9.6158 -5 0.6931 0 0.5 -0.0665 0.0304 Wieselsberger
subcritical circle 10.3189 -5 0.6931 0 0.5 -0.043 0.0304 Wieselsberger
subcritical circle 11.0898 -5 0.6931 0 0.5 -0.0297 0.0304 Wieselsberger
subcritical circle 11.5806 -5 0.6931 0 0.5 -0.0275 0.0304 Wieselsberger
subcritical circle 12.0337 -5 0.6931 0 0.5 -0.0217 0.0481 Wieselsberger
subcritical circle 12.3014 -5 0.6931 0 0.5 -0.1239 0.0912 Wieselsberger
supercritical circle 13.2055 -5 0.6931 0 0.5 0.1525 0.0348 Wieselsberger
supercritical circle 13.5156 -5 0.6931 0 0.5 0.1598 0.0351 Wieselsberger
`,
};
