import { problem, type Result, success } from "../../../shared/result";

/** Everything that a link needs to reproduce the screen. Designs are case-file texts, checked like any case file. */
export interface ScreenContent {
  readonly version: 1;
  readonly design: string;
  readonly pins: readonly string[];
  readonly positionMeasure: "angle" | "arc";
}

const prefix = "#screen=";
const longestHash = 400_000;
const longestContent = 6_000_000;
const mostPins = 12;

/** The part of an address behind "#" that reproduces the screen: compressed, in characters that need no escape. */
export async function screenHash(content: ScreenContent): Promise<string> {
  const packed = await through(
    new TextEncoder().encode(JSON.stringify(content)),
    new CompressionStream("deflate-raw"),
    longestContent,
  );
  let binary = "";
  for (const byte of packed) binary += String.fromCharCode(byte);
  return prefix + btoa(binary).replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/, "");
}

/** What a link's hash holds; null when it is none of ours. A broken or oversized one is a problem. */
export async function readScreenHash(hash: string): Promise<Result<ScreenContent> | null> {
  if (!hash.startsWith(prefix)) return null;
  if (hash.length > longestHash) {
    return problem("link", `The link has ${hash.length} characters; at most ${longestHash} are read.`);
  }
  try {
    const binary = atob(hash.slice(prefix.length).replaceAll("-", "+").replaceAll("_", "/"));
    const packed = Uint8Array.from(binary, (character) => character.charCodeAt(0));
    const bytes = await through(packed, new DecompressionStream("deflate-raw"), longestContent);
    const content: unknown = JSON.parse(new TextDecoder().decode(bytes));
    return isScreenContent(content)
      ? success(content)
      : problem("link", "The link does not hold a screen of this page.");
  } catch {
    return problem("link", "The link is damaged: it could not be unpacked.");
  }
}

/** Runs bytes through a stream; gives up on more output than a screen can have. */
async function through(
  bytes: Uint8Array,
  stream: CompressionStream | DecompressionStream,
  most: number,
): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  let total = 0;
  const reader = new Blob([bytes as Uint8Array<ArrayBuffer>]).stream().pipeThrough(stream).getReader();
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    total += value.length;
    if (total > most) {
      await reader.cancel();
      throw new RangeError(`more than ${most} bytes`);
    }
    chunks.push(value);
  }
  const joined = new Uint8Array(total);
  let at = 0;
  for (const chunk of chunks) {
    joined.set(chunk, at);
    at += chunk.length;
  }
  return joined;
}

/** True for plain data that has the shape of a screen. */
export function isScreenContent(content: unknown): content is ScreenContent {
  if (typeof content !== "object" || content === null) return false;
  const { version, design, pins, positionMeasure } = content as Partial<Record<keyof ScreenContent, unknown>>;
  return (
    version === 1 &&
    typeof design === "string" &&
    Array.isArray(pins) &&
    pins.length <= mostPins &&
    pins.every((pin) => typeof pin === "string") &&
    (positionMeasure === "angle" || positionMeasure === "arc")
  );
}
