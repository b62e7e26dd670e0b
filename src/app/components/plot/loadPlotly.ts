type PlotlyLibrary = typeof import("plotly.js-dist-min");

let loading: Promise<PlotlyLibrary> | null = null;

/** Loads the plot library on first use; the page works without it until then. A failed load is tried again next time. */
export function loadPlotly(): Promise<PlotlyLibrary> {
  loading ??= import("plotly.js-dist-min").then(
    (module) => {
      // A CommonJS library: the bundler hands it over as the default export, its types say the namespace.
      const { default: library } = module as unknown as { default?: PlotlyLibrary };
      return library ?? module;
    },
    (error: unknown) => {
      loading = null;
      throw error;
    },
  );
  return loading;
}
