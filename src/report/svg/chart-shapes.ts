/** What charts compiled to, by all of them but their data: the bins of one report draw the same charts of other figures. */
export type CompiledCharts = Map<string, CompiledChart>;

/** Here without vega's types, which whoever installs this package need not have. */
export interface CompiledChart {
  /** Vega's parsed dataflow. */
  readonly runtime: object;
  /** The tables it waits for; null: it was compiled with its data and is of no use for others. */
  readonly waitsFor: readonly string[] | null;
}
