import { cellText, type TableRow } from "../table.ts";
import { carriedDown } from "./carried.ts";
import type { Use } from "./columns-of.ts";
import { figureIn } from "./figures.ts";
import { isDitto, type Summed, workedOutByFigure, worksOutBeside } from "./row-kinds.ts";

/** A figure that is the mean or the sum of those above it, and what that makes of its row. */
export interface Likeness {
  readonly figure: "mean" | "total";
  /** `open`: nobody can tell; `goes-on`: a catch, since the rows go on below it. */
  readonly is: "worked-out" | "open" | "goes-on";
}

interface Catches extends Summed {
  /** Whether each of them has turns of its own. */
  readonly ownTurns: boolean;
}

/** The catches above a row, since the last one that was worked out from others. */
export interface Above {
  readonly all: Catches;
  /** Since a name changed. */
  readonly group: Catches;
}

const none: Catches = { count: 0, sum: 0, ownTurns: true };
export const nothingAbove: Above = { all: none, group: none };

const numbering = ["bin", "fill", "catch"];
const starting: ReadonlySet<string> = new Set([...carriedDown, "turns"]);
const weighing: ReadonlySet<string> = new Set(["net", "gross"]);

/**
 * Whether a row that nothing numbers as a catch is worked out from those above. Judged as it was written: once blank cells are
 * filled, a mean looks like any catch.
 */
export function likeThoseAbove(
  row: TableRow,
  { own, mass, next }: Written,
  { all, group }: Above,
  uses: readonly Use[],
): Likeness | null {
  if (numbering.some((name) => own.has(name))) return null;
  const last = next === undefined || next.number > row.number + 1;
  // What is worked out from several fills stands below all of them.
  for (const above of last ? [group, all] : [group]) {
    const figure = workedOutByFigure(mass, above);
    if (figure === null) continue;
    if (worksOutBeside(row, uses)) return { figure, is: "worked-out" };
    if (own.has("turns")) return null;
    if (above.ownTurns) return { figure, is: "worked-out" };
    return { figure, is: last || beginsAnew(next, uses) ? "open" : "goes-on" };
  }
  return null;
}

interface Written {
  readonly own: ReadonlyMap<string, string>;
  readonly mass: string;
  readonly next: TableRow | undefined;
}

/** With a catch more; a new name begins a new group. */
export function aboveAfter(
  { all, group }: Above,
  mass: string,
  own: ReadonlyMap<string, string>,
  renamed: boolean,
): Above {
  const read = Number(figureIn(mass)?.number.replace(",", ".") ?? Number.NaN);
  const [count, more] = Number.isFinite(read) ? [1, read] : [0, 0];
  const withOne = (above: Catches): Catches => ({
    count: above.count + count,
    sum: above.sum + more,
    ownTurns: above.ownTurns && own.has("turns"),
  });
  return { all: withOne(all), group: withOne(renamed ? none : group) };
}

/** A mean stands last: below it begins something new, or has no mass. */
function beginsAnew(next: TableRow, uses: readonly Use[]): boolean {
  const has = (names: ReadonlySet<string>) =>
    uses.some(({ name, index }) => {
      const text = names.has(name) ? cellText(next.cells[index]) : "";
      return text !== "" && !isDitto(text);
    });
  return has(starting) || !has(weighing);
}
