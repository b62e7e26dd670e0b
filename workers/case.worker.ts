import { expose } from "comlink";
import { createCaseRunner } from "./caseApi";

expose(createCaseRunner());
