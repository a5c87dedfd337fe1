import { at } from "../../errors/at.ts";
import { type HistoryStatus, stretchInForce } from "../../model/history.ts";
import type { MeterModel } from "../../model/model.ts";
import {
  fewestBeforeKnown,
  lastingShiftChance,
  type ShiftChance,
} from "../../statistics/lasting-shift-power.ts";
import { typicalSpread } from "../../statistics/spread-within.ts";

/** How often the decision, asked after every fill, says of a steady meter that it moved, trends or differs. */
export interface FalseAlarms {
  /** Fills of the season that `season` is about. */
  readonly fills: number;
  /** Share of seasons with any such finding. */
  readonly season: number;
  /** The same where neighbouring fills are alike. */
  readonly alike: { readonly correlation: number; readonly season: number };
}

/** What the decision would have found by now. */
export interface DriftPower extends ShiftChance {
  /** Relative size of the lasting shift asked about. */
  readonly shift: number;
  /** Fill from which it would have lasted. */
  readonly sinceFill: number;
  readonly fillsBefore: number;
  readonly fillsSince: number;
  /** Typical spread between fills that explains what these fills show, relative to the delivery. */
  readonly relativeSpread: number;
}

/** As reports/drift-study.md has it in table 1, for near-normal fills; a test holds the two together. */
export const falseAlarms: FalseAlarms = {
  fills: 12,
  season: 0.05,
  alike: { correlation: 0.6, season: 0.24 },
};

const mostFillsSince = 6;
/** Once something was found, what else would have been found is no comfort. */
const sayable: readonly HistoryStatus[] = ["steady", "stood apart"];

/**
 * Chance that a lasting shift about halfway through the stretch in force would have been found by now, from the table of
 * simulated chances at shift ÷ spread. The spread is the middle of what the fills leave possible, not their own figure,
 * which sits low where fills are few and would reassure.
 *
 * @returns null after a change was found, below four fills, without any spread, and where the table says nothing
 */
export function powerOf({ history, across }: MeterModel, shift: number): DriftPower | null {
  const fills = stretchInForce(history);
  const relative = across.spread.relative ?? 0;
  if (!sayable.includes(history.status) || history.changes.length > 0) return null;
  if (fills.length <= fewestBeforeKnown || across.spread.source !== "own" || !(relative > 0))
    return null;
  const half = Math.min(mostFillsSince, Math.ceil(fills.length / 2));
  const fillsBefore = Math.max(fewestBeforeKnown, fills.length - half);
  const fillsSince = fills.length - fillsBefore;
  const relativeSpread = typicalSpread(relative, across.spread.df);
  const found = lastingShiftChance({
    before: fillsBefore,
    after: fillsSince,
    shift: shift / relativeSpread,
  });
  const sinceFill = at(fills, fillsBefore).fill;
  return found === null
    ? null
    : { ...found, shift, sinceFill, fillsBefore, fillsSince, relativeSpread };
}
