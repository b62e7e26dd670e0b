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
