import type { Notice } from "./notice";
import { Notifier } from "./notifier";

export const notices = new Notifier<readonly Notice[]>([]);

/** Shows a message until it is dismissed; the same text is not shown twice at once. */
export function tell(kind: Notice["kind"], text: string): void {
  if (notices.value.some((notice) => notice.text === text)) return;
  const id = 1 + Math.max(0, ...notices.value.map((notice) => notice.id));
  notices.value = [...notices.value, { id, kind, text }].slice(-4);
}

export function dismiss(id: number): void {
  notices.value = notices.value.filter((notice) => notice.id !== id);
}
