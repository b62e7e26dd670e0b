import { describe, expect, test, vi } from "vitest";
import { amend, record, redo, startHistory, undo } from "../../src/app/store/history";
import { Notifier } from "../../src/app/store/notifier";

describe("Notifier", () => {
  test("tells listeners of a new value, not of the same one, and not after they left", () => {
    const notifier = new Notifier({ a: 1, b: 2 });
    const listener = vi.fn();
    const leave = notifier.subscribe(listener);
    notifier.patch({ a: 3 });
    const { value } = notifier;
    notifier.value = value;
    leave();
    notifier.patch({ a: 4 });
    expect(listener.mock.calls).toEqual([[{ a: 3, b: 2 }]]);
  });
});

describe("a listener that replaces the value while it is told of one", () => {
  test("leaves every other listener with the newest value, never with the older one after it", () => {
    const notifier = new Notifier({ design: 1, stale: false });
    const heard: { before: unknown[]; after: unknown[] } = { before: [], after: [] };
    notifier.subscribe((value) => heard.before.push(value));
    notifier.subscribe(({ design, stale }) => {
      if (design === 2 && !stale) notifier.patch({ stale: true });
    });
    notifier.subscribe((value) => heard.after.push(value));
    notifier.patch({ design: 2 });
    expect(heard.after).toEqual([{ design: 2, stale: true }]);
    expect(heard.before.at(-1)).toBe(notifier.value);
    expect(notifier.value).toEqual({ design: 2, stale: true });
  });
});

describe("history", () => {
  test("undo and redo walk the versions; a drag's in-between states are one step", () => {
    let history = record(startHistory("a"), "b");
    history = amend(amend(record(history, "c"), "c1"), "c2");
    history = undo(history);
    expect(history.present).toBe("b");
    expect(undo(history).present).toBe("a");
    expect(redo(history).present).toBe("c2");
  });

  test("a new version ends what could be redone; undo at the start changes nothing", () => {
    const history = record(undo(record(startHistory(1), 2)), 3);
    expect(redo(history)).toBe(history);
    expect(undo(undo(history))).toEqual(undo(history));
  });

  test("keeps the last 200 versions", () => {
    let history = startHistory(0);
    for (let i = 1; i <= 500; i++) history = record(history, i);
    expect(history.past).toHaveLength(200);
  });
});
