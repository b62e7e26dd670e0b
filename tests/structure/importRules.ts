import type { IConfiguration, IRegularForbiddenRuleType } from "dependency-cruiser";
import { viewNames } from "../../src/app/store/viewNames";

/**
 * The import rules of the project, for dependency-cruiser: floors from the lowest to the highest. A folder imports only
 * from its own floor and those below; folders of one floor are written side by side and do not import each other.
 */

/** shared, from the lowest floor. */
const floors = [
  ["result\\.ts"],
  ["numerics"],
  ["statistics"],
  ["engine"],
  ["document"],
  ["tables", "outlines"],
  ["jobs"],
  ["case"],
];

/** shared/engine, from the lowest floor. */
const engineFloors = [
  ["constants", "condition\\.ts", "solution\\.ts"],
  ["geometry", "fluid", "reference"],
  ["pattern", "roughness"],
  ["flow"],
  ["layer"],
  ["wake"],
  ["axial"],
  ["solve"],
  ["whole"],
  ["trust"],
  ["section"],
  ["index\\.ts"],
];

/** shared/jobs, from the lowest floor. */
const jobFloors = [
  ["puck", "trial"],
  ["tradeoff", "handoff", "tunnel", "durability", "cost"],
  ["evidence"],
  ["compare"],
  ["next"],
  ["choice"],
];

const pattern = (folder: string, rooms: readonly string[]) =>
  `^${folder}/(${rooms.map((room) => (room.endsWith(".ts") ? room : `${room}/`)).join("|")})`;

function upward(folder: string, stack: readonly (readonly string[])[]): IRegularForbiddenRuleType[] {
  return stack.flatMap((rooms, i) => {
    const higher = stack.slice(i + 1).flat();
    const beside: IRegularForbiddenRuleType[] = rooms
      .filter(() => rooms.length > 1)
      .map((room) => ({
        name: `${folder}/${room} beside`,
        severity: "error",
        from: { path: pattern(folder, [room]) },
        to: {
          path: pattern(
            folder,
            rooms.filter((other) => other !== room),
          ),
        },
      }));
    if (higher.length === 0) return beside;
    return [
      ...beside,
      {
        name: `${folder}/${rooms.join(",")} upward`,
        severity: "error",
        from: { path: pattern(folder, rooms) },
        to: { path: pattern(folder, higher) },
      },
    ];
  });
}

/** A job is entered by its public.ts alone, from other jobs and from the case. */
const pastPublicList = jobFloors.flat().map(
  (job): IRegularForbiddenRuleType => ({
    name: `past the public list of ${job}`,
    severity: "error",
    from: { path: `^shared/(jobs/(?!${job}/)|case/)` },
    to: { path: `^shared/jobs/${job}/(?!public\\.ts$)` },
  }),
);

/** To be given to `cruise` as its rule set; `options` as its options. */
export default {
  forbidden: [
    { name: "circle of files", severity: "error", from: {}, to: { circular: true } },
    { name: "circle of folders", severity: "error", scope: "folder", from: {}, to: { circular: true } },
    {
      name: "shared upward",
      severity: "error",
      from: { path: "^shared/" },
      to: { path: "^(workers|src|tests|cases)/" },
    },
    { name: "workers upward", severity: "error", from: { path: "^workers/" }, to: { path: "^(src|tests)/" } },
    {
      // Of the page's components only a view's element and the page's shell know stores, all others take properties and
      // send events: not even through what they import, types included, do they reach the class that stores are made of.
      name: "component knows a store",
      severity: "error",
      from: {
        path: "^src/app/components/",
        pathNot: `^src/app/components/(app|(${viewNames.join("|")})-view)/`,
      },
      to: { path: "^src/app/store/notifier\\.ts$", reachable: true },
    },
    ...upward("shared", floors),
    ...upward("shared/engine", engineFloors),
    ...upward("shared/jobs", jobFloors),
    {
      name: "the public list is for others",
      severity: "error",
      from: { path: "^(shared|workers|src)/" },
      to: { path: "^shared/engine/index\\.ts$" },
    },
    ...pastPublicList,
    {
      name: "past the engine's front",
      comment: "sections are prepared, solved and judged by shared/engine/section alone",
      severity: "error",
      from: { path: "^(shared/(jobs|case)|workers|src/(app|cli))/" },
      to: {
        path: "^shared/engine/(solve/(prepareSection|solveCondition|dragCurve)|trust/(judgeOutcome|dragBand|nearbyStates))\\.ts$",
      },
    },
    { name: "not found", severity: "error", from: {}, to: { couldNotResolve: true } },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: { exportsFields: ["exports"], conditionNames: ["import", "types", "default"] },
  },
} satisfies IConfiguration;
