import { expose } from "comlink";
import { createEvidenceSolver } from "./evidenceApi";

expose(createEvidenceSolver());
