import { caution } from "../../results/caution.ts";
import type { Catch } from "../types.ts";
import type { Suspicion } from "./suspect.ts";

/**
 * Grain is stored between 4 % and 40 % moisture. Some fertiliser holds less than one percent; where every figure of the log lies
 * between 0.04 and 0.40, a fraction is the likelier reading, and the question costs little.
 */
const moisture = { least: 0.04, most: 0.4 } as const;
/** A bin that is a hundredth full at most in every catch is none that meters evenly: 1 is full. */
const binLevel = { least: 0, most: 1 } as const;

const percents = [
  { column: "moisture", figureOf: (row: Catch) => row.moisturePercent, range: moisture },
  { column: "bin-level", figureOf: (row: Catch) => row.binLevelPercent, range: binLevel },
] as const;

/** Percentages written as fractions throughout: 0.135 for 13.5 %. */
export const percentsLookFractions: Suspicion = ({ catches }) =>
  percents.flatMap(({ column, figureOf, range: { least, most } }) => {
    let largest = 0;
    for (const row of catches) {
      const value = figureOf(row);
      if (value === null) continue;
      if (value < least || value > most) return [];
      largest = Math.max(largest, value);
    }
    return largest === 0 ? [] : caution("percent-looks-fraction", {}, { column, largest });
  });
