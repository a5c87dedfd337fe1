import type { ChartSpec } from "../../src/charts/chart-spec.ts";
import { baseSpec } from "../../src/charts/theme.ts";

/** Net mass against turns with a line, two bands and a doubted catch. Invented numbers. */
export function sampleDeliveryChart(bin: string): ChartSpec {
  const turns = Array.from({ length: 13 }, (_, i) => i * 2.5);
  const line = turns.map((x) => ({
    turns: x,
    fitted: 0.4127 * x,
    meanLower: 0.4071 * x,
    meanUpper: 0.4183 * x,
    nextLower: Math.max(0, 0.4127 * x - 0.11 * Math.sqrt(x)),
    nextUpper: 0.4127 * x + 0.11 * Math.sqrt(x),
  }));
  const catches = [
    { bin, catch: 1, turns: 10, net: 4.05, doubted: false },
    { bin, catch: 2, turns: 10, net: 4.22, doubted: false },
    { bin, catch: 3, turns: 20, net: 8.31, doubted: false },
    { bin, catch: 4, turns: 20, net: 8.14, doubted: false },
    { bin, catch: 5, turns: 30, net: 12.42, doubted: false },
    { bin, catch: 6, turns: 30, net: 13.62, doubted: true },
  ];
  const x = { field: "turns", type: "quantitative", title: "Meter turns" };
  const y = (field: string) => ({ field, type: "quantitative", title: "Net mass (kg)" });
  const points = (doubted: boolean, style: string) => ({
    data: { values: catches.filter((each) => each.doubted === doubted) },
    mark: { type: "point", style },
    encoding: {
      x,
      y: y("net"),
      tooltip: [
        { field: "bin", title: "Bin" },
        { field: "turns", title: "Meter turns" },
        { field: "net", title: "Net mass (kg)" },
      ],
    },
  });
  const area = (style: string, lower: string, upper: string) => ({
    data: { values: line },
    mark: { type: "area", style, clip: true },
    encoding: { x, y: y(upper), y2: { field: lower } },
  });
  return {
    ...baseSpec({
      title: `Net mass against turns, ${bin}`,
      description:
        "Six catches between 10 and 30 turns lie along a line through zero, except one of 30 turns, which is 1.2 kg above it.",
    }),
    layer: [
      area("next-band", "nextLower", "nextUpper"),
      area("band", "meanLower", "meanUpper"),
      {
        data: { values: line },
        mark: { type: "line", style: "estimate" },
        encoding: { x, y: y("fitted") },
      },
      points(false, "observation"),
      points(true, "flagged"),
    ],
  };
}

/** Delivery per turn fill by fill for three bins, with a book value. Invented numbers. */
export function sampleFillsChart(): ChartSpec {
  const bins = [
    { bin: "Wheat bin", start: 0.412, step: 0.0004 },
    { bin: "Pea bin", start: 0.388, step: 0.0031 },
    { bin: "Starter bin", start: 0.353, step: -0.0002 },
  ];
  const values = bins.flatMap(({ bin, start, step }) =>
    Array.from({ length: 9 }, (_, i) => {
      const estimate = start + step * i + 0.003 * Math.sin(3 * i + start * 40);
      return { bin, fill: i + 1, estimate, lower: estimate - 0.006, upper: estimate + 0.006 };
    }),
  );
  const x = {
    field: "fill",
    type: "quantitative",
    title: "Fill",
    axis: { tickMinStep: 1 },
    scale: { zero: false },
  };
  const scale = { zero: false };
  const y = {
    field: "estimate",
    type: "quantitative",
    title: "Delivery per turn (kg/turn)",
    scale,
  };
  const color = { field: "bin", type: "nominal", title: null };
  return {
    ...baseSpec({
      title: "Delivery per turn over the season",
      description:
        "Nine fills of three bins. Wheat and starter stay level; pea rises from 0.388 to 0.413 kg/turn.",
    }),
    data: { values },
    layer: [
      {
        mark: { type: "rule", strokeWidth: 2 },
        encoding: { x, y: { ...y, field: "lower" }, y2: { field: "upper" }, color },
      },
      { mark: { type: "line", strokeWidth: 1.5 }, encoding: { x, y, color } },
      { mark: { type: "point" }, encoding: { x, y, color, shape: color } },
      {
        data: { values: [{ book: 0.4 }] },
        mark: { type: "rule", style: "reference" },
        encoding: { y: { field: "book", type: "quantitative", scale } },
      },
    ],
  };
}
