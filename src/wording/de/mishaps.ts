import type { mishaps as english } from "../en/mishaps.ts";

/** What may have happened at a catch, and the figures that make it checkable. */
export const mishaps: typeof english = {
  names: {
    "tare-left-in":
      "etwa die Masse eines Sacks zu viel auf der Waage, wie bei nicht abgezogener Tara",
    "tare-taken-off-twice": "Tara zweimal abgezogen",
    "one-turn-more": "eine Umdrehung mehr als notiert",
    "one-turn-fewer": "eine Umdrehung weniger als notiert",
    "two-turns-more": "zwei Umdrehungen mehr als notiert",
    "two-turns-fewer": "zwei Umdrehungen weniger als notiert",
    "bag-not-emptied": "Sack vorher nicht ganz geleert",
    "two-catches-in-one": "zwei Proben in einem Sack",
    "meter-starved": "Brücke im Tank (nie von innen zu lösen) oder Dosierer leergelaufen",
    "other-unit": "Masse in anderer Einheit abgelesen",
    "digits-swapped": "zwei Ziffern vertauscht",
    "decimal-moved": "Komma verrutscht",
  },
  tareOf: (mass) =>
    `etwa die Masse eines Sacks (${mass}) zu viel auf der Waage, wie bei nicht abgezogener Tara`,
  leftInBag: (mass) => `${mass} der vorigen Probe noch darin`,
  meant: (mass) => `gemeint: ${mass}`,
  delivered: (share) => `${share} von dem, was hätte kommen sollen`,
  poundsForKilograms: "englische Pfund (lb) statt Kilogramm",
  kilogramsForPounds: "Kilogramm statt Pfund",
  turns: (turns) => `${turns} Umdrehungen`,
};
