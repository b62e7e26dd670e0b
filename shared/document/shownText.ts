/** Most characters of somebody else's text that a message repeats, and most names of a list. */
const [mostCharacters, mostNames] = [40, 30];

/** Control characters, which a terminal would obey, halves of characters, and those that turn the direction of writing. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
const unprintable = /[\u0000-\u001f\u007f-\u009f\u200e\u200f\u2028-\u202e\u2066-\u2069]|\p{Surrogate}/gu;

/** Somebody else's text as a message may repeat it: short, on one line, and without anything that acts on a terminal. */
export function shownText(text: string): string {
  const short = text.length > mostCharacters ? `${text.slice(0, mostCharacters)}...` : text;
  return printable(short);
}

/** A text of our own that repeats some of somebody else's: the same without anything that acts on a terminal. */
export function printable(text: string): string {
  return text.replace(unprintable, (one) => `\\u${one.charCodeAt(0).toString(16).padStart(4, "0")}`);
}

/** Whether nothing in a text acts on a terminal, apart from tabs and line breaks. */
export function isPrintable(text: string): boolean {
  const plain = text.replace(/[\t\r\n]/g, " ");
  return printable(plain) === plain;
}

/** The same in quotation marks. */
export function quotedText(text: string): string {
  return `"${shownText(text)}"`;
}

/** Somebody else's names, one after the other; of a long list the first. */
export function shownNames(names: readonly string[]): string {
  const more = names.length > mostNames ? ` and ${names.length - mostNames} more` : "";
  return `${names.slice(0, mostNames).map(shownText).join(", ")}${more}`;
}
