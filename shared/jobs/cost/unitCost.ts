/** What one accepted puck of a batch costs, by part. All in one currency. */
export interface UnitCost {
  readonly material: number;
  readonly labour: number;
  /** What was spent on pucks that are not accepted. */
  readonly scrap: number;
  readonly setup: number;
  readonly tooling: number;
}

export const costParts = [
  "material",
  "labour",
  "scrap",
  "setup",
  "tooling",
] as const satisfies readonly (keyof UnitCost)[];

/** What a puck and a batch take. */
export interface Making {
  /** Of one made puck: materials with their waste, and bought parts. */
  readonly material: number;
  /** Of one made puck. */
  readonly labour: number;
  /** Once a batch. */
  readonly setup: number;
  /** Price and how many made pucks each lasts for. */
  readonly tools: readonly { readonly price: number; readonly life: number }[];
  /** Fraction of made pucks that are accepted, above 0. */
  readonly accepted: number;
}

/**
 * Unit cost of a batch: what is spent on every made puck is carried by the accepted ones, setting up and whole tools are
 * spread over the batch. After Ashby, Materials Selection in Mechanical Design, 4th ed. (2011), section 18.6, with
 * rejects added (from memory).
 * @param batch accepted pucks, 1 or more
 */
export function unitCost({ material, labour, setup, tools, accepted }: Making, batch: number): UnitCost {
  const made = batch / accepted;
  const wholeTools = tools.reduce((sum, { price, life }) => sum + price * Math.max(1, Math.ceil(made / life)), 0);
  return {
    material,
    labour,
    scrap: (material + labour) * (1 / accepted - 1),
    setup: setup / batch,
    tooling: wholeTools / batch,
  };
}

export function totalOf(cost: UnitCost): number {
  return costParts.reduce((sum, part) => sum + cost[part], 0);
}

/** Cost of a mass of material when a fraction of what is bought is wasted: m price / (1 - waste). Ashby (2011), eq. 18.1. */
export function materialCost(mass: number, pricePerKilogram: number, waste: number): number {
  return (mass * pricePerKilogram) / (1 - waste);
}
