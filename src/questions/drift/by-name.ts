import { at } from "../../errors/at.ts";
import type { Fill } from "../../model/meters.ts";
import type { FillName } from "../../results/fill-name.ts";
import { individualsChart } from "../../statistics/control-charts.ts";
import { type MannKendallTest, mannKendall } from "../../statistics/mann-kendall.ts";
import { theilSen } from "../../statistics/theil-sen.ts";

/** Methods that a reader may ask for by name. They stand beside the verdict and do not decide it. */
export interface ByName {
  readonly mannKendall: MannKendallTest;
  /** Theil–Sen slope, kg/turn from fill to fill. */
  readonly theilSenPerFill: number;
  /** Control limits: mean of the fills ± 2.66 mean moving ranges, kg/turn. */
  readonly individuals: {
    readonly center: number;
    readonly meanMovingRange: number;
    readonly lower: number;
    readonly upper: number;
    /** Fill numbers outside the limits. */
    readonly outside: readonly FillName[];
  };
}

const fewestFills = 4;
/** The two rank methods look at every pair of fills. */
const mostFills = 500;

/** @returns null below 4 fills, where none of them can say anything, and above 500 */
export function byName(fills: readonly Fill[]): ByName | null {
  if (fills.length < fewestFills || fills.length > mostFills) return null;
  const deliveries = fills.map(({ delivery }) => delivery);
  const { center, meanMovingRange, lower, upper, outside } = individualsChart(deliveries);
  return {
    mannKendall: mannKendall(deliveries),
    theilSenPerFill: theilSen(
      deliveries.map((_, i) => i + 1),
      deliveries,
    ).slope,
    individuals: {
      center,
      meanMovingRange,
      lower,
      upper,
      outside: outside.map((place) => at(fills, place).fill),
    },
  };
}
