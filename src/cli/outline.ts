import { basename, resolve } from "node:path";
import { demoDesign } from "../../shared/case/design";
import { designToCase } from "../../shared/case/designToCase";
import { sectionToDocument } from "../../shared/case/sectionToDocument";
import { mostSections } from "../../shared/document/limits";
import { importOutline } from "../../shared/outlines/importOutline";
import { largestOutlineBytes, type OutlineUnit } from "../../shared/outlines/outline";
import type { SolvedOutline } from "../../shared/outlines/solvedOutline";
import { problem, type Result, success } from "../../shared/result";
import { textTable } from "../../shared/tables/textTable";
import { caseFileText } from "./caseFile";
import { endOnSignals, exitDone, refuse } from "./command";
import type { OutlineInput } from "./commandInputs";
import { beginOutputFile, type OutputFile } from "./outputFile";
import { jsonText } from "./severalCases";
import { shownInputName, standardInputName, standardInputText } from "./standardInput";

interface ReadOutline {
  readonly file: string;
  readonly name: string;
  readonly unit: OutlineUnit;
  readonly solved: SolvedOutline;
}

export async function runOutline({ files, to, unit, isJson }: OutlineInput): Promise<number> {
  if (to !== null && files.length > mostSections) {
    return refuse(`${files.length} outlines were named; a case has at most ${mostSections} sections`);
  }
  const read: ReadOutline[] = [];
  for (const file of files) {
    const one = await readFile(file, unit);
    if (!one.ok) return refuse(`${shownInputName(file)}: ${one.problem.message}`);
    read.push(one.value);
  }
  let output: OutputFile | null = null;
  endOnSignals(() => output?.discard());
  if (to !== null) {
    const inputs = files.filter((file) => file !== standardInputName).map((file) => resolve(file));
    const begun = beginOutputFile(resolve(to), to, inputs, "--to");
    if (!begun.ok) return refuse(begun.problem.message);
    output = begun.value;
    const written = output.commit(`${JSON.stringify(caseOf(read), null, 2)}\n`);
    if (!written.ok) return refuse(written.problem.message);
  }
  process.stdout.write(isJson ? jsonText(read.map((one) => ({ file: one.file, results: figures(one) }))) : table(read));
  return exitDone;
}

async function readFile(file: string, unit: OutlineUnit | null): Promise<Result<ReadOutline>> {
  const text =
    file === standardInputName
      ? await standardInputText()
      : caseFileText(resolve(file), file, "an outline", largestOutlineBytes);
  // These messages name the file themselves.
  if (!text.ok) return problem(text.problem.code, text.problem.message.slice(`${shownInputName(file)}: `.length));
  const name =
    file === standardInputName
      ? "outline"
      : basename(file)
          .replace(/\.[^.]*$/, "")
          .slice(0, 100) || "outline";
  const imported = importOutline({
    text: text.value,
    fileName: file,
    format: null,
    unit,
    scale: 1,
    quarterTurns: 0,
    name,
    cornerRadius: null,
  });
  if (!imported.ok) return imported;
  const { solved, unitFrom } = imported.value;
  const unitRemarks =
    unitFrom === "assumed" ? ["The file names no unit: taken as millimetres; --unit changes it."] : [];
  return success({
    file: shownInputName(file),
    name,
    unit: imported.value.unit,
    solved: { ...solved, remarks: [...unitRemarks, ...solved.remarks] },
  });
}

/** One case with the outlines as its sections, under the conditions of the demonstration. */
function caseOf(read: readonly ReadOutline[]) {
  // The panels are left to each section's own corners.
  const { panelCount: _, ...base } = designToCase({
    ...demoDesign,
    title: read
      .map(({ name }) => name)
      .join(", ")
      .slice(0, 200),
  });
  return {
    ...base,
    note: "Sections read from outlines. Speed, fluid, roughness and turbulence are those of the demonstration: put in your own.",
    sections: read.map(({ name, solved }) => sectionToDocument(solved.spec, name)),
  };
}

function figures({ name, unit, solved }: ReadOutline) {
  return {
    name,
    unit,
    heightMetres: solved.height,
    lengthMetres: solved.length,
    areaSquareMetres: solved.area,
    deviationMetres: solved.deviation,
    outlineHeightMetres: solved.givenHeight,
    outlineLengthMetres: solved.givenLength,
    corners: solved.corners,
    cornerRadiusMetres: solved.cornerRadius,
    remarks: solved.remarks,
  };
}

function table(read: readonly ReadOutline[]): string {
  const millimetres = (metres: number, digits: number) => (metres * 1000).toFixed(digits);
  const lines = textTable(
    [
      { title: "outline", unit: "", isText: true, cell: ({ file }) => file },
      { title: "height", unit: "mm", cell: ({ solved }) => millimetres(solved.height, 3) },
      { title: "length", unit: "mm", cell: ({ solved }) => millimetres(solved.length, 3) },
      { title: "area", unit: "mm2", cell: ({ solved }) => (solved.area * 1e6).toPrecision(6) },
      { title: "deviation", unit: "mm", cell: ({ solved }) => millimetres(solved.deviation, 4) },
      { title: "corners", unit: "", cell: ({ solved }) => String(solved.corners) },
      {
        title: "corner radius",
        unit: "mm",
        cell: ({ solved }) => (solved.corners === 0 ? "-" : millimetres(solved.cornerRadius, 3)),
      },
    ],
    read,
  );
  const remarks = read.flatMap(({ file, solved }) => solved.remarks.map((remark) => `${file}: ${remark}`));
  return `${[...lines, ...(remarks.length > 0 ? ["", ...remarks] : [])].join("\n")}\n`;
}
