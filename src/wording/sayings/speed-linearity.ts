import type { SpeedLinearity, SpeedPoint } from "../../questions/speed-linearity.ts";
import type { speedLinearity as templates } from "../en/speed-linearity.ts";
import type { Format } from "../format.ts";
import { limits } from "./limits.ts";
import { speedSpan } from "./speed-span.ts";

/** Which sentences are said about delivery and the speed of the meter. */
export function speedLinearitySayings(format: Format, say: typeof templates) {
  const speeds = ({ from, to }: SpeedLinearity["caught"]) => speedSpan(from, to, format);
  const facts = (result: SpeedLinearity) => ({
    ...result,
    caught: speeds(result.caught),
    reference: format.plain(result.reference),
    catches: result.points.length,
    level: format.percent(result.options.level, 0),
    tolerance: format.plusMinus(result.options.tolerance),
  });
  const test = (found: { readonly statistic: number; readonly pValue: number }) => ({
    statistic: format.plain(found.statistic),
    p: format.pValue(found.pValue),
  });

  return {
    ...say.labels,
    sentence: (result: SpeedLinearity): string => {
      if (result.slope === null) return say.notTold(facts(result));
      const { value, interval } = result.slope.acrossRange;
      const range = limits(interval, format.signedPercent, format);
      return say.change({ ...facts(result), change: format.signedPercent(value), range });
    },
    within: (result: SpeedLinearity): string | null => {
      if (result.within === null) return null;
      const { sure, estimated } = result.within;
      return say.within({ ...facts(result), sure: speeds(sure), estimated: speeds(estimated) });
    },
    slope: ({ slope }: SpeedLinearity): string | null => {
      if (slope === null) return null;
      const { estimate, fills } = slope;
      const perTurn = format.signedPercent(estimate.value, 3);
      return say.slope({ ...test(slope), slope: perTurn, df: estimate.df, fills });
    },
    curvature: ({ curvature }: SpeedLinearity): string =>
      curvature === null ? say.noBendTest : say.bend({ ...curvature, ...test(curvature) }),
    lackOfFit: ({ lackOfFit }: SpeedLinearity): string =>
      lackOfFit === null ? say.noFitTest : say.lackOfFit({ ...lackOfFit, ...test(lackOfFit) }),
    passedOver: ({ input }: SpeedLinearity): string | null =>
      input.withoutSpeed === 0 ? null : say.passedOver(input.withoutSpeed),
    chart: {
      ...say.chart,
      description: (result: SpeedLinearity) => {
        const change = result.slope?.acrossRange.value ?? null;
        return say.chartDescription({
          ...facts(result),
          change: change === null ? null : format.signedPercent(change),
        });
      },
      catch: (point: SpeedPoint) => {
        const off = format.signedPercent(point.relative - 1);
        return say.chartCatch({ ...point, off, speed: format.plain(point.turnsPerMin) });
      },
    },
  };
}
