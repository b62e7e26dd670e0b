import fc from "fast-check";

// One seed for every run, so that a red build can be repeated; another one may be given to search further.
fc.configureGlobal({ seed: Number(process.env.WAKEWRIGHT_SEED ?? 20261125) });
