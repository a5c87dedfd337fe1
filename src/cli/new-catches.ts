import type { NewCatch } from "../data/append/mass-cells.ts";
import { saysSpilled } from "../data/import/row-kinds.ts";
import type { Needed } from "./arguments.ts";
import { partsOf } from "./typed-catches.ts";

/** In place of a mass: words, with turns before a colon or none. */
const inWords = /^(?:(\d+(?:[.,]\d+)*):)?(\D.*)$/s;

/**
 * Catches to be added to a file, whose unit counts where none is typed.
 *
 * @param catches  such as "20:6.3", or "20:spilled" for one that could not be weighed
 * @throws         InvalidArgumentError for what is no catch
 */
export function newCatches(
  catches: readonly string[],
  turns: number | undefined,
  say: Needed,
): readonly NewCatch[] {
  return catches.map((argument) => {
    const [, own, words = ""] = inWords.exec(argument.trim()) ?? [];
    if (saysSpilled(words)) return { turns: own ?? turns?.toString() ?? null, spilled: words };
    const { unit, ...figures } = partsOf(argument, { turns, unit: "kg" }, say);
    return { ...figures, unit: /[a-z]+$/i.test(argument.trim()) ? unit : null };
  });
}
