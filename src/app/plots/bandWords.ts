/** What the band of a prediction holds: of a section, and of a whole puck. */
export const bandWords = {
  section: "nine in ten published values",
  puck: "what the methods and sources behind it allow",
} as const;
