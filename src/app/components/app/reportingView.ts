/** A view's element. */
export interface ReportingView extends HTMLElement {
  /**
   * Prints the view's report: makes its pictures, waits until they are drawn, and calls `window.print()`. The page
   * prints what the shown view lays out under `@media print`; masthead, footer and the other views are not printed.
   */
  printReport(): Promise<void>;
}
