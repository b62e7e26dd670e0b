import { guessMeasuredMapping } from "../../shared/jobs/evidence/measuredColumns";
import { readMeasuredTable } from "../../shared/jobs/evidence/readMeasuredTable";
import { readRunTable } from "../../shared/jobs/tunnel/runTable";
import { readTapTable } from "../../shared/jobs/tunnel/tapTable";
import { importOutline } from "../../shared/outlines/importOutline";
import { readCsvTable } from "../../shared/tables/csvTable";
import { tableProblemText } from "../../shared/tables/dataTable";
import type { Outcome } from "./attackResult";
import { mutatedText } from "./mutateText";
import { refusalFaults } from "./refusals";
import { serveSeeds } from "./seededProcess";

const ring = Array.from({ length: 60 }, (_, i) => {
  const angle = (2 * Math.PI * i) / 60;
  return `${(40 * Math.cos(angle)).toFixed(3)},${(15 * Math.sin(angle)).toFixed(3)}`;
}).join("\n");

const polyline =
  "0,POLYLINE,70,1,0,VERTEX,10,-40,20,-15,42,0.2,0,VERTEX,10,40,20,-15,0,VERTEX,10,40,20,15,0,VERTEX,10,-40,20,15,0,SEQEND";
const chain =
  "0,LINE,10,-34,20,15,11,34,21,15,0,LINE,10,34,20,-15,11,-34,21,-15,0,ARC,10,34,20,0,40,15,50,270,51,90,0,ARC,10,-34,20,0,40,15,50,90,51,270";
const others =
  "0,CIRCLE,10,5,20,5,40,20,0,ELLIPSE,10,0,20,0,11,40,21,0,40,0.375,41,0,42,6.283,0,SPLINE,71,2,40,0,40,0,40,0,40,1,40,1,40,1,10,0,20,0,10,20,20,40,10,40,20,0";
const drawing = (entities: string) =>
  `0,SECTION,2,HEADER,9,$INSUNITS,70,4,0,ENDSEC,0,SECTION,2,ENTITIES,${entities},0,ENDSEC,0,EOF`.replaceAll(",", "\n");

const outlines = [
  ["a.csv", ring],
  ["a.csv", "x_mm,y_mm\n-40,10\n-40,-10\n-35,-15\n35,-15\n40,-10\n40,10\n35,15\n-35,15"],
  ["a.dxf", drawing(polyline)],
  ["a.dxf", drawing(chain)],
  ["a.dxf", drawing(others)],
  [
    "a.svg",
    '<svg width="80mm" viewBox="0 0 80 30"><g transform="rotate(3)"><rect width="80" height="30" rx="6" ry="3"/></g></svg>',
  ],
  [
    "a.svg",
    '<svg><path d="M0 0 C 10 -15 30 -15 40 0 Q 45 10 40 20 S 10 30 0 20 A 10 12 30 0 1 0 0 Z"/><circle r="5"/></svg>',
  ],
] as const;

const tables = [
  "speedMetresPerSecond,forceNewtons,incidenceDegrees,kind\nm/s,N,deg,\n0,0.1,0,zero\n3,1.0,0,model\n3,1.1,0,model\n4,1.9,0,model\n",
  "angleDegrees  pressurePascals  referencePressurePascals\n0 120 20\n45 30 20\n90 -60 20\n180 -20 20\n270 -60 20\n",
  'reynoldsNumber;dragCoefficient;"Strouhal number"\n5e4;1,2;0,2\n1e5;1,19;0,19\n3e5;0,7;\n',
];

serveSeeds((seed) => (seed % 2 === 0 ? outlineTry(seed) : tableTry(seed)));

function outlineTry(seed: number): Outcome {
  const [fileName, original] = outlines[(seed / 2) % outlines.length];
  const text = mutatedText([original], seed);
  const question = {
    text,
    fileName,
    format: null,
    unit: null,
    scale: 1,
    quarterTurns: 0,
    name: "try",
    cornerRadius: null,
  };
  const read = importOutline(question);
  if (!read.ok) return { kind: "outline refused", faults: refusalFaults([read.problem]) };
  const { length, height, area, deviation, solved } = read.value.solved;
  const isSound = [length, height, area, deviation, ...solved.flat()].every(Number.isFinite);
  return { kind: "outline read", faults: isSound ? [] : ["a number that is none"] };
}

function tableTry(seed: number): Outcome {
  const table = readCsvTable(mutatedText([tables[((seed - 1) / 2) % tables.length]], seed));
  if (!table.ok) return { kind: "table refused", faults: refusalFaults([table.problem]) };
  const runs = readRunTable(table.value, {}, null);
  const taps = readTapTable(table.value, {}, null, 100);
  const measured = readMeasuredTable(table.value, {
    mapping: guessMeasuredMapping(table.value.columns),
    decimalMark: null,
    reynoldsPerSpeed: 1e4,
    scale: { reynolds: 1, drag: 1 },
  });
  const problems = [...runs.problems, ...taps.problems, ...(measured.ok ? [] : measured.problems)];
  const numbers = [
    ...runs.readings.map(({ force }) => force),
    ...taps.taps.map(({ pressureCoefficient }) => pressureCoefficient),
    ...(measured.ok ? measured.points.map(({ dragCoefficient }) => dragCoefficient) : []),
  ];
  return {
    kind: "table read",
    faults: [
      ...refusalFaults(problems.map((one) => ({ code: "table", message: tableProblemText(one) }))).filter(
        (fault) => fault !== "refused without a word",
      ),
      ...(numbers.every(Number.isFinite) ? [] : ["a number that is none"]),
    ],
  };
}
