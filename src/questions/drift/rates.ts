import { at } from "../../errors/at.ts";
import type { FillSpread } from "../../model/fill-spread.ts";
import { type HistoryStatus, stretchInForce } from "../../model/history.ts";
import type { MeterModel } from "../../model/model.ts";
import type { FillName } from "../../results/fill-name.ts";
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
  /** The same where the meter's fills differ so many times as much as those of the meters that lend; null: none lends. */
  readonly wilder: { readonly times: number; readonly season: number } | null;
}

/** The same of a log with several meters, all of them steady. */
export interface LogFalseAlarms {
  readonly meters: number;
  readonly fills: number;
  /** Share of seasons in which any of the meters is said to have moved, to trend or to differ. */
  readonly season: number;
}

/** What the decision would have found by now. */
export interface DriftPower extends ShiftChance {
  /** Relative size of the lasting shift asked about. */
  readonly shift: number;
  /** Fill from which it would have lasted. */
  readonly sinceFill: FillName;
  readonly fillsBefore: number;
  readonly fillsSince: number;
  /** Typical spread between fills that explains what is known of them, relative to the delivery. */
  readonly relativeSpread: number;
  /** Who speaks for that spread beside this meter's fills; null: nobody. */
  readonly lentBy: FillSpread["lentBy"];
}

/**
 * As reports/drift-study.md has it in table 1, for near-normal fills, by who speaks for the spread; a test holds the two
 * together.
 */
export const falseAlarms = {
  own: { fills: 12, season: 0.05, alike: { correlation: 0.6, season: 0.24 }, wilder: null },
  lent: {
    fills: 12,
    season: 0.05,
    alike: { correlation: 0.6, season: 0.25 },
    wilder: { times: 2, season: 0.085 },
  },
} as const satisfies Readonly<Record<string, FalseAlarms>>;

/** How often this meter would be called something if it were steady. */
export function falseAlarmsOf({ across }: Pick<MeterModel, "across">): FalseAlarms {
  return across.spread.lentBy === null ? falseAlarms.own : falseAlarms.lent;
}

/**
 * Every meter is asked with its full budget, so that a report of several raises more than one: 1 − Π(1 − share).
 *
 * @returns null below two meters, of which one's own figure says it all
 * Assumes  independent meters; lending each other the spread changes next to nothing: reports/drift-study.md
 */
export function falseAlarmsTogether(meters: readonly FalseAlarms[]): LogFalseAlarms | null {
  const [first] = meters;
  if (first === undefined || meters.length < 2) return null;
  const none = meters.reduce((share, { season }) => share * (1 - season), 1);
  return { meters: meters.length, fills: first.fills, season: 1 - none };
}

const mostFillsSince = 6;
/** Once something was found, what else would have been found is no comfort. */
const sayable: readonly HistoryStatus[] = ["steady", "stood apart"];

/**
 * Chance that a lasting shift about halfway through the stretch in force would have been found by now, from the table of
 * simulated chances at shift ÷ spread. The spread is the middle of what is known of it, not the fills' own figure, which
 * sits low where fills are few and would reassure. The table is of series with their own spread only: where others, or
 * earlier levels, speak for it too, the chance is at least that.
 *
 * @returns null after a change was found, below four fills, and without any spread
 */
export function powerOf(
  { history, across }: Pick<MeterModel, "history" | "across">,
  shift: number,
): DriftPower | null {
  const fills = stretchInForce(history);
  const { spread } = across;
  const relative = spread.relative ?? 0;
  if (!sayable.includes(history.status) || history.changes.length > 0) return null;
  if (fills.length <= fewestBeforeKnown || !(relative > 0)) return null;
  const half = Math.min(mostFillsSince, Math.ceil(fills.length / 2));
  const fillsBefore = Math.max(fewestBeforeKnown, fills.length - half);
  const fillsSince = fills.length - fillsBefore;
  const relativeSpread = typicalSpread(relative, spread.df);
  const found = lastingShiftChance({
    before: fillsBefore,
    after: fillsSince,
    shift: shift / relativeSpread,
  });
  if (found === null) return null;
  const ownOnly = spread.source === "own" && history.stretches.length === 1;
  return {
    chance: found.chance,
    bound: ownOnly ? found.bound : "at least",
    shift,
    sinceFill: at(fills, fillsBefore).fill,
    fillsBefore,
    fillsSince,
    relativeSpread,
    lentBy: spread.lentBy,
  };
}
