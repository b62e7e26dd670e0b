import { type RandomDraws, randomDraws } from "../../shared/statistics/randomDraws";

type Container = Record<string, unknown> | unknown[];

/** Values that readers stumble over: wrong kinds, ends of ranges, names that mean something to the language, long and odd text. */
const nasty: readonly (() => unknown)[] = [
  () => null,
  () => "",
  () => "12",
  () => "1,5",
  () => true,
  () => [],
  () => ({}),
  () => [[]],
  () => 0,
  () => -0,
  () => -1,
  () => 0.5,
  () => 1e308,
  () => -1e308,
  () => 5e-324,
  () => 1e-9,
  () => 2 ** 53,
  () => Array.from({ length: 300 }, (_, i) => i),
  () => "x".repeat(100_000),
  () => "\u0000\u001b[31m\u202e\ud800",
  () => "__proto__",
  () => ({ __proto__: null, constructor: 1 }),
  () => JSON.parse(`${"[".repeat(500)}${"]".repeat(500)}`),
];

const oddKeys = ["__proto__", "constructor", "toString", "", "0", "length", "k".repeat(100_000), "ключ", "a\nb"];

/**
 * A case file with 1 to 4 faults at random places: values replaced, scaled, moved, doubled or removed, keys renamed or
 * added; sometimes the text itself is cut or a character of it changed. Equal seeds give equal texts.
 */
export function mutatedJson(originals: readonly unknown[], seed: number): string {
  const draws = scatteredDraws(seed);
  const document = structuredClone(pick(originals, draws));
  const count = 1 + draws.below(4);
  for (let k = 0; k < count; k++) mutateOnce(document, draws);
  const text = JSON.stringify(document);
  return draws.uniform() < 0.1 ? damagedText(text, draws) : text;
}

/** Seeds in a row begin alike; after a while their draws have nothing to do with each other. */
function scatteredDraws(seed: number): RandomDraws {
  const draws = randomDraws(Math.imul(seed, 0x9e3779b1));
  for (let k = 0; k < 20; k++) draws.uniform();
  return draws;
}

function mutateOnce(document: unknown, draws: RandomDraws): void {
  const places = containers(document);
  if (places.length === 0) return;
  const place = pick(places, draws);
  const keys = Object.keys(place);
  const key = keys.length === 0 ? "0" : pick(keys, draws);
  const value = Reflect.get(place, key);
  const put = (to: string, what: unknown) =>
    Object.defineProperty(place, to, { value: what, enumerable: true, configurable: true, writable: true });
  switch (draws.below(8)) {
    case 0:
      if (Array.isArray(place)) place.splice(Number(key), 1);
      else Reflect.deleteProperty(place, key);
      return;
    case 1:
      put(key, typeof value === "number" ? value * 10 ** (6 * draws.normal()) : pick(nasty, draws)());
      return;
    case 2:
      put(key, typeof value === "number" ? -value : pick(nasty, draws)());
      return;
    case 3:
      if (Array.isArray(place)) place.push(structuredClone(value));
      else put(pick(oddKeys, draws), pick(nasty, draws)());
      return;
    case 4:
      put(key, structuredClone(pick(places, draws)));
      return;
    case 5:
      if (Array.isArray(place)) place.reverse();
      else put(`${key}s`, value);
      return;
    default:
      put(key, pick(nasty, draws)());
  }
}

/** Every object and list of a document. A moved branch may hold itself in copy, so that only so many are looked at. */
function containers(document: unknown): Container[] {
  const found: Container[] = [];
  const waiting: unknown[] = [document];
  while (waiting.length > 0 && found.length < 2000) {
    const value = waiting.pop();
    if (typeof value !== "object" || value === null) continue;
    found.push(value as Container);
    waiting.push(...Object.values(value));
  }
  return found;
}

function damagedText(text: string, draws: RandomDraws): string {
  const at = draws.below(text.length);
  switch (draws.below(3)) {
    case 0:
      return text.slice(0, at);
    case 1:
      return text.slice(0, at) + String.fromCharCode(draws.below(0x300)) + text.slice(at + 1);
    default:
      return text.slice(0, at) + text.slice(draws.below(text.length));
  }
}

function pick<T>(from: readonly T[], draws: RandomDraws): T {
  return from[draws.below(from.length)];
}
