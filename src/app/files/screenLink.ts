import { problem, type Result, success } from "../../../shared/result";
import { type ViewName, viewNames } from "../store/viewNames";

/** Everything that a link needs to reproduce the screen: the shown view, and what each view wrote of itself. */
export interface ScreenContent {
  readonly version: 1;
  readonly view: ViewName;
  /** Texts that each view reads and checks by itself, like any file. */
  readonly parts: Readonly<Partial<Record<ViewName, string>>>;
}

const prefix = "#screen=";
const longestHash = 400_000;
const longestContent = 6_000_000;

/** Characters that one view may write into a link. */
export const longestPart = 4_000_000;

/**
 * The part of an address behind "#" that reproduces the screen: compressed, in characters that need no escape. A screen
 * that holds too much for an address is a problem.
 */
export async function screenHash(content: ScreenContent): Promise<Result<string>> {
  let packed: Uint8Array;
  try {
    const bytes = new TextEncoder().encode(JSON.stringify(content));
    if (bytes.length > longestContent) return tooLong(`${bytes.length} bytes`, longestContent);
    packed = await through(bytes, new CompressionStream("deflate-raw"), longestContent);
  } catch {
    return problem("link", "The screen could not be packed into a link. Save it as a case file instead.");
  }
  let binary = "";
  for (const byte of packed) binary += String.fromCharCode(byte);
  const hash = prefix + btoa(binary).replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/, "");
  return hash.length > longestHash ? tooLong(`${hash.length} characters`, longestHash) : success(hash);
}

function tooLong(size: string, most: number): Result<never> {
  return problem(
    "link",
    `The link would hold ${size}; at most ${most} are read. Save the screen as a case file instead.`,
  );
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
  const { version, view, parts } = content as Partial<Record<keyof ScreenContent, unknown>>;
  if (version !== 1 || !isViewName(view) || typeof parts !== "object" || parts === null) return false;
  const entries = Object.entries(parts);
  return (
    Object.hasOwn(parts, view) &&
    entries.every(([name, text]) => isViewName(name) && typeof text === "string" && text.length <= longestPart)
  );
}

export function isViewName(name: unknown): name is ViewName {
  return viewNames.some((one) => one === name);
}
