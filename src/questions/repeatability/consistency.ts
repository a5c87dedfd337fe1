import { sum } from "simple-statistics";
import type { Fill } from "../../model/meters.ts";
import { groupBy } from "../../numeric/group-by.ts";
import { isDust } from "../../numeric/rounding-dust.ts";
import { defaults } from "../../results/defaults.ts";
import { mandelHLimit, mandelKLimit, mandelStatistics } from "../../statistics/mandel.ts";

/** One fill or operator among the others. */
export interface ConsistentGroup {
  readonly name: string;
  readonly catches: number;
  /** Of its mean: distance from the mean of all, in standard deviations of the means. */
  readonly h: number;
  /** Its scatter over the pooled one; null where nothing scatters. */
  readonly k: number | null;
  /** What k exceeds by chance in 5 and in 1 of 100 such groups; of operators in fewer. */
  readonly kLimits: readonly [number, number];
}

/** Mandel's h and k of the fills, or of the people who caught. */
export interface Consistency {
  readonly by: "fills" | "operators";
  readonly groups: readonly ConsistentGroup[];
  /** What |h| exceeds by chance in 5 and in 1 of 100 such groups. */
  readonly hLimits: readonly [number, number];
}

interface Weighing {
  readonly group: string;
  readonly netKg: number;
  /** What it would weigh, but for a factor of the group. */
  readonly expected: number;
}

interface Group {
  readonly name: string;
  readonly own: readonly Weighing[];
}

/**
 * Mandel's h and k by fill and, where the log names three or more of them, by operator. A group's mean is the ratio of sums,
 * its variance Σ(m − b·e)²/e/(n − 1)/b², e the turns of a catch or, between operators, what its fill delivers in them, so that
 * operators are not blamed for their fills. Only fills in which two operators or more caught tell operators apart; what their
 * deliveries take of the degrees of freedom is shared out over the catches. Groups of one catch are left out.
 *
 * Source ISO 5725-2:2019, 8.3.1 (consistency of laboratories)
 */
export function consistencyOf(fills: readonly Fill[]): readonly Consistency[] {
  const byFill = fills.flatMap(({ fill, catches }) =>
    catches.map(({ netKg, turns }) => ({ group: String(fill), netKg, expected: turns })),
  );
  const shared = fills.filter(
    ({ catches }) => new Set(catches.flatMap(({ operator }) => operator ?? [])).size > 1,
  );
  const byOperator = shared.flatMap(({ catches, delivery }) =>
    catches.flatMap(({ operator, netKg, turns }) =>
      operator === null ? [] : [{ group: operator, netKg, expected: turns * delivery }],
    ),
  );
  return [
    ...consistencyBy("fills", groupsOf(byFill), 0),
    ...(areConnected(shared)
      ? consistencyBy("operators", groupsOf(byOperator), shared.length)
      : []),
  ];
}

function groupsOf(weighings: readonly Weighing[]): readonly Group[] {
  return [...groupBy(weighings, ({ group }) => group)].flatMap(([name, own]) =>
    own.length < 2 ? [] : [{ name, own }],
  );
}

/** Whether every operator has met every other, or others who lead to them: else nothing tells operators from their fills. */
function areConnected(fills: readonly Fill[]): boolean {
  const met = fills.map(
    ({ catches }) => new Set(catches.flatMap(({ operator }) => operator ?? [])),
  );
  const reached = new Set(met[0]);
  let grows = true;
  while (grows) {
    const before = reached.size;
    for (const names of met)
      if ([...names].some((name) => reached.has(name))) for (const name of names) reached.add(name);
    grows = reached.size > before;
  }
  return met.every((names) => [...names].every((name) => reached.has(name)));
}

function consistencyBy(
  by: Consistency["by"],
  all: readonly Group[],
  fitted: number,
): readonly Consistency[] {
  const catches = sum(all.map(({ own }) => own.length));
  // Without deliveries of fills each group has lost one degree of freedom to its own mean.
  const dfOf = (own: readonly Weighing[]) =>
    fitted === 0
      ? own.length - 1
      : Math.floor((own.length * (catches - fitted - all.length + 1)) / catches);
  const groups = all.map(({ name, own }) => ({
    name,
    catches: own.length,
    ...ratioOf(own, dfOf(own)),
  }));
  if (groups.some(({ df }) => df < 1)) return [];
  const found = mandelStatistics(groups);
  if (found === null) return [];
  const allDf = sum(groups.map(({ df }) => df));
  return [
    {
      by,
      groups: groups.map(({ name, catches, df }, i) => ({
        name,
        catches,
        h: found[i]?.h ?? 0,
        k: found[i]?.k ?? null,
        kLimits: limits((alpha) => mandelKLimit(df, allDf - df, alpha)),
      })),
      hLimits: limits((alpha) => mandelHLimit(groups.length, alpha)),
    },
  ];
}

function limits(at: (alpha: number) => number): readonly [number, number] {
  const [often, seldom] = defaults.beyondByChance;
  return [at(often), at(seldom)];
}

function ratioOf(own: readonly Weighing[], df: number) {
  const mean = sum(own.map(({ netKg }) => netKg)) / sum(own.map(({ expected }) => expected));
  const squares = own.map(({ netKg, expected }) =>
    isDust(netKg - mean * expected, netKg) ? 0 : (netKg - mean * expected) ** 2 / expected,
  );
  return { mean, variance: sum(squares) / df / mean ** 2, df };
}
