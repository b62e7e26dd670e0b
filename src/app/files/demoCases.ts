/** Case files that come with the page, loaded when they are asked for. */
const loaders = import.meta.glob<string>(
  ["../../../cases/*.json", "!../../../cases/*.schema.json", "!../../../cases/*.rules.json"],
  { query: "?raw", import: "default" },
);

export interface DemoCase {
  readonly fileName: string;
  /** The file name as words. */
  readonly label: string;
}

export const demoCases: readonly DemoCase[] = Object.keys(loaders)
  .map((path) => {
    const fileName = path.slice(path.lastIndexOf("/") + 1);
    const words = fileName
      .replace(/\.json$/, "")
      .replaceAll("-", " ")
      .replace("league", "League");
    return { fileName, label: words.charAt(0).toUpperCase() + words.slice(1) };
  })
  .sort((a, b) => a.label.localeCompare(b.label));

/** The text of a demo case. */
export async function loadDemoCase(fileName: string): Promise<string> {
  const path = Object.keys(loaders).find((one) => one.endsWith(`/${fileName}`));
  if (path === undefined) throw new RangeError(`There is no demo case ${fileName}.`);
  return loaders[path]();
}
