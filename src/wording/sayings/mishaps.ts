import type { Explanation } from "../../questions/outliers/explanations.ts";
import type { mishaps as templates } from "../en/mishaps.ts";
import type { Format } from "../format.ts";

/** A figure that only names the culprit needs no more digits than an error of this share leaves. */
const roughly = 0.25;

/** A mishap with the figure that makes it checkable, where there is one. */
export function mishapWords(one: Explanation, format: Format, say: typeof templates): string {
  const { mishap, massKg } = one;
  if (mishap === "tare-left-in" && massKg !== null) return say.tareOf(rough(massKg, format));
  const figure = figureOf(one, format, say);
  return figure === null ? say.names[mishap] : `${say.names[mishap]} (${figure})`;
}

function figureOf(
  { mishap, massKg, turns, factor }: Explanation,
  format: Format,
  say: typeof templates,
): string | null {
  switch (mishap) {
    case "bag-not-emptied":
      return massKg === null ? null : say.leftInBag(rough(massKg, format));
    case "digits-swapped":
    case "decimal-moved":
      return massKg === null ? null : say.meant(format.value(massKg, "mass"));
    case "meter-starved":
      return factor === null ? null : say.delivered(format.percent(factor, 0));
    case "other-unit":
      return (factor ?? 1) > 1 ? say.poundsForKilograms : say.kilogramsForPounds;
    case "tare-left-in":
    case "tare-taken-off-twice":
      return massKg === null ? null : rough(massKg, format);
    default:
      return turns === null ? null : say.turns(format.plain(turns, 6));
  }
}

function rough(massKg: number, format: Format): string {
  return format.value(massKg, "mass", roughly * massKg);
}
