import { expose } from "comlink";
import { createOutlineReader } from "./outlineApi";

expose(createOutlineReader());
