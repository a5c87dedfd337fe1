import type { FillGap } from "../../questions/drift/stretches.ts";
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
      band: "expected",
      bandOfNewest: "asked once",
      tolerance: "tolerance",
      before: "before",
      after: "since",
      trend: "fitted line",
      mean: "mean of earlier fills",
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
        "A score is how far a fill lies from those before it, in standard normal units. A line beyond its limits draws the eye to a fill; only the tests above give a verdict.",
    },
  };
}

function describe(result: Drift, format: Format): string {
  const { verdict, shift, trend, fills, input } = result;
  const drawn = input.fills + input.fillsSetAside;
  const outside = fills.filter(({ asItCame }) => asItCame?.outside).map(({ fill }) => String(fill));
  const found =
    verdict === "moved" && shift !== null
      ? ` The mean steps from ${format.value(shift.before, "delivery")} to ${format.value(shift.after, "delivery")} at fill ${shift.since.fill}.`
      : verdict === "trending" && trend !== null
        ? ` A fitted line runs from ${format.value(trend.line.start, "delivery")} to ${format.value(trend.line.end, "delivery")}.`
        : "";
  const marked =
    outside.length === 0
      ? " No fill is outside its band."
      : ` Outside its band: fill ${format.list(outside)}.`;
  return `Delivery of ${fillWords(drawn)} in order of time, each with its interval, against the band expected from the fills before it, and the tolerance lines.${found}${marked}`;
}
