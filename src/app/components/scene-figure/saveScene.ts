import { saveFile } from "../../files/saveFile";
import type { DataTable } from "../../plots/plotFigure";
import { tableCsv } from "../../plots/tableCsv";
import { paintScene } from "../../scene/paintScene";
import type { Scene } from "../../scene/scene";
import { sceneSvg } from "../../scene/sceneSvg";

/** Pixels of a saved picture for one of the screen's. */
const sharpness = 3;

/** Hands the browser a picture as a file. @param name stem of the file @param paper colour behind it */
export async function saveScene(name: string, scene: Scene, format: "png" | "svg", paper: string): Promise<void> {
  if (format === "svg") return saveFile(`wakewright-${name}.svg`, "image/svg+xml", sceneSvg(scene, paper));
  const canvas = document.createElement("canvas");
  const ground = {
    kind: "lines",
    lines: [[0, 0, scene.width, 0, scene.width, scene.height, 0, scene.height]],
    closed: true,
    fill: paper,
  } as const;
  paintScene(canvas, { ...scene, shapes: [ground, ...scene.shapes] }, sharpness);
  const picture = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, "image/png"));
  if (picture !== null) saveFile(`wakewright-${name}.png`, "image/png", picture);
}

export function saveTable(name: string, table: DataTable): void {
  saveFile(`wakewright-${name}.csv`, "text/csv", tableCsv(table));
}
