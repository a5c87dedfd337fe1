import type { Explanation } from "../../questions/outliers/explanations.ts";
import type { Mishap } from "../../results/mishap.ts";
import type { Format } from "../format.ts";

/** Each mishap in a few words that follow "it would fit". */
export const mishapNames: Readonly<Record<Mishap, string>> = {
  "tare-left-in": "about a bag's mass too much on the scale, as a tare left in",
  "tare-taken-off-twice": "a tare taken off twice",
  "one-turn-more": "one turn more than written",
  "one-turn-fewer": "one turn fewer than written",
  "two-turns-more": "two turns more than written",
  "two-turns-fewer": "two turns fewer than written",
  "bag-not-emptied": "a bag not emptied before",
  "two-catches-in-one": "two catches in one bag",
  "meter-starved": "a bridged or starved meter",
  "other-unit": "a mass read in another unit",
  "digits-swapped": "two digits swapped",
  "decimal-moved": "a decimal mark moved",
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
    return `about a bag's mass (${figure}) too much on the scale, as a tare left in`;
  return figure === null ? mishapNames[mishap] : `${mishapNames[mishap]} (${figure})`;

  function figureOf(): string | null {
    const mass = massKg === null ? null : format.value(massKg, "mass", roughly * massKg);
    switch (mishap) {
      case "bag-not-emptied":
        return mass === null ? null : `${mass} of the catch before still in it`;
      case "digits-swapped":
      case "decimal-moved":
        return massKg === null ? null : `${format.value(massKg, "mass")} meant`;
      case "meter-starved":
        return factor === null ? null : `${format.percent(factor, 0)} of what was due`;
      case "other-unit":
        return (factor ?? 1) > 1 ? "pounds for kilograms" : "kilograms for pounds";
      case "tare-left-in":
      case "tare-taken-off-twice":
        return mass;
      default:
        return turns === null ? null : `${format.plain(turns, 6)} turns`;
    }
  }
}
