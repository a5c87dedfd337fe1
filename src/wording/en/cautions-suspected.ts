import type { Counts, Facts } from "./facts.ts";

/** Cautions about slips that are suspected: what was found, what it may be, and that nobody changed anything. */
export const cautionsSuspected = {
  "counter-not-reset": (f: Counts<"catches" | "countedOn"> & Facts<"turns">) =>
    `Turns ${f.turns} for about the same mass each time: in ${f.countedOn} of ${f.catches} catches the counter seems to run on from the catch before. If so, write the turns of each catch alone. Nothing was changed.`,
  "bag-not-emptied": (f: Counts<"catches" | "countedOn"> & Facts<"masses">) =>
    `Masses ${f.masses} add up from catch to catch: in ${f.countedOn} of ${f.catches} catches the bag seems to hold the catch before too. If so, write the mass of each catch alone. Nothing was changed.`,
};
