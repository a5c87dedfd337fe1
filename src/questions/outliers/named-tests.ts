import type { Fill } from "../../model/meters.ts";
import {
  type GeneralizedEsd,
  type GrubbsTest,
  generalizedEsd,
  grubbsTest,
} from "../../statistics/outlier-tests.ts";

/** The tests others ask for by name. They know the fill's own scatter only, and no turns: equal turns are their case. */
export interface NamedTests {
  readonly grubbs: GrubbsTest | null;
  readonly generalizedEsd: GeneralizedEsd | null;
}

const fewestForGrubbs = 3;
const fewestForEsd = 5;
const mostByEsd = 2;

/** Two-sided Grubbs' test and generalized ESD for two, on the deliveries per turn of a fill's catches. */
export function namedTests({ catches }: Fill, level: number): NamedTests {
  const deliveries = catches.map(({ netKg, turns }) => netKg / turns);
  return {
    grubbs:
      deliveries.length >= fewestForGrubbs ? grubbsTest(deliveries, "two-sided", level) : null,
    generalizedEsd:
      deliveries.length >= fewestForEsd ? generalizedEsd(deliveries, mostByEsd, level) : null,
  };
}
