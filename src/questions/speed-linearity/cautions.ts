import {
  type Caution,
  type CautionCode,
  type CautionFacts,
  caution,
} from "../../results/caution.ts";
import { informative } from "../../statistics/pooled-slope.ts";
import { type SpeedGroup, speedAgainstTurns } from "./groups.ts";
import { fewestCatches, leastSpeedRatio } from "./limits.ts";
import type { SpeedLinearity } from "./result.ts";

/** The answer before anything is said about it. */
export type Uncautioned = Omit<SpeedLinearity, "cautions">;

type Say = <C extends CautionCode>(code: C, facts: CautionFacts[C]) => Caution;

const significance = 0.05;
/** Beyond this the two can hardly be told apart: a variance inflation of 2.8 (1/(1 − 0.8²)). */
const strongCorrelation = 0.8;

/** Why nothing is tested, or what the test found that a person should act on. */
export function speedCautions(
  result: Uncautioned,
  groups: readonly SpeedGroup[],
): readonly Caution[] {
  const { bin, product, slope } = result;
  const say: Say = (code, facts) => caution(code, { bin, product }, facts);
  return slope === null
    ? [whyNot(result, groups, say)]
    : aboutSlope(result, slope, speedAgainstTurns(groups), say);
}

function whyNot({ caught, input }: Uncautioned, groups: readonly SpeedGroup[], say: Say): Caution {
  if (caught.from === caught.to) return say("one-meter-speed", { turnsPerMin: caught.from });
  if (caught.to < leastSpeedRatio * caught.from)
    return say("speeds-too-alike", { lower: caught.from, upper: caught.to });
  const telling = informative(groups);
  if (telling.length === 0) return say("speed-never-varied-within-a-fill", { fills: input.fills });
  const catches = telling.reduce((count, { x }) => count + x.length, 0);
  // A level for each telling fill, a slope, and one more to have scatter to judge by.
  const needed = Math.max(fewestCatches, telling.length + 2);
  return catches < needed
    ? say("too-few-for-speed", { catches, needed })
    : say("speed-catches-agree", { catches });
}

function aboutSlope(
  { curvature, lackOfFit }: Uncautioned,
  { acrossRange, pValue }: NonNullable<SpeedLinearity["slope"]>,
  withTurns: number | null,
  say: Say,
): Caution[] {
  const found: Caution[] = [];
  if (pValue < significance)
    found.push(
      say("speed-changes-delivery", {
        change: acrossRange.value,
        lower: acrossRange.interval?.lower ?? acrossRange.value,
        upper: acrossRange.interval?.upper ?? acrossRange.value,
        pValue,
      }),
    );
  if (curvature !== null && curvature.pValue < significance)
    found.push(say("speed-not-straight", { by: "curvature", pValue: curvature.pValue }));
  if (lackOfFit !== null && lackOfFit.pValue < significance)
    found.push(say("speed-not-straight", { by: "lack of fit", pValue: lackOfFit.pValue }));
  if (withTurns !== null && Math.abs(withTurns) > strongCorrelation)
    found.push(say("speed-goes-with-turns", { correlation: withTurns }));
  return found;
}
