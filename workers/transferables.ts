/** The buffers of all typed arrays inside plain data, each once, so that they cross to the page without a copy. */
export function transferables(value: unknown): ArrayBuffer[] {
  const found = new Set<ArrayBuffer>();
  const visit = (part: unknown): void => {
    if (ArrayBuffer.isView(part)) {
      if (part.buffer instanceof ArrayBuffer) found.add(part.buffer);
    } else if (Array.isArray(part)) {
      if (typeof part[0] === "object") part.forEach(visit);
    } else if (typeof part === "object" && part !== null) {
      Object.values(part).forEach(visit);
    }
  };
  visit(value);
  return [...found];
}
