import type { charts } from "../en/charts.ts";
import type { Format } from "../format.ts";

/** The keys of the charts, with every figure made words. */
export function chartsSayings(format: Format, say: typeof charts) {
  const whole = (said: (share: string) => string) => (share: number) =>
    said(format.percent(share, 0));
  const around = (said: (share: string) => string) => (share: number) =>
    said(format.plusMinus(share));
  return {
    ...say,
    interval: whole(say.interval),
    nextCatch: whole(say.nextCatch),
    nextFill: whole(say.nextFill),
    reaches: around(say.reaches),
    asked: whole(say.asked),
    afterFills: (fills: number) =>
      fills === 1 ? say.afterOneFill : say.afterFills(format.count(fills)),
    byChance: whole(say.byChance),
    chanceAlone: whole(say.chanceAlone),
    ofCases: whole(say.ofCases),
    newProduct: whole(say.newProduct),
    lineBand: whole(say.lineBand),
    together: whole(say.together),
    pairAlone: whole(say.pairAlone),
    assured: whole(say.assured),
    tolerance: around(say.tolerance),
    within: around(say.within),
    outletBand: around(say.outletBand),
    equivalent: around(say.equivalent),
  };
}
