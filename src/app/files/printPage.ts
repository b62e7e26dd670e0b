/** Prints a page of its own without leaving this one. */
export function printPage(content: string): void {
  const frame = document.createElement("iframe");
  frame.title = "Page to print";
  frame.setAttribute("aria-hidden", "true");
  frame.tabIndex = -1;
  // Not hidden by display: such a frame would not be printed.
  frame.style.cssText = "position:fixed;inset:auto;width:0;height:0;border:0;visibility:hidden";
  frame.srcdoc = content;
  frame.addEventListener("load", () => {
    const page = frame.contentWindow;
    if (page === null) return;
    page.addEventListener("afterprint", () => frame.remove());
    page.focus();
    page.print();
  });
  document.body.append(frame);
}
