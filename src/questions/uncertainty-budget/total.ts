import { max } from "simple-statistics";
import { at } from "../../errors/at.ts";
import { studentTQuantile } from "../../numeric/distributions/student-t.ts";
import {
  type Budget,
  type Measurement,
  propagateUncertainty,
} from "../../statistics/propagation.ts";
import type { BudgetSource } from "./result.ts";
import type { Source } from "./sources.ts";

/** The rate relative to the one that is set for, as a function of the sources in their order. */
export function rateOf(sources: readonly Source[]): Measurement {
  const factors = sources.map(({ factor }) => factor);
  return (values) => {
    let rate = 1;
    for (let i = 0; i < factors.length; i++) rate *= at(factors, i)(at(values, i));
    return rate;
  };
}

/**
 * The sources with catch scatter and readings of the scale as one, √(scatter² + readings²), on the degrees of freedom that
 * make the delivery's own interval of it: with nothing else in doubt the budget is that interval.
 */
export function catchesAsOne(sources: readonly Source[]): readonly Source[] {
  const readings: readonly BudgetSource[] = ["reading gross", "reading tare"];
  return sources
    .filter(({ name }) => !readings.includes(name))
    .map((source) => {
      if (source.name !== "catch scatter") return source;
      const own = sources.filter(({ name }) => readings.includes(name));
      const parts = [source, ...own].map(({ standardUncertainty }) => standardUncertainty);
      const { dfWithReadings = source.df } = source;
      return {
        ...source,
        standardUncertainty: Math.hypot(...parts),
        law: dfWithReadings === null ? "normal" : source.law,
        df: dfWithReadings,
      };
    });
}

/**
 * Combined and expanded uncertainty of the rate: Welch–Satterthwaite over `catchesAsOne`. Never narrower than any one of
 * those sources alone: with fewer than about five degrees of freedom that formula lets a small further doubt shrink the
 * whole, which no further doubt can do.
 */
export function totalOf(
  sources: readonly Source[],
  level: number,
): Pick<Budget, "combined" | "effectiveDf" | "coverageFactor" | "expanded"> {
  const together = catchesAsOne(sources);
  const { combined, effectiveDf, ...budget } = propagateUncertainty(
    rateOf(together),
    together,
    level,
  );
  const alone = budget.contributions.map(
    ({ contribution, df }) => studentTQuantile((1 + level) / 2, df ?? Infinity) * contribution,
  );
  const expanded = max([budget.expanded, ...alone]);
  const coverageFactor = expanded > budget.expanded ? expanded / combined : budget.coverageFactor;
  return { combined, effectiveDf, coverageFactor, expanded };
}
