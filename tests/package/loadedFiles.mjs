// Given to Node by --import: notes the address of everything that a program loads in the file named by LOADED_FILES.
import { appendFileSync } from "node:fs";
import { register } from "node:module";

const { LOADED_FILES: file } = process.env;

/** Called in the thread that finds modules. */
export async function resolve(specifier, context, next) {
  const found = await next(specifier, context);
  appendFileSync(file, `${found.url}\n`);
  return found;
}

if (!new URL(import.meta.url).searchParams.has("hooks")) register(`${import.meta.url}?hooks`);
