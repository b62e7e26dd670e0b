import { beforeEach, expect, test } from "vitest";
import { startHistory, undo } from "../../src/app/store/history";
import { endTyping, keepTyping, recordTyped } from "../../src/app/store/typing";

beforeEach(endTyping);

const versions = [0, 1, 2, 3, 4].map((value) => ({ value }));

test("digits typed in one stay in a field are one step; the next stay is another", () => {
  let history = startHistory(versions[0]);
  keepTyping();
  history = recordTyped(history, versions[1]);
  keepTyping();
  history = recordTyped(history, versions[2]);
  expect(undo(history).present).toBe(versions[0]);
  endTyping();
  keepTyping();
  history = recordTyped(history, versions[3]);
  expect(undo(history).present).toBe(versions[2]);
});

test("changes made without typing are steps of their own, also after an undo in the middle of a stay", () => {
  let history = recordTyped(recordTyped(startHistory(versions[0]), versions[1]), versions[2]);
  expect(undo(history).present).toBe(versions[1]);
  keepTyping();
  history = undo(recordTyped(history, versions[3]));
  history = recordTyped(history, versions[4]);
  expect(undo(history).present).toBe(versions[2]);
});
