import type { DriftCautionFacts } from "../../results/caution-facts/drift.ts";
import type { cautionsDrift as templates } from "../en/cautions-drift.ts";
import type { Format } from "../format.ts";
import type { CautionSentences } from "./caution-sentences.ts";
import { change } from "./change.ts";
import { limits } from "./limits.ts";
import { oneIn } from "./one-in.ts";

/** A code that is not here carries no figures: its facts go to the sentence as they are. */
export function cautionsDriftSayings(
  format: Format,
  { gaps, ...say }: typeof templates,
): CautionSentences<DriftCautionFacts> {
  const days = (count: number) => {
    const whole = Math.round(count);
    return { words: format.count(whole), one: whole === 1 };
  };
  return {
    ...say,
    "fill-differs": ({ difference, earlierFills, pValue, limit }) =>
      say["fill-differs"]({
        ...change(difference, format),
        earlierFills,
        p: format.pValue(pValue),
        oneIn: oneIn(limit, format),
      }),
    "fill-differs-confirmed": ({ difference, usualCatches, ...facts }) =>
      say["fill-differs-confirmed"]({
        ...facts,
        ...change(difference, format),
        usualCatches: format.plain(usualCatches),
      }),
    "moved-since": ({ sinceFill, season = null, change: moved, lower, upper }) =>
      say["moved-since"]({
        ...change(moved, format),
        since: sinceFill,
        season,
        range: limits({ lower, upper }, format.signedPercent, format),
      }),
    trending: ({ perFill, fills }) => say.trending({ ...change(perFill, format), fills }),
    "stood-apart": ({ difference, backWith }) =>
      say["stood-apart"]({ ...change(difference, format), backWith }),
    "product-changed": ({ otherProducts, beforeFills }) =>
      say["product-changed"]({
        products: format.list(otherProducts),
        beforeFills: beforeFills.length,
        fills: format.list(beforeFills.map(String)),
      }),
    "gaps-between-fills": ({ missingFills, longestPauseDays }) =>
      say["gaps-between-fills"](
        [
          ...(missingFills === 0 ? [] : [gaps.missing(missingFills)]),
          ...(longestPauseDays === null ? [] : [gaps.longestPause(days(longestPauseDays))]),
        ].join("; "),
      ),
    "column-splits-fills": ({ columns, low, high, difference, pValue, explainsSince }) =>
      say["column-splits-fills"]({
        columns: format.list(columns),
        low,
        high,
        percent: format.percent(difference),
        p: format.pValue(pValue),
        explainsSince,
      }),
    "trend-or-wander": ({ pValue }) => say["trend-or-wander"](format.pValue(pValue)),
    "delivery-settles": ({ scope, against, change: found, pValue }) => {
      const facts = { ...change(found, format), p: format.pValue(pValue) };
      return against === "bin level"
        ? say["delivery-settles"].binLevel({ ...facts, betweenFills: scope === "between fills" })
        : say["delivery-settles"].catchOrder(facts);
    },
    "scatter-unusual": ({ ratio, pValue }) =>
      say["scatter-unusual"]({ times: format.plain(ratio, 2), p: format.pValue(pValue) }),
    "scatter-beyond-usual": ({ ratio, limit }) =>
      say["scatter-beyond-usual"]({ times: format.plain(ratio, 2), oneIn: oneIn(limit, format) }),
    "few-scatter-apart": ({ ratio, pValue }) =>
      say["few-scatter-apart"]({ times: format.plain(ratio, 2), p: format.pValue(pValue) }),
    "no-scatter-to-compare": ({ catches, usualKnown }) => {
      const { oneCatch, noneEarlier, exact } = say["no-scatter-to-compare"];
      return catches === 1 ? oneCatch : usualKnown ? exact : noneEarlier;
    },
  };
}
