import { readFileSync, writeFileSync } from "node:fs";
import { resolve } from "node:path";
import { readCaseDocument } from "../../shared/case/readCase";
import { predictPressure } from "../../shared/jobs/tunnel/predictedPressure";
import type { TunnelBlockDocument } from "../../shared/jobs/tunnel/tunnelBlockDocument";
import type { TunnelCase } from "../../shared/jobs/tunnel/tunnelCase";
import { blockageOf } from "../../shared/jobs/tunnel/tunnelFacility";
import { runTunnel } from "../../shared/jobs/tunnel/tunnelSteps";
import { type RandomDraws, randomDraws } from "../../shared/statistics/randomDraws";
import { csvOfTable } from "../../shared/tables/csvTable";
import type { DataTable } from "../../shared/tables/dataTable";
import { type InventedTest, inventRunTable } from "./inventedTest";
import {
  inventedPuckTest,
  inventedSectionTest,
  inventedTaps,
  inventedWake,
  inventedWakeWidth,
  tunnelDemoSeed,
} from "./tunnelDemo";

/**
 * Writes the invented data of the tunnel demo cases, with a fixed seed: the plan of each case carried out on a body whose
 * drag is known, with one draw of every error that the case states. Run it with `npm run demo-data`.
 */

const folder = resolve(import.meta.dirname, "../../cases");
const draws = randomDraws(tunnelDemoSeed);

writeTest("harbour-tunnel", inventedPuckTest);
const section = writeTest("harbour-tunnel-section", inventedSectionTest);
writeTable("harbour-tunnel-section-wake", wakeTable(section, draws), [
  `Truth: drag coefficient ${inventedWake.dragCoefficient} on the width; Gaussian deficit, no pressure left in the wake.`,
]);
writeTable("harbour-tunnel-section-taps", tapTable(section, draws), [
  `Truth: the engine's own pressures at Re ${inventedTaps.reynolds}, the base lower by ${-inventedTaps.baseOffset}, with noise of ${inventedTaps.noise}.`,
]);

function writeTest(name: string, test: InventedTest): TunnelCase {
  const document = JSON.parse(readFileSync(resolve(folder, `${name}.json`), "utf8")) as { tunnel: TunnelBlockDocument };
  const { runs, wakeSurvey, pressureTaps, ...bare } = document.tunnel;
  const reading = readCaseDocument({ ...document, tunnel: bare }, name);
  if (!reading.ok || reading.value.tunnel === null) throw new Error(reading.ok ? "no tunnel" : reading.problem.message);
  const theCase = reading.value.tunnel;
  const { plan } = runTunnel(theCase);
  if (plan === null) throw new Error(`${name} has no plan.`);
  const stated = document.tunnel.uncertainty?.stated ?? {};
  const blockage = blockageOf(theCase.model, theCase.facility);
  const { below, above, rising, falling } = test.drag;
  writeTable(`${name}-runs`, inventRunTable(test, theCase, plan, stated, blockage, draws), [
    `Truth: drag coefficient ${below} falling to ${above} at Re ${rising} (rising speed) or ${falling} (falling speed).`,
  ]);
  return theCase;
}

function writeTable(name: string, table: DataTable, remarks: readonly string[]): void {
  const lines = [
    "Invented data of the Harbour League, which does not exist; nothing here was measured.",
    `Made by src/demo/makeTunnelData.ts, seed ${tunnelDemoSeed}.`,
    ...remarks,
  ];
  const head = lines.map((line) => `# ${line}\r\n`).join("");
  writeFileSync(resolve(folder, `${name}.csv`), `${head}${csvOfTable(table)}`);
}

function wakeTable({ reference }: TunnelCase, random: RandomDraws): DataTable {
  const { depth, halfTraverse, stations, noisePascals, dynamicPressure } = inventedWake;
  const width = inventedWakeWidth(reference.length);
  const rows = Array.from({ length: stations }, (_, i) => {
    const y = halfTraverse * ((2 * i) / (stations - 1) - 1);
    const speed = 1 - depth * Math.exp(-((y / width) ** 2));
    const total = dynamicPressure * speed * speed + noisePascals * random.normal();
    const fixed = noisePascals * random.normal();
    return [Number(y.toFixed(4)), Number(total.toFixed(2)), Number(fixed.toFixed(2)), "invented"];
  });
  return { columns: ["positionMetres", "totalPressurePascals", "staticPressurePascals", "remark"], rows };
}

function tapTable({ model, facility }: TunnelCase, random: RandomDraws): DataTable {
  const predicted = predictPressure(model, inventedTaps.reynolds, facility.turbulenceIntensity, "rising");
  if (!predicted.ok || model.shape.kind !== "section") throw new Error("the section has no predicted pressures.");
  const { perimeter } = model.shape.contour;
  const base = predicted.value(perimeter / 2);
  const count = 360 / inventedTaps.everyDegrees;
  const rows = Array.from({ length: count }, (_, i) => {
    const degrees = i * inventedTaps.everyDegrees;
    // The walk from the nose takes the lower side first; taps are counted over the upper one.
    const value = predicted.value(perimeter * (1 - degrees / 360));
    const offset = Math.abs(value - base) < 1e-9 ? inventedTaps.baseOffset : 0;
    const measured = value + offset + inventedTaps.noise * random.normal();
    return [
      `T${String(i + 1).padStart(2, "0")}`,
      degrees <= 180 ? degrees : degrees - 360,
      Number(measured.toFixed(3)),
      "invented",
    ];
  });
  return { columns: ["tap", "angleDegrees", "pressureCoefficient", "remark"], rows };
}
