import type { ChanceOutsideLaw, LawfulRates } from "../../model/lawful-rates.ts";
import type { Setting } from "../../questions/setting.ts";
import type { lawful as templates } from "../en/lawful.ts";
import type { Format } from "../format.ts";
import { sentences } from "./sentences.ts";

/** What label or law sets, and the chance of breaking it, as parts of a sentence. */
export function lawfulFigures(format: Format, say: typeof templates) {
  const rate = (kgPerHa: number) => format.value(kgPerHa, "rate");
  const limits = ({ lowestKgPerHa: lowest, highestKgPerHa: highest }: LawfulRates): string => {
    if (lowest !== null && highest !== null)
      return say.both({ lowest: rate(lowest), highest: rate(highest) });
    if (lowest !== null) return say.atLeast(rate(lowest));
    return highest === null ? say.unknownLimits : say.atMost(rate(highest));
  };
  const chance = ({ below, above }: Pick<ChanceOutsideLaw, "below" | "above">): string | null => {
    if (below !== null && above !== null)
      return say.either({ little: format.chance(below), much: format.chance(above) });
    if (below !== null) return say.tooLittle(format.chance(below));
    return above === null ? null : say.tooMuch(format.chance(above));
  };
  return { limits, chance };
}

/** Which sentences are said about rates that label or law sets. */
export function lawfulSayings(format: Format, say: typeof templates) {
  const { limits, chance } = lawfulFigures(format, say);
  return {
    /** That no fill goes uncaught, and the chance of breaking label or law once set; null: they set no rate. */
    doNotSkip: ({ lawful }: Pick<Setting, "lawful">): string | null => {
      if (lawful === null) return null;
      const told = chance(lawful.chance);
      return sentences(
        say.doNotSkip(limits(lawful)),
        told === null ? say.onceSetUnknown : say.onceSet(told),
      );
    },
  };
}
