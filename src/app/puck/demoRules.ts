/** Rules files that come with the page, loaded when they are asked for. */
const loaders = import.meta.glob<string>("../../../cases/*.rules.json", { query: "?raw", import: "default" });

export const demoRulesName = "harbour-league.rules.json";

/** The text of the demo rules. */
export async function loadDemoRules(): Promise<string> {
  const path = Object.keys(loaders).find((one) => one.endsWith(`/${demoRulesName}`));
  if (path === undefined) throw new RangeError(`There are no demo rules ${demoRulesName}.`);
  return loaders[path]();
}
