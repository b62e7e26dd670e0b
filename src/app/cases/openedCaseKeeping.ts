import { keepText, readKeptText } from "../files/storage";
import { type OpenedCase, openedCase } from "../store/openedCase";

const keptName = "opened-case";

/** Brings back the case that was open when this browser was left, then keeps every later one. */
export async function keepOpenedCase(): Promise<void> {
  const kept = await readKeptText(keptName);
  // A link or a demo that was opened meanwhile is newer.
  if (openedCase.value === null && kept !== null) openedCase.value = readOpened(kept);
  else if (openedCase.value !== null) void keepText(keptName, JSON.stringify(openedCase.value));
  openedCase.subscribe((opened) => void keepText(keptName, JSON.stringify(opened)));
}

function readOpened(text: string): OpenedCase | null {
  try {
    const kept = JSON.parse(text) as Partial<OpenedCase> | null;
    if (typeof kept?.fileName !== "string" || typeof kept.text !== "string") return null;
    return { fileName: kept.fileName, text: kept.text, asOpened: kept.asOpened ?? {} };
  } catch {
    return null;
  }
}
