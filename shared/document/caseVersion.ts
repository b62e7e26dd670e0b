/** The version of the case file's format, the value of its key "wakewrightCase". Apart from the schema, which is large. */
export const caseVersion = 1;
