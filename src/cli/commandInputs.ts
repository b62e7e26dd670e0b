import type { CsvOption } from "../../shared/case/jobBlocks";
import type { OutlineUnit } from "../../shared/outlines/outline";

/** A {@link CsvOption} is the CSV of one job of a case, in place of its sections. */
export type OutputFormat = "table" | "json" | "csv" | CsvOption;

export interface CaseRunInput {
  readonly wants: "run";
  /** At least one; "-" is standard input. */
  readonly files: readonly string[];
  readonly format: OutputFormat;
  readonly out: string | null;
}

export interface NextInput {
  /** At least one; "-" is standard input. */
  readonly files: readonly string[];
  readonly format: "table" | "json" | "csv";
  readonly out: string | null;
}

export interface HandoffInput {
  /** At least one; "-" is standard input. */
  readonly files: readonly string[];
  readonly puck: string;
  readonly folder: string;
  readonly isReplacing: boolean;
}

export interface SheetsInput {
  /** At least one; "-" is standard input. */
  readonly files: readonly string[];
  readonly folder: string;
  readonly isReplacing: boolean;
}

export interface OutlineInput {
  /** At least one; "-" is standard input. */
  readonly files: readonly string[];
  /** Where the case goes; null for none. */
  readonly to: string | null;
  /** null for what the files name, else millimetres. */
  readonly unit: OutlineUnit | null;
  readonly isJson: boolean;
}

export interface TradeoffInput {
  /** At least one; "-" is standard input. */
  readonly files: readonly string[];
  readonly isJson: boolean;
  readonly out: string | null;
  readonly state: string | null;
}
