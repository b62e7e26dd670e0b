/** Goes from cell to cell of a table of inputs: Enter to the next one, arrows up and down within the column. */
export function moveInGrid(event: KeyboardEvent): void {
  const from = event.target;
  if (!(from instanceof HTMLInputElement)) return;
  const row = from.closest("tr");
  const body = row?.parentElement;
  if (row === null || body === null || body === undefined) return;
  const inputs = [...body.querySelectorAll("input")];
  const step = steps(event, row.querySelectorAll("input").length);
  const next = step === 0 ? undefined : inputs[inputs.indexOf(from) + step];
  if (next === undefined) return;
  event.preventDefault();
  next.focus();
  next.select();
}

function steps({ key, shiftKey }: KeyboardEvent, columns: number): number {
  if (key === "Enter") return shiftKey ? -1 : 1;
  if (key === "ArrowDown") return columns;
  if (key === "ArrowUp") return -columns;
  return 0;
}
