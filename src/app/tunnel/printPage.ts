/** Prints a page of its own, made of HTML text, without leaving this one. */
export function printPage(html: string): void {
  const frame = document.createElement("iframe");
  frame.title = "Page to print";
  frame.className = "unseen";
  frame.srcdoc = html;
  frame.addEventListener("load", () => {
    const inner = frame.contentWindow;
    if (inner === null) return;
    inner.addEventListener("afterprint", () => frame.remove());
    inner.focus();
    inner.print();
  });
  document.body.append(frame);
}
