import { expose } from "comlink";
import { createPuckSolver } from "./puckApi";

expose(createPuckSolver());
