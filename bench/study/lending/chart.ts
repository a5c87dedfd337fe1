import type { ChartSpec } from "../../../src/charts/chart-spec.ts";
import { composedSpec } from "../../../src/charts/theme.ts";
import { type Compared, lines, namesOfFifths } from "./comparison.ts";
import { coverage, errorOfShare, fifths, level, medianHalfWidth } from "./outcomes.ts";

const panel = { width: 300, height: 170 };
const x = {
  field: "fifth",
  type: "nominal",
  sort: null,
  title: "Fifths of the meters, by their own true spread",
  axis: { labelAngle: 0, labelExpr: "split(datum.label, ' ')[0]" },
};
const color = { field: "line", type: "nominal", sort: null, title: null };
const shape = { ...color };
const percent = { type: "quantitative", scale: { domain: [80, 100], clamp: true } };

/** Coverage and width of both lines over fifths of the meters by their own spread; two panels a situation. */
export function lendingChart(situations: readonly Compared[]): ChartSpec {
  return {
    ...composedSpec({
      title: "Bands with what other bins lend, and by itself",
      description: `Coverage of bands of ${100 * level} % and their median half-width, over fifths of the meters by their own true spread, with other bins and by itself: ${situations.map(({ situation }) => situation).join("; ")}.`,
    }),
    vconcat: situations.map(({ situation, outcomes }) => ({
      title: `${situation.charAt(0).toUpperCase()}${situation.slice(1)}`,
      data: { values: valuesOf(outcomes) },
      hconcat: [
        {
          ...panel,
          layer: [
            {
              mark: { type: "rule", style: "reference" },
              encoding: { y: { ...percent, datum: 100 * level } },
            },
            ...drawn({ ...percent, field: "coverage", title: "Coverage (%)" }),
            {
              mark: { type: "rule" },
              encoding: { x, y: { ...percent, field: "lower" }, y2: { field: "upper" }, color },
            },
          ],
        },
        {
          ...panel,
          layer: drawn({
            field: "halfWidth",
            type: "quantitative",
            scale: { type: "log", nice: false, padding: 12 },
            axis: { values: [1, 1.5, 2, 3, 5, 7, 10, 15, 20, 30, 50, 100] },
            title: "Median half-width (± %)",
          }),
        },
      ],
    })),
  };
}

function drawn(y: ChartSpec): readonly ChartSpec[] {
  return [
    { mark: { type: "line" }, encoding: { x, y, color } },
    { mark: { type: "point" }, encoding: { x, y, color, shape } },
  ];
}

function valuesOf(outcomes: Compared["outcomes"]) {
  return fifths(outcomes).flatMap((part, i) =>
    lines.flatMap(([line, bandsOf]) => {
      const bands = bandsOf(part);
      const [held, halfWidth] = [coverage(bands), medianHalfWidth(bands)];
      if (held === null || halfWidth === null) return [];
      const error = errorOfShare(held, bands.length);
      return {
        fifth: namesOfFifths[i],
        line,
        coverage: 100 * held,
        lower: 100 * (held - error),
        upper: Math.min(100, 100 * (held + error)),
        halfWidth: 100 * halfWidth,
      };
    }),
  );
}
