import type { CfdBrief } from "./cfdBrief";

/** The brief as one page of plain text. */
export function cfdBriefText(brief: CfdBrief): string {
  const rows: readonly (readonly [string, string])[] = [
    ["Fluid", brief.fluidName],
    ["Density", `${figure(brief.densityKilogramsPerCubicMetre)} kg/m3`],
    ["Kinematic viscosity", `${brief.kinematicViscositySquareMetresPerSecond.toExponential(4)} m2/s`],
    ["Stream speed U", `${figure(brief.speedMetresPerSecond)} m/s`],
    ["Reference width D", millimetres(brief.referenceWidthMetres)],
    ["Reynolds number U D / nu", brief.reynolds.toExponential(3)],
    ["Turbulence intensity", `${figure(brief.turbulencePercent)} %`],
    [
      "Sand-grain roughness",
      brief.sandGrainRoughnessMetres === 0 ? "smooth" : millimetres(brief.sandGrainRoughnessMetres),
    ],
    ["Domain upstream", `${figure(brief.upstreamMetres)} m`],
    ["Domain downstream", `${figure(brief.downstreamMetres)} m`],
    ["Domain to each side", `${figure(brief.eachSideMetres)} m (blockage ${figure(100 * brief.blockage)} %)`],
    ["Largest friction speed", `${figure(brief.frictionSpeedMetresPerSecond)} m/s (estimate)`],
    [`First cell for y+ ${figure(brief.wantedYPlus)}`, millimetres(brief.firstCellHeightMetres)],
    [
      "Expected separation",
      `${brief.separationAnglesDegrees.map((angle) => figure(angle)).join(" / ")} degrees from the front`,
    ],
    ["Expected Strouhal number", figure(brief.strouhal)],
    ["Expected shedding", `${figure(brief.sheddingHertz)} Hz`],
    ["Time step", `${brief.timeStepSeconds.toExponential(2)} s at most`],
    ["Start-up to discard", `${figure(brief.startUpSeconds)} s`],
    ["Time to average", `${figure(brief.averagingSeconds)} s at least`],
    ["Expected drag coefficient", dragText(brief)],
  ];
  const width = Math.max(...rows.map(([label]) => label.length)) + 2;
  return [
    brief.title,
    "Brief for a flow computation",
    "",
    ...rows.map(([label, value]) => `${label.padEnd(width)}${value}`),
    "",
    ...brief.cautions.map((caution) => `- ${caution}`),
    "",
  ].join("\n");
}

function dragText({ expectedDragCoefficient: { low, expected, high }, dragAreaName }: CfdBrief): string {
  return `${figure(expected)} (${figure(low)} to ${figure(high)}) on the ${dragAreaName}`;
}

function figure(value: number): string {
  return String(Number(value.toPrecision(4)));
}

function millimetres(metres: number): string {
  return `${figure(1000 * metres)} mm`;
}
