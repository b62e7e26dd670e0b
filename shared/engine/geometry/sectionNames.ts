import { millimetres } from "./dimensionChecks";

/** Length by height as text: "80 x 30 mm". */
export function extent(length: number, height: number): string {
  return `${millimetres(length).replace(" mm", "")} x ${millimetres(height)}`;
}
