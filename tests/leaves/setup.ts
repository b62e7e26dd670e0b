import { vi } from "vitest";

// Components are looked at without the plot library, whose start takes a second in every file: that it draws is seen
// in the scenarios of the whole page.
vi.mock("../../src/app/components/plot/loadPlotly", () => {
  const picture = "data:image/svg+xml,%3Csvg xmlns='http://www.w3.org/2000/svg' width='9' height='9'/%3E";
  const library = {
    react: async () => {},
    purge: () => {},
    toImage: async () => picture,
    downloadImage: async () => "",
  };
  return { loadPlotly: async () => library };
});
