import { amend, type History, record } from "./history";

/** Stands for one stay in a field: all that is typed in it until it is left or confirmed. */
let stay: object | null = null;

/** Which stay made a version. */
const madeIn = new WeakMap<object, object>();

/** A field's text changes: its stay begins, or goes on. */
export function keepTyping(): void {
  stay ??= {};
}

/** A field is left or its text confirmed. */
export function endTyping(): void {
  stay = null;
}

/** Follows the fields of the page, whatever component they are in. */
export function followFields(page: EventTarget): void {
  // Before any component hears of the new value and makes a version of it.
  page.addEventListener("quantity-change", keepTyping, { capture: true });
  page.addEventListener("quantity-leave", endTyping);
}

/** Adds a version; what is typed in one stay in a field is one step, so that undo does not go back digit by digit. */
export function recordTyped<T extends object>(history: History<T>, present: T): History<T> {
  const isSameStay = stay !== null && madeIn.get(history.present) === stay;
  if (stay !== null) madeIn.set(present, stay);
  return isSameStay ? amend(history, present) : record(history, present);
}
