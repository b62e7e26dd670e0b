import { problem, type Result, success } from "../../../result";
import { edgeReach } from "./outerShape";
import type { PuckSpec } from "./puckSpec";

/** Checks the outside of a puck: sizes, edge, face and rim. Problems name the quantity, its value and the limit in mm. */
export function checkOuterShape(spec: PuckSpec): Result<null> {
  const { diameterMetres: d, thicknessMetres: t, edge } = spec;
  if (!(d > 0 && d <= 10)) return refuse(`diameter ${mm(d)} must be above 0 and at most 10 m`, "diameterMetres");
  if (!(t > 0 && t <= 10)) return refuse(`thickness ${mm(t)} must be above 0 and at most 10 m`, "thicknessMetres");
  if (edge.kind === "profile") {
    const message = profileFault(edge.points);
    if (message !== null) return refuse(message, "edge.points");
  }
  const { radial, axial } = edgeReach(spec);
  const isRadius = edge.kind === "radius";
  const named = isRadius ? "edge radius" : "edge inset";
  const [radialField, axialField] = isRadius
    ? ["edge.edgeRadiusMetres", "edge.edgeRadiusMetres"]
    : edge.kind === "bevel"
      ? ["edge.radialMetres", "edge.axialMetres"]
      : ["edge.points", "edge.points"];
  if (!(radial >= 0 && axial >= 0)) return refuse(`${named} must be 0 or more`, radial >= 0 ? axialField : radialField);
  if (axial > t / 2) return refuse(`${named} ${mm(axial)} exceeds half the thickness, ${mm(t / 2)}`, axialField);
  if (radial > d / 2) return refuse(`${named} ${mm(radial)} exceeds half the diameter, ${mm(d / 2)}`, radialField);
  const fault = faceFault(spec, d / 2 - radial) ?? rimFault(spec, t - 2 * axial) ?? crossingFault(spec, axial);
  return fault === null ? success(null) : refuse(...fault);
}

/** A message and the key that it is about. */
type Fault = readonly [message: string, field: string];

function profileFault(points: readonly (readonly [number, number])[]): string | null {
  if (points.length < 2) return `edge profile has ${points.length} points; it needs 2 or more`;
  if (points[0][1] !== 0) return "edge profile must start on the face (inset from the face 0)";
  if (points[points.length - 1][0] !== 0) return "edge profile must end on the rim (inset from the rim 0)";
  for (let i = 1; i < points.length; i++) {
    const inward = points[i - 1][0] - points[i][0];
    const down = points[i][1] - points[i - 1][1];
    if (!(inward >= 0 && down >= 0 && inward + down > 0)) {
      return `edge profile turns back at point ${i + 1}; each point must lie further out or further down than the last`;
    }
  }
  return null;
}

function faceFault({ face, thicknessMetres: t }: PuckSpec, flatRadius: number): Fault | null {
  if (face.kind === "flat") return null;
  const deepest = face.side === "both" ? t / 2 : t;
  if (!(face.depthMetres > 0 && face.depthMetres < deepest)) {
    return [`face depth ${mm(face.depthMetres)} must be above 0 and below ${mm(deepest)}`, "face.depthMetres"];
  }
  if (face.kind === "recess") {
    if (face.diameterMetres > 0 && face.diameterMetres <= 2 * flatRadius) return null;
    const limit = mm(2 * flatRadius);
    const message = `recess diameter ${mm(face.diameterMetres)} must be above 0 and within the flat face, ${limit}`;
    return [message, "face.diameterMetres"];
  }
  const { number, widthMetres: w, innerRadiusMetres: a, outerRadiusMetres: b } = face;
  if (!(Number.isInteger(number) && number >= 3)) {
    return [`number of grooves is ${number}; it must be 3 or more`, "face.number"];
  }
  if (!(a < b && b <= flatRadius)) {
    const message = `grooves from radius ${mm(a)} to ${mm(b)} must lie within the flat face, radius ${mm(flatRadius)}`;
    return [message, b <= flatRadius ? "face.innerRadiusMetres" : "face.outerRadiusMetres"];
  }
  const widest = 2 * a * Math.sin(Math.PI / number);
  if (w > 0 && w < widest) return null;
  const meeting = `or ${number} grooves meet at radius ${mm(a)}`;
  return [`groove width ${mm(w)} must be above 0 and below ${mm(widest)}, ${meeting}`, "face.widthMetres"];
}

function rimFault({ rim, diameterMetres: d }: PuckSpec, straight: number): Fault | null {
  if (rim.kind === "plain") return null;
  if (rim.kind === "rough") {
    const ks = rim.sandGrainRoughnessMetres;
    if (ks >= 0 && ks < d / 20) return null;
    return [`rim roughness ${mm(ks)} must be 0 or more and below ${mm(d / 20)}`, "rim.sandGrainRoughnessMetres"];
  }
  const { number, widthMetres: w, depthMetres: depth } = rim;
  if (!(depth > 0 && depth < d / 4)) {
    return [`rim depth ${mm(depth)} must be above 0 and below ${mm(d / 4)}`, "rim.depthMetres"];
  }
  if (!(straight > 0)) return ["a grooved rim needs a straight part between the edges; there is none", "rim"];
  if (rim.kind === "ringGrooves") {
    if (!(Number.isInteger(number) && number >= 1)) {
      return [`number of rings is ${number}; it must be 1 or more`, "rim.number"];
    }
    return w > 0 && (number === 1 ? w <= straight : number * w < straight)
      ? null
      : [`${number} rings of width ${mm(w)} must fit on the straight rim, ${mm(straight)}`, "rim.widthMetres"];
  }
  if (!(Number.isInteger(number) && number >= 3)) {
    return [`number of grooves is ${number}; it must be 3 or more`, "rim.number"];
  }
  const floorRadius = d / 2 - depth;
  const widest = 2 * floorRadius * Math.tan(Math.PI / number);
  return w > 0 && w < widest
    ? null
    : [`groove width ${mm(w)} must be above 0 and below ${mm(widest)}, or grooves meet`, "rim.widthMetres"];
}

/** A recess or groove in a face must not run into the grooves of the rim. */
function crossingFault({ face, rim, diameterMetres: d, thicknessMetres: t }: PuckSpec, axial: number): Fault | null {
  if (face.kind === "flat" || (rim.kind !== "axialGrooves" && rim.kind !== "ringGrooves")) return null;
  const reach = face.kind === "recess" ? face.diameterMetres / 2 : face.outerRadiusMetres;
  const straight = t - 2 * axial;
  // Axial grooves begin at the edge, the outermost ring half of what lies between two rings below it.
  const rimBegins = axial + (rim.kind === "ringGrooves" ? (straight / rim.number - rim.widthMetres) / 2 : 0);
  if (reach < d / 2 - rim.depthMetres || face.depthMetres < rimBegins) return null;
  const what = face.kind === "recess" ? "recess" : "grooves";
  const message = `grooves of the rim ${mm(rim.depthMetres)} deep run into the ${what} of the face, which reach radius ${mm(reach)}`;
  return [message, "rim"];
}

function mm(metres: number): string {
  return `${Number((metres * 1000).toPrecision(6))} mm`;
}

function refuse(message: string, field: string) {
  return problem("puck-shape", message, field);
}
