/** A decimal number as it is written, exactly: digits · 10^−decimals. */
export interface Figure {
  readonly digits: bigint;
  /** Below zero where a whole number ends in noughts, which may only fill it up. */
  readonly decimals: number;
}

const decimalNumber = /^\+?(\d*)(?:\.(\d*))?(?:e([+-]?\d+))?$/i;
/** Beyond any weight; keeps a slip such as 1e-300 from becoming a number of 300 digits. */
const mostPlaces = 20;

/**
 * A number above zero from its text; null for any other.
 *
 * @param mostDigits  without the noughts that begin and end it; a number with more is none either
 */
export function figureOf(text: string, mostDigits: number): Figure | null {
  const parts = decimalNumber.exec(text);
  if (parts === null) return null;
  const [, whole = "", fraction = "", exponent = "0"] = parts;
  const written = `${whole}${fraction}`;
  const shortest = written.replace(/^0+|0+$/g, "");
  const decimals = fraction.length - Number(exponent);
  if (shortest === "" || shortest.length > mostDigits || Math.abs(decimals) > mostPlaces)
    return null;
  if (decimals > 0) return { digits: BigInt(written), decimals };
  const noughts = written.length - written.replace(/0+$/, "").length;
  return { digits: BigInt(shortest), decimals: decimals - noughts };
}

/** The last place that any of some figures is written to, as decimals. */
export function lastPlace(figures: readonly Figure[]): number {
  return figures.reduce((last, { decimals }) => Math.max(last, decimals), Number.NEGATIVE_INFINITY);
}

/** Figures as whole numbers of a place; what is written beyond it is cut off. */
export function countsOf(figures: readonly Figure[], place: number): readonly bigint[] {
  return figures.map(({ digits, decimals }) =>
    decimals > place
      ? digits / 10n ** BigInt(decimals - place)
      : digits * 10n ** BigInt(place - decimals),
  );
}

/** How many different numbers there are among figures; 6.1 and 6.10 are one. */
export function differentAmong(figures: readonly Figure[]): number {
  return new Set(countsOf(figures, lastPlace(figures))).size;
}

/** So many of a place as the number nearest to it. */
export function numberOf(count: bigint, place: number): number {
  return Number(`${count}e${-place}`);
}
