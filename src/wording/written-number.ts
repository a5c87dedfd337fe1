/** How many digits are shown after the decimal mark, and how many at least; most below zero: rounded to tens, hundreds, … */
export interface Places {
  readonly most: number;
  readonly least: number;
}

/** What a language puts between the digits of a number. */
export interface NumberMarks {
  /** Between whole units and their parts. */
  readonly decimal: string;
  /** Between thousands. */
  readonly group: string;
}

/**
 * A number as `Intl.NumberFormat` writes it in a language that groups by three: rounded from its shortest decimal form, halves
 * away from zero. The first format that Intl makes reads the tables of all languages, which takes a tenth of the time of a short
 * answer, and what it knows of a language depends on how Node was built.
 *
 * @param value          finite
 * @param fewestGrouped  with so many digits before the mark, thousands are parted
 */
export function writtenNumber(
  value: number,
  { most, least }: Places,
  { decimal, group }: NumberMarks,
  fewestGrouped: number,
): string {
  const [mantissa = "", exponent] = Math.abs(value).toExponential().split("e");
  const digits = mantissa.replace(".", "");
  const kept = 1 + Number(exponent) + most;
  const head = digits.slice(0, Math.max(0, kept)).padEnd(kept, "0");
  const up = kept >= 0 && digits.charAt(kept) >= "5";
  const shown = Math.max(0, most);
  const rounded = `${BigInt(head) + BigInt(up)}${"0".repeat(shown - most)}`.padStart(
    shown + 1,
    "0",
  );
  const point = rounded.length - shown;
  const [whole, parts] = [rounded.slice(0, point), rounded.slice(point)];
  const grouped = whole.length < fewestGrouped ? whole : whole.replace(/\B(?=(\d{3})+$)/g, group);
  const places = parts.slice(0, least) + parts.slice(least).replace(/0+$/, "");
  return `${value < 0 ? "-" : ""}${grouped}${places === "" ? "" : decimal}${places}`;
}

/** Digits after the mark that show so many significant ones; below zero as in `Places`. */
export function significantDecimals(value: number, significant: number): number {
  return significant - 1 - Number(value.toExponential().split("e")[1]);
}
