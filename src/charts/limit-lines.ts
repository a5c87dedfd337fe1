/**
 * Level lines across a chart that people have drawn, such as a tolerance; the key of the chart names them.
 *
 * @param y the chart's vertical channel for a field
 */
export function limitLines(
  limits: readonly number[],
  y: (field: string) => object,
): readonly object[] {
  return [
    {
      data: { values: limits.map((limit) => ({ limit })) },
      mark: { type: "rule", style: "reference" },
      encoding: { y: y("limit") },
    },
  ];
}
