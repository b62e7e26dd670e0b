import { createHash } from "node:crypto";
import { deflateRawSync } from "node:zlib";
import { describe, expect, test } from "vitest";
import { readScreenHash, type ScreenContent, screenHash } from "../../src/app/files/screenLink";

/** A link's hash around any content, made without the page's own checks. */
function hashOf(content: unknown): string {
  return `#screen=${deflateRawSync(JSON.stringify(content)).toString("base64url")}`;
}

describe("screen links", () => {
  const content: ScreenContent = { version: 1, view: "puck", parts: { section: "a design", puck: "a puck, 30 × 80" } };

  test("a screen of several views survives the way through a link", async () => {
    const hash = await screenHash(content);
    if (!hash.ok) throw new Error(hash.problem.message);
    expect(hash.value).toMatch(/^#screen=[\w-]+$/);
    expect(await readScreenHash(hash.value)).toEqual({ ok: true, value: content });
  });

  test("a hash that was made elsewhere from the same content reads the same", async () => {
    expect(await readScreenHash(hashOf(content))).toEqual({ ok: true, value: content });
  });

  test("damage and too many characters are problems; other hashes are none of ours", async () => {
    expect(await readScreenHash("#top")).toBeNull();
    expect((await readScreenHash("#screen=AAAA"))?.ok).toBe(false);
    const long = await readScreenHash(`#screen=${"A".repeat(500_000)}`);
    expect(long?.ok === false && long.problem.message).toMatch(/500008 characters; at most 400000/);
  });

  test.each([
    ["another version", { ...content, version: 2 }],
    ["an unknown view", { ...content, view: "kitchen" }],
    ["a view whose part is missing", { ...content, parts: { section: "a design" } }],
    ["a part of an unknown view", { ...content, parts: { ...content.parts, kitchen: "" } }],
    ["a part under a name of every object", { ...content, parts: { ...content.parts, constructor: "" } }],
    ["a part that is no text", { ...content, parts: { puck: { deep: true } } }],
    ["no parts", { version: 1, view: "puck", parts: null }],
    ["a list", [content]],
  ])("%s is refused", async (_, hostile) => {
    const read = await readScreenHash(hashOf(hostile));
    expect(read?.ok === false && read.problem.message).toBe("The link does not hold a screen of this page.");
  });

  test("a small link that unpacks to a huge screen is given up while it is unpacked", async () => {
    const bomb = { ...content, parts: { puck: " ".repeat(50_000_000) } };
    const read = await readScreenHash(hashOf(bomb));
    expect(read?.ok === false && read.problem.message).toMatch(/could not be unpacked/);
  });

  test("a screen that is too much for a link is refused in words that name the other way", async () => {
    const digest = (i: number) => createHash("sha512").update(String(i)).digest("base64");
    const noise = Array.from({ length: 8000 }, (_, i) => digest(i));
    for (const puck of [noise.join(""), " ".repeat(6_000_001)]) {
      const hash = await screenHash({ ...content, parts: { puck } });
      expect(hash.ok === false && hash.problem.message).toMatch(/at most \d+ are read. Save the screen as a case file/);
    }
  });
});
