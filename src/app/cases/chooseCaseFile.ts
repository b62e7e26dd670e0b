import { largestCaseBytes } from "../../../shared/document/limits";
import "./caseEvents";
import { emit } from "../view/emit";

/** Answers a choice in a file field, which is emptied so that the same file can be chosen again. Sends `case-file` or `case-refused`. */
export function chooseCaseFile(event: Event): void {
  const input = event.target as HTMLInputElement;
  const file = input.files?.[0];
  input.value = "";
  if (file === undefined) return;
  if (file.size > largestCaseBytes) {
    emit(
      input,
      "case-refused",
      `${file.name} has ${file.size} bytes; a case file must have at most ${largestCaseBytes}.`,
    );
  } else {
    emit(input, "case-file", { fileName: file.name, text: file.text() });
  }
}
