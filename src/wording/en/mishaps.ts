import type { Mishap } from "../../results/mishap.ts";

/** What may have happened at a catch, and the figures that make it checkable. */
export const mishaps = {
  /** A few words each that follow "it would fit". */
  names: {
    "tare-left-in": "about a bag's mass too much on the scale, as a tare left in",
    "tare-taken-off-twice": "a tare taken off twice",
    "one-turn-more": "one turn more than written",
    "one-turn-fewer": "one turn fewer than written",
    "two-turns-more": "two turns more than written",
    "two-turns-fewer": "two turns fewer than written",
    "bag-not-emptied": "a bag not emptied before",
    "two-catches-in-one": "two catches in one bag",
    "meter-starved":
      "a bridged or starved meter (bridged product is never cleared from inside a bin)",
    "other-unit": "a mass read in another unit",
    "digits-swapped": "two digits swapped",
    "decimal-moved": "a decimal mark moved",
  } satisfies Record<Mishap, string>,
  tareOf: (mass: string) => `about a bag's mass (${mass}) too much on the scale, as a tare left in`,
  leftInBag: (mass: string) => `${mass} of the catch before still in it`,
  meant: (mass: string) => `${mass} meant`,
  delivered: (share: string) => `${share} of what was due`,
  poundsForKilograms: "pounds for kilograms",
  kilogramsForPounds: "kilograms for pounds",
  turns: (turns: string) => `${turns} turns`,
};
