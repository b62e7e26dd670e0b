/** Name and version of the program, without a date, so that equal cases give equal documents. */
export const generatedBy = "Wakewright 0.1.0";
