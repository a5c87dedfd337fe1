import type { NumberMarks } from "../wording/written-number.ts";

/** How vega writes numbers on axes and in hints, in its own terms. */
export interface ChartLocale {
  readonly number: {
    readonly decimal: string;
    readonly thousands: string;
    readonly grouping: readonly number[];
    readonly currency: readonly [string, string];
  };
}

/** What vega takes to write numbers on axes as words write them; null where it does so anyway. */
export function chartLocale({ decimal, group }: NumberMarks): ChartLocale | null {
  return decimal === "." && group === ","
    ? null
    : { number: { decimal, thousands: group, grouping: [3], currency: ["", ""] } };
}
