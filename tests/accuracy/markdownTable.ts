/** A Markdown table whose columns are padded, so that it also reads well as plain text. */
export function markdownTable(header: readonly string[], body: readonly (readonly string[])[]): string {
  const rows = [header, ...body];
  const widths = header.map((_, column) => Math.max(3, ...rows.map((row) => row[column].length)));
  const line = (row: readonly string[]) => `| ${row.map((cell, i) => cell.padEnd(widths[i])).join(" | ")} |`;
  return [line(header), `| ${widths.map((width) => "-".repeat(width)).join(" | ")} |`, ...body.map(line)].join("\n");
}
