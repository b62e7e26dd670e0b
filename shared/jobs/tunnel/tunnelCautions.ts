/** What to keep in mind before and during a test. */
export const tunnelCautions: readonly string[] = [
  "A model that comes off its support is a projectile: secure it, keep everybody out of the test section and out of its line while the flow is on, and follow the house rules of the tunnel.",
  "Use a light model without lead. Where the real puck is tested, lead stays sealed under its coat; local rules and licensed practice come first.",
];

/** Holds for every reduced test. */
export const reductionCaution =
  "A drag coefficient from a tunnel holds for that model, support and stream. It proves neither safety nor compliance with any rule.";
