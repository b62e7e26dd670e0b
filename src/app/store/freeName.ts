/** The name, with a number behind it when it is taken. */
export function freeName(name: string, taken: readonly string[]): string {
  if (!taken.includes(name)) return name;
  const stem = name.replace(/ \d+$/, "");
  for (let n = 2; ; n++) {
    if (!taken.includes(`${stem} ${n}`)) return `${stem} ${n}`;
  }
}
