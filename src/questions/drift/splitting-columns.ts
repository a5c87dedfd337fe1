import { max, min } from "simple-statistics";
import { columnByName } from "../../data/column-kinds.ts";
import type { Catch } from "../../data/types.ts";
import { at, lastOf } from "../../errors/at.ts";
import type { MeterHistory } from "../../model/history.ts";
import { deliveriesOf, type Fill } from "../../model/meters.ts";
import type { CautionFacts } from "../../results/caution.ts";
import { oneWayAnova } from "../../statistics/anova.ts";
import { holm } from "../../statistics/multiplicity.ts";
import { mean } from "../../statistics/summary.ts";

const limit = 0.01;
const fewestFillsOfLevel = 2;
/** More are names of single days and lots rather than of a few ways to work. */
const mostLevels = 4;

interface Level {
  readonly name: string;
  readonly fills: readonly Fill[];
}

/** A way to part the fills, and the columns of the file that part them so. */
interface Split {
  readonly columns: readonly string[];
  /** From the lowest delivery. */
  readonly levels: readonly Level[];
}

/**
 * Columns of words that part the fills of a meter cleanly into levels of delivery: who caught, on which scale, and whatever
 * else a file notes. What parts them is the column or what changed with it; either is a reason to doubt that the meter did.
 *
 * Asked of a column with two to four names, each of at least two fills; a fill counts where all its catches have one name.
 * One-way analysis of variance of the fills' deliveries; p adjusted by Holm's method over the ways in which columns part the
 * fills, and by Bonferroni's over the meters of the log, so that a clean log tells of one in at most 1 of 100. Told at
 * p ≤ .01 where the levels do not overlap either.
 *
 * @param meters  number of meters of the log, each of which is asked
 * @returns       columns that part the fills in the same way together; empty where fills of one name agree exactly
 * Source         Snedecor and Cochran 1989, Statistical Methods, 8th edition, chapter 12; Holm 1979
 */
export function splittingColumns(
  fills: readonly Fill[],
  history: Pick<MeterHistory, "changes">,
  meters: number,
): readonly CautionFacts["column-splits-fills"][] {
  const tested = splitsOf(fills).flatMap((split) => {
    const { pValue } = oneWayAnova(split.levels.map((level) => deliveriesOf(level.fills)));
    return pValue === null ? [] : [{ split, pValue }];
  });
  const adjusted = holm(tested.map(({ pValue }) => pValue));
  return tested.flatMap(({ split }, i) => {
    const pValue = Math.min(1, at(adjusted, i) * meters);
    if (pValue > limit || overlap(split)) return [];
    const [low, high] = [at(split.levels, 0), lastOf(split.levels)];
    const change = history.changes.findLast(({ since }) => parts(split, fills, since.fill));
    return [
      {
        columns: split.columns,
        low: low.name,
        high: high.name,
        difference: meanOf(high) / meanOf(low) - 1,
        pValue,
        explainsSince: change?.since.fill ?? null,
      },
    ];
  });
}

function splitsOf(fills: readonly Fill[]): readonly Split[] {
  const splits = new Map<string, Split>();
  for (const column of columnsIn(fills)) {
    const names = fills.map((fill) => nameIn(fill, column));
    const different = [...new Set(names)].filter((name) => name !== null);
    if (different.length < 2 || different.length > mostLevels) continue;
    const levels = different
      .map((name) => ({ name, fills: fills.filter((_, i) => names[i] === name) }))
      .sort((a, b) => meanOf(a) - meanOf(b));
    if (levels.some((level) => level.fills.length < fewestFillsOfLevel)) continue;
    const way = JSON.stringify(levels.map((level) => level.fills.map(({ fill }) => fill)));
    const same = splits.get(way);
    splits.set(way, {
      columns: [...(same?.columns ?? []), column],
      levels: same?.levels ?? levels,
    });
  }
  return [...splits.values()];
}

const { name: operator } = columnByName.operator;

/** Columns of words: who caught, and those that only the person's file knows. */
function columnsIn(fills: readonly Fill[]): readonly string[] {
  const found = new Set<string>([operator]);
  // Where a file has no such columns, all its rows share one empty object.
  let last: Catch["extra"] | null = null;
  for (const { catches } of fills)
    for (const { extra } of catches) {
      if (extra === last) continue;
      last = extra;
      for (const name of Object.keys(extra)) found.add(name);
    }
  return [...found];
}

/** What all catches of a fill have in a column; null: nothing, or not all the same. */
function nameIn({ catches }: Fill, column: string): string | null {
  const [first] = catches;
  const name = first === undefined ? "" : cellOf(first, column);
  return name !== "" && catches.every((row) => cellOf(row, column) === name) ? name : null;
}

function cellOf({ operator: who, extra }: Catch, column: string): string {
  return (column === operator ? who : extra[column]) ?? "";
}

function overlap({ levels }: Split): boolean {
  return levels.some((level, i) => {
    const above = levels[i + 1];
    if (above === undefined) return false;
    return max(deliveriesOf(level.fills)) >= min(deliveriesOf(above.fills));
  });
}

/** Whether a change of level is where the column changed: no name stands on both sides of it. */
function parts({ levels }: Split, fills: readonly Fill[], since: Fill["fill"]): boolean {
  const place = fills.findIndex(({ fill }) => fill === since);
  const isSince = (fill: Fill) => fills.indexOf(fill) >= place;
  return levels.every((level) => level.fills.every(isSince) || !level.fills.some(isSince));
}

function meanOf({ fills }: Level): number {
  return mean(deliveriesOf(fills));
}
