import type { Format } from "../format.ts";

/** An amount of money; a currency that nobody named is left out. */
export function moneyWords(value: number, currency: string | null, format: Format): string {
  return currency === null ? format.plain(value, 3) : format.money(value, currency);
}

/** Money a hectare, in the area unit of the reader. */
export function moneyPerAreaWords(
  perHectare: number,
  currency: string | null,
  format: Format,
): string {
  const perArea = perHectare / format.convert(1, "area", 1);
  return `${moneyWords(perArea, currency, format)}/${format.unit("area", 1)}`;
}
