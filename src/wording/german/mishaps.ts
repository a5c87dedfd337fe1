import type { Explanation } from "../../questions/outliers/explanations.ts";
import type { Mishap } from "../../results/mishap.ts";
import type { Format } from "../format.ts";

/** Each mishap in a few words that follow "es würde passen:". */
export const mishapNames: Readonly<Record<Mishap, string>> = {
  "tare-left-in":
    "etwa die Masse eines Sacks zu viel auf der Waage, wie bei nicht abgezogener Tara",
  "tare-taken-off-twice": "Tara zweimal abgezogen",
  "one-turn-more": "eine Umdrehung mehr als notiert",
  "one-turn-fewer": "eine Umdrehung weniger als notiert",
  "two-turns-more": "zwei Umdrehungen mehr als notiert",
  "two-turns-fewer": "zwei Umdrehungen weniger als notiert",
  "bag-not-emptied": "Sack vorher nicht ganz geleert",
  "two-catches-in-one": "zwei Proben in einem Sack",
  "meter-starved": "Brücke im Tank oder Dosierer leergelaufen",
  "other-unit": "Masse in anderer Einheit abgelesen",
  "digits-swapped": "zwei Ziffern vertauscht",
  "decimal-moved": "Komma verrutscht",
};

/** A figure that only names the culprit needs no more digits than an error of this share leaves. */
const roughly = 0.25;

/** A mishap with the figure that makes it checkable. */
export function mishapWords(
  { mishap, massKg, turns, factor }: Explanation,
  format: Format,
): string {
  const figure = figureOf();
  if (mishap === "tare-left-in" && figure !== null)
    return `etwa die Masse eines Sacks (${figure}) zu viel auf der Waage, wie bei nicht abgezogener Tara`;
  return figure === null ? mishapNames[mishap] : `${mishapNames[mishap]} (${figure})`;

  function figureOf(): string | null {
    const mass = massKg === null ? null : format.value(massKg, "mass", roughly * massKg);
    switch (mishap) {
      case "bag-not-emptied":
        return mass === null ? null : `${mass} der vorigen Probe noch darin`;
      case "digits-swapped":
      case "decimal-moved":
        return massKg === null ? null : `gemeint: ${format.value(massKg, "mass")}`;
      case "meter-starved":
        return factor === null
          ? null
          : `${format.percent(factor, 0)} von dem, was hätte kommen sollen`;
      case "other-unit":
        return (factor ?? 1) > 1 ? "Pfund statt Kilogramm" : "Kilogramm statt Pfund";
      case "tare-left-in":
      case "tare-taken-off-twice":
        return mass;
      default:
        return turns === null ? null : `${format.plain(turns, 6)} Umdrehungen`;
    }
  }
}
