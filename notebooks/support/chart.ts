/** A Vega-Lite spec. */
export interface Chart {
  readonly $schema: string;
  readonly title?: unknown;
  readonly description?: unknown;
  readonly autosize?: unknown;
}
