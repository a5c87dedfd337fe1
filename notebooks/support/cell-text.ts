/** Digits shown of a number: more than any weighing has, fewer than two machines may differ in. */
const shownDigits = 6;

export function roundedNumber(value: number, digits = shownDigits): number {
  return Number(value.toPrecision(digits));
}

/** A table cell as text; nothing known is a dash. */
export function cellText(value: unknown): string {
  if (value === null || value === undefined || Number.isNaN(value)) {
    return "–";
  }
  return String(typeof value === "number" ? roundedNumber(value) : value);
}
