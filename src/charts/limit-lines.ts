/** A level that people have drawn, such as a tolerance, with the words beside its line. */
export interface LimitLine {
  readonly limit: number;
  readonly words: string;
}

/**
 * Level lines across a chart, each with its words at the left end.
 *
 * @param y the chart's vertical channel for a field
 */
export function limitLines(
  values: readonly LimitLine[],
  y: (field: string) => object,
): readonly object[] {
  return [
    { data: { values }, mark: { type: "rule", style: "reference" }, encoding: { y: y("limit") } },
    {
      data: { values },
      mark: { type: "text", style: "reference-label", align: "left", x: 4, dy: -7 },
      encoding: { y: y("limit"), text: { field: "words" } },
    },
  ];
}
