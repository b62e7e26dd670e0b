/** Stand above everything that is said of impacts and wear. */
export const durabilityCautions: readonly string[] = [
  "Impacts: local codes and licensed practice come first. Never throw or drop a puck to try these figures out where a head, a hand or a foot can be hit; a heavy puck injures in water and above all out of it.",
  "Lead: a coat that is worn to its least, cracked or holed lets lead out, which is poisonous. Withdraw the puck at once; do not wait for the hours estimated here.",
  "Durability figures are screening estimates from handbook formulas: no proof that a puck, a tile or a person is safe, nor of compliance with any rule.",
];
