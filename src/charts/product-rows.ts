import { type Hint, hints } from "./hints.ts";

/** A row in a chart of products: its frame, and lines and points along it. */
export const rowHeight = 46;
export const frameHeight = 90;
/** Between two lines of a label; no name can hold it. */
export const lineBreak = "\n";

const lineThickness = 1.75;

/** What rows of a chart are named by and what is measured along it. */
export interface Axes {
  readonly x: (field: string) => object;
  readonly y: object;
}

export function pointLayer(
  values: readonly object[],
  style: string,
  { x, y }: Axes,
  field: string,
  said: readonly Hint[],
): object {
  return {
    data: { values },
    mark: { type: "point", style },
    encoding: { y, x: x(field), ...hints(said) },
  };
}

/**
 * Intervals of the rows that have one; a layer without any would have no extent.
 *
 * @param look  what a line has beside the usual
 */
export function intervalLayer(
  rows: readonly { readonly lower: number | null; readonly upper: number | null }[],
  { x, y }: Axes,
  look: object = {},
): readonly object[] {
  const values = rows.filter(({ lower, upper }) => lower !== null && upper !== null);
  if (values.length === 0) return [];
  return [
    {
      data: { values },
      mark: { type: "rule", style: "estimate", size: lineThickness, ...look },
      encoding: { y, x: x("lower"), x2: { field: "upper" } },
    },
  ];
}

/** One row for each of `rows`; a label may have several lines, so that long names leave room for the numbers. */
export function axesOf(rowField: string, rows: readonly string[], title: string): Axes {
  return {
    x: (field) => ({
      field,
      type: "quantitative",
      title,
      // Under the names of the rows there is room for what the plot is too narrow for.
      axis: { titleAnchor: "end" },
      scale: { zero: false, padding: 12 },
    }),
    y: {
      field: rowField,
      type: "nominal",
      scale: { domain: rows },
      axis: {
        title: null,
        grid: false,
        labelLimit: 400,
        labelExpr: `split(datum.label, ${JSON.stringify(lineBreak)})`,
      },
    },
  };
}
