import type { FillGap } from "../../model/fill-order.ts";
import type { Drift } from "../../questions/drift.ts";
import type { Format } from "../format.ts";
import { fillWords } from "./counted.ts";

/** Words on the charts of fills in order of time. */
export function englishDriftCharts(format: Format) {
  return {
    chart: {
      title: ({ bin }: Drift) => `Fills in order of time, bin ${bin}`,
      description: (result: Drift) => describe(result, format),
      fill: "Fill",
      date: "Date",
      delivery: (unit: string) => `Delivery (${unit})`,
      catches: "Catches",
      tolerance: "tolerance",
      level: "level",
      trend: "trend",
      apart: "stood apart",
      differs: "differs",
      gap: ({ afterFill, beforeFill, missingFills, days }: FillGap): string => {
        if (missingFills === 1) return `${afterFill + 1} missing`;
        if (missingFills > 1) return `${afterFill + 1}–${beforeFill - 1} missing`;
        return `${format.count(Math.round(days ?? 0))} days`;
      },
    },
    scoreChart: {
      title: ({ bin }: Drift) => `Charts that remember earlier fills, bin ${bin}`,
      description: ({ scoreCharts }: Drift): string =>
        `Two charts of the normal scores of ${scoreCharts.points.length} fills, each fill against those before it: an exponentially weighted average with its limits, and two cumulative sums with the decision lines at ${format.plain(scoreCharts.cusum.decision)}. They are for the eye; the verdict does not use them.`,
      ewma: "EWMA of scores",
      cusum: "CUSUM of scores",
      limits: "limits",
      decision: "decision line",
      fill: "Fill",
      score: "Score",
      above: "above",
      below: "below",
      caption:
        "A score is how far a fill lies from those before it, in standard normal units. A line beyond its limits draws the eye to a fill; the verdict does not use it.",
    },
  };
}

function describe(result: Drift, format: Format): string {
  const { stretches, differs, stoodApart, trending } = result;
  const levels = stretches.map(
    ({ from, to, mean }) =>
      ` ${from === to ? `Fill ${from}` : `Fills ${from} to ${to}`}: ${format.value(mean, "delivery")} on average.`,
  );
  const rise =
    trending === null
      ? ""
      : ` The line changes by ${format.signedPercent(trending.perFill.value)} a fill.`;
  const odd = [
    ...stoodApart.map(({ fill }) => String(fill)),
    ...(differs === null ? [] : [String(differs.fill)]),
  ];
  const marked = odd.length === 0 ? "" : ` Marked as standing apart: fill ${format.list(odd)}.`;
  return `Delivery of ${fillWords(result.input.fills)} in order of time, each with its interval, the level of each stretch, and the tolerance lines about the level in force.${levels.join("")}${rise}${marked}`;
}
