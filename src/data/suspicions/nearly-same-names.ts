import { type Caution, caution, type Where } from "../../results/caution.ts";
import { fillKey } from "../identity.ts";
import type { Catch } from "../types.ts";
import { type NamePair, samePairs, strangeSigns } from "./same-names.ts";
import type { CountedLog, Suspicion } from "./suspect.ts";

/** What is called by a name that a slip can spoil. */
interface NamedThing {
  readonly what: "bin" | "product" | "machine" | "farm";
  readonly nameOf: (row: Catch) => string | null;
  /** What two names of one thing have in common in one fill. */
  readonly restOf: (row: Catch) => string;
  readonly whereIs: (row: Catch, log: CountedLog) => Partial<Where>;
}

const named: readonly NamedThing[] = [
  {
    what: "bin",
    nameOf: ({ bin }) => bin,
    restOf: (row) => fillKey({ ...row, bin: "" }),
    whereIs: (row, { names }) => ({ bin: names.bin(row) }),
  },
  {
    what: "product",
    nameOf: ({ product }) => product,
    restOf: fillKey,
    whereIs: ({ product }) => ({ product }),
  },
  {
    what: "machine",
    nameOf: ({ machine }) => machine,
    restOf: (row) => fillKey({ ...row, machine: null }),
    whereIs: (row, { names }) => ({ bin: names.bin(row) }),
  },
  {
    what: "farm",
    nameOf: ({ farm }) => farm,
    restOf: (row) => fillKey({ ...row, farm: null }),
    whereIs: (row, { names }) => ({ bin: names.bin(row) }),
  },
];

/** Two names that a slip may have made of one: they count as two bins, products or machines. */
export const nearlySameNames: Suspicion = (log) =>
  named.flatMap((thing) => {
    const pairs = samePairs(namesIn(log.catches, thing));
    if (pairs.length === 0) return [];
    const rows = rowsOf(new Set(pairs.flatMap(({ one, other }) => [one, other])), thing, log);
    return pairs.flatMap((pair) => askAbout(pair, rows, thing, log));
  });

type RowsByName = ReadonlyMap<string, readonly Catch[]>;

/** Looked for once for all pairs: of a log of many names most rows have another one. */
function rowsOf(
  names: ReadonlySet<string>,
  { nameOf }: NamedThing,
  { catches }: CountedLog,
): RowsByName {
  const rows = new Map<string, Catch[]>([...names].map((name) => [name, []]));
  for (const row of catches) {
    const name = nameOf(row);
    if (name !== null) rows.get(name)?.push(row);
  }
  return rows;
}

function namesIn(catches: readonly Catch[], { nameOf }: NamedThing): readonly string[] {
  const found = new Set<string>();
  let last: string | null = null;
  for (const row of catches) {
    const name = nameOf(row);
    if (name !== null && name !== last) found.add(name);
    last = name;
  }
  return [...found];
}

function askAbout(
  pair: NamePair,
  rows: RowsByName,
  thing: NamedThing,
  log: CountedLog,
): readonly Caution[] {
  const [first = [], second = []] = [rows.get(pair.one), rows.get(pair.other)];
  const byEye = pair.difference === "letter" || pair.difference === "hyphen";
  if (byEye && standBeside(first, second, thing)) return [];
  const counted = [
    { name: pair.one, rows: first, fills: fillsIn(first) },
    { name: pair.other, rows: second, fills: fillsIn(second) },
  ].sort((a, b) => a.fills - b.fills || a.rows.length - b.rows.length);
  const [rarer, other] = counted;
  if (rarer === undefined || other === undefined) return [];
  const facts = {
    what: thing.what,
    name: rarer.name,
    fills: rarer.fills,
    other: other.name,
    otherFills: other.fills,
    differBy: pair.difference,
    signs: [...strangeSigns(rarer.name), ...strangeSigns(other.name)],
  };
  const places = new Map(
    [...first, ...second].map((row) => {
      const where = thing.whereIs(row, log);
      return [JSON.stringify(where), where];
    }),
  );
  return [...places.values()].map((where) => caution("name-nearly-another", where, facts));
}

function fillsIn(rows: readonly Catch[]): number {
  return new Set(rows.map(fillKey)).size;
}

/**
 * Whether somebody used both names at once, and so means two things: on one day, or in one fill. A slip in one row of a fill
 * leaves a gap there, in which its own catch stands, and is no such use.
 */
function standBeside(
  first: readonly Catch[],
  second: readonly Catch[],
  { what, restOf }: NamedThing,
): boolean {
  const catchesOf = (rows: readonly Catch[]) => {
    const fills = new Map<string, Set<number>>();
    for (const row of rows) {
      const fill = fills.get(restOf(row)) ?? new Set();
      fills.set(restOf(row), fill.add(row.catch));
    }
    return fills;
  };
  const [ours, theirs] = [catchesOf(first), catchesOf(second)];
  const inOneFill = [...ours].some(([fill, catches]) => {
    const others = theirs.get(fill);
    return others !== undefined && !fillEachOthersGaps(catches, others);
  });
  if (inOneFill) return true;
  const days = new Map<string, Set<string>>();
  for (const row of second)
    for (const day of dayOf(row)) {
      const fills = days.get(day) ?? new Set();
      days.set(day, fills.add(restOf(row)));
    }
  return first.some((row) =>
    dayOf(row).some((day) => {
      const fills = days.get(day);
      if (fills === undefined) return false;
      return what === "product" || fills.size > 1 || !fills.has(restOf(row));
    }),
  );
}

function fillEachOthersGaps(ours: ReadonlySet<number>, theirs: ReadonlySet<number>): boolean {
  return !(ours.has(1) && theirs.has(1)) && [...ours].every((number) => !theirs.has(number));
}

function dayOf({ takenAt }: Catch): readonly string[] {
  return takenAt === null ? [] : [takenAt.slice(0, 10)];
}
