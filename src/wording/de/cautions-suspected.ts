import type { cautionsSuspected as english } from "../en/cautions-suspected.ts";

/** Cautions about slips that are suspected: what was found, what it may be, and that nobody changed anything. */
export const cautionsSuspected: typeof english = {
  "counter-not-reset": (f) =>
    `Umdrehungen ${f.turns} bei jedes Mal etwa gleicher Masse: In ${f.countedOn} von ${f.catches} Proben scheint der Zähler von der vorigen Probe weiterzulaufen. Wenn das so ist, tragen Sie zu jeder Probe nur ihre eigenen Umdrehungen ein. Geändert wurde nichts.`,
  "bag-not-emptied": (f) =>
    `Die Massen ${f.masses} wachsen von Probe zu Probe: In ${f.countedOn} von ${f.catches} Proben scheint die vorige noch im Sack zu sein. Wenn das so ist, tragen Sie zu jeder Probe nur ihre eigene Masse ein. Geändert wurde nichts.`,
};
