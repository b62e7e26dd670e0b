import { strToU8, zipSync } from "fflate";
import type { TriangleMesh } from "./meshBuilder";
import { svgNumber, svgText } from "./svgText";

const contentTypes = `<?xml version="1.0" encoding="UTF-8"?>
<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/></Types>
`;

const relationships = `<?xml version="1.0" encoding="UTF-8"?>
<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Target="/3D/3dmodel.model" Id="rel0" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/></Relationships>
`;

/** Any fixed day: equal pucks give equal files. */
const fileDate = new Date(2000, 0, 1);

/**
 * A mesh as a 3MF package in mm (3MF Core Specification 1.3: an open solid format that carries its unit), zipped by the
 * library fflate.
 */
export function mesh3mf(mesh: TriangleMesh): Uint8Array<ArrayBuffer> {
  return zipSync(
    {
      "[Content_Types].xml": strToU8(contentTypes),
      "_rels/.rels": strToU8(relationships),
      "3D/3dmodel.model": strToU8(model(mesh)),
    },
    { mtime: fileDate },
  ) as Uint8Array<ArrayBuffer>;
}

function model({ name, positions, triangles }: TriangleMesh): string {
  const vertices: string[] = [];
  for (let v = 0; v < positions.length; v += 3) {
    const [x, y, z] = [positions[v], positions[v + 1], positions[v + 2]].map((value) => svgNumber(1000 * value));
    vertices.push(`<vertex x="${x}" y="${y}" z="${z}"/>`);
  }
  const faces: string[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    faces.push(`<triangle v1="${triangles[t]}" v2="${triangles[t + 1]}" v3="${triangles[t + 2]}"/>`);
  }
  return `<?xml version="1.0" encoding="UTF-8"?>
<model unit="millimeter" xml:lang="en" xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02">
<metadata name="Title">${svgText(name)}</metadata>
<resources><object id="1" type="model" name="${svgText(name)}"><mesh><vertices>
${vertices.join("\n")}
</vertices><triangles>
${faces.join("\n")}
</triangles></mesh></object></resources>
<build><item objectid="1"/></build>
</model>
`;
}
