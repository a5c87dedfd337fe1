import type { FillGap } from "../../model/fill-order.ts";
import type { Noticing } from "../../questions/drift/noticing.ts";
import type { Drift } from "../../questions/drift.ts";
import { numberInSeason } from "../../results/fill-name.ts";
import type { driftCharts as templates } from "../en/drift-charts.ts";
import type { Format } from "../format.ts";
import { sentences } from "./sentences.ts";

/** Which words stand on the charts of fills in order of time. */
export function driftChartsSayings(format: Format, say: typeof templates) {
  const noticed = (at: {
    readonly shift: number;
    readonly chance: number;
    readonly fillsSince: number;
  }): string =>
    say.noticed({
      fillsSince: at.fillsSince,
      shift: format.percent(at.shift),
      chance: format.chance(at.chance),
    });
  return {
    chart: {
      ...say.chart,
      description: ({ input, stretches, trending, stoodApart, differs }: Drift): string => {
        const odd = [...stoodApart, ...(differs === null ? [] : [differs])];
        return sentences(
          say.shown(input.fills),
          ...stretches.map(({ from, to, mean }) =>
            say.level({ from, to, mean: format.value(mean, "delivery") }),
          ),
          trending === null ? null : say.slope(format.signedPercent(trending.perFill.value)),
          odd.length === 0 ? null : say.marked(format.list(odd.map(({ fill }) => String(fill)))),
        );
      },
      gap: ({ afterFill, beforeFill, missingFills, days }: FillGap): string => {
        if (missingFills === 0) return say.pause(format.count(Math.round(days ?? 0)));
        const [from, to] = [numberInSeason(afterFill) + 1, numberInSeason(beforeFill) - 1];
        return missingFills === 1 ? say.oneMissing(from) : say.missing({ from, to });
      },
    },
    noticing: {
      ...say.noticing,
      chance: (bound: Noticing["bound"]): string => say.noticing.chance[bound],
      point: noticed,
      description: ({ fillsBefore, relativeSpread, curves }: Noticing): string =>
        say.noticingDescription({
          fillsBefore,
          spread: format.percent(relativeSpread),
          chances: curves
            .flatMap(({ fillsSince, points }) => {
              const [largest] = points.slice(-1);
              return largest === undefined ? [] : [noticed({ fillsSince, ...largest })];
            })
            .join("; "),
        }),
    },
    scoreChart: {
      ...say.scoreChart,
      description: ({ scoreCharts: { points, cusum } }: Drift): string =>
        say.scores({ fills: points.length, decision: format.plain(cusum.decision) }),
    },
  };
}
