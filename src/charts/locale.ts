/** How vega writes numbers on axes and in hints, in its own terms. */
export interface ChartLocale {
  readonly number: {
    readonly decimal: string;
    readonly thousands: string;
    readonly grouping: readonly number[];
    readonly currency: readonly [string, string];
  };
}

/** Long enough to be grouped in every language. */
const sample = 1_234_567.8;

/**
 * The marks by which a language writes numbers; null where they are those that vega writes anyway.
 *
 * @param language  BCP 47 tag
 */
export function chartLocale(language: string): ChartLocale | null {
  const parts = new Intl.NumberFormat(language).formatToParts(sample);
  const mark = (type: "decimal" | "group") => parts.find((part) => part.type === type)?.value ?? "";
  const [decimal, thousands] = [mark("decimal"), mark("group")];
  return decimal === "." && thousands === ","
    ? null
    : { number: { decimal, thousands, grouping: [3], currency: ["", ""] } };
}
