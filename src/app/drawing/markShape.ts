import type { SurfaceMark } from "./surfaceParts";

/** Each kind of mark has a shape of its own, drawn about the origin. */
export const markShapes: Readonly<Record<SurfaceMark["kind"], string>> = {
  stagnation: "M-5 0A5 5 0 1 0 5 0A5 5 0 1 0 -5 0Z",
  transition: "M0 -6.5L6.5 0L0 6.5L-6.5 0Z",
  reattachment: "M-5.5 -4.5H5.5L0 6Z",
  separation: "M-5 -5H5V5H-5Z",
};

export const markNames: Readonly<Record<SurfaceMark["kind"], string>> = {
  stagnation: "stagnation",
  transition: "transition",
  reattachment: "reattachment",
  separation: "separation",
};
