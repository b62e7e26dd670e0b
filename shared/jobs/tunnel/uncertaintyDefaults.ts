/** How uncertainty is worked out where a case leaves it out: coverage as a share, Monte Carlo samples of each point, their seed. */
export const uncertaintyDefaults = { coverage: 0.95, samples: 20_000, seed: 1 };
