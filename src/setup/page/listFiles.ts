import { createHash } from "node:crypto";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, sep } from "node:path";
import type { Plugin } from "vite";
import { buildMetaName, type FileList, fileListName } from "../../app/offline/fileList.js";

/** The page's own document, and the service worker, which the browser itself looks after. */
const [documentName, workerName] = ["index.html", "offline.js"];

/**
 * Lists the built files with the hash of their contents for the service worker, and writes the build's name, a word for
 * all of them, into the document. Reads what was written: the bundler changes files until the very end.
 */
export function listFiles(): Plugin {
  return {
    name: "list-files",
    apply: "build",
    writeBundle({ dir = "" }) {
      const files: Record<string, string> = {};
      for (const name of filesIn(dir)) {
        if (![documentName, workerName, fileListName].includes(name))
          files[name] = digest(readFileSync(join(dir, name)));
      }
      const html = readFileSync(join(dir, documentName), "utf8");
      const build = digest(JSON.stringify([html, files])).slice(0, 16);
      const named = html.replace("</head>", `  <meta name="${buildMetaName}" content="${build}" />\n  </head>`);
      const list: FileList = { build, document: digest(named), files };
      writeFileSync(join(dir, documentName), named);
      writeFileSync(join(dir, fileListName), JSON.stringify(list));
    },
  };
}

/** Paths from the folder, with slashes. */
function filesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1))
    .map((name) => name.split(sep).join("/"))
    .sort();
}

/** SHA-256 in hexadecimal. */
function digest(content: string | Uint8Array): string {
  return createHash("sha256").update(content).digest("hex");
}
