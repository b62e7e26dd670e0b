/** Text made safe inside an SVG element or attribute; characters that XML forbids are left out. */
export function svgText(text: string): string {
  const allowed = [...text].filter((letter) => {
    const code = letter.codePointAt(0) ?? 0;
    return code >= 32 && code !== 0x7f && code !== 0xfffe && code !== 0xffff && !(code >= 0xd800 && code <= 0xdfff);
  });
  return allowed
    .join("")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;")
    .replaceAll("'", "&apos;");
}

/** A number with at most six decimals, without an exponent. */
export function svgNumber(value: number): string {
  return String(Number(value.toFixed(6)) + 0);
}
