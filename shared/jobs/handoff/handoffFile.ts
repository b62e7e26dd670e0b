/** One file of a hand-off, its name without a folder. */
export interface HandoffFile {
  readonly name: string;
  readonly content: string | Uint8Array;
}

export interface HandoffRequest {
  /** m/s. */
  readonly speed: number;
  readonly turbulenceIntensity: number;
  /** Day on the drawing, year-month-day. */
  readonly date: string;
}
