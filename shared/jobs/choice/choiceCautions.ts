/** Stand above everything that is said of a choice. */
export const choiceCautions: readonly string[] = [
  "A choice by these figures is a screening result: no proof that a puck is safe, nor that it complies with any rule. Local codes and licensed practice come first, above all for lead.",
  "A puck that is first here can still injure: never throw it in air, and measure impact, coat and drag before anyone plays with it.",
];
