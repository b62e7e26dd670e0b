import type { CSSResult } from "lit";

const adopted = new Set<CSSResult>();

/**
 * Gives the document the styles of a component that renders without a shadow root, once however often it is used.
 * Plotly adds its own styles to the document, so plots and everything around them stay outside shadow roots.
 */
export function adoptDocumentStyles(styles: CSSResult): void {
  if (adopted.has(styles) || !styles.styleSheet) return;
  adopted.add(styles);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, styles.styleSheet];
}
