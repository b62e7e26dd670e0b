/** A case that was saved in this browser, or opened not long ago. */
export interface StoredCase {
  readonly fileName: string;
  readonly title: string;
  readonly text: string;
  /** Milliseconds since 1970. */
  readonly at: number;
}
