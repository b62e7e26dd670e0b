/** A message that concerns the page as a whole. */
export interface Notice {
  readonly id: number;
  readonly kind: "news" | "warning";
  readonly text: string;
}
