/** A small good case, and changes that each spoil it. */
export type PlainObject = Record<string, unknown>;

export function goodCase(): PlainObject {
  return {
    wakewrightCase: 1,
    title: "Two sections in a pool",
    sections: [
      { family: "circle", diameterMetres: 0.08 },
      { family: "roundedRectangle", lengthMetres: 0.08, heightMetres: 0.03, edgeRadiusMetres: 0.006 },
    ],
    fluid: { kind: "freshWater", temperatureCelsius: 27 },
    speedsMetresPerSecond: [1, 2],
    sandGrainRoughnessRatios: [0.0001],
    turbulencePercents: [1],
  };
}

/** The good case with keys replaced; undefined removes one. */
export function caseWith(changes: PlainObject): PlainObject {
  const changed = { ...goodCase(), ...changes };
  return Object.fromEntries(Object.entries(changed).filter(([, value]) => value !== undefined));
}

const circle = { family: "circle", diameterMetres: 0.08 };
const rectangle = { family: "roundedRectangle", lengthMetres: 0.08, heightMetres: 0.03, edgeRadiusMetres: 0.006 };
const trip = { side: "upper", arcMetres: 0.02, heightRatio: 0.002 };

/** Documents that break the schema: what is wrong, the document, the first problem's field and words of its message. */
export const schemaBreakers: readonly (readonly [string, unknown, string, RegExp])[] = [
  ["a list instead of a case", [], "", /the document is a list of 0; it must be a case/],
  ["null instead of a case", null, "", /the document is null/],
  ["no version", caseWith({ wakewrightCase: undefined }), "wakewrightCase", /is missing; it must be 1/],
  ["a later version", caseWith({ wakewrightCase: 2 }), "wakewrightCase", /is 2; it must be 1/],
  ["no title", caseWith({ title: undefined }), "title", /is missing; it must be text/],
  ["a title of the wrong type", caseWith({ title: 5 }), "title", /is 5; it must be text/],
  ["an empty title", caseWith({ title: "" }), "title", /1 to 200 characters/],
  ["no sections", caseWith({ sections: undefined }), "sections", /is missing; it must be a list of 1 to 200/],
  ["an empty list of sections", caseWith({ sections: [] }), "sections", /a list of 0; it must be a list of 1 to 200/],
  [
    "a section that is a number",
    caseWith({ sections: [3] }),
    "sections[0]",
    /is 3; it must be an object with a family/,
  ],
  [
    "an unknown family",
    caseWith({ sections: [{ family: "box" }] }),
    "sections[0].family",
    /"box"; it must be one of circle/,
  ],
  ["no family", caseWith({ sections: [{ diameterMetres: 1 }] }), "sections[0].family", /is missing; it must be one of/],
  ["an unknown key of the case", caseWith({ speed: 1 }), "speed", /not a known key; the keys of a case are/],
  [
    "an unknown key of a section",
    caseWith({ sections: [{ ...circle, diameterMillimetres: 80 }] }),
    "sections[0].diameterMillimetres",
    /not a known key; the keys of a circle are family, name, diameterMetres/,
  ],
  [
    "a missing length",
    caseWith({ sections: [{ family: "circle" }] }),
    "sections[0].diameterMetres",
    /is missing; it must be a number above 0/,
  ],
  [
    "a length of 0",
    caseWith({ sections: [{ ...circle, diameterMetres: 0 }] }),
    "sections[0].diameterMetres",
    /is 0; it must be a number above 0 and at most 100 m/,
  ],
  [
    "a negative length",
    caseWith({ sections: [circle, { ...rectangle, heightMetres: -0.03 }] }),
    "sections[1].heightMetres",
    /is -0.03; it must be a number above 0/,
  ],
  [
    "a length as text",
    caseWith({ sections: [{ ...circle, diameterMetres: "80 mm" }] }),
    "sections[0].diameterMetres",
    /is "80 mm"; it must be a number/,
  ],
  [
    "null for a length",
    caseWith({ sections: [{ ...circle, diameterMetres: null }] }),
    "sections[0].diameterMetres",
    /is null; it must be a number/,
  ],
  [
    "a bad number in a sweep",
    caseWith({ sections: [{ ...rectangle, edgeRadiusMetres: [0.001, -0.002] }] }),
    "sections[0].edgeRadiusMetres[1]",
    /is -0.002; it must be a number above 0/,
  ],
  [
    "a range without its end",
    caseWith({ sections: [{ ...rectangle, edgeRadiusMetres: { from: 0.001, count: 3 } }] }),
    "sections[0].edgeRadiusMetres.to",
    /is missing/,
  ],
  [
    "a range of one value",
    caseWith({ speedsMetresPerSecond: { from: 1, to: 2, count: 1 } }),
    "speedsMetresPerSecond.count",
    /is 1; it must be a whole number from 2/,
  ],
  [
    "a range of half a value more",
    caseWith({ speedsMetresPerSecond: { from: 1, to: 2, count: 2.5 } }),
    "speedsMetresPerSecond.count",
    /whole number/,
  ],
  [
    "a log range from 0",
    caseWith({ turbulencePercents: { from: 0, to: 2, count: 3, spacing: "log" } }),
    "turbulencePercents.from",
    /above 0 in a log range/,
  ],
  [
    "an empty list",
    caseWith({ turbulencePercents: [] }),
    "turbulencePercents",
    /a list of 0; it must be a list of 1 to/,
  ],
  [
    "a number for a list",
    caseWith({ turbulencePercents: 1 }),
    "turbulencePercents",
    /is 1; it must be a list of numbers/,
  ],
  ["turbulence above 20 %", caseWith({ turbulencePercents: [21] }), "turbulencePercents[0]", /from 0 to 20 %/],
  ["ks/D above 0.05", caseWith({ sandGrainRoughnessRatios: [0.06] }), "sandGrainRoughnessRatios[0]", /from 0 to 0.05/],
  ["negative ks/D", caseWith({ sandGrainRoughnessRatios: [-1e-5] }), "sandGrainRoughnessRatios[0]", /from 0 to 0.05/],
  ["two kinds of roughness", caseWith({ sandGrainRoughnessMetres: [0] }), "sandGrainRoughnessMetres", /exactly one of/],
  ["no roughness", caseWith({ sandGrainRoughnessRatios: undefined }), "sandGrainRoughnessRatios", /exactly one of/],
  ["speeds and Reynolds numbers", caseWith({ reynoldsNumbers: [1e5] }), "speedsMetresPerSecond", /exactly one of/],
  [
    "neither speeds nor Reynolds numbers",
    caseWith({ speedsMetresPerSecond: undefined }),
    "reynoldsNumbers",
    /exactly one of/,
  ],
  ["speeds without a fluid", caseWith({ fluid: undefined }), "fluid", /needs a fluid/],
  [
    "a Reynolds number below the range",
    caseWith({ speedsMetresPerSecond: undefined, reynoldsNumbers: [999] }),
    "reynoldsNumbers[0]",
    /is 999; it must be a number from 1000 to 100000000/,
  ],
  [
    "a Reynolds number above the range",
    caseWith({ speedsMetresPerSecond: undefined, reynoldsNumbers: [1e5, 2e8] }),
    "reynoldsNumbers[1]",
    /is 200000000; it must be a number from 1000 to 100000000/,
  ],
  ["an unknown fluid", caseWith({ fluid: { kind: "oil" } }), "fluid.kind", /"oil"; it must be one of freshWater/],
  [
    "boiling water",
    caseWith({ fluid: { kind: "freshWater", temperatureCelsius: 100 } }),
    "fluid.temperatureCelsius",
    /is 100; it must be a number from 0 to 40 °C/,
  ],
  [
    "3 panels",
    caseWith({ panelCount: 3 }),
    "panelCount",
    /is 3; it must be "auto" or an even whole number from 16 to 2000/,
  ],
  ["a million panels", caseWith({ panelCount: 1e6 }), "panelCount", /is 1000000; it must be "auto" or an even/],
  ["an odd number of panels", caseWith({ panelCount: 101 }), "panelCount", /is 101; it must be "auto" or an even/],
  ["panels in words", caseWith({ panelCount: "many" }), "panelCount", /is "many"; it must be "auto" or/],
  ["an unknown branch", caseWith({ branches: "all" }), "branches", /one of rising, falling, both, whereDifferent/],
  ["a trip on no side", caseWith({ trips: [{ ...trip, side: "top" }] }), "trips[0].side", /"upper" or "lower"/],
  [
    "a trip with two positions",
    caseWith({ trips: [{ ...trip, arcRatio: 0.2 }] }),
    "trips[0].arcRatio",
    /exactly one of/,
  ],
  [
    "a trip without height",
    caseWith({ trips: [{ side: "upper", arcRatio: 0.2 }] }),
    "trips[0].heightMetres",
    /exactly one of heightMetres and heightRatio/,
  ],
  [
    "too few points",
    caseWith({ sections: [{ family: "freeContour", pointsMetres: [[0, 0]] }] }),
    "sections[0].pointsMetres",
    /a list of 1; it must be a list of 8 to 2000 points/,
  ],
  [
    "a point of one number",
    caseWith({ sections: [{ family: "freeContour", pointsMetres: Array(9).fill([0]) }] }),
    "sections[0].pointsMetres[0]",
    /a point \[x, y\]|is missing/,
  ],
];
