import type { Format } from "../format.ts";

/** An amount of money; a currency that nobody named is left out. */
export function moneyWords(value: number, currency: string | null, format: Format): string {
  return currency === null ? format.plain(value, 3) : format.money(value, currency);
}
