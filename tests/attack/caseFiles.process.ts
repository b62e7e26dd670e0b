import { readCase } from "../../shared/case/readCase";
import { demoDocuments } from "./demoDocuments";
import { mutatedJson } from "./mutateJson";
import { refusalFaults } from "./refusals";
import { serveSeeds } from "./seededProcess";

const originals = demoDocuments();

serveSeeds((seed) => {
  const reading = readCase(mutatedJson(originals, seed), "case.json");
  if (reading.ok) return { kind: "accepted", faults: [] };
  return { kind: "refused", faults: refusalFaults(reading.problems) };
});
