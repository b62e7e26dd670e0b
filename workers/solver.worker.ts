import { expose } from "comlink";
import { createSolver } from "./solverApi";

expose(createSolver());
