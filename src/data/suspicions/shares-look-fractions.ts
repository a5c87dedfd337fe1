import { type Caution, caution } from "../../results/caution.ts";
import { binSetup, type Setup } from "../setup.ts";
import type { CountedLog } from "./suspect.ts";

/** Of a hundred seeds that are sown more than one germinates, or they would not be sown. */
const leastShare = 0.01;

/** Germination or emergence of 0.95 % in a setup, where 95 % is meant: a hundred times the rate would be set. */
export function sharesLookFractions(setup: Setup, { meters }: CountedLog): readonly Caution[] {
  return meters.flatMap(({ catches: [row], where }) => {
    const seed = row === undefined ? null : (binSetup(setup, row)?.seed ?? null);
    return (["germination", "emergence"] as const).flatMap((share) => {
      const value = seed?.[share]?.value ?? null;
      return value === null || value > leastShare
        ? []
        : caution("share-looks-fraction", where, { seedShare: share, percent: 100 * value });
    });
  });
}
