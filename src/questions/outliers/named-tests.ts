import { max, min } from "simple-statistics";
import type { Catch } from "../../data/types.ts";
import type { Fill } from "../../model/meters.ts";
import { relativeDust } from "../../numeric/rounding-dust.ts";
import {
  type GeneralizedEsd,
  type GrubbsTest,
  generalizedEsd,
  grubbsTest,
} from "../../statistics/outlier-tests.ts";

/** Why a named test is not given. */
export type NoNamedTest =
  | "too few catches"
  | "catches agree exactly"
  /** Without the suspected catches the others weigh the same to the step of the scale: there is nothing to divide by. */
  | "weights tie at the scale's step";

/** The tests others ask for by name. They know the fill's own scatter only, and no turns: equal turns are their case. */
export interface NamedTests {
  readonly grubbs: GrubbsTest | null;
  readonly generalizedEsd: GeneralizedEsd | null;
  /** Null where the test is given. */
  readonly missing: {
    readonly grubbs: NoNamedTest | null;
    readonly generalizedEsd: NoNamedTest | null;
  };
}

const fewestForGrubbs = 3;
const fewestForEsd = 5;
const mostByEsd = 2;

/**
 * Two-sided Grubbs' test and generalized ESD for two, on the deliveries per turn of a fill's catches. Neither is given
 * where the other catches weigh the same: of three clean catches two read alike in a third of all cases on a scale whose
 * step is half the scatter, and the test then declares the third for certain.
 *
 * @param divisionKg  step of the scale of catches that name none, kg; null: unknown, then only equal weights are a tie
 */
export function namedTests(
  { catches }: Fill,
  level: number,
  divisionKg: number | null,
): NamedTests {
  const deliveries = catches.map(({ netKg, turns }) => netKg / turns);
  const enough = (fewest: number) => deliveries.length >= fewest;
  const grubbs = enough(fewestForGrubbs) ? grubbsTest(deliveries, "two-sided", level) : null;
  const esd = enough(fewestForEsd) ? generalizedEsd(deliveries, mostByEsd, level) : null;
  const without = (places: readonly number[]) => catches.filter((_, i) => !places.includes(i));
  const missing = {
    grubbs: !enough(fewestForGrubbs)
      ? "too few catches"
      : grubbs === null
        ? "catches agree exactly"
        : whenTied(without([grubbs.index]), divisionKg),
    generalizedEsd: !enough(fewestForEsd)
      ? "too few catches"
      : esd === null || esd.steps.length === 0
        ? "catches agree exactly"
        : whenTied(without(esd.steps.map(({ index }) => index)), divisionKg),
  } as const;
  return {
    grubbs: missing.grubbs === null ? grubbs : null,
    generalizedEsd: missing.generalizedEsd === null ? esd : null,
    missing,
  };
}

function whenTied(catches: readonly Catch[], divisionKg: number | null): NoNamedTest | null {
  const deliveries = catches.map(({ netKg, turns }) => netKg / turns);
  const turns = max(catches.map((row) => row.turns));
  const apartKg = (max(deliveries) - min(deliveries)) * turns;
  const stepKg = max(catches.map((row) => row.divisionKg ?? divisionKg ?? 0));
  const sizeKg = max(catches.map(({ netKg }) => Math.abs(netKg)));
  const dustKg = relativeDust * sizeKg;
  const tied = apartKg < Math.max(stepKg - dustKg, dustKg);
  return tied ? "weights tie at the scale's step" : null;
}
